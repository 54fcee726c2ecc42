package hearthcloth.cutstock.piecing;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.ScrapCutting.Extent;
import hearthcloth.cutstock.piecing.tree.ScrapCut;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScrapCuttingTest {

    /** Cuts a rectangle up at random and tells the pieces. */
    private static void cutUp(Extent part, int pieces, Random chance, List<Extent> into) {
        boolean upright = chance.nextBoolean();
        long side = upright ? part.width() : part.height();
        if (pieces == 1 || side < 2) {
            into.add(part);
            return;
        }
        long at = 1L + chance.nextInt((int) side - 1);
        int first = 1 + chance.nextInt(pieces - 1);
        cutUp(upright ? new Extent(at, part.height()) : new Extent(part.width(), at), first, chance, into);
        cutUp(
                upright ? new Extent(side - at, part.height()) : new Extent(part.width(), side - at),
                pieces - first,
                chance,
                into);
    }

    /** Reads the sizes of the patches off the cuts. */
    private static void read(ScrapCut cut, Extent part, Map<Integer, Extent> into) {
        if (cut instanceof ScrapCut.Whole whole) {
            into.put(whole.patch(), part);
        } else if (cut instanceof ScrapCut.Cut one) {
            Extent first = one.upright() ? new Extent(one.at(), part.height()) : new Extent(part.width(), one.at());
            Extent second = one.upright()
                    ? new Extent(part.width() - one.at(), part.height())
                    : new Extent(part.width(), part.height() - one.at());
            read(one.first(), first, into);
            read(one.second(), second, into);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void what_was_one_scrap_cut_up_is_found_again_without_loss(long seed) {
        Random chance = new Random(seed);
        Extent scrap = new Extent(40 + chance.nextInt(60), 40 + chance.nextInt(60));
        List<Extent> pieces = new java.util.ArrayList<>();
        cutUp(scrap, 2 + chance.nextInt(3), chance, pieces);
        java.util.Collections.shuffle(pieces, chance);

        ScrapCutting.Way way = new ScrapCutting(0, 0).of(scrap, pieces).orElseThrow();

        TreeMap<Integer, Extent> found = new TreeMap<>();
        read(way.cut(), scrap, found);
        assertThat(way.lost()).isZero();
        assertThat(List.copyOf(found.values())).isEqualTo(pieces);
    }

    @Test
    void three_bars_that_overlap_whichever_way_are_refused() {
        List<Extent> three = List.of(new Extent(6, 4), new Extent(6, 4), new Extent(6, 4));
        assertThat(new ScrapCutting(0, 0).of(new Extent(10, 7), three)).isEmpty();
    }

    @Test
    void an_offcut_that_is_large_enough_is_not_lost_and_is_left_as_large_as_can_be() {
        ScrapCutting keeping = new ScrapCutting(5, 10);
        ScrapCutting.Way way =
                keeping.of(new Extent(20, 12), List.of(new Extent(8, 11))).orElseThrow();
        assertThat(way.lost()).isEqualTo(8);
    }
}
