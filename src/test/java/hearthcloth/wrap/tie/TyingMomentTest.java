package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cloth half tied is the same cloth: nothing stretched, every bit there once. */
class TyingMomentTest {

    private static final Length TAIL = Length.cm(12);

    private static final List<Gift> GIFTS = Stream.of(
                    "box 30 x 20 x 8 cm",
                    "box 14 x 14 x 14 cm",
                    "box 60 x 12 x 12 cm",
                    "box 40 x 30 x 2 cm",
                    "bottle 8 x 30 cm",
                    "bottle 12 x 12 cm",
                    "two bottles 8 x 30 cm",
                    "two bottles 4 x 16 cm",
                    "ball 22 cm",
                    "ball 8 cm",
                    "books 21 x 15 x 2 cm",
                    "books 12 x 9 x 3 cm",
                    "roll 6 x 38 cm",
                    "roll 12 x 20 cm")
            .map(written -> Gift.parse(written, null))
            .toList();

    record Step(TyingMoment moment, Fold tied) {
        @Override
        public String toString() {
            return moment + " of " + tied.fit().tie() + ", " + tied.fit().gift();
        }
    }

    static Stream<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (Gift gift : GIFTS) {
            for (Tie tie : Tie.suiting(gift)) {
                Length side = tie.smallestSquare(gift, TAIL).times(21).dividedBy(20, Rounding.UP);
                Fold tied = TiedFold.of(tie.fit(gift, Size.square(side), TAIL));
                TyingMoment.of(tie, gift).forEach(moment -> steps.add(new Step(moment, tied)));
            }
        }
        return steps.stream();
    }

    @ParameterizedTest
    @MethodSource("steps")
    void a_moment_is_the_same_cloth(Step step) {
        Fold fold = TiedFold.at(step.moment, step.tied);
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
    }

    static Stream<Step> unparted() {
        List<TyingMoment> straight = List.of(
                TyingMoment.LAID,
                TyingMoment.NEAR_OVER,
                TyingMoment.NEAR_AND_FAR,
                TyingMoment.ALL_BUT_FAR,
                TyingMoment.SIDES_UP);
        return steps().filter(step -> step.tied.fit().gift() instanceof Gift.Box
                && step.tied.fit().tie() != Tie.EDGE_ALONG_EDGE
                && straight.contains(step.moment));
    }

    /** A box's cloth on the way is one sheet: no step on it gets longer in space, but at what goes to a knot. */
    @ParameterizedTest
    @MethodSource("unparted")
    void cloth_on_the_way_is_not_torn(Step step) {
        Fold fold = TiedFold.at(step.moment, step.tied);
        List<Facet> sheet =
                fold.facets().stream().filter(facet -> !facet.isLoose()).toList();
        Random chance = new Random(281126);
        double longer = 0;
        for (int i = 0; i < 6000; i++) {
            Facet one = sheet.get(chance.nextInt(sheet.size()));
            Facet two = sheet.get(chance.nextInt(sheet.size()));
            Point a = FoldJudge.some(one.cloth(), chance);
            Point b = FoldJudge.some(two.cloth(), chance);
            // a straight way through an end that goes to a knot is no way through the sheet
            if (isWhole(fold, a, b)) {
                double flat = Math.hypot(a.x() - b.x(), a.y() - b.y());
                double laid = one.motion().at(a).minus(two.motion().at(b)).length();
                longer = Math.max(longer, laid - flat);
            }
        }
        assertThat(longer).isLessThan(1e-6);
    }

    private static boolean isWhole(Fold fold, Point a, Point b) {
        return fold.facets().stream()
                .noneMatch(facet -> facet.isLoose() && facet.cloth().clip(a, b).isPresent());
    }

    /** Edge along edge, below the rim: exact too while the flaps stand out and while they are over. */
    @Test
    void standing_flaps_hang_on_their_walls() {
        for (Step step : steps().filter(
                        one -> one.tied.fit().tie() == Tie.EDGE_ALONG_EDGE && one.moment != TyingMoment.LAID)
                .toList()) {
            Fold fold = TiedFold.at(step.moment, step.tied);
            Gift.Box box = (Gift.Box) step.tied.fit().gift();
            double rim = box.height().in(Unit.MILLIMETRE) + 1e-9;
            List<Facet> low = fold.facets().stream()
                    .filter(facet -> !facet.isLoose()
                            && facet.plane().where() != FacetPlane.Where.TOP
                            && facet.corners().stream().allMatch(corner -> corner.z() < rim))
                    .toList();
            Random chance = new Random(281126);
            for (int i = 0; i < 3000; i++) {
                Facet one = low.get(chance.nextInt(low.size()));
                Facet two = low.get(chance.nextInt(low.size()));
                Point a = FoldJudge.some(one.cloth(), chance);
                Point b = FoldJudge.some(two.cloth(), chance);
                double flat = Math.hypot(a.x() - b.x(), a.y() - b.y());
                double laid = one.motion().at(a).minus(two.motion().at(b)).length();
                assertThat(laid - flat).as(step.toString()).isLessThan(1e-6);
            }
        }
    }

    /** From each moment to the next some cloth lies elsewhere: at least a centimetre away. */
    @Test
    void from_moment_to_moment_something_moves() {
        for (Gift gift : GIFTS) {
            for (Tie tie : Tie.suiting(gift)) {
                List<Step> steps = steps().filter(step -> step.tied.fit().tie() == tie
                                && step.tied.fit().gift().equals(gift))
                        .toList();
                assertThat(steps.stream().map(Step::moment)).containsExactlyElementsOf(TyingMoment.of(tie, gift));
                for (int i = 1; i < steps.size(); i++) {
                    Step step = steps.get(i);
                    Fold before = TiedFold.at(steps.get(i - 1).moment, step.tied);
                    Fold now = TiedFold.at(step.moment, step.tied);
                    Random chance = new Random(7);
                    int moved = 0;
                    for (int k = 0; k < 400; k++) {
                        Point point = FoldJudge.some(now.laying().whole(), chance);
                        moved += place(before, point).minus(place(now, point)).length() > 10 ? 1 : 0;
                    }
                    assertThat(moved).as(step.toString()).isPositive();
                }
            }
        }
    }

    private static Vector place(Fold fold, Point point) {
        for (Facet facet : fold.facets()) {
            List<Point> corners = facet.cloth().corners();
            boolean inside = true;
            for (int i = 0; i < corners.size() && inside; i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                inside = b.minus(a).left().dot(point.minus(a)) > -1e-6;
            }
            if (inside) {
                return facet.motion().at(point);
            }
        }
        throw new AssertionError("no cloth at " + point);
    }

    @Test
    void a_moment_of_another_tie_is_refused() {
        Step step = steps().filter(one -> one.tied.fit().tie() == Tie.ROLL)
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> TiedFold.at(TyingMoment.NEAR_OVER, step.tied))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
