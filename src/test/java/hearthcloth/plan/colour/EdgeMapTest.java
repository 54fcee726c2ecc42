package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.colour.Colour;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link EdgeMap}: the fold over the tree beside every two rectangles compared with each other. */
class EdgeMapTest {

    private static final Fabric TWO_FACED = new Fabric(
            "Two-faced", Colour.of(0xffffff), Fabric.Faces.RIGHT, Fabric.Nap.ANY, Optional.of(Colour.of(0x3b3b3b)));

    private static Cloth chance(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        return Greys.cloth(
                80 + chance.nextInt(200),
                15 + chance.nextInt(40),
                1 + chance.nextInt(4),
                Greys.WHITE,
                slot -> Greys.ALL.get(chance.nextInt(Greys.ALL.size())));
    }

    /** Every two of the rectangles, by where they lie. */
    private static ColourFigures compared(Cloth cloth, FabricDifferences differences) {
        List<Tile> tiles = new ArrayList<>();
        for (Laid laid : cloth.laid()) {
            int bar = laid.patch().place() instanceof Place.Hearth ? 0 : tiles.size() + 1;
            tiles.add(ColourFigures.tile(bar, differences.number(laid.patch().fabric()), laid.at()));
        }
        ColourSum sum = new ColourSum(differences);
        for (int i = 0; i < tiles.size(); i++) {
            sum.tile(tiles.get(i));
            for (int j = 0; j < i; j++) {
                sum.meeting(tiles.get(j), tiles.get(i), tiles.get(j).meets(tiles.get(i)));
            }
        }
        return sum.figures();
    }

    @Test
    void the_edges_of_the_fold_are_those_of_every_two_rectangles_compared() {
        FabricDifferences differences = new FabricDifferences(Greys.ALL);
        for (long seed = 1; seed <= 60; seed++) {
            Cloth cloth = chance(seed);
            ColourFigures folded = EdgeMap.of(cloth, differences).figures(differences);
            ColourFigures all = compared(cloth, differences);
            assertThat(folded.hearth().edgeMm()).isCloseTo(all.hearth().edgeMm(), within(1e-6));
            assertThat(folded.hearth().standsOutMm()).isCloseTo(all.hearth().standsOutMm(), within(1e-6));
            assertThat(folded.neighbours().edgeMm()).isCloseTo(all.neighbours().edgeMm(), within(1e-6));
            assertThat(folded.neighbours().sameMm()).isCloseTo(all.neighbours().sameMm(), within(1e-6));
            assertThat(folded.neighbours().alikeMm()).isCloseTo(all.neighbours().alikeMm(), within(1e-6));
            assertThat(folded.offCentre()).isCloseTo(all.offCentre(), within(1e-9));
        }
    }

    @Test
    void a_cloth_turned_over_has_the_same_figures_since_it_is_one_layer() {
        for (long seed = 1; seed <= 20; seed++) {
            Cloth cloth = chance(seed);
            ColourFigures front = ColourFigures.of(cloth, Greys.ALL);
            ColourFigures back = ColourFigures.of(cloth.turnedOver(), Greys.ALL);
            assertThat(back.amissMm()).isCloseTo(front.amissMm(), within(1e-6));
            assertThat(ColourFigures.ofBack(cloth, Greys.ALL)).isEmpty();
        }
    }

    /** White outside and dark within: its hearth is seen on a dark front, and melts into a dark back. */
    @Test
    void the_back_has_the_colours_of_the_wrong_sides() {
        List<Fabric> fabrics = List.of(TWO_FACED, Greys.DARK);
        Cloth cloth = Greys.cloth(100, 40, 2, TWO_FACED, slot -> Greys.DARK);
        assertThat(ColourFigures.of(cloth, fabrics).hearth().standsOut()).isEqualTo(1);
        assertThat(ColourFigures.ofBack(cloth, fabrics).orElseThrow().hearth().standsOut())
                .isZero();
        assertThat(ColourWords.of(cloth, fabrics, Optional.empty()))
                .hasToString(
                        "[The hearth stands out on every side; the bars are one field of fabric., On the back the hearth"
                                + " is quiet, close to what lies round it; the bars are one field of fabric.]");
        ColourGoal goal = ColourGoal.flat(Contrast.READS);
        double front = ColourFigures.of(cloth, fabrics).amissMm();
        assertThat(goal.amissMm(cloth, fabrics)).isCloseTo(front + 0.5 * (front + 2 * 400), within(1e-6));
    }

    @Test
    void what_shows_tied_counts_half_beside_the_flat_cloth() {
        Cloth cloth = Greys.cloth(250, 108, 3, Greys.WHITE, slot -> Greys.DARK);
        ColourGoal goal = ColourGoal.of(new Wish.Looks(
                Optional.empty(),
                Optional.empty(),
                Contrast.READS,
                Optional.of(new Wish.Tied(
                        Gift.parse("box 20 x 15 x 8 cm", null), Tie.FOUR_CORNER, Tail.METRIC, Placing.CENTRED))));
        FabricDifferences differences = new FabricDifferences(Greys.ALL);
        double flat = ColourFigures.of(cloth, Greys.ALL).amissMm();
        double seen = TiedColours.figures(
                        cloth, differences, goal.tied(cloth.finished()).orElseThrow())
                .amissMm();
        assertThat(seen).isPositive().isLessThan(flat);
        assertThat(goal.amissMm(cloth, Greys.ALL)).isCloseTo(flat + 0.5 * seen, within(1e-6));
    }
}
