package hearthcloth.benchmarks.cpsat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * A cutting and joining job as a model for CP-SAT: one pattern of lanes for each piece, one of them with the hearth; a
 * part of a bar from a lane is there or not and has a length; the parts of a bar make up its length, those of a lane
 * fit into it; the fewest parts. The same rules as Hearthcloth's search, except that both are given no rule about
 * where joins may lie. Redundant, to help: a bar has at least as many parts as the longest lanes allow.
 */
public final class ExactJoins {

    private final CutJoinJob job;
    private final CpModel model = new CpModel();
    private final List<BoolVar> hearthHere = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();
    private int patterns;

    /** A place of a piece that one lane or another takes, as the pattern says. */
    private record Slot(StockPiece piece, List<Choice> choices, long longest) {}

    private record Choice(BoolVar pattern, Lane lane) {}

    /**
     * What came of it.
     *
     * @param joins of the best plan, empty where none was found
     * @param bound proven by the solver: no plan has fewer
     * @param impossible whether the solver proved that there is no plan
     * @param found nanoseconds until the best plan
     * @param whole nanoseconds until the solver ended
     */
    public record Solved(OptionalLong joins, long bound, boolean impossible, long found, long whole) {}

    private ExactJoins(CutJoinJob job) {
        this.job = job;
    }

    /** Solves a job with one block within so many seconds, from scratch; building the model counts. */
    public static Solved solve(CutJoinJob job, double seconds, int workers, int seed) {
        if (job.blocks().size() != 1 || !job.neighbours().isEmpty()) {
            throw new IllegalArgumentException("a job with one block and no neighbours is modelled");
        }
        Loader.loadNativeLibraries();
        return new ExactJoins(job).solve(seconds, workers, seed);
    }

    private Solved solve(double seconds, int workers, int seed) {
        long begun = System.nanoTime();
        job.stock().forEach(this::piece);
        model.addExactlyOne(hearthHere.toArray(Literal[]::new));
        List<LinearExprBuilder> inSlot =
                slots.stream().map(slot -> LinearExpr.newBuilder()).toList();
        LinearExprBuilder parts = LinearExpr.newBuilder();
        job.bars().forEach(bar -> bar(bar, inSlot, parts));
        for (int i = 0; i < slots.size(); i++) {
            LinearExprBuilder length = LinearExpr.newBuilder();
            slots.get(i).choices.forEach(choice -> length.addTerm(choice.pattern, choice.lane.length()));
            model.addLessOrEqual(inSlot.get(i), length);
        }
        model.minimize(parts);
        return run(begun, seconds, workers, seed);
    }

    private void piece(StockPiece piece) {
        LanePatterns ways = new LanePatterns(job, piece);
        List<List<Lane>> whole = ways.whole();
        List<List<Lane>> beside = ways.beside(job.blocks().get(0));
        List<BoolVar> chosen = new ArrayList<>();
        List<Slot> mine = new ArrayList<>();
        whole.forEach(lanes -> chosen.add(pattern(piece, lanes, mine)));
        List<BoolVar> withHearth =
                beside.stream().map(lanes -> pattern(piece, lanes, mine)).toList();
        chosen.addAll(withHearth);
        hearthHere.addAll(withHearth);
        model.addExactlyOne(chosen.toArray(Literal[]::new));
        slots.addAll(mine);
    }

    private BoolVar pattern(StockPiece piece, List<Lane> lanes, List<Slot> mine) {
        BoolVar chosen = model.newBoolVar("pattern" + patterns++);
        for (int i = 0; i < lanes.size(); i++) {
            if (i == mine.size()) {
                mine.add(new Slot(piece, new ArrayList<>(), Math.max(piece.width(), piece.length())));
            }
            mine.get(i).choices.add(new Choice(chosen, lanes.get(i)));
        }
        return chosen;
    }

    private void bar(JobBar bar, List<LinearExprBuilder> inSlot, LinearExprBuilder parts) {
        LinearExprBuilder length = LinearExpr.newBuilder();
        LinearExprBuilder count = LinearExpr.newBuilder();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            List<BoolVar> suiting = slot.choices.stream()
                    .filter(choice -> choice.lane.width() == bar.width()
                            && LanePatterns.suits(bar, slot.piece, choice.lane.turned()))
                    .map(Choice::pattern)
                    .toList();
            if (suiting.isEmpty()) {
                continue;
            }
            long most = Math.min(bar.length(), slot.longest);
            BoolVar there = model.newBoolVar("");
            IntVar cut = model.newIntVar(0, most, "");
            model.addLessOrEqual(cut, LinearExpr.term(there, most));
            model.addGreaterOrEqual(cut, LinearExpr.term(there, Math.min(bar.leastPart(), bar.length())));
            model.addLessOrEqual(there, LinearExpr.sum(suiting.toArray(BoolVar[]::new)));
            length.add(cut).addTerm(there, -job.joinLoss());
            count.add(there);
            parts.add(there);
            inSlot.get(i).add(cut);
        }
        model.addEquality(length, bar.length() - job.joinLoss());
        model.addLinearConstraint(count, fewest(bar), bar.mostJoins() + 1L);
    }

    /** No part is longer than the longest lane. */
    private long fewest(JobBar bar) {
        long longest = job.stock().stream()
                .mapToLong(piece -> LanePatterns.longest(bar, piece))
                .max()
                .orElse(0);
        long each = Math.max(1, longest - job.joinLoss());
        return Math.max(1, (bar.length() - job.joinLoss() + each - 1) / each);
    }

    private Solved run(long begun, double seconds, int workers, int seed) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(workers).setRandomSeed(seed);
        solver.getParameters().setMaxTimeInSeconds(Math.max(0.01, seconds - (System.nanoTime() - begun) / 1e9));
        long[] found = {0};
        CpSolverStatus status = solver.solve(model, new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                found[0] = System.nanoTime() - begun;
            }
        });
        long whole = System.nanoTime() - begun;
        boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException(model.validate());
        }
        int bars = job.bars().size();
        return new Solved(
                any ? OptionalLong.of(Math.round(solver.objectiveValue()) - bars) : OptionalLong.empty(),
                Math.max(0, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6) - bars),
                status == CpSolverStatus.INFEASIBLE,
                found[0],
                whole);
    }
}
