package hearthcloth.web.kits;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.together.Asked;
import hearthcloth.plan.together.HandedPiece;
import hearthcloth.plan.together.OffcutRule;
import hearthcloth.plan.together.PlanningTogether;
import hearthcloth.plan.together.Together;
import hearthcloth.plan.together.TogetherProgress;
import hearthcloth.stash.Stash;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.wish.WishList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One search for many cloths going on beside the pages; what it found stays, and pieces are moved in it, until the next one.
 * Thread-safe.
 */
final class KitsSearch {

    private static final int EFFORT = 10;
    private static final long MOST_MS = 20_000;
    private static final long MOVE_MS = 4_000;

    private final Question question;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private volatile Optional<TogetherProgress> progress = Optional.empty();
    private volatile Optional<Together> together = Optional.empty();
    private volatile boolean running = true;

    /** What is asked: cloths, from which pieces, measured by which ruler, and how that was typed. */
    record Question(Stash heap, List<WishList.Line> lines, Ruler ruler, KitsForm typed) {}

    private KitsSearch(Question question) {
        this.question = question;
    }

    @SuppressWarnings("ThreadPriorityCheck") // only who waits less is chosen so, nothing rests on it
    static KitsSearch begin(Question question) {
        KitsSearch search = new KitsSearch(question);
        Thread thread = new Thread(search::run, "kits");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
        return search;
    }

    private void run() {
        try {
            List<Asked> asked = question.lines().stream()
                    .map(line -> new Asked(line.name(), line.wish(), line.patchwork()))
                    .toList();
            Budget budget = Budget.either(TimeLimit.within(MOST_MS), Budget.until(stopped::get));
            together = Optional.of(PlanningTogether.plan(
                    question.heap(),
                    OffcutRule.KEPT,
                    asked,
                    new PlanningTogether.Effort(EFFORT, 1, budget),
                    seen -> progress = Optional.of(seen)));
        } finally {
            running = false;
        }
    }

    Question question() {
        return question;
    }

    /** Ends it with the best so far. */
    void stop() {
        stopped.set(true);
    }

    boolean isRunning() {
        return running;
    }

    Optional<TogetherProgress> progress() {
        return progress;
    }

    /** What was found; empty while it goes on, and where it failed. */
    Optional<Together> together() {
        return together;
    }

    /** Moves a piece to a cloth, from 0; false where no cloth was found that uses it. */
    synchronized boolean move(String piece, int to) {
        Optional<Together> moved = together.flatMap(was -> HandedPiece.moved(
                question.heap(), was, piece, to, new PlanningTogether.Effort(1, 1, TimeLimit.within(MOVE_MS))));
        moved.ifPresent(now -> together = Optional.of(now));
        return moved.isPresent();
    }
}
