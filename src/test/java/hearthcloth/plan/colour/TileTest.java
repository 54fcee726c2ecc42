package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What lies beside what, how different it looks, and what that adds up to. */
class TileTest {

    private static Tile tile(int bar, Fabric fabric, double x, double y, double right, double bottom) {
        return new Tile(bar, Greys.ALL.indexOf(fabric), x, y, right, bottom);
    }

    private static ColourFigures figures(Tile... tiles) {
        ColourSum sum = new ColourSum(new FabricDifferences(Greys.ALL));
        for (int i = 0; i < tiles.length; i++) {
            sum.tile(tiles[i]);
            for (int j = 0; j < i; j++) {
                sum.meeting(tiles[j], tiles[i], tiles[j].meets(tiles[i]));
            }
        }
        return sum.figures();
    }

    /** Counted on squared paper: unit edges with a square of the one on one side and of the other on the other. */
    @Test
    void tiles_meet_along_the_edges_they_share_on_squared_paper() {
        Random random = new Random(6);
        int met = 0;
        for (int i = 0; i < 4_000; i++) {
            int[] a = rectangle(random);
            int[] b = rectangle(random);
            if (a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]) {
                continue; // one over the other, as tiles of a cloth never lie
            }
            int shared = 0;
            for (int x = a[0]; x < a[2]; x++) {
                for (int y = a[1]; y < a[3]; y++) {
                    shared += (holds(b, x + 1, y) ? 1 : 0)
                            + (holds(b, x - 1, y) ? 1 : 0)
                            + (holds(b, x, y + 1) ? 1 : 0)
                            + (holds(b, x, y - 1) ? 1 : 0);
                }
            }
            Tile one = new Tile(1, 0, a[0], a[1], a[2], a[3]);
            Tile other = new Tile(2, 0, b[0], b[1], b[2], b[3]);
            assertThat(one.meets(other)).isEqualTo(shared);
            assertThat(other.meets(one)).isEqualTo(shared);
            assertThat(one.areaMm2()).isEqualTo((a[2] - a[0]) * (a[3] - a[1]));
            met += shared > 0 ? 1 : 0;
        }
        assertThat(met).isGreaterThan(300);
    }

    private static int[] rectangle(Random random) {
        int x = random.nextInt(8);
        int y = random.nextInt(8);
        return new int[] {x, y, x + 1 + random.nextInt(4), y + 1 + random.nextInt(4)};
    }

    private static boolean holds(int[] rectangle, int x, int y) {
        return x >= rectangle[0] && x < rectangle[2] && y >= rectangle[1] && y < rectangle[3];
    }

    @Test
    void edges_within_a_hundredth_of_a_millimetre_are_one() {
        Tile one = new Tile(1, 0, 0, 0, 10, 10);
        assertThat(one.meets(new Tile(2, 0, 10.009, 0, 20, 10))).isEqualTo(10);
        assertThat(one.meets(new Tile(2, 0, 10.02, 0, 20, 10))).isZero();
    }

    @Test
    void two_fabrics_differ_as_their_colours_do_and_by_nothing_from_themselves() {
        FabricDifferences differences = new FabricDifferences(Greys.ALL);
        for (int i = 0; i < Greys.ALL.size(); i++) {
            Fabric one = Greys.ALL.get(i);
            assertThat(differences.number(one.name())).isEqualTo(i);
            assertThat(differences.lightness(i)).isEqualTo(one.colour().lab().lightness());
            assertThat(differences.between(i, i)).isZero();
            for (int j = 0; j < Greys.ALL.size(); j++) {
                double apart =
                        one.colour().lab().difference(Greys.ALL.get(j).colour().lab());
                assertThat(differences.between(i, j)).isCloseTo(apart, within(1e-9));
            }
        }
        // white and black are 100 apart in CIEDE2000, by its definition
        assertThat(differences.between(0, 5)).isCloseTo(100, within(0.01));
        assertThatThrownBy(() -> differences.number("Velvet"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no fabric of the plan is called \"Velvet\"");
    }

    /** A hearth of 100 mm with bars of 20 mm to the right and below. */
    @Test
    void the_figures_of_three_tiles_by_hand() {
        ColourFigures figures = figures(
                tile(0, Greys.WHITE, 0, 0, 100, 100),
                tile(1, Greys.BLACK, 100, 0, 120, 100),
                tile(2, Greys.BLACK, 0, 100, 120, 120));

        assertThat(figures.hearth()).isEqualTo(new ColourFigures.Hearth(200, 200, 0, 200));
        assertThat(figures.neighbours()).isEqualTo(new ColourFigures.Neighbours(20, 20, 0, 0));
        assertThat(figures.mixedBars()).isZero();
        // all the light is the hearth's, whose middle is 10 mm from the cloth's each way, of a side of 120
        assertThat(figures.offCentre()).isCloseTo(Math.hypot(10, 10) / 120, within(1e-9));
    }

    @Test
    void a_hearth_stands_out_by_colour_and_lightness_together() {
        // L* 50 and 42 differ by less than 15; red and grey of about one lightness differ in colour alone
        assertThat(hearthAnd(Greys.GREY, Greys.NEAR).standsOutMm()).isZero();
        assertThat(hearthAnd(Greys.RED, Greys.GREY).standsOutMm()).isZero();
        assertThat(hearthAnd(Greys.GREY, Greys.DARK).standsOutMm()).isEqualTo(50);
        assertThat(hearthAnd(Greys.GREY, Greys.GREY)).isEqualTo(new ColourFigures.Hearth(50, 0, 50, 0));
        // in whichever order the two are counted
        assertThat(figures(tile(1, Greys.GREY, 50, 0, 70, 50), tile(0, Greys.GREY, 0, 0, 50, 50))
                        .hearth()
                        .ownMm())
                .isEqualTo(50);
    }

    private static ColourFigures.Hearth hearthAnd(Fabric hearth, Fabric bar) {
        return figures(tile(0, hearth, 0, 0, 50, 50), tile(1, bar, 50, 0, 70, 50))
                .hearth();
    }

    @Test
    void bars_nearly_alike_count_by_how_nearly_and_a_bar_of_two_fabrics_once() {
        double apart = Greys.GREY.colour().lab().difference(Greys.NEAR.colour().lab());
        assertThat(apart).isBetween(1.0, 14.0);
        ColourFigures figures = figures(
                tile(1, Greys.GREY, 0, 0, 20, 60),
                tile(2, Greys.NEAR, 20, 0, 40, 60),
                tile(3, Greys.BLACK, 40, 0, 60, 60));
        assertThat(figures.neighbours().edgeMm()).isEqualTo(120);
        assertThat(figures.neighbours().sameMm()).isZero();
        assertThat(figures.neighbours().alikeMm()).isCloseTo(60 * (1 - apart / 15), within(1e-9));

        ColourFigures mixed = figures(
                tile(1, Greys.GREY, 0, 0, 20, 30),
                tile(1, Greys.NEAR, 0, 30, 20, 60),
                tile(1, Greys.BLACK, 0, 60, 20, 90));
        assertThat(mixed.mixedBars()).isEqualTo(1);
        assertThat(mixed.neighbours().edgeMm()).isZero();
        assertThat(figures(tile(1, Greys.GREY, 0, 0, 20, 30), tile(1, Greys.GREY, 0, 30, 20, 60))
                        .mixedBars())
                .isZero();
    }

    @Test
    void a_cloth_of_black_alone_is_in_balance_and_none_has_no_figures() {
        assertThat(figures(tile(0, Greys.BLACK, 0, 0, 10, 10)).offCentre()).isZero();
        assertThat(figures().offCentre()).isZero();
        assertThat(figures(tile(0, Greys.WHITE, 0, 0, 10, 40)).offCentre()).isCloseTo(0, within(1e-12));
        assertThat(List.of(figures().hearth().edgeMm())).containsExactly(0.0);
    }
}
