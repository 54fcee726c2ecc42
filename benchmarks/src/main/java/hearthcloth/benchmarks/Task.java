package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sheet.SheetCutting;
import hearthcloth.benchmarks.sheet.SheetJob;
import hearthcloth.benchmarks.sheet.SheetPlan;
import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.join.Answer;
import hearthcloth.cutstock.join.JoinJob;
import hearthcloth.cutstock.join.JoinPlan;
import hearthcloth.cutstock.join.Joining;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.LongFunction;

/** One instance, read and ready to be answered. */
@FunctionalInterface
interface Task {

    /** Threads beside the calling one. */
    Executor WORKERS = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    });

    /** Answers within the pace. */
    Verdict answer(Pace pace);

    /** The fewest joins. */
    static Task of(JoinJob job) {
        return pace -> fewest(atOnce(pace, seed -> {
            Answer<JoinPlan, Integer> answer = new Joining().run(job, pace.budget(), seed, better -> {});
            if (answer.proven()) {
                pace.enough();
            }
            return new Verdict(
                    answer.best().stream().mapToLong(JoinPlan::joins).findAny(), OptionalLong.of(answer.bound()));
        }));
    }

    /** The fewest joins of bars cut out of rectangles. */
    static Task of(CutJoinJob job) {
        return pace ->
                fewest(atOnce(pace, seed -> verdict(new CutAndJoin(job).search(pace.budget(), seed, better -> {}))));
    }

    private static Verdict verdict(CutOutcome outcome) {
        return outcome instanceof CutOutcome.Found found
                ? Verdict.of(found.plan().figures().joins(), found.bounds().joins())
                : new Verdict(OptionalLong.empty(), OptionalLong.empty());
    }

    /** The most profit within the copies allowed. */
    static Task limited(SheetJob job) {
        return pace -> pace.timed(() -> verdict(SheetCutting.limited(job, pace.budget(), better -> {})));
    }

    /** The most profit with as many copies as fit. */
    static Task unlimited(SheetJob job) {
        return pace -> pace.timed(() -> verdict(SheetCutting.unlimited(job)));
    }

    private static Verdict verdict(SheetPlan plan) {
        return Verdict.of(plan.worth(), plan.bound());
    }

    /** The same search with one seed after another, side by side. */
    private static List<Verdict> atOnce(Pace pace, LongFunction<Verdict> search) {
        List<CompletableFuture<Verdict>> others = new ArrayList<>();
        for (int i = 1; i < pace.threads(); i++) {
            long seed = pace.seed() + i;
            others.add(CompletableFuture.supplyAsync(() -> pace.timed(() -> search.apply(seed)), WORKERS));
        }
        List<Verdict> verdicts = new ArrayList<>();
        verdicts.add(pace.timed(() -> search.apply(pace.seed())));
        others.forEach(other -> verdicts.add(other.join()));
        return verdicts;
    }

    private static Verdict fewest(List<Verdict> verdicts) {
        OptionalLong value = verdicts.stream()
                .flatMapToLong(verdict -> verdict.value().stream())
                .min();
        OptionalLong bound = verdicts.stream()
                .flatMapToLong(verdict -> verdict.bound().stream())
                .max();
        return new Verdict(value, bound);
    }
}
