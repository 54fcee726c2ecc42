package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Fabrics for bars, against every way of giving bars fabrics that there is, counted by the finished cloth. */
class BarColoursTest {

    private static final List<Fabric> FABRICS = List.of(Greys.PALE, Greys.DARK, Greys.RED, Greys.NEAR);

    private static Cloth cloth(int bars, int[] chosen) {
        int[] at = {0};
        return Greys.cloth(100, 20, bars / 4, Greys.WHITE, slot -> FABRICS.get(chosen[at[0]++]));
    }

    /** The problem read off a cloth, with so much room of each fabric. */
    private static BarColouring problem(int count, Contrast wanted, double[] room) {
        Cloth cloth = cloth(count, new int[count]);
        List<Tile> bars = new ArrayList<>();
        Tile hearth = new Tile(0, Greys.ALL.indexOf(Greys.WHITE), 0, 0, 0, 0);
        for (Laid laid : cloth.laid()) {
            if (laid.patch().place() instanceof Place.Hearth) {
                hearth = ColourFigures.tile(0, Greys.ALL.indexOf(Greys.WHITE), laid.at());
            }
        }
        for (int bar = 0; bar < count; bar++) {
            String id = (bar / 4 + 1) + String.valueOf((char) ('A' + bar % 4));
            bars.add(cloth.laid().stream()
                    .filter(laid -> laid.patch().place().id().equals(id))
                    .map(laid -> ColourFigures.tile(1, 0, laid.at()))
                    .findFirst()
                    .orElseThrow());
        }
        int[] numbers = FABRICS.stream().mapToInt(Greys.ALL::indexOf).toArray();
        return new BarColouring(
                hearth,
                bars,
                new EdgeBill(new FabricDifferences(Greys.ALL), wanted, java.util.Optional.empty()),
                numbers,
                new double[count][FABRICS.size()],
                room);
    }

    private static double cost(BarColouring problem, BarColours.Found found) {
        int[] chosen = new int[problem.bars()];
        Arrays.setAll(chosen, found::chosen);
        return new BarChoice(problem, chosen).cost();
    }

    private static double[] plenty() {
        double[] room = new double[FABRICS.size()];
        Arrays.fill(room, 1e9);
        return room;
    }

    @ParameterizedTest
    @EnumSource(Contrast.class)
    void the_cost_of_a_choice_is_what_is_amiss_in_the_finished_cloth(Contrast wanted) {
        Random random = new Random(21);
        BarColouring problem = problem(8, wanted, plenty());
        for (int i = 0; i < 30; i++) {
            int[] chosen = random.ints(8, 0, FABRICS.size()).toArray();
            assertThat(new BarChoice(problem, chosen).cost())
                    .isCloseTo(ColourFigures.of(cloth(8, chosen), Greys.ALL).amissMm(wanted), within(1e-6));
        }
    }

    @ParameterizedTest
    @EnumSource(Contrast.class)
    void eight_bars_of_four_fabrics_are_proven_to_lie_best_among_all_65_536_ways(Contrast wanted) {
        for (double[] room : List.of(plenty(), new double[] {6000, 5000, 4000, 9000})) {
            BarColouring problem = problem(8, wanted, room);
            double least = Double.POSITIVE_INFINITY;
            int[] chosen = new int[8];
            for (int way = 0; way < 1 << 16; way++) {
                for (int bar = 0; bar < 8; bar++) {
                    chosen[bar] = (way >> (2 * bar)) & 3;
                }
                least = Math.min(least, new BarChoice(problem, chosen).cost());
            }
            BarColours.Found found = BarColours.of(problem, 1_000_000, 1);
            assertThat(found.isFound()).isEqualTo(least < Double.POSITIVE_INFINITY);
            if (found.isFound()) {
                assertThat(cost(problem, found)).isCloseTo(least, within(1e-6));
                assertThat(found.bound()).isCloseTo(least, within(1e-6));
            }
        }
    }

    @Test
    void with_few_looks_the_bound_is_still_below_every_way_and_the_same_looks_give_the_same_answer() {
        BarColouring problem = problem(8, Contrast.MOST, new double[] {6000, 5000, 8000, 9000});
        double least = cost(problem, BarColours.of(problem, 1_000_000, 1));
        for (long looks : new long[] {2, 20, 200, 2000}) {
            BarColours.Found found = BarColours.of(problem, looks, 3);
            assertThat(found.bound()).isLessThanOrEqualTo(least + 1e-9);
            assertThat(cost(problem, found)).isGreaterThanOrEqualTo(least - 1e-9);
            BarColours.Found again = BarColours.of(problem, looks, 3);
            assertThat(cost(problem, again)).isEqualTo(cost(problem, found));
            assertThat(again.bound()).isEqualTo(found.bound());
        }
    }

