package hearthcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What printed cutting tables say, held against the search. Everything in eighths of an inch. */
class PublishedCuttingTest {

    /** So many pieces alike, whole, out of a length of cloth, all across it: as the tables cut them. */
    private static CutOutcome alike(double width, double length, long count, double along, double across) {
        StockPiece cloth = new StockPiece(0, eighths(length), eighths(width), 0, false);
        List<JobBar> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pieces.add(new JobBar(
                    i, eighths(across), eighths(along), FabricSets.of(0), false, 0, 1, BarTurn.ALONG, List.of()));
        }
        CutJoinJob job = new CutJoinJob(List.of(cloth), List.of(), pieces, List.of(), 0, 0, 1);
        return new CutAndJoin(job).search(Budget.steps(1_000), 1, plan -> {});
    }

    private static long eighths(double inches) {
        return Math.round(inches * 8);
    }

    /** A fat quarter is 18 × 22 in; counts are those of docs/sources.md#fat-quarter, #fat-quarter-squares. */
    @ParameterizedTest
    @CsvSource({"2,99", "2.5,56", "3,42", "3.5,30", "4,20", "4.5,16", "5,12", "5.5,12", "6,9", "6.5,6"})
    void squares_from_a_fat_quarter(double side, long count) {
        assertThat(alike(18, 22, count, side, side)).isInstanceOf(CutOutcome.Found.class);
        assertThat(alike(18, 22, count + 1, side, side)).isNotInstanceOf(CutOutcome.Found.class);
    }

    /**
     * Yardage worked in magazines and charts (docs/sources.md#yardage): so many pieces from a length of cloth this wide. The
     * printed length is enough, and a strip less is not.
     */
    @ParameterizedTest
    @CsvSource({
        "300, 3, 2, 40, 48",
        "63, 9.5, 9.5, 42, 152",
        "100, 3.5, 3.5, 44, 31.5",
        "112, 7.75, 3.875, 42, 89.125",
        "28, 12, 2, 44, 20"
    })
    void yardage(long pieces, double length, double width, double cloth, double printed) {
        assertThat(alike(cloth, printed, pieces, length, width)).isInstanceOf(CutOutcome.Found.class);
        assertThat(alike(cloth, printed - width, pieces, length, width)).isNotInstanceOf(CutOutcome.Found.class);
    }

    private static CutOutcome mixed(int strips, double one, double other) {
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0; i < strips; i++) {
            stock.add(new StockPiece(i, 16, eighths(40), 0, false));
        }
        List<JobBar> bars = new ArrayList<>();
        for (int i = 0; i < 84; i++) {
            long length = eighths(i < 42 ? one : other);
            bars.add(new JobBar(i, 16, length, FabricSets.of(0), false, 0, 1, BarTurn.ALONG, List.of()));
        }
        CutJoinJob job = new CutJoinJob(stock, List.of(), bars, List.of(), 0, 0, 1);
        return new CutAndJoin(job).search(Budget.steps(4_000), 1, plan -> {});
    }

    /** docs/sources.md#mixed-cutting, 40 in usable: 42 of 10½ and 42 of 9½ in from 21 strips. Fewer hold no area for it. */
    @Test
    void two_lengths_fill_their_strips_exactly() {
        assertThat(mixed(21, 10.5, 9.5)).isInstanceOf(CutOutcome.Found.class);
        assertThat(mixed(20, 10.5, 9.5)).isInstanceOf(CutOutcome.Impossible.class);
    }

    /** The same article: 42 of 6½ and 42 of 5½ in from 13 strips, which is also the least. */
    @Test
    void seven_and_six_to_a_strip() {
        assertThat(mixed(13, 6.5, 5.5)).isInstanceOf(CutOutcome.Found.class);
        assertThat(mixed(12, 6.5, 5.5)).isInstanceOf(CutOutcome.Impossible.class);
    }

    /**
     * The same article prints 20 strips (11 + 9) for 42 of 8½ and 42 of 7½ in. That is beaten: 18 do, fourteen of two
     * and three and four of four and none (derived).
     */
    @Test
    void the_printed_twenty_strips_are_beaten_by_eighteen() {
        assertThat(mixed(18, 8.5, 7.5)).isInstanceOf(CutOutcome.Found.class);
    }
}
