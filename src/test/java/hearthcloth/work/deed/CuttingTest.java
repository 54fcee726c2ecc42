package hearthcloth.work.deed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Worked;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What follows from cutting: {@link CutsMade}, {@link AllCut}, {@link PatchTooSmall}, {@link PieceSpoiled}, {@link PlannedAgain}. */
class CuttingTest {

    /** A piece of which several cuts give at least two parts. */
    private static final PieceCut MANY = Worked.PLAN.cuts().stream()
            .filter(cut -> cut.tree().cuts().size() > 1)
            .findFirst()
            .orElseThrow();

    private static final String ONE = MANY.piece().id() + ":1";

    private static Set<String> all(PieceCut cut) {
        Set<String> ticks = new HashSet<>();
        for (int i = 1; i <= cut.tree().cuts().size(); i++) {
            ticks.add(cut.piece().id() + ":" + i);
        }
        return ticks;
    }

    @Test
    void a_cut_that_is_made_is_told_by_its_number_and_several_by_their_piece() {
        Deed one = new CutsMade(Worked.kept(), Set.of(ONE)).told().orElseThrow();
        assertThat(one.label().english())
                .isEqualTo("cut 1 of piece " + MANY.piece().id());
        assertThat(one.fact()).contains(new BenchFact.Cut(List.of(ONE), true));
        assertThat(one.edited()).isEmpty();
        assertThat(one.pieces().isNone()).isTrue();

        Deed several = new CutsMade(Worked.kept(), all(MANY)).told().orElseThrow();
        assertThat(several.label().english())
                .isEqualTo("cuts of piece " + MANY.piece().id());
        assertThat(((BenchFact.Cut) several.fact().orElseThrow()).cuts())
                .containsExactlyInAnyOrderElementsOf(all(MANY));
    }

    @Test
    void a_tick_taken_away_is_told_as_not_yet_cut_and_what_is_not_new_is_not_told() {
        Deed not = new CutsMade(Worked.ticked(ONE), Set.of()).told().orElseThrow();
        assertThat(not.label().english())
                .isEqualTo("not yet cut 1 of piece " + MANY.piece().id());
        assertThat(not.fact()).contains(new BenchFact.Cut(List.of(ONE), false));
        assertThat(new CutsMade(Worked.ticked(ONE), Set.of(ONE)).told()).isEmpty();
    }

    @Test
    void all_that_is_cut_becomes_patches_offcuts_and_scraps_and_only_offcuts_come_back() {
        Deed cut = new AllCut(Worked.kept(), Worked.NEXT).of("Dawn");

        assertThat(cut.label()).isEqualTo(AllCut.label("Dawn"));
        assertThat(cut.label().english()).isEqualTo("cut Dawn");
        assertThat(cut.edited().orElseThrow().life().stage()).isEqualTo(Stage.CUT);
        assertThat(cut.pieces().gone())
                .containsExactlyElementsOf(
                        Worked.PLAN.cuts().stream().map(PieceCut::piece).toList());
        assertThat(cut.pieces().come())
                .isNotEmpty()
                .allMatch(piece ->
                        CutTree.isReusable(piece.size(), Worked.PLAN.rules().leastPiece()));
        for (int i = 0; i < cut.pieces().come().size(); i++) {
            assertThat(cut.pieces().come().get(i).row()).isEqualTo(Worked.NEXT + i);
        }
        double scraps = Worked.PLAN.cuts().stream()
                .flatMap(one -> one.tree().left().stream())
                .filter(left ->
                        !CutTree.isReusable(left.size(), Worked.PLAN.rules().leastPiece()))
                .mapToDouble(left -> left.size().areaMm2())
                .sum();
        assertThat(Worked.area(cut.pieces().gone()))
                .isEqualTo(
                        Worked.patches(Worked.PLAN, false)
                                + Worked.area(cut.pieces().come())
                                + scraps,
                        within(1e-3));
    }

