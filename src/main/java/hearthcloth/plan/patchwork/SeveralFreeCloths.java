package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecedCloth;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Several cloths of scraps from one heap in one search, each scrap in one of them. */
public final class SeveralFreeCloths {

    private SeveralFreeCloths() {}

    /**
     * A plan for each wish that has a size and whose whole size is found, in the order of the wishes.
     *
     * @param wishes alike but for their sizes
     * @param patchwork how scraps may be cut
     * @param budget of the whole search; it ends as soon as all have their size
     */
    public static List<Optional<Plan>> plan(
            Stash stash, List<Wish> wishes, Patchwork patchwork, Budget budget, long seed) {
        List<Optional<Plan>> plans = new ArrayList<>(Collections.nCopies(wishes.size(), Optional.empty()));
        Wish rules = wishes.get(0);
        List<String> names = rules.preferences().fabrics();
        Stash chosen = names.isEmpty() ? stash : stash.only(names);
        MarkedHeap heap = MarkedHeap.of(chosen.pieces(), chosen.fabrics(), rules);
        List<Integer> sized = new ArrayList<>();
        for (int i = 0; i < wishes.size(); i++) {
            if (wishes.get(i).target().size().isPresent()) {
                sized.add(i);
            }
        }
        if (sized.isEmpty() || heap.pieces().isEmpty()) {
            return plans;
        }
        List<Size> sizes = sized.stream()
                .map(i -> wishes.get(i).target().size().orElseThrow())
                .toList();
        for (PiecedCloth cloth : pieced(heap, sizes, patchwork, budget, seed)) {
            Size size = sizes.get(cloth.cloth());
            if (cloth.made().equals(heap.wished(size))) {
                plans.set(sized.get(cloth.cloth()), Optional.of(plan(heap, cloth, size, seed)));
            }
        }
        return plans;
    }

    private static List<PiecedCloth> pieced(
            MarkedHeap heap, List<Size> sizes, Patchwork patchwork, Budget budget, long seed) {
        boolean offcuts = patchwork.cutting() != Patchwork.ScrapRule.AS_THEY_ARE;
        PiecingJob job = new PiecingJob(
                sizes.stream().map(heap::wished).toList(), heap.scraps(), heap.allowances(), heap.terms(offcuts));
        boolean[] full = {false};
        PiecingPlan plan = new FreePiecing(job)
                .search(
                        () -> full[0] || budget.spent(),
                        seed,
                        better -> full[0] |= better.figures().full());
        return plan.cloths();
    }

    private static Plan plan(MarkedHeap heap, PiecedCloth cloth, Size size, long seed) {
        var composed = new FreeCloths(heap, seed).arranged(cloth.tree());
        List<Sentence> chosen = List.of(Meetings.sentence(composed, heap));
        Plan.Story story = new Plan.Story(ScrapChoice.ANY.title(), Sentence.none(), chosen, List.of());
        return PatchworkPlans.of(composed.tree(), size, heap, List.of(), story);
    }
}
