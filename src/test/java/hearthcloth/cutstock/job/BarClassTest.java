package hearthcloth.cutstock.job;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** {@link BarClass}: which bars are one class, and which lanes it counts, read off the bounds they give. */
class BarClassTest {

    private static final FabricSets RED = FabricSets.of(0);
    private static final FabricSets ANY = FabricSets.of(0, 1);

    private static JobBar bar(int id, long width, long length, FabricSets fabrics, BarTurn turn) {
        return new JobBar(id, width, length, fabrics, false, 99, 1, turn, List.of());
    }

    private static CutJoinJob job(List<StockPiece> stock, List<JobBar> bars, long loss) {
        return new CutJoinJob(stock, List.of(), bars, List.of(), loss, 0, 0);
    }

    private static BarClass one(StockPiece piece, JobBar bar) {
        List<BarClass> classes = BarClass.of(job(List.of(piece), List.of(bar), 10));
        assertThat(classes).hasSize(1);
        return classes.get(0);
    }

    @Test
    void bars_are_one_class_where_width_turn_and_fabrics_are_the_same() {
        List<JobBar> bars = List.of(
                bar(1, 20, 50, RED, BarTurn.ANY),
                bar(2, 20, 70, RED, BarTurn.ANY),
                bar(3, 30, 50, RED, BarTurn.ANY),
                bar(4, 20, 50, RED, BarTurn.ALONG),
                bar(5, 20, 50, ANY, BarTurn.ANY),
                bar(6, 30, 10, RED, BarTurn.ANY));

        List<BarClass> classes = BarClass.of(job(List.of(), bars, 0));

        assertThat(classes)
                .extracting(kind -> kind.bars().stream().map(JobBar::id).toList())
                .containsExactly(List.of(1, 2), List.of(3, 6), List.of(4), List.of(5));
        assertThat(classes.get(2).kind()).isEqualTo(new LaneKind(20, BarTurn.ALONG, RED));
    }

    @Test
    void a_piece_gives_as_many_lanes_each_way_as_fit_beside_each_other() {
        StockPiece piece = new StockPiece(0, 119, 300, 0, false);

        // 119 / 20 = 5 lanes of 300 along, 300 / 20 = 15 lanes of 119 across; each join loses 10
        BarClass along = one(piece, bar(1, 20, 500, RED, BarTurn.ALONG));
        assertThat(along.bounds().reach(1)).isEqualTo(300);
        assertThat(along.bounds().reach(99)).isEqualTo(5 * 300 - 4 * 10);
        BarClass across = one(piece, bar(1, 20, 500, RED, BarTurn.ACROSS));
        assertThat(across.bounds().reach(1)).isEqualTo(119);
        assertThat(across.bounds().reach(99)).isEqualTo(15 * 119 - 14 * 10);
        BarClass any = one(piece, bar(1, 20, 500, RED, BarTurn.ANY));
        assertThat(any.bounds().reach(99)).isEqualTo(5 * 300 + 15 * 119 - 19 * 10);
    }

    @Test
    void a_piece_of_another_fabric_or_too_narrow_gives_no_lane() {
        assertThat(one(new StockPiece(0, 100, 300, 1, false), bar(1, 20, 500, RED, BarTurn.ANY))
                        .bounds()
                        .reach(99))
                .isZero();
        assertThat(one(new StockPiece(0, 19, 300, 0, false), bar(1, 20, 500, RED, BarTurn.ALONG))
                        .bounds()
                        .reach(99))
                .isZero();
    }

    @Test
    void a_lane_too_short_for_any_part_is_not_counted() {
        StockPiece piece = new StockPiece(0, 100, 300, 0, false);
        JobBar longParts = new JobBar(1, 20, 500, RED, false, 99, 101, BarTurn.ACROSS, List.of());
        JobBar partsThatJustFit = new JobBar(1, 20, 500, RED, false, 99, 100, BarTurn.ACROSS, List.of());
        JobBar shortBar = new JobBar(1, 20, 80, RED, false, 99, 101, BarTurn.ACROSS, List.of());

        assertThat(one(piece, longParts).bounds().reach(1)).isZero();
        assertThat(one(piece, partsThatJustFit).bounds().reach(1)).isEqualTo(100);
        assertThat(one(piece, shortBar).bounds().reach(1)).isEqualTo(100);
    }

    @Test
    void of_one_piece_no_more_than_512_lanes_are_counted() {
        StockPiece piece = new StockPiece(0, 1_000, 7, 0, false);

        assertThat(one(piece, bar(1, 1, 5, RED, BarTurn.ALONG)).bounds().reach(600))
                .isEqualTo(7);
        List<BarClass> free = BarClass.of(job(List.of(piece), List.of(bar(1, 1, 5, RED, BarTurn.ALONG)), 0));
        assertThat(free.get(0).bounds().reach(600)).isEqualTo(512 * 7);
    }

    /** Two bars of 60 and lanes of 70 and 50: the lengths suffice exactly, but only one bar can be cut whole. */
    private static BarClass pair() {
        List<StockPiece> stock = List.of(new StockPiece(0, 10, 70, 0, true), new StockPiece(1, 10, 50, 0, true));
        List<JobBar> bars = List.of(bar(1, 10, 60, RED, BarTurn.ALONG), bar(2, 10, 60, RED, BarTurn.ALONG));
        return BarClass.of(job(stock, bars, 0)).get(0);
    }

    @Test
    void the_slower_relaxation_raises_the_bound_and_only_where_more_is_asked() {
        BarClass pair = pair();

        assertThat(pair.joins()).isZero();
        pair.raise(0, Budget.steps(1_000));
        assertThat(pair.joins()).isZero();
        pair.raise(5, Budget.steps(1_000));
        assertThat(pair.joins()).isEqualTo(1);
    }

    @Test
    void a_bound_that_stands_is_never_lowered() {
        // a bar of 250 from lanes of 100: three parts, two joins
        List<StockPiece> stock = IntStream.range(0, 3)
                .mapToObj(i -> new StockPiece(i, 10, 100, 0, true))
                .toList();
        BarClass alone = BarClass.of(job(stock, List.of(bar(1, 10, 250, RED, BarTurn.ALONG)), 7))
                .get(0);

        assertThat(alone.joins()).isEqualTo(2);
        alone.raise(9, Budget.steps(0));
        assertThat(alone.joins()).isEqualTo(2);
        // each join takes 7 of a bar 10 wide
        assertThat(alone.joinedArea()).isEqualTo(2 * 7 * 10);
    }

    @Test
    void every_lane_of_a_heap_counts() {
        List<StockPiece> stock = LongStream.rangeClosed(1, 9)
                .mapToObj(i -> new StockPiece((int) i, 10, 10 * i, 0, true))
                .toList();
        BarClass all = BarClass.of(job(stock, List.of(bar(1, 10, 450, RED, BarTurn.ALONG)), 0))
                .get(0);

        assertThat(all.bounds().reach(9)).isEqualTo(450);
        assertThat(all.joins()).isEqualTo(8);
    }
}
