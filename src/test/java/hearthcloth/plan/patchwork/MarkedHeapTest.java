package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.piecing.Allowances;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.Terms;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A heap in marks, which of it a cloth may be made of, and how hard is searched. */
class MarkedHeapTest {

    @Test
    void a_piece_is_rounded_down_to_a_mark_and_stays_if_a_patch_can_be_cut_from_it() {
        Piece odd = new Piece("2", Heaps.GREY, new Size(Length.mm(100), Length.mm(60)), Piece.Washed.NO, 2);
        MarkedHeap heap = Heaps.heap(
                Optional.empty(),
                odd,
                Heaps.piece(3, Heaps.BLACK, 18, 40),
                Heaps.piece(4, Heaps.BLACK, 17, 40),
                Heaps.piece(5, Heaps.BLACK, 40, 17));

        // 100 mm are 31.5 eighths, 60 are 18.9
        assertThat(heap.scraps()).containsExactly(new Scrap(31, 18, 0, true), new Scrap(18, 40, 1, false));
        assertThat(heap.pieces()).extracting(Piece::id).containsExactly("2", "3");
        assertThat(heap.only(List.of(1)).pieces()).extracting(Piece::id).containsExactly("3");
        assertThat(heap.only(List.of(1)).scraps()).containsExactly(new Scrap(18, 40, 1, false));
    }

    @Test
    void what_sewing_takes_and_what_is_asked_of_patches_in_eighths() {
        MarkedHeap heap = Heaps.heap(Optional.empty());
        assertThat(heap.mark()).isEqualTo(Length.inches(1, 8));
        assertThat(heap.allowances()).isEqualTo(new Allowances(2, 4, 4));
        assertThat(heap.terms(true)).isEqualTo(new Terms(10, 10, 10, 1, 8));
        assertThat(heap.terms(false)).isEqualTo(new Terms(10, 0, 0, 1, 8));
    }

    /** A finished length is cut with both hems, an inch more; net is that less one seam of ¾ in. */
    @Test
    void net_lengths_are_a_quarter_of_an_inch_more_than_finished_ones_here() {
        MarkedHeap heap = Heaps.heap(Optional.empty());
        assertThat(heap.net(Length.inches(20))).isEqualTo(Length.inches(81, 4));
        assertThat(heap.netMarks(Length.inches(20))).isEqualTo(162);
        assertThat(heap.netMarks(Length.inches(321, 16))).isEqualTo(163);
        assertThat(heap.finished(162)).isEqualTo(Length.inches(20));
        assertThat(heap.wished(Heaps.eighths(160, 80))).isEqualTo(new WishedCloth(160, 80));
        assertThat(heap.ofNet(100, 50)).isEqualTo(new WishedCloth(98, 48));
    }

    @Test
    void net_areas_are_what_is_left_when_each_piece_gives_a_seam() {
        MarkedHeap heap = Heaps.heap(
                Optional.empty(),
                Heaps.piece(2, Heaps.WHITE, 26, 46),
                Heaps.piece(3, Heaps.WHITE, 36, 36),
                Heaps.piece(4, Heaps.WHITE, 106, 106));
        assertThat(heap.netArea()).isEqualTo(20 * 40 + 30 * 30 + 100 * 100);
        assertThat(heap.middleArea()).isEqualTo(900);
        assertThat(Heaps.heap(Optional.empty()).middleArea()).isEqualTo(1);
    }

    /** 96 × 32 has 90 · 26 = 2340 of net area. */
    @Test
    void large_pieces_are_taken_in_two_or_three_parts_across_their_longer_side() {
        MarkedHeap heap = Heaps.heap(Optional.empty(), Heaps.piece(2, Heaps.BLACK, 97, 32));
        assertThat(heap.parted(2_000).scraps()).containsExactly(new Scrap(97, 32, 0, false));
        assertThat(heap.parted(1_000).scraps())
                .containsExactly(new Scrap(48, 32, 0, false), new Scrap(49, 32, 0, false));
        assertThat(heap.parted(100).scraps()).extracting(Scrap::width).containsExactly(32L, 32L, 33L);
        assertThat(heap.parted(100).pieces()).extracting(Piece::id).containsExactly("2", "2", "2");
        MarkedHeap high = Heaps.heap(Optional.empty(), Heaps.piece(2, Heaps.WHITE, 30, 41));
        // of 41 two parts of 18 can be cut, of 30 only one
        assertThat(high.parted(10).scraps()).containsExactly(new Scrap(30, 20, 0, true), new Scrap(30, 21, 0, true));
        assertThat(Heaps.heap(Optional.empty(), Heaps.piece(2, Heaps.WHITE, 35, 35))
                        .parted(10)
                        .scraps())
                .hasSize(1);
    }

