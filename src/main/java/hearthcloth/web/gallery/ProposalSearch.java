package hearthcloth.web.gallery;

import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One search for proposals going on beside the pages. Started once, watched by asking, stopped on wish; what it found
 * stays until the next one. Thread-safe.
 */
final class ProposalSearch {

    /** A first look, whose answer is shown at once. */
    private static final int FIRST = 1;

    private static final int LONG = 4;

    private final Question question;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Map<String, Plan> shown = new ConcurrentHashMap<>();
    private volatile PlanProgress progress = new PlanProgress(0, 0, 0, Optional.empty());
    private volatile Optional<PlanOutcome> outcome = Optional.empty();
    private volatile boolean running = true;
    private volatile boolean first = true;
    private volatile boolean failed;
    private boolean wanted;
    private boolean waiting;
    private volatile List<Plan> alone = List.of();
    private final Map<String, String> tied = new ConcurrentHashMap<>();
    private final Map<String, String> soft = new ConcurrentHashMap<>();
    private final CountDownLatch looked = new CountDownLatch(1);

    /**
     * What is asked.
     *
     * @param first the pieces she wants used first
     * @param order in which proposals stand, the best first, where she wishes one
     */
    record Question(Stash stash, Wish wish, Optional<Patchwork> patchwork, Stash first, ProposalOrder order) {}

    private ProposalSearch(Question question) {
        this.question = question;
    }

    /** Begins with a first look, after which it waits until it is wanted. */
    static ProposalSearch foresee(Question question) {
        ProposalSearch planning = new ProposalSearch(question);
        planning.beside(planning::look);
        return planning;
    }

    private void beside(Runnable search) {
        Thread thread = new Thread(search, "planning");
        thread.setDaemon(true);
        thread.start();
    }

    /** She asks for it: the long look follows the first one. */
    synchronized void want() {
        if (!wanted) {
            wanted = true;
            if (waiting) {
                running = true;
                beside(() -> searched(this::lookLong));
            }
        }
    }

    /** Whether the long look follows at once; otherwise it waits. */
    private synchronized boolean goesOn() {
        waiting = !wanted;
        running = wanted;
        return wanted;
    }

    private void look() {
        searched(() -> {
            alone();
            liked();
            found(planned(question.stash(), FIRST));
            if (goesOn()) {
                lookLong();
            }
        });
    }

    private void lookLong() {
        if (!stopped.get()) {
            found(planned(question.stash(), LONG));
        }
        ended();
    }

    private void searched(Runnable look) {
        try {
            look.run();
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            failed = outcome.isEmpty();
            ended();
        }
    }

    /** Whatever ends it, nobody goes on asking for what no one looks for. */
    private synchronized void ended() {
        running = false;
        looked.countDown();
    }

    /** Waits until the first look has ended, but not longer than this. */
    void await(long milliseconds) {
        try {
            looked.await(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Cloths of nothing but what she wants used first, where that suffices. */
    private void alone() {
        if (!question.first().pieces().isEmpty()
                && planned(question.first(), FIRST) instanceof PlanOutcome.Proposals found) {
            alone = found.plans();
        }
    }

    /** Cloths in the plan of colour she likes best, where its name can be true of one; they stand before the others. */
    private void liked() {
        Wish wish = question.wish();
        if (question.order().kind().isPresent() && question.patchwork().isEmpty()) {
            Wish coloured = wish.coloured(
                            question.order().kind(), wish.preferences().looks().contrast())
                    .mixed(question.order().with());
            if (Planner.plan(question.stash(), coloured, FIRST, stopped::get, this::heard)
                    instanceof PlanOutcome.Proposals found) {
                List<Plan> all = new ArrayList<>(alone);
                all.addAll(found.plans());
                alone = List.copyOf(all);
            }
        }
    }

    private PlanOutcome planned(Stash stash, int effort) {
        Wish wish = question.wish();
        return question.patchwork()
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
        looked.countDown();
    }

    void stop() {
        stopped.set(true);
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
        question.order().sorted(alone, plans).forEach(plan -> named.put(Integer.toHexString(plan.hashCode()), plan));
        shown.putAll(named);
        return named;
    }

    /** A plan that was shown under this name. */
    Optional<Plan> shown(String name) {
        return Optional.ofNullable(shown.get(name));
    }

    /** The picture of a plan tied, drawn once. */
    String tied(String name, Supplier<String> drawn) {
        return tied.computeIfAbsent(name, key -> drawn.get());
    }

    /** The same as soft cloth, drawn once; empty where none was shown under this name. */
    Optional<String> soft(String name, Function<Plan, String> drawn) {
        return shown(name).map(plan -> soft.computeIfAbsent(name, key -> drawn.apply(plan)));
    }

    /** True where her wishes put the proposals in another order than they were found in. */
    boolean isReordered() {
        return !question.order().isOpen();
    }

    /** True when it answers this question already. */
    boolean isFor(Question other) {
        return question.equals(other);
    }
}
