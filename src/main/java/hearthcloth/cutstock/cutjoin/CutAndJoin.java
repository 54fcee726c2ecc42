package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.bound.CutBounds;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.join.Joinery;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.cutstock.search.RuinAndRecreate;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Finds how to cut blocks and bars out of a stock with the fewest joins, then the fewest cuts, then the least lost.
 *
 * <p>Blocks are placed first, in several ways; the free plots then give lanes for the bars, and {@link Joinery} joins
 * them, reworked by {@link RuinAndRecreate}. In one more attempt the blocks are cut from lanes like bars, so that they
 * may lie anywhere. While there is no plan, the attempt nearest to one is searched longest. Afterwards the attempts
 * share the budget by successive halving: each is searched briefly, the better half longer, and so on, down to the few
 * that are kept ({@link SearchParameters.Attempts}). The first plan comes after one construction, a few milliseconds for 20 bars and 200 pieces. The same job,
 * step budget and seed give the same plans.
 */
public final class CutAndJoin {

    private final CutJoinJob job;
    private final AskedBars bars;
    private final AskedBars all;
    private final SearchParameters parameters;

    /** Prepares a job; the work is done by {@link #search}. */
    public CutAndJoin(CutJoinJob job) {
        this(job, SearchParameters.standard());
    }

    /** The same by other values than the standard ones. */
    public CutAndJoin(CutJoinJob job, SearchParameters parameters) {
        this.job = job;
        this.parameters = parameters;
        this.bars = AskedBars.bars(job);
        this.all = AskedBars.all(job);
    }

    /**
     * Searches until the budget is spent.
     *
     * @param seed the same seed gives the same plans under a budget of steps
     * @param improvements receives each better plan as it is found, on this thread
     */
    public CutOutcome search(Budget budget, long seed, Consumer<? super CutPlan> improvements) {
        Run run = new Run(budget, new SplittableRandom(seed), improvements);
        run.begin(1);
        CutBounds proofs = new CutBounds(job);
        if (run.best.isEmpty()) {
            List<Shortage> shortages = proofs.shortages();
            if (!shortages.isEmpty()) {
                return new CutOutcome.Impossible(shortages);
            }
        }
        run.walk(proofs);
        return run.best
                .<CutOutcome>map(plan -> new CutOutcome.Found(plan, proofs.bounds()))
                .orElseGet(() -> new CutOutcome.NotFound(run.leftOut));
    }

    /** One search: what it has found so far. */
    private final class Run {
        private final Budget budget;
        private final SplittableRandom chance;
        private final Consumer<? super CutPlan> improvements;
        private final RuinAndRecreate walk = new RuinAndRecreate(
                parameters.walk().warmest(), parameters.walk().coolest());
        private final Set<FreePlots> grounds = new LinkedHashSet<>();
        private final List<CutAttempt> attempts = new ArrayList<>();
        private Optional<CutPlan> best = Optional.empty();
        private double merit = Double.MAX_VALUE;
        private List<Shortage> leftOut = List.of();

        Run(Budget budget, SplittableRandom chance, Consumer<? super CutPlan> improvements) {
            this.budget = budget;
            this.chance = chance;
            this.improvements = improvements;
        }

        /** Places the blocks in several ways and joins the bars a first time. */
        void begin(int generosity) {
            List<StockPiece> pieces = new PieceChoice(job, bars.kinds()).pieces(generosity);
            int enough = attempts.size()
                    + (job.blocks().isEmpty() ? 1 : parameters.attempts().placings());
            for (int i = 0;
                    i < parameters.attempts().mostPlacings() && attempts.size() < enough && (i == 0 || !budget.spent());
                    i++) {
                place(pieces, i == 0 ? 0 : parameters.attempts().variety());
            }
            if (!job.blocks().isEmpty() && !budget.spent()) {
                attempt(FreePlots.bare(pieces), all);
            }
        }

        private void place(List<StockPiece> pieces, double variety) {
            StockCorners.Placing placing =
                    new StockCorners(job, bars.kinds(), parameters.costs().smallFirst()).place(pieces, variety, chance);
            if (placing.left().isPresent()) {
                leftOut = List.of(CutAttempt.shortage(placing.left().get()));
            } else {
                attempt(placing.ground(), bars);
            }
        }

        private void attempt(FreePlots ground, AskedBars asked) {
            if (grounds.add(ground)) {
                CutAttempt attempt = new CutAttempt(job, ground, asked, parameters);
                attempt.joinery().build(chance);
                attempts.add(attempt);
                look(attempt);
            }
        }

        /** Searches from all attempts, from the better half longer each time; raises the bound once on the way. */
        void walk(CutBounds proofs) {
            long steps = parameters.attempts().firstWalk();
            boolean raised = false;
            while (attempts.stream().anyMatch(CutAttempt::hasBars) && !budget.spent()) {
                boolean last = best.isPresent() && raised && attempts.size() == 1;
                walk(last ? Long.MAX_VALUE : steps);
                if (last || (best.isPresent() && job.bars().isEmpty())) {
                    return;
                }
                if (!raised && best.isPresent()) {
                    proofs.raise(best.get().figures().joins(), budget);
                    raised = true;
                }
                attempts.sort(Comparator.comparingDouble(CutAttempt::merit));
                if (best.isPresent()) {
                    int kept = Math.max(parameters.attempts().kept(), (attempts.size() + 1) / 2);
                    attempts.subList(Math.min(kept, attempts.size()), attempts.size())
                            .clear();
                } else if (steps == 4L * parameters.attempts().firstWalk()
                        && attempts.get(0).pieces() < job.stock().size()) {
                    begin(parameters.attempts().generous());
                }
                steps *= 2;
            }
        }

        /** Searches from each attempt. While there is no plan, the i-th best one gets an i-th of the steps. */
        private void walk(long steps) {
            for (int i = 0; i < attempts.size(); i++) {
                CutAttempt attempt = attempts.get(i);
                long share = best.isPresent()
                        ? steps
                        : Math.max(parameters.attempts().firstWalk(), steps / (i + 1));
                if (attempt.hasBars()) {
                    walk.walk(
                            attempt.joinery(),
                            Budget.either(budget, Budget.steps(share)),
                            chance,
                            () -> look(attempt),
                            () -> false);
                }
            }
        }

        /** Keeps a copy of the attempt if it is the best so far. */
        private void look(CutAttempt attempt) {
            double now = attempt.look();
            if (now >= merit) {
                return;
            }
            merit = now;
            if (!attempt.whole()) {
                leftOut = attempt.leftOut();
                return;
            }
            CutPlan plan = attempt.plan();
            if (best.isEmpty() || plan.figures().compareTo(best.get().figures()) < 0) {
                best = Optional.of(plan);
                improvements.accept(plan);
            }
        }
    }
}
