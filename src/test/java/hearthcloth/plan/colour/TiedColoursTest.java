package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import org.junit.jupiter.api.Test;

/** The colours of a tied cloth beside those of the same cloth lying flat. */
class TiedColoursTest {

    private static final Gift BOX = Gift.parse("box 20 x 15 x 8 cm", null);

    private static Visible tied(Cloth cloth) {
        return Visible.of(
                TiedFold.of(Tie.FOUR_CORNER.fit(BOX, cloth.finished(), Tail.METRIC.usual(), Placing.CENTRED)));
    }

    private static ColourFigures figures(Cloth cloth) {
        return TiedColours.figures(cloth, new FabricDifferences(Greys.ALL), tied(cloth));
    }

    /** A hearth of 10 cm lies wholly under the box, one of 25 cm comes up its sides, one of 40 cm ends in the knot. */
    @Test
    void the_edge_of_a_hearth_counts_where_it_shows() {
        Cloth small = Greys.cloth(100, 100, 4, Greys.WHITE, slot -> Greys.DARK);
        assertThat(figures(small).hearth().edgeMm()).isZero();
        assertThat(TiedColours.sentence(small, Greys.ALL, tied(small)).isEmpty())
                .as("the bars are one field of fabric, tied as flat")
                .isTrue();
        Cloth large = Greys.cloth(250, 108, 3, Greys.WHITE, slot -> Greys.DARK);
        ColourFigures.Hearth seen = figures(large).hearth();
        ColourFigures.Hearth flat = ColourFigures.of(large, Greys.ALL).hearth();
        assertThat(seen.edgeMm()).isGreaterThan(100).isLessThan(flat.edgeMm());
        assertThat(seen.standsOut()).isEqualTo(1);
        assertThat(TiedColours.sentence(large, Greys.ALL, tied(large)).isEmpty())
                .as("what is the same is not said twice")
                .isTrue();
        Cloth whole = Greys.cloth(400, 125, 2, Greys.WHITE, slot -> Greys.DARK);
        assertThat(TiedColours.sentence(whole, Greys.ALL, tied(whole)).isEmpty())
                .isTrue();
    }

    @Test
    void only_what_is_another_than_on_the_flat_front_is_said() {
        Cloth cloth = Greys.cloth(250, 108, 3, Greys.WHITE, slot -> slot.place().order() < 2 ? Greys.GREY : Greys.DARK);
        assertThat(ColourFigures.of(cloth, Greys.ALL).sentence()).asString().contains("stands out on every side");
        assertThat(TiedColours.sentence(cloth, Greys.ALL, tied(cloth)))
                .asString()
                .startsWith("Of the edges that show tied: a fabric meets itself along ")
                .doesNotContain("hearth");
    }

    @Test
    void no_more_of_any_edge_shows_than_there_is() {
        for (long hearth : new long[] {100, 150, 250, 300}) {
            Cloth cloth = Greys.cloth(
                    hearth,
                    (900 - hearth) / 6,
                    3,
                    Greys.WHITE,
                    slot -> slot.place().order() < 2 ? Greys.GREY : Greys.DARK);
            ColourFigures.Neighbours seen = figures(cloth).neighbours();
            ColourFigures.Neighbours flat = ColourFigures.of(cloth, Greys.ALL).neighbours();
            assertThat(seen.edgeMm()).isPositive().isLessThan(flat.edgeMm());
            assertThat(seen.sameMm()).isLessThanOrEqualTo(flat.sameMm());
        }
    }
}
