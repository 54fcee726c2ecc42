package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.tie.TiedFold;
import org.junit.jupiter.api.Test;

/** How {@link BoxScript} sets {@link BoxHands} to work on a box of 300 × 260 × 120 mm drawn at half its size. */
class BoxHandsTest {

    private static final double SCALE = 0.5;

    private static Fold tied(Tie tie, String gift) {
        Gift given = Gift.parse(gift, null);
        Length side = tie.smallestSquare(given, Length.cm(12));
        Length larger = side.plus(side.dividedBy(20, Rounding.UP));
        return TiedFold.of(tie.fit(given, Size.square(larger), Length.cm(12)));
    }

    private final Fold fold = tied(Tie.FOUR_CORNER, "box 30 x 26 x 12 cm");
    private final BoxScript script = BoxScript.of(fold, SCALE);

    private Sheet sheet() {
        Grid grid = Grid.of(fold.laying().whole(), 41, SCALE, script.creases());
        Sheet sheet = new Sheet(grid, grid.gap / 8);
        for (int k = 0; k < sheet.points(); k++) {
            Sheets.put(sheet, k, grid.u[k], grid.v[k], 0);
        }
        sheet.begin();
        return sheet;
    }

    @Test
    void the_gift_and_the_creases_at_its_foot_and_rim_are_as_large_as_the_box() {
        assertThat(script.solid()).isEqualTo(new Solid.Block(75, 65, 60));
        assertThat(script.creases().u()).containsExactly(-135.0, -75.0, 75.0, 135.0);
        assertThat(script.creases().v()).containsExactly(-125.0, -65.0, 65.0, 125.0);
    }

    @Test
    void only_a_box_is_tied_by_these_hands() {
        Fold bottle = tied(Tie.ONE_BOTTLE, "bottle 7.5 x 30 cm");
        assertThatThrownBy(() -> BoxScript.of(bottle, 1)).hasMessageContaining("is not a box");
    }

    @Test
    void each_pair_of_corners_is_lifted_and_tied_in_its_turn() {
        Handling hands = script.hands(sheet());
        double each = BoxHands.LIFT + BoxHands.TIE;
        assertThat(fold.knots()).hasSize(2);
        assertThat(hands.busy()).isCloseTo(2 * each, within(1e-12));
        assertThat(hands.phase(0)).isZero();
        assertThat(hands.phase(0.99 * each)).isZero();
        assertThat(hands.phase(each)).isEqualTo(1);
        assertThat(hands.phase(hands.busy())).isEqualTo(2);
    }

    @Test
    void what_lies_under_the_box_is_held_by_its_weight_all_the_time() {
        Sheet sheet = sheet();
        Handling hands = script.hands(sheet);
        for (double time = 0; time < hands.busy(); time += 0.1) {
            java.util.Arrays.fill(sheet.ease, 1);
            hands.hold(time, sheet);
            int under = 0;
            for (int k = 0; k < sheet.points(); k++) {
                if (Math.abs(sheet.grid.u[k]) < 75 && Math.abs(sheet.grid.v[k]) < 65) {
                    assertThat(sheet.ease[k]).isZero();
                    assertThat(sheet.p[3 * k]).isEqualTo(sheet.grid.u[k]);
                    under++;
                }
            }
            assertThat(under).isPositive();
        }
    }

    /** Once all is tied the gathered ends lie where the fold has its knots, but for the knot's own size. */
    @Test
    void the_ends_come_to_the_knots_of_the_fold() {
        Sheet sheet = sheet();
        Handling hands = script.hands(sheet);
        hands.hold(hands.busy(), sheet);
        double room = 4 * fold.knots().get(1).bunch() * SCALE;
        int held = 0;
        for (int k = 0; k < sheet.points(); k++) {
            if (sheet.knotted[k]) {
                Vector place = new Vector(sheet.p[3 * k], sheet.p[3 * k + 1], sheet.p[3 * k + 2]);
                double nearest = fold.knots().stream()
                        .mapToDouble(knot -> place.minus(knot.at().times(SCALE)).length())
                        .min()
                        .orElseThrow();
                assertThat(nearest).isLessThan(room);
                held++;
            }
        }
        assertThat(held).isPositive();
    }

    /** Towards a knot layers are packed; far from all knots they keep their whole distance. */
    @Test
    void cloth_is_thin_in_a_knot_and_full_away_from_it() {
        Sheet sheet = sheet();
        script.hands(sheet);
        for (int k = 0; k < sheet.points(); k++) {
            assertThat(sheet.thickness[k]).isBetween(0.04 * sheet.full - 1e-12, sheet.full);
            if (sheet.knotted[k]) {
                assertThat(sheet.thickness[k]).isCloseTo(0.04 * sheet.full, within(1e-12));
            }
        }
        assertThat(sheet.thickness[sheet.points() / 2]).isEqualTo(sheet.full);
    }

    /** What hands hold may pass through cloth while its own pair is tied, and the knot for good. */
    @Test
    void only_ends_that_are_tied_may_pass_through_cloth() {
        Sheet sheet = sheet();
        Handling hands = script.hands(sheet);
        hands.loosen(hands.busy(), sheet);
        assertThat(sheet.loose).containsExactly(sheet.knotted);
        hands.loosen(0, sheet);
        int more = 0;
        for (int k = 0; k < sheet.points(); k++) {
            assertThat(sheet.loose[k] || !sheet.knotted[k]).isTrue();
            more += sheet.loose[k] && !sheet.knotted[k] ? 1 : 0;
        }
        assertThat(more).as("the free ends of the first pair").isPositive();
    }
}
