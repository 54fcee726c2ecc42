package hearthcloth.web.cloth;

import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One search for proposals going on beside the pages. Started once, watched by asking, stopped on wish; what it found
 * stays until the next one. Thread-safe.
 */
final class ProposalSearch {

    /** A first look, whose answer is shown at once, and a long one. */
    private static final List<Integer> EFFORTS = List.of(1, 4);

    private final Stash stash;
    private final Wish wish;
    private final Optional<Patchwork> patchwork;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Map<String, Plan> shown = new ConcurrentHashMap<>();
    private volatile PlanProgress progress = new PlanProgress(0, 0, 0, Optional.empty());
    private volatile Optional<PlanOutcome> outcome = Optional.empty();
    private volatile boolean running = true;
    private volatile boolean first = true;
    private volatile boolean failed;

    private ProposalSearch(Stash stash, Wish wish, Optional<Patchwork> patchwork) {
        this.stash = stash;
        this.wish = wish;
        this.patchwork = patchwork;
    }

    static ProposalSearch begin(Stash stash, Wish wish, Optional<Patchwork> patchwork) {
        ProposalSearch planning = new ProposalSearch(stash, wish, patchwork);
        Thread thread = new Thread(planning::run, "planning");
        thread.setDaemon(true);
        thread.start();
        return planning;
    }

    private void run() {
        try {
            for (int effort : EFFORTS) {
                if (!stopped.get()) {
                    found(planned(effort));
                }
            }
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            failed = outcome.isEmpty();
        }
        running = false;
    }

    private PlanOutcome planned(int effort) {
        return patchwork
                .map(asked -> PatchworkPlanner.plan(stash, wish, asked, effort, stopped::get, this::heard))
                .orElseGet(() -> Planner.plan(stash, wish, effort, stopped::get, this::heard));
    }

    /** The first plan there is stands in the gallery while the search goes on. */
    private void heard(PlanProgress seen) {
        progress = seen;
        if (first) {
            seen.best().ifPresent(plan -> outcome = Optional.of(new PlanOutcome.Proposals(List.of(plan))));
        }
    }

    /** A longer look that was stopped before it found anything does not take away what the first one found. */
    private void found(PlanOutcome next) {
        if (first || next instanceof PlanOutcome.Proposals) {
            outcome = Optional.of(next);
        }
        first = false;
    }

    void stop() {
        stopped.set(true);
    }

    boolean isStopped() {
        return stopped.get();
    }

    boolean isRunning() {
        return running;
    }

    boolean isFailed() {
        return failed;
    }

    PlanProgress progress() {
        return progress;
    }

    Optional<PlanOutcome> outcome() {
        return outcome;
    }

    /** The plans found so far, best first, each under a name that stays its own while the search goes on. */
    Map<String, Plan> plans() {
        List<Plan> plans = outcome.map(found -> found instanceof PlanOutcome.Proposals proposals
                        ? proposals.plans()
                        : ((PlanOutcome.CannotMake) found).nearest())
                .orElse(List.of());
        Map<String, Plan> named = new LinkedHashMap<>();
        plans.forEach(plan -> named.put(Integer.toHexString(plan.hashCode()), plan));
        shown.putAll(named);
        return named;
    }

    /** A plan that was shown under this name. */
    Optional<Plan> shown(String name) {
        return Optional.ofNullable(shown.get(name));
    }

    /** True when it answers this question already. */
    boolean isFor(Stash other, Wish asked, Optional<Patchwork> way) {
        return wish.equals(asked) && stash.equals(other) && patchwork.equals(way);
    }
}