    @Test
    void a_piece_that_was_cut_before_is_not_used_up_again() {
        List<PieceCut> cuts = new ArrayList<>(Worked.PLAN.cuts());
        PieceCut first = cuts.get(0);
        cuts.set(0, first.asCut(first.tree()));
        Plan plan = new Plan(Worked.PLAN.story(), Worked.PLAN.cloth(), Worked.PLAN.rules(), cuts, Worked.PLAN.bound());
        Deed cut = new AllCut(
                        new Project(
                                Worked.kept().design(),
                                Optional.of(plan),
                                List.of(),
                                Project.Bench.CLEAR,
                                Worked.kept().life()),
                        Worked.NEXT)
                .of("Dawn");
        assertThat(cut.pieces().gone()).hasSize(cuts.size() - 1).doesNotContain(first.piece());
    }

    /** The first patch that {@link #MANY} gives comes out half an inch too narrow. */
    private static Size tooSmall() {
        String patch = hearthcloth.plan.rework.Miscut.next(
                        Worked.PLAN, Set.of(), MANY.piece().id())
                .orElseThrow();
        Size wanted = Objects.requireNonNull(Worked.PLAN.sources().get(patch))
                .kept()
                .at()
                .size();
        return new Size(wanted.width().minus(Length.inches(1, 2)), wanted.height());
    }

    @Test
    void a_patch_that_is_too_small_has_ways_on_and_the_one_taken_becomes_the_cloth() {
        PatchTooSmall slip = PatchTooSmall.of(
                        Worked.bench(Worked.kept()), MANY.piece().id(), tooSmall())
                .orElseThrow();
        List<WayOn> ways = slip.ways(Worked.steps());
        assertThat(slip.told().english()).contains("½ in");
        assertThat(ways).isNotEmpty();

        Deed taken = slip.taken(ways.get(0));
        Project now = taken.edited().orElseThrow();
        assertThat(taken.label().english()).isEqualTo("planned again after a mistake");
        assertThat(now.plan()).contains(ways.get(0).plan());
        assertThat(now.design()).isEqualTo(ways.get(0).design());
        assertThat(now.bench().ticked()).isEqualTo(ways.get(0).made());
        assertThat(now.life()).isEqualTo(Worked.kept().life());
        assertThat(taken.pieces().gone()).isEmpty();
    }

    @Test
    void a_piece_whose_patches_are_all_cut_has_none_that_could_be_too_small() {
        Project cloth = Worked.kept().with(Worked.kept().bench().withTicked(all(MANY)));
        assertThat(PatchTooSmall.of(Worked.bench(cloth), MANY.piece().id(), tooSmall()))
                .isEmpty();
        assertThatThrownBy(() -> PatchTooSmall.of(
                        Worked.bench(Worked.kept()),
                        MANY.piece().id(),
                        new Size(Length.inches(100), Length.inches(100))))
                .isInstanceOf(MeasureException.class);
    }

    @Test
    void a_spoiled_piece_is_gone_and_the_rest_is_planned_from_what_lies_on_the_table() {
        Project cloth = Worked.ticked(ONE);
        Piece wrong = Worked.PLAN.cuts().get(Worked.PLAN.cuts().size() - 1).piece();
        PieceSpoiled.Outcome outcome =
                new PieceSpoiled(Worked.bench(cloth), wrong.id(), Optional.empty()).planned("Dawn", Worked.steps());

        assertThat(outcome.deed().label().english()).isEqualTo("a mistake in piece " + wrong.id());
        assertThat(outcome.deed().pieces().gone()).contains(wrong, MANY.piece());
        Project now = outcome.deed().edited().orElseThrow();
        assertThat(now.bench().ticked()).isEmpty();
        assertThat(outcome.plan()).isPresent();
        assertThat(now.lacking()).isEmpty();
        assertThat(outcome.used()).isLessThanOrEqualTo(outcome.cut());
        Stash table = Worked.after(Worked.HEAP, outcome.deed().pieces());
        assertThat(now.plan().orElseThrow().cuts())
                .filteredOn(cut -> !cut.past())
                .allMatch(cut -> table.pieces().contains(cut.piece()));
    }

