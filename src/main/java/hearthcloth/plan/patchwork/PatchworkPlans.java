package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Turns a tree of patches into a plan that can be cut and sewn, checked like any other. */
public final class PatchworkPlans {

    private PatchworkPlans() {}

    /**
     * The plan of a cloth that was put together by hand.
     *
     * @param tree at cut sizes in marks
     */
    public static Plan byHand(Pieced tree, Size finished, MarkedHeap heap) {
        Sentence seams = Meetings.sentence(new FreeCloths(heap, 1).judged(tree), heap);
        Plan.Story story = new Plan.Story(PlanningSentences.scrapsByHand(), Sentence.none(), List.of(seams), List.of());
        return of(tree, finished, heap, List.of(), story);
    }

    /**
     * The plan.
     *
     * @param blocks the patches of each block, numbered from 1 in the order of the tree's leaves
     */
    static Plan of(Pieced tree, Size finished, MarkedHeap heap, List<Set<Integer>> blocks, Plan.Story story) {
        Assembly work = SewingNames.named(SewnPatches.of(tree, finished, heap), blocks);
        Cloth cloth = new Cloth(work, heap.making());
        List<ScrapPatch> leaves = tree.patches().toList();
        List<PieceCut> cuts = ScrapCuts.of(cloth, leaves, heap);
        Stash used = new Stash(cuts.stream().map(PieceCut::piece).toList());
        Plan.Story told = new Plan.Story(
                story.title(),
                story.goodAt(),
                story.chosen(),
                used.washingCaution().stream().toList());
        Bound none = new Bound(0, 0);
        Plan plan = new Plan(told, cloth, heap.wish().rules(), cuts, none).checked();
        return plan.told(plan.story().alsoGoodAt(sentence(plan)));
    }

    /** How its scraps are used: as they are, trimmed, cut in two; and what is lost. */
    private static Sentence sentence(Plan plan) {
        int whole = 0;
        int parted = 0;
        for (PieceCut cut : plan.cuts()) {
            boolean offcut = cut.tree().left().stream()
                    .anyMatch(
                            left -> CutTree.isReusable(left.size(), plan.rules().leastPiece()));
            whole += cut.tree() instanceof CutTree.Kept ? 1 : 0;
            parted += offcut || cut.tree().kept().size() > 1 ? 1 : 0;
        }
        int trimmed = plan.cuts().size() - whole - parted;
        PlanFigures.Areas areas = plan.figures().areas();
        String lost = String.format(Locale.ROOT, "%.1f", 100 * areas.lost() / areas.used());
        return PlanningSentences.scrapsUsed(
                new Argument.Percent(lost),
                plan.cuts().size(),
                Argument.number(parted),
                Argument.number(trimmed),
                Argument.number(whole));
    }
}
