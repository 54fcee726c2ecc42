package hearthcloth.wrap.settle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The share of the hearth in what shows, by the facets and by looking at the mesh, at both ends of the range. On the mesh
 * flaps part a little as they rise to the knot and show the corners under them: near 3 parts of 100 on a box of middling
 * size, near 10 on a small one, beside which a knot is large.
 */
class SeenOnMeshTest {

    private static final Length TAIL = Length.cm(12);

    @ParameterizedTest
    @CsvSource({
        "FOUR_CORNER, box 30 x 20 x 8 cm, 0.04",
        "FOUR_CORNER, box 15 x 11 x 5 cm, 0.12",
        "ERRAND, box 25 x 20 x 8 cm, 0.03",
        "TWO_KNOT, box 45 x 14 x 11 cm, 0.03",
        "FLAT, box 30 x 20 x 3 cm, 0.03",
        "EDGE_ALONG_EDGE, box 28 x 20 x 10 cm, 0.03"
    })
    void the_hearth_is_the_same_share_of_what_is_seen_on_the_mesh(Tie tie, String gift, double near) {
        Gift given = Gift.parse(gift, null);
        Length side = new Length((long) (tie.smallestSquare(given, TAIL).nm() * 1.05));
        Fold tucked = TiedFold.of(tie.fit(given, Size.square(side), TAIL));
        isAlike(tucked, side.in(Unit.MILLIMETRE), near);
        TiedFold.asItFalls(tucked).ifPresent(falling -> isAlike(falling, side.in(Unit.MILLIMETRE), near));
    }

    private static void isAlike(Fold fold, double side, double near) {
        Visible visible = Visible.of(fold);
        ConvexPolygon hearth = fold.laying().patch(0.25 * side, 0.25 * side, 0.75 * side, 0.75 * side);
        Visible.Shares all = visible.shares(fold.laying().whole());
        Visible.Shares own = visible.shares(hearth);
        double byFacets = (own.sides() + own.top()) / (all.sides() + all.top());
        double[] seen = new MeshSight(Settled.of(visible, Stiffness.COTTON), fold).seen(hearth);
        assertThat(seen[1] / seen[0]).as(fold.fit().gift().toString()).isCloseTo(byFacets, within(near));
    }
}