    @Test
    void where_the_fabric_does_not_suffice_after_a_slip_the_cloth_says_what_it_lacks_and_nothing_is_lost() {
        Project cloth = Worked.kept();
        List<Piece> own = Worked.PLAN.cuts().stream().map(PieceCut::piece).toList();
        Piece wrong = own.get(0);
        Workbench bare = new Workbench(
                cloth, new Stash(own), Worked.NEXT, Worked.bench(cloth).ruler());
        PieceSpoiled.Outcome outcome =
                new PieceSpoiled(bare, wrong.id(), Optional.empty()).planned("Dawn", Worked.steps());
        if (outcome.plan().isEmpty()) {
            Project now = outcome.deed().edited().orElseThrow();
            assertThat(now.plan()).isEmpty();
            assertThat(now.lacking()).isNotEmpty();
            assertThat(outcome.used()).isZero();
        }
        assertThat(outcome.deed().pieces().gone()).containsExactly(wrong);
        assertThat(outcome.cut()).isZero();
    }

    @Test
    void a_cloth_planned_anew_while_it_is_cut_keeps_its_patches_and_counts_no_begun_piece_as_whole() {
        Project cloth = Worked.kept().with(Worked.kept().bench().withTicked(all(MANY)));
        PlannedAgain again = new PlannedAgain(cloth, Worked.HEAP, Worked.HEAP, Worked.NEXT);
        assertThat(again.stash().pieces()).doesNotContain(MANY.piece());
        double before = Worked.area(Worked.HEAP.pieces());
        double scraps = MANY.piece().areaMm2()
                - Worked.area(again.stash().pieces())
                + before
                - MANY.piece().areaMm2();
        assertThat(scraps)
                .as("only scraps are missing")
                .isBetween(-1e-3, MANY.piece().areaMm2());

        Project planned = new hearthcloth.work.design.DesignSettled(cloth, "Dawn", again.stash())
                .in(cloth.design(), Worked.steps());
        Deed taken = again.taken("planned again", planned);
        Project now = taken.edited().orElseThrow();
        assertThat(now.bench().ticked())
                .as("no tick stands at a cut that was not made")
                .isEmpty();
        assertThat(taken.pieces().gone()).containsExactly(MANY.piece());
        Plan plan = now.plan().orElseThrow();
        Stash table = Worked.after(Worked.HEAP, taken.pieces());
        assertThat(plan.cuts())
                .filteredOn(cut -> !cut.past())
                .allMatch(cut -> table.pieces().contains(cut.piece()));
        assertThat(Worked.area(table.pieces()) + Worked.patches(plan, true))
                .as("what is there, and what is cut for it")
                .isEqualTo(Worked.area(again.stash().pieces()), within(1e-3));
    }

    @Test
    void a_piece_that_is_gone_since_has_left_no_patches() {
        Project cloth = Worked.kept().with(Worked.kept().bench().withTicked(all(MANY)));
        Stash left = Worked.after(Worked.HEAP, new Deed.Pieces(List.of(MANY.piece()), List.of()));
        PlannedAgain again = new PlannedAgain(cloth, left, left, Worked.NEXT);
        assertThat(again.stash().pieces()).containsExactlyElementsOf(left.pieces());
        assertThat(again.taken("planned again", cloth).pieces().isNone()).isTrue();
    }

    @Test
    void a_cloth_of_which_nothing_is_cut_is_planned_anew_from_what_is_free() {
        PlannedAgain again = new PlannedAgain(Worked.kept(), Worked.HEAP, Worked.HEAP, Worked.NEXT);
        assertThat(again.stash()).isEqualTo(Worked.HEAP);
        Deed taken = again.taken("planned again", Worked.kept());
        assertThat(taken.pieces().isNone()).isTrue();
        assertThat(taken.edited()).contains(Worked.kept());
    }
}
