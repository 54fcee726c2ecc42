package hearthcloth.wrap.settle;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What shows of a tied cloth, its folds eased, held to the fold it comes from. */
class SettledTest {

    private static final long SEED = 26;
    private static final Length TAIL = Length.cm(12);

    /** Twice the thickness of light cotton, the limit of {@code wrap.drape}. */
    private static final double DEEPEST_MM = 0.5;

    private static Fold fold(Tie tie, Gift gift, double more) {
        Length side = new Length((long) (tie.smallestSquare(gift, TAIL).nm() * more));
        return TiedFold.of(tie.fit(gift, Size.square(side), TAIL));
    }

    /** A seeded box from 8 to 45 cm long. */
    private static Gift box(Random chance) {
        double length = 8 + 37 * chance.nextDouble();
        double width = Math.max(4, length * (0.4 + 0.6 * chance.nextDouble()));
        double height = Math.max(2, length * (0.1 + 0.5 * chance.nextDouble()));
        return Gift.parse(String.format(Locale.ROOT, "box %.1f x %.1f x %.1f cm", length, width, height), null);
    }

    @Test
    void cloth_round_seeded_boxes_never_cuts_into_the_box_nor_sinks_into_the_table() {
        Random chance = new Random(SEED);
        for (int i = 0; i < 20; i++) {
            Gift gift = box(chance);
            for (Tie tie : new Tie[] {Tie.FOUR_CORNER, Tie.ERRAND, Tie.FLAT}) {
                Settled settled =
                        Settled.of(Visible.of(fold(tie, gift, 1 + 0.12 * chance.nextDouble())), Stiffness.COTTON);
                Gift.Box box = (Gift.Box) gift;
                for (int t = 0; t < settled.triangles().size(); t += 3) {
                    Vector a = settled.places().get(settled.triangles().get(t));
                    Vector b = settled.places().get(settled.triangles().get(t + 1));
                    Vector c = settled.places().get(settled.triangles().get(t + 2));
                    assertThat(depth(box, a.plus(b).plus(c).times(1.0 / 3)))
                            .as(gift + " " + tie)
                            .isLessThan(DEEPEST_MM);
                    assertThat(depth(box, a.plus(b).times(0.5)))
                            .as(gift + " " + tie)
                            .isLessThan(DEEPEST_MM);
                }
            }
        }
    }

    /** Long boxes for the tie with two knots, whose knots need room beside each other; any box for the others. */
    private static Gift box(Tie tie, Random chance) {
        Gift any = box(chance);
        if (tie != Tie.TWO_KNOT) {
            return any;
        }
        double length = ((Gift.Box) any).along().nm() / 1e7;
        return Gift.parse(
                String.format(Locale.ROOT, "box %.1f x %.1f x %.1f cm", length, 0.3 * length, 0.25 * length), null);
    }

    @Test
    void nineteen_of_twenty_seeded_boxes_of_the_knotted_ties_are_within_the_limits_of_stretch_depth_and_piercing() {
        Random chance = new Random(SEED + 1);
        int within = 0;
        int all = 0;
        for (int i = 0; i < 5; i++) {
            for (Tie tie : new Tie[] {Tie.FOUR_CORNER, Tie.ERRAND, Tie.TWO_KNOT, Tie.EDGE_ALONG_EDGE}) {
                Gift gift = box(tie, chance);
                Fold fold = fold(tie, gift, 1 + 0.12 * chance.nextDouble());
                MeshMeasures measured = new MeshMeasures(Settled.of(Visible.of(fold), Stiffness.COTTON), fold);
                assertThat(measured.depthMm()).as(gift + " " + tie).isLessThan(DEEPEST_MM);
                all++;
                within += measured.stretch() < 0.02 && measured.piercing() < 0.01 ? 1 : 0;
            }
        }
        assertThat(20 * within).isGreaterThanOrEqualTo(19 * all);
    }

    @Test
    void the_free_ends_of_two_knots_lie_over_a_box_that_is_hardly_longer_than_wide() {
        Gift gift = Gift.parse("box 35 x 26 x 20 cm", null);
        Fold fold = fold(Tie.TWO_KNOT, gift, 1.05);
        assertThat(new MeshMeasures(Settled.of(Visible.of(fold), Stiffness.COTTON), fold).depthMm())
                .isLessThan(DEEPEST_MM);
    }

    /** How far out of line neighbouring triangles lie beside the walls and round their edges. */
    private static double bend(Tie tie, Gift gift, Stiffness stiffness) {
        Fold fold = fold(tie, gift, 1.05);
        MeshMeasures measured = new MeshMeasures(Settled.of(Visible.of(fold), stiffness), fold);
        assertThat(measured.stretch()).as(gift + " " + tie).isLessThan(0.02);
        return measured.bend();
    }

    @Test
    void stiffer_cloth_bends_more_roundly_whatever_its_size() {
        for (String size : new String[] {"box 12 x 8 x 4 cm", "box 30 x 20 x 8 cm", "box 45 x 30 x 12 cm"}) {
            Gift gift = Gift.parse(size, null);
            double lawn = bend(Tie.FOUR_CORNER, gift, place -> 0.6);
            double cotton = bend(Tie.FOUR_CORNER, gift, Stiffness.COTTON);
            double denim = bend(Tie.FOUR_CORNER, gift, place -> 1.6);
            assertThat(lawn).as(size).isGreaterThan(1.01 * cotton);
            assertThat(cotton).as(size).isGreaterThan(1.01 * denim);
        }
    }

    @Test
    void threads_of_a_rolled_gift_stay_as_long_as_they_are() {
        Random chance = new Random(SEED + 2);
        for (int i = 0; i < 6; i++) {
            String size = String.format(
                    Locale.ROOT, "roll %.1f x %.1f cm", 3 + 6 * chance.nextDouble(), 20 + 40 * chance.nextDouble());
            Fold fold = fold(Tie.ROLL, Gift.parse(size, null), 1 + 0.12 * chance.nextDouble());
            assertThat(new MeshMeasures(Settled.of(Visible.of(fold), Stiffness.COTTON), fold).stretch())
                    .as(size)
                    .isLessThan(0.02);
        }
    }

    private static double depth(Gift.Box box, Vector place) {
        double across = box.along().nm() / 2e6 - Math.abs(place.x());
        double along = box.across().nm() / 2e6 - Math.abs(place.y());
        double under = Math.min(box.height().nm() / 1e6 - place.z(), place.z());
        return Math.min(across, Math.min(along, under));
    }

    @Test
    void the_same_fold_gives_the_same_mesh_to_the_last_bit() {
        Gift gift = Gift.parse("box 30 x 20 x 8 cm", null);
        Visible visible = Visible.of(fold(Tie.FOUR_CORNER, gift, 1.05));
        assertThat(Settled.of(visible, Stiffness.COTTON)).isEqualTo(Settled.of(visible, Stiffness.COTTON));
    }

    @Test
    void a_point_of_the_cloth_under_the_gift_stays_under_it() {
        Gift gift = Gift.parse("box 30 x 20 x 8 cm", null);
        Settled settled = Settled.of(Visible.of(fold(Tie.FOUR_CORNER, gift, 1.05)), Stiffness.COTTON);
        assertThat(settled.place(new Point(0, 0)).z()).isBetween(-1.5, 0.1);
    }
}
