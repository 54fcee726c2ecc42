package hearthcloth.plan.cutjoin;

import hearthcloth.plan.join.JoinPlaces;
import hearthcloth.plan.join.Joinery;
import hearthcloth.plan.join.WantedBar;
import hearthcloth.plan.search.Budget;
import hearthcloth.plan.search.RuinAndRecreate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Finds how to cut blocks and bars out of a stock with the fewest joins, then the fewest cuts, then the least lost.
 *
 * <p>Blocks are placed first, in several ways; the free plots then give lanes for the bars, and {@link Joinery} joins
 * them, reworked by {@link RuinAndRecreate}. The ways of placing blocks share the budget by halving: each gets a short
 * walk, the better half a longer one, and so on; none is dropped before there is a plan. The first plan comes after one construction, a few milliseconds for 20
 * bars and 200 pieces. With the same job, step budget and seed the plans are the same.
 */
public final class CutAndJoin {

    private static final int PLACINGS = 4;
    private static final int FIRST_WALK = 200;
    private static final int GENEROUS = 4;

    private final Job job;
    private final List<LaneKind> kinds = new ArrayList<>();
    private final List<WantedBar> wanted = new ArrayList<>();

    /** Prepares a job; the work is done by {@link #search}. */
    public CutAndJoin(Job job) {
        this.job = job;
        Map<LaneKind, Integer> numbers = new HashMap<>();
        for (Bar bar : job.bars()) {
            List<Integer> mine = kindsOf(bar).stream()
                    .map(kind -> numbers.computeIfAbsent(kind, unknown -> {
                        kinds.add(unknown);
                        return kinds.size() - 1;
                    }))
                    .toList();
            wanted.add(new WantedBar(bar.length(), mine, bar.mostJoins(), bar.leastPart()));
        }
    }

    private List<LaneKind> kindsOf(Bar bar) {
        return bar.oneFabric()
                ? bar.fabrics().stream()
                        .mapToObj(fabric -> new LaneKind(bar.width(), bar.turn(), Fabrics.of(fabric)))
                        .toList()
                : List.of(new LaneKind(bar.width(), bar.turn(), bar.fabrics()));
    }

    /**
     * Searches until the budget is spent.
     *
     * @param seed the same seed gives the same plans under a budget of steps
     * @param improvements told each better plan as it is found, on this thread
     */
    public Outcome search(Budget budget, long seed, Consumer<? super CutPlan> improvements) {
        Run run = new Run(budget, new SplittableRandom(seed), improvements);
        List<StockPiece> pieces = new PieceChoice(job, kinds).pieces(1);
        List<Attempt> attempts = run.attempts(pieces);
        CutBounds proofs = new CutBounds(job);
        if (run.best.isEmpty()) {
            List<Shortage> shortages = proofs.shortages();
            if (!shortages.isEmpty()) {
                return new Outcome.Impossible(shortages);
            }
        }
        run.walk(attempts, proofs);
        return run.best
                .<Outcome>map(plan -> new Outcome.Found(plan, proofs.bounds()))
                .orElseGet(() -> new Outcome.NotFound(run.leftOut));
    }

    /** One way of placing the blocks, with the bars joined from what it leaves. */
    private static final class Attempt {
        final Ground ground;
        final Lanes lanes;
        final Joinery joinery;
        double merit = Double.MAX_VALUE;

        Attempt(Ground ground, Lanes lanes, Joinery joinery) {
            this.ground = ground;
            this.lanes = lanes;
            this.joinery = joinery;
        }
    }

    /** One search: what it has found so far. */
    private final class Run {
        private final Budget budget;
        private final SplittableRandom chance;
        private final Consumer<? super CutPlan> improvements;
        private final RuinAndRecreate walk = new RuinAndRecreate(0.4, 0.01);
        private final Set<Ground> grounds = new HashSet<>();
        private Optional<CutPlan> best = Optional.empty();
        private double merit = Double.MAX_VALUE;
        private List<Shortage> leftOut = List.of();

        Run(Budget budget, SplittableRandom chance, Consumer<? super CutPlan> improvements) {
            this.budget = budget;
            this.chance = chance;
            this.improvements = improvements;
        }

        /** Places the blocks in several ways and joins the bars a first time. */
        List<Attempt> attempts(List<StockPiece> pieces) {
            List<Attempt> attempts = new ArrayList<>();
            int placings = job.blocks().isEmpty() ? 1 : PLACINGS;
            for (int i = 0; i < placings && (i == 0 || !budget.spent()); i++) {
                attempt(pieces, i == 0 ? 0 : 0.4).ifPresent(attempts::add);
            }
            return attempts;
        }