    private static double sum(BarColouring problem, BarColouring.Tables tables, int[] chosen) {
        double sum = 0;
        for (int bar = 0; bar < chosen.length; bar++) {
            sum += tables.alone()[bar][chosen[bar]];
            List<BarColouring.Meeting> meetings = problem.meetingsOf(bar);
            for (int at = 0; at < meetings.size(); at++) {
                int other = meetings.get(at).other();
                sum += other < bar ? tables.between(bar, at, chosen[bar], chosen[other]) : 0;
            }
        }
        return sum;
    }

    /** What no choice costs less than: each bar its cheapest fabric, with what it costs at least where it meets others. */
    private static double least(BarColouring.Tables tables) {
        double[][] inside = tables.inside();
        double least = 0;
        for (int bar = 0; bar < inside.length; bar++) {
            double cheapest = Double.POSITIVE_INFINITY;
            for (int fabric = 0; fabric < inside[bar].length; fabric++) {
                cheapest = Math.min(cheapest, tables.alone()[bar][fabric] + inside[bar][fabric]);
            }
            least += cheapest;
        }
        return least;
    }

    /** docs/sources.md#spread-costs. */
    @Test
    void costs_spread_otherwise_are_the_same_for_every_choice_and_say_more_of_the_least() {
        Random random = new Random(21);
        for (Contrast wanted : List.of(Contrast.MOST, Contrast.READS, Contrast.QUIET)) {
            BarColouring problem = problem(12, wanted, plenty());
            BarColouring.Tables plain = problem.new Tables();
            BarColouring.Tables spread = problem.new Tables();
            spread.spread();
            double best = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 200; i++) {
                int[] chosen = random.ints(12, 0, FABRICS.size()).toArray();
                assertThat(sum(problem, spread, chosen)).isCloseTo(sum(problem, plain, chosen), within(1e-6));
                best = Math.min(best, sum(problem, plain, chosen));
            }
            assertThat(least(spread)).isBetween(least(plain) - 1e-6, best + 1e-6);
        }
        BarColouring hard = problem(12, Contrast.MOST, plenty());
        BarColouring.Tables spread = hard.new Tables();
        spread.spread();
        assertThat(least(spread)).isGreaterThan(least(hard.new Tables()) + 1);
    }

    /** So many looks that costs are spread on the way; twelve bars of three fabrics can be given in 531 441 ways. */
    @Test
    void twelve_bars_of_scarce_fabrics_are_proven_to_lie_best_among_all_ways() {
        BarColouring problem = problem(12, Contrast.MOST, new double[] {14000, 12000, 16000, 0});
        double least = Double.POSITIVE_INFINITY;
        BarChoice choice = new BarChoice(problem, new int[12]);
        for (int way = 0; way < 531_441; way++) {
            int rest = way;
            for (int bar = 0; bar < 12; bar++) {
                choice.set(bar, rest % 3);
                rest /= 3;
            }
            least = Math.min(least, choice.cost());
        }
        BarColours.Found found = BarColours.of(problem, 1_000_000, 1);
        assertThat(cost(problem, found)).isCloseTo(least, within(1e-6));
        assertThat(found.bound()).isCloseTo(least, within(1e-6));
    }

    @Test
    void where_there_is_not_enough_fabric_nothing_is_found() {
        assertThat(BarColours.of(problem(4, Contrast.READS, new double[4]), 1000, 1)
                        .isFound())
                .isFalse();
    }

    /** Of red and grey round a white hearth no bar need lie beside its own fabric, so a cloth that does is not the least. */
    @Test
    void the_least_that_must_be_amiss_is_said_of_a_cloth() {
        List<Piece> pieces = new ArrayList<>();
        for (Fabric fabric : List.of(Greys.WHITE, Greys.RED, Greys.DARK, Greys.BLACK)) {
            pieces.add(new Piece(
                    fabric.name(), fabric, Size.square(Length.cm(100)), Piece.Washed.UNKNOWN, pieces.size() + 2));
        }
        Supply supply = new Supply(new Stash(pieces));
        Cloth turns =
                Greys.cloth(100, 20, 1, Greys.WHITE, slot -> slot.place().order() % 2 == 0 ? Greys.RED : Greys.DARK);
        LeastAmiss best = LeastAmiss.of(turns, supply, ColourGoal.flat(Contrast.READS));
        assertThat(best.isProven()).isTrue();
        Cloth field = Greys.cloth(100, 20, 1, Greys.WHITE, slot -> Greys.DARK);
        LeastAmiss worse = LeastAmiss.of(field, supply, ColourGoal.flat(Contrast.READS));
        assertThat(worse.isProven()).isFalse();
        assertThat(worse.boundMm()).isLessThan(worse.amissMm());
    }
}
