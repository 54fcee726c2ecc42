package hearthcloth.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * A cloth in the search's words and back, by hand. Hearth cut 8 in and bars cut 4 in wide, round the square; ¼ + ½ in
 * felled, hem ½ in, leeway ½ in: the hearth finishes at 7½ in, the bars at 3 in.
 */
class CutJobTest {

    private static final Fabric OAT = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = Stashes.fabric(1, Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);

    private static Design design(int rounds, Scheme.Kind kind) {
        Making making = Making.inches();
        List<Layout.Course> cut = Layout.courses(Order.ROUND, rounds, List.of(Length.inches(4)));
        Layout layout = new Layout(
                Layout.hearthOfCut(Size.square(Length.inches(8)), cut, making), Layout.finishedOfCut(cut, making));
        List<List<Fabric>> bars = new ArrayList<>();
        layout.slots().forEach(slot -> bars.add(slot.place().order() == 0 ? List.of(KELP) : List.of(OAT, KELP)));
        return new Design(Order.ROUND, layout, new Scheme(kind, List.of(OAT), bars), making, PiecingRules.inches());
    }

    private static Piece piece(int row, Fabric fabric, long width, long length) {
        return Stashes.piece(row, fabric, new Size(Length.inches(width, 8), Length.inches(length, 8)));
    }

    private static JobBar bar(JobBar like, long length, long least, BarTurn turn, Span... forbidden) {
        return new JobBar(like.id(), 32, length, like.fabrics(), false, 4, least, turn, List.of(forbidden));
    }

    /**
     * As cut, in eighths: 1A 7½ + ¼ + ¼ + ½ = 8½ in; 1B and 1C 10½ + ¼ + ½ + ½ = 11¾; 1D 13½ + ½ + ½ + ½ = 15. The least
     * part: 2 in and the most that an end or a join takes of it, and an eighth. The seam beside the hearth ends at 1B after
     * 7½ in, which is 8¼ counted from the raw end with the wide allowance; an inch is kept clear to either side.
     */
    @Test
    void a_design_in_eighths_of_an_inch() {
        CutJob cutJob =
                new CutJob(design(1, Scheme.Kind.ALL), List.of(piece(2, OAT, 100, 200), piece(3, KELP, 90, 80)));
        CutJoinJob job = cutJob.job();

        assertThat(cutJob.mark()).isEqualTo(Length.inches(1, 8));
        assertThat(job.stock())
                .containsExactly(new StockPiece(0, 100, 200, 0, false), new StockPiece(1, 90, 80, 1, true));
        assertThat(job.blocks()).containsExactly(new JobBlock(0, 64, 64, FabricSets.of(0), true));
        assertThat(job.joinLoss()).isEqualTo(6);
        assertThat(job.joinOffset()).isZero();
        assertThat(job.leastOffcut()).isEqualTo(16);
        List<JobBar> bars = job.bars();
        assertThat(bars).extracting(JobBar::id).containsExactly(1, 2, 3, 4);
        assertThat(bars.get(0)).isEqualTo(bar(bars.get(0), 68, 25, BarTurn.NAP));
        assertThat(bars.get(1)).isEqualTo(bar(bars.get(1), 94, 27, BarTurn.NAP_ACROSS, new Span(58, 74)));
        assertThat(bars.get(2)).isEqualTo(bar(bars.get(2), 94, 27, BarTurn.NAP, new Span(58, 74)));
        assertThat(bars.get(3).length()).isEqualTo(120);
        assertThat(bars.get(0).fabrics()).isEqualTo(FabricSets.of(1));
        assertThat(bars.get(1).fabrics()).isEqualTo(FabricSets.of(0, 1));
        assertThat(job.neighbours()).isEmpty();
        assertThat(new CutJob(design(1, Scheme.Kind.HALVES), List.of(piece(2, OAT, 8, 8)))
                        .job()
                        .bars())
                .allMatch(JobBar::oneFabric);
    }

    /** 2A lies along 1A: it begins as much farther up as 1D is wide, 3½ in finished since a bar is still to come. */
    @Test
    void bars_that_lie_along_each_other_are_neighbours_an_inch_apart() {
        CutJob cutJob = new CutJob(design(2, Scheme.Kind.ALL), List.of(piece(2, OAT, 100, 200)));

        // both begin with a narrow allowance at their upper ends, so the search's places differ as the finished ones do
        assertThat(cutJob.job().neighbours()).contains(new NeighbourBars(1, 5, 26, 8));
        assertThat(cutJob.slots().get(3).width()).isEqualTo(Length.inches(13, 4));
    }