        /** Walks from all attempts, the better half a longer way each time; raises the bound once on the way. */
        void walk(List<Attempt> attempts, CutBounds proofs) {
            long steps = FIRST_WALK;
            boolean raised = false;
            while (!attempts.isEmpty() && !budget.spent()) {
                boolean last = best.isPresent() && raised && attempts.size() == 1;
                for (Attempt attempt : attempts) {
                    walk(attempt, last ? budget : Budget.either(budget, Budget.steps(steps)));
                }
                if (last || job.bars().isEmpty()) {
                    return;
                }
                if (!raised && best.isPresent()) {
                    proofs.raise(best.get().figures().joins(), budget);
                }
                raised = true;
                if (best.isPresent()) {
                    attempts.sort(Comparator.comparingDouble(attempt -> attempt.merit));
                    attempts.subList((attempts.size() + 1) / 2, attempts.size()).clear();
                } else if (steps == FIRST_WALK * 4
                        && attempts.get(0).ground.pieces().size() < job.stock().size()) {
                    attempts.addAll(attempts(new PieceChoice(job, kinds).pieces(GENEROUS)));
                }
                steps *= 2;
            }
        }

        private Optional<Attempt> attempt(List<StockPiece> pieces, double variety) {
            Corners.Placing placing = new Corners(job, kinds).place(pieces, variety, chance);
            if (!grounds.add(placing.ground())) {
                return Optional.empty();
            }
            if (placing.left().isPresent()) {
                Block block = placing.left().get();
                note(List.of(new Shortage(List.of(block.id()), block.fabrics(), block.width(), block.height())));
                return Optional.empty();
            }
            List<Ground.Plot> plots = placing.ground().plots();
            int slots = wanted.stream()
                            .mapToInt(bar -> Math.min(bar.mostJoins(), 64) + 1)
                            .sum()
                    + 1;
            Lanes lanes = new Lanes(plots, kinds, slots, job.leastOffcut(), wantedArea());
            Attempt attempt = new Attempt(placing.ground(), lanes, new Joinery(wanted, lanes, rules(), job.joinLoss()));
            attempt.joinery.build(chance);
            look(attempt);
            return Optional.of(attempt);
        }

        private void walk(Attempt attempt, Budget share) {
            if (!job.bars().isEmpty()) {
                walk.walk(attempt.joinery, share, chance, () -> look(attempt), () -> false);
            }
        }

        /** Takes down the attempt if it is the best so far. */
        private void look(Attempt attempt) {
            double now = attempt.joinery.merit();
            attempt.merit = Math.min(attempt.merit, now);
            if (now >= merit) {
                return;
            }
            merit = now;
            if (attempt.joinery.work().missing() > 0) {
                note(missing(attempt));
            } else {
                CutPlan plan = new LaneLayout(job, attempt.lanes, attempt.joinery.work()).plan(attempt.ground);
                if (best.isEmpty() || plan.figures().compareTo(best.get().figures()) < 0) {
                    best = Optional.of(plan);
                    improvements.accept(plan);
                }
            }
        }

        private void note(List<Shortage> shortages) {
            leftOut = shortages;
        }
    }

    private double wantedArea() {
        double bars = job.bars().stream()
                .mapToDouble(bar -> (double) bar.width() * bar.length())
                .sum();
        return bars
                + job.blocks().stream()
                        .mapToDouble(block -> (double) block.width() * block.height())
                        .sum();
    }

    private List<Shortage> missing(Attempt attempt) {
        List<Shortage> missing = new ArrayList<>();
        for (int i = 0; i < job.bars().size(); i++) {
            if (attempt.joinery.work().parts(i) == 0) {
                Bar bar = job.bars().get(i);
                missing.add(new Shortage(List.of(bar.id()), bar.fabrics(), bar.width(), bar.length()));
            }
        }
        return missing;
    }

    private JoinPlaces rules() {
        Map<Integer, Integer> index = new HashMap<>();
        for (int i = 0; i < job.bars().size(); i++) {
            index.put(job.bars().get(i).id(), i);
        }
        return new JoinPlaces(
                wanted,
                job.bars().stream()
                        .map(bar -> bar.forbidden().stream()
                                .map(span -> new JoinPlaces.Stretch(span.from(), span.to()))
                                .toList())
                        .toList(),
                job.neighbours().stream()
                        .map(pair -> new JoinPlaces.Apart(
                                index.getOrDefault(pair.first(), -1),
                                index.getOrDefault(pair.second(), -1),
                                pair.shift(),
                                pair.clearance()))
                        .toList(),
                job.joinLoss(),
                job.joinOffset());
    }
}
