package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.fold.Laying;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where a diamond's corners lie, against the cloth laid point by point; and rounding that is never on the unsafe side. */
class SpreadTest {

    private static final List<Corner> TIPS = List.of(Corner.RIGHT, Corner.FAR, Corner.LEFT, Corner.NEAR);

    private static Placing placing(Random chance) {
        Face out = chance.nextBoolean() ? Face.FRONT : Face.BACK;
        return new Placing(
                Length.mm(chance.nextInt(161) - 80), Length.mm(chance.nextInt(161) - 80), chance.nextInt(4), out);
    }

    private static Size cloth(Random chance) {
        return new Size(Length.mm(400 + chance.nextInt(400)), Length.mm(400 + chance.nextInt(400)));
    }

    private static Point way(Corner corner) {
        return new Point(corner.right(), corner.away());
    }

    @Test
    void each_tip_lies_where_the_cloth_laid_as_a_diamond_has_its_corner() {
        Random chance = new Random(17);
        for (int i = 0; i < 300; i++) {
            Size cloth = cloth(chance);
            Placing placing = placing(chance);
            Spread spread = Spread.of(cloth, placing);
            List<Point> corners = new Laying(cloth, placing, true).whole().corners();
            for (Corner corner : TIPS) {
                Point tip = corners.stream()
                        .max(Comparator.comparingDouble(one -> way(corner).dot(one)))
                        .orElseThrow();
                assertThat(spread.along(corner))
                        .as("%s %s", corner, placing)
                        .isCloseTo(way(corner).dot(tip), within(1e-9));
                double aside = corner.right() == 0 ? tip.x() : tip.y();
                assertThat(spread.aside(corner)).as("%s %s", corner, placing).isCloseTo(aside, within(1e-9));
            }
        }
    }

    /** 60 × 80 cm by hand: the corners reach 140/2√2 = 49.5 cm; the gift 3 cm to the right takes 3 of them there. */
    @Test
    void a_cloth_worked_out_by_hand() {
        Size cloth = new Size(Length.cm(60), Length.cm(80));
        Spread spread = Spread.of(cloth, Placing.CENTRED.shifted(Length.cm(3), Length.cm(-2)));

        assertThat(spread.along(Corner.RIGHT)).isCloseTo(494.974746830 - 30, within(1e-6));
        assertThat(spread.along(Corner.LEFT)).isCloseTo(494.974746830 + 30, within(1e-6));
        assertThat(spread.along(Corner.FAR)).isCloseTo(494.974746830 + 20, within(1e-6));
        assertThat(spread.aside(Corner.RIGHT)).isCloseTo(70.710678119 + 20, within(1e-6));
        assertThat(spread.band()).isCloseTo(424.264068712 - 50, within(1e-6));
        assertThat(Spread.of(cloth, Placing.CENTRED.turned(1)).width()).isEqualTo(800);
        assertThat(Spread.of(cloth, Placing.CENTRED.turned(2)).width()).isEqualTo(600);
    }

    @Test
    void the_band_is_all_cloth_and_of_a_square_the_largest_that_is() {
        Random chance = new Random(18);
        for (int i = 0; i < 300; i++) {
            Size oblong = cloth(chance);
            Size cloth = chance.nextBoolean() ? oblong : Size.square(oblong.width());
            Placing placing = placing(chance);
            double band = Spread.of(cloth, placing).band();
            ConvexPolygon whole = new Laying(cloth, placing, true).whole();

            assertThat(bare(whole, band - 1e-3)).as("%s %s", cloth, placing).isLessThan(1e-6);
            if (cloth.isSquare()) {
                assertThat(bare(whole, band + 1)).as("%s %s", cloth, placing).isPositive();
            }
        }
    }

    /** How much of the diamond |u| + |v| ≤ band lies beyond the cloth. */
    private static double bare(ConvexPolygon cloth, double band) {
        ConvexPolygon diamond = new ConvexPolygon(
                List.of(new Point(band, 0), new Point(0, band), new Point(-band, 0), new Point(0, -band)));
        return diamond.without(cloth).stream().mapToDouble(ConvexPolygon::area).sum();
    }

    @Test
    void what_is_needed_is_rounded_up_and_what_is_there_is_rounded_down_by_less_than_two_nanometres() {
        Random chance = new Random(19);
        for (int i = 0; i < 2_000; i++) {
            double mm = (chance.nextDouble() - 0.5) * 4_000;
            double nm = mm * 1e6;
            assertThat(Outward.enough(mm).nm() - nm).isBetween(0.0, 2.0);
            assertThat(nm - Outward.there(mm).nm()).isBetween(-0.02, 1.0);
        }
        assertThat(Outward.mm(Length.inches(1))).isEqualTo(25.4);
    }

    /** 0.1 + 0.2 is a hair more than 0.3 in doubles, and 0.7 − 0.4 a hair less. */
    @Test
    void a_rounding_of_the_machine_takes_nothing_away() {
        assertThat(Outward.there(0.7 - 0.4)).isEqualTo(new Length(300_000));
        assertThat(Outward.there(0.1 + 0.2)).isEqualTo(new Length(300_000));
        assertThat(Outward.there(-12)).isEqualTo(Length.mm(-12));
        assertThat(Outward.there(-0.0000005)).isEqualTo(new Length(-1));
        assertThat(Outward.enough(0.7 - 0.4).nm()).isGreaterThanOrEqualTo(300_000);
    }
}
