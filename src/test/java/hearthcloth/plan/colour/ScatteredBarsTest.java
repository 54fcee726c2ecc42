package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One fabric for each bar, against every way of giving bars fabrics that there is. */
class ScatteredBarsTest {

    private static final Layout LAYOUT =
            new Layout(Size.square(Length.cm(20)), Layout.courses(Order.ROUND, 1, List.of(Length.cm(6))));

    private static Design design(List<Fabric> rest) {
        List<List<Fabric>> bars = Collections.nCopies(4, rest);
        Scheme scheme = new Scheme(Scheme.Kind.ALL, List.of(Greys.WHITE), bars);
        return new Design(Order.ROUND, LAYOUT, scheme, Making.metric(), PiecingRules.metric());
    }

    private static Piece piece(int row, Fabric fabric, long widthCm, long lengthCm) {
        Size size = new Size(Length.cm(widthCm), Length.cm(lengthCm));
        return new Piece(String.valueOf(row), fabric, size, Piece.Washed.UNKNOWN, row);
    }

    /** A metre square of each. */
    private static Supply plenty(List<Fabric> fabrics) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(piece(2, Greys.WHITE, 40, 40));
        for (Fabric fabric : fabrics) {
            pieces.add(piece(pieces.size() + 2, fabric, 100, 100));
        }
        return new Supply(new Stash(pieces));
    }

    private static List<Fabric> chosen(Scheme scheme) {
        return scheme.bars().stream().map(bar -> bar.get(0)).toList();
    }

    private static double amiss(List<Fabric> bars) {
        List<List<Layout.Part>> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            parts.add(List.of(new Layout.Part(
                    bars.get(i).name(), Showing.SAME, LAYOUT.slots().get(i).length())));
        }
        Cloth cloth = new Cloth(LAYOUT.sewn("White", Showing.SAME, parts), Making.metric());
        return ColourFigures.of(cloth, Greys.ALL).amissMm();
    }

    @Test
    void with_fabric_enough_no_other_way_lies_better() {
        for (List<Fabric> rest : List.of(
                List.of(Greys.PALE, Greys.DARK, Greys.RED),
                List.of(Greys.GREY, Greys.NEAR, Greys.BLACK),
                List.of(Greys.DARK, Greys.BLACK, Greys.GREY))) {
            Scheme scheme = ScatteredBars.of(design(rest), plenty(rest), rest, ColourGoal.flat(Contrast.READS))
                    .orElseThrow();

            double least = Double.POSITIVE_INFINITY;
            for (int way = 0; way < 81; way++) {
                List<Fabric> bars = new ArrayList<>();
                for (int left = way, bar = 0; bar < 4; bar++, left /= 3) {
                    bars.add(rest.get(left % 3));
                }
                least = Math.min(least, amiss(bars));
            }
            assertThat(amiss(chosen(scheme))).isCloseTo(least, within(1e-6));
            assertThat(scheme.kind()).isEqualTo(Scheme.Kind.SCATTERED);
            assertThat(scheme.hearth()).containsExactly(Greys.WHITE);
            assertThat(scheme.bars()).allMatch(bar -> bar.size() == 1);
        }
    }

    /** The bars finish at 6 × 20, 26, 26 and 32 cm. Of a strip that holds one of them, seven tenths are taken for one. */
    @Test
    void of_no_fabric_more_is_taken_than_there_is() {
        List<Fabric> rest = List.of(Greys.DARK, Greys.RED);
        List<Piece> pieces =
                List.of(piece(2, Greys.WHITE, 40, 40), piece(3, Greys.DARK, 8, 40), piece(4, Greys.RED, 100, 100));
        Scheme scheme = ScatteredBars.of(
                        design(rest), new Supply(new Stash(pieces)), rest, ColourGoal.flat(Contrast.READS))
                .orElseThrow();
        assertThat(Collections.frequency(chosen(scheme), Greys.DARK)).isLessThanOrEqualTo(1);

        List<Piece> little =
                List.of(piece(2, Greys.WHITE, 40, 40), piece(3, Greys.DARK, 8, 40), piece(4, Greys.RED, 8, 40));
        assertThat(ScatteredBars.of(design(rest), new Supply(new Stash(little)), rest, ColourGoal.flat(Contrast.READS)))
                .isEmpty();
    }

    @Test
    void a_bar_is_not_joined_for_its_colour() {
        // the red is too short for every bar, 34 cm long as cut at most, so that each would need a join
        List<Fabric> rest = List.of(Greys.DARK, Greys.RED);
        List<Piece> pieces = new ArrayList<>(List.of(piece(2, Greys.WHITE, 40, 40), piece(3, Greys.DARK, 100, 100)));
        for (int i = 0; i < 30; i++) {
            pieces.add(piece(4 + i, Greys.RED, 19, 19));
        }
        Scheme scheme = ScatteredBars.of(
                        design(rest), new Supply(new Stash(pieces)), rest, ColourGoal.flat(Contrast.READS))
                .orElseThrow();
        assertThat(chosen(scheme)).containsOnly(Greys.DARK);
    }

    @Test
    void fabric_of_which_a_seam_leaves_nothing_and_no_fabric_at_all_give_no_scheme() {
        List<Fabric> rest = List.of(Greys.DARK);
        List<Piece> narrow = new ArrayList<>(List.of(piece(2, Greys.WHITE, 40, 40)));
        for (int i = 0; i < 50; i++) {
            narrow.add(piece(3 + i, Greys.DARK, 1, 100));
        }
        assertThat(ScatteredBars.of(design(rest), new Supply(new Stash(narrow)), rest, ColourGoal.flat(Contrast.READS)))
                .isEqualTo(Optional.empty());
        assertThat(ScatteredBars.of(design(rest), plenty(rest), List.of(), ColourGoal.flat(Contrast.READS)))
                .isEmpty();
    }
}