    private static List<String> chosen(ScrapChoice choice, MarkedHeap heap, double net) {
        return choice.of(heap, net).stream().map(i -> heap.pieces().get(i).id()).toList();
    }

    /** Net areas of 400, 900, 1600, 100 and 2500; a cloth of 500 has 725 to choose among. */
    @Test
    void which_scraps_a_cloth_is_made_of_so_that_arrangements_differ() {
        MarkedHeap heap = Heaps.heap(
                Optional.empty(),
                Heaps.piece(2, Heaps.GREY, 26, 26),
                Heaps.piece(3, Heaps.WHITE, 36, 36),
                Heaps.piece(4, Heaps.GREY, 46, 46),
                Heaps.piece(5, Heaps.BLACK, 18, 18),
                Heaps.piece(6, Heaps.GREY, 56, 56));

        assertThat(chosen(ScrapChoice.ANY, heap, 500)).containsExactly("2", "3", "4", "5", "6");
        assertThat(chosen(ScrapChoice.WHOLE, heap, 500)).hasSize(5);
        // 144 + 400 + 900 from the small end, 2500 alone from the large one
        assertThat(chosen(ScrapChoice.SMALL, heap, 500)).containsExactly("2", "3", "5");
        assertThat(chosen(ScrapChoice.LARGE, heap, 500)).containsExactly("6");
        // grey is most; two greys make 400 + 1600
        assertThat(chosen(ScrapChoice.CALM, heap, 500)).containsExactly("2", "4");
        // of a mean L* of about 50 white and black are farthest: 900 alone is enough of these, black first or white
        assertThat(chosen(ScrapChoice.LIVELY, heap, 700)).contains("3", "5").doesNotContain("2", "4", "6");
        assertThat(ScrapChoice.WHOLE.offcuts()).isFalse();
        assertThat(ScrapChoice.ANY.offcuts()).isTrue();
        assertThat(ScrapChoice.SMALL.title()).hasToString("Many small scraps");
    }

    @Test
    void only_for_sizes_alike_are_pieces_parted() {
        MarkedHeap heap = Heaps.heap(
                Optional.empty(),
                Heaps.piece(2, Heaps.GREY, 26, 26),
                Heaps.piece(3, Heaps.WHITE, 26, 26),
                Heaps.piece(4, Heaps.GREY, 66, 66));
        assertThat(ScrapChoice.EVEN.heap(heap, 1_000_000).scraps()).hasSize(5);
        assertThat(ScrapChoice.LARGE.heap(heap, 1_000_000)).isEqualTo(heap);
        // for a cloth of 900 of which a patch is to be a ninth, 20 · 20 is large too, but holds only one patch
        assertThat(ScrapChoice.EVEN.heap(heap, 900).scraps()).hasSize(5);
    }

    private static long steps(Budget budget) {
        long steps = 0;
        while (!budget.spent()) {
            steps++;
        }
        return steps;
    }

    @Test
    void effort_is_counted_in_steps_and_the_budget_ends_it_only_once_something_is_found() {
        List<PlanProgress> told = new ArrayList<>();
        PatchworkEffort work = new PatchworkEffort(2, Budget.steps(10), told::add);
        assertThat(steps(work.share(false))).isEqualTo(60_000);
        assertThat(steps(work.quick(false))).isEqualTo(30_000);
        assertThat(steps(work.trials(false))).isEqualTo(600);
        assertThat(steps(work.fabric())).isEqualTo(300_000);
        assertThat(steps(new PatchworkEffort(0, Budget.steps(1), told::add).trials(false)))
                .isEqualTo(300);
        assertThat(steps(work.share(true))).isEqualTo(10);
        assertThat(steps(work.quick(true))).isZero();
        assertThat(steps(work.trials(true))).isZero();

        work.tell(1, 3, 0, Optional.empty());
        assertThat(told).containsExactly(new PlanProgress(1, 3, 0, Optional.empty()));
    }
}