    @Test
    void pieces_are_rounded_down_to_a_mark_and_what_has_none_is_no_stock() {
        Piece odd = Stashes.piece(2, OAT, new Size(Length.mm(100), Length.mm(200)));
        Piece thread = Stashes.piece(3, OAT, new Size(Length.mm(3), Length.mm(200)));
        CutJob cutJob = new CutJob(design(1, Scheme.Kind.ALL), List.of(thread, odd));

        // 100 mm are 31.5 eighths, 200 mm 62.99
        assertThat(cutJob.job().stock()).containsExactly(new StockPiece(1, 31, 62, 0, false));
        assertThat(cutJob.piece(1)).isEqualTo(odd);
        assertThat(cutJob.fabrics()).containsExactly(OAT);
    }

    @Test
    void what_is_short_is_said_with_its_fabrics_and_bars_and_made_up_for() {
        CutJob cutJob =
                new CutJob(design(1, Scheme.Kind.ALL), List.of(piece(2, OAT, 100, 200), piece(3, KELP, 90, 80)));
        List<Shortage> shortages = List.of(
                new Shortage(List.of(1, 2), FabricSets.of(0, 1), 32, 40),
                new Shortage(List.of(0), FabricSets.of(1), 64, 0));

        assertThat(cutJob.sentences(shortages, true))
                .map(Sentence::english)
                .containsExactly(
                        "Oat or Kelp is at least 5 in short at 4 in wide, for 1A, 1B.",
                        "Kelp is at least ⅛ in short at 8 in wide, for the hearth.");
        assertThat(cutJob.sentences(shortages, false).get(0)).asString().startsWith("Oat or Kelp is about 5 in short");
        assertThat(cutJob.pieces(shortages))
                .extracting(Piece::fabric, Piece::size)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(OAT, new Size(Length.inches(4), Length.inches(5))),
                        org.assertj.core.groups.Tuple.tuple(KELP, Size.square(Length.inches(8))));
    }

    @Test
    void of_many_fabrics_only_one_is_named() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            pieces.add(piece(i + 2, Stashes.fabric(i, Fabric.Faces.SAME, Fabric.Nap.ANY), 8, 8));
        }
        CutJob cutJob = new CutJob(design(1, Scheme.Kind.ALL), pieces);
        assertThat(cutJob.sentences(List.of(new Shortage(List.of(4), FabricSets.of(0, 1, 2, 3), 32, 8)), true))
                .map(Sentence::english)
                .containsExactly("Any of 4 fabrics, such as Oat, is at least 1 in short at 4 in wide, for 1D.");
    }

    private static Cutting.Part part(int demand, int index, long y, long width, long height, boolean turned) {
        return new Cutting.Part(demand, index, 0, y, width, height, turned);
    }

    /**
     * The hearth from a piece a little larger than its marks, 1A joined from 4¾ and 4½ in (less ¾ in for the join: 8½), the
     * other bars from pieces of just their size, 1D lying across its piece.
     */
    @Test
    void an_answer_of_the_search_is_a_cloth_and_its_cuts() {
        Piece first = Stashes.piece(
                2,
                OAT,
                new Size(Length.inches(8).plus(Length.mm(1)), Length.inches(8).plus(Length.mm(2))));
        List<Piece> pieces = List.of(
                first, piece(3, KELP, 32, 74), piece(4, OAT, 32, 94), piece(5, OAT, 40, 94), piece(6, OAT, 120, 32));
        CutJob cutJob = new CutJob(design(1, Scheme.Kind.ALL), pieces);
        List<StockPiece> stock = cutJob.job().stock();
        Cutting joined =
                new Cutting.Cut(0, 0, 32, 74, false, 38, part(1, 0, 0, 32, 38, false), part(1, 1, 38, 32, 36, false));
        Cutting beside =
                new Cutting.Cut(0, 0, 40, 94, true, 32, part(3, 0, 0, 32, 94, false), new Cutting.Offcut(32, 0, 8, 94));
        CutPlan found = CutPlan.of(
                List.of(
                        new CutPiece(stock.get(0), part(0, 0, 0, 64, 64, false)),
                        new CutPiece(stock.get(1), joined),
                        new CutPiece(stock.get(2), part(2, 0, 0, 32, 94, false)),
                        new CutPiece(stock.get(3), beside),
                        new CutPiece(stock.get(4), part(4, 0, 0, 120, 32, true))),
                1,
                4,
                16);
        CutAnswer answer = new CutAnswer(cutJob, found);

        // the plan is checked by the cloth's own folds as it is made
        Plan plan = answer.plan(Told.story("By hand", ""), new Bound(0, 0));

        assertThat(answer.used()).isEqualTo(pieces);
        assertThat(plan.cloth()).isEqualTo(answer.cloth());
        assertThat(plan.laid().keySet()).containsExactlyInAnyOrder("hearth", "1A.1", "1A.2", "1B", "1C", "1D");
        // the first part loses the narrow end and the wide join: 4¾ − ¼ − ½ = 4 in; the second has the rest of 7½
        assertThat(Objects.requireNonNull(plan.laid().get("1A.1")).patch().size())
                .isEqualTo(new Size(Length.inches(3), Length.inches(4)));
        assertThat(Objects.requireNonNull(plan.laid().get("1A.2")).patch().size())
                .isEqualTo(new Size(Length.inches(3), Length.inches(7, 2)));
        List<CutTree.Kept> kept =
                plan.cuts().stream().flatMap(cut -> cut.tree().kept().stream()).toList();
        assertThat(kept.stream().filter(CutTree.Kept::turned))
                .extracting(CutTree.Kept::patch)
                .containsExactly("1B");
        PieceCut trimmed = plan.cuts().get(0);
        assertThat(trimmed.tree().cuts()).hasSize(2);
        assertThat(trimmed.tree().left())
                .extracting(left -> left.size())
                .containsExactlyInAnyOrder(
                        new Size(Length.mm(1), Length.inches(8).plus(Length.mm(2))),
                        new Size(Length.inches(8), Length.mm(2)));
        assertThat(plan.cuts().get(3).tree().left())
                .extracting(left -> left.size())
                .containsExactly(new Size(Length.inches(1), Length.inches(94, 8)));
    }

    @Test
    void cut_again_the_same_parts_leave_no_more_loss() {
        List<Piece> pieces =
                List.of(piece(2, OAT, 64, 64), piece(3, KELP, 40, 160), piece(4, OAT, 32, 94), piece(5, OAT, 120, 70));
        CutJob cutJob = new CutJob(design(1, Scheme.Kind.ALL), pieces);
        List<StockPiece> stock = cutJob.job().stock();
        Cutting one = new Cutting.Cut(
                0,
                0,
                40,
                160,
                false,
                68,
                new Cutting.Cut(0, 0, 40, 68, true, 32, part(1, 0, 0, 32, 68, false), new Cutting.Offcut(32, 0, 8, 68)),
                new Cutting.Offcut(0, 68, 40, 92));
        Cutting two = new Cutting.Cut(
                0,
                0,
                120,
                70,
                false,
                32,
                new Cutting.Part(4, 0, 0, 0, 120, 32, true),
                new Cutting.Cut(0, 32, 120, 38, false, 64, cutAt(94), new Cutting.Offcut(0, 64, 120, 6)));
        CutPlan found = CutPlan.of(
                List.of(
                        new CutPiece(stock.get(0), part(0, 0, 0, 64, 64, false)),
                        new CutPiece(stock.get(1), one),
                        new CutPiece(stock.get(2), part(2, 0, 0, 32, 94, false)),
                        new CutPiece(stock.get(3), two)),
                1,
                4,
                16);
        CutAnswer answer = new CutAnswer(cutJob, found);
        CutAnswer again = answer.recut();

        assertThat(again.cloth()).isEqualTo(answer.cloth());
        assertThat(again.found().figures().sliverArea())
                .isLessThanOrEqualTo(found.figures().sliverArea());
        assertThat(again.found().figures().joins()).isEqualTo(found.figures().joins());
    }

    private static Cutting cutAt(long at) {
        return new Cutting.Cut(
                0,
                32,
                120,
                32,
                true,
                at,
                new Cutting.Part(3, 0, 0, 32, at, 32, true),
                new Cutting.Offcut(at, 32, 120 - at, 32));
    }
}
