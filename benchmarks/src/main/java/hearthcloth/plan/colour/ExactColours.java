package hearthcloth.plan.colour;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * The choice of a fabric for each bar as a model for CP-SAT, beside our own branch and bound: a fabric for each bar, as
 * much of each as there is, and for each two bars that meet the cost of their two fabrics. Costs are whole thousandths of
 * a millimetre for the solver.
 */
public final class ExactColours {

    private static final double SCALE = 1000;
    private static final long LOOKS = 20_000_000;
    /** Our search is asked so often, always with the same answer; the quickest counts, since it takes less than a millisecond. */
    private static final int TIMES = 5;

    private final BarColouring problem;
    private final CpModel model = new CpModel();
    private final BoolVar[][] is;
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    private ExactColours(BarColouring problem) {
        this.problem = problem;
        this.is = new BoolVar[problem.bars()][problem.fabrics()];
    }

    /**
     * One job solved both ways, as a row of a CSV: bars, fabrics, ours, our bound, our ms, CP-SAT's, its bound, its ms, how
     * many times faster ours was, and the verdict. Both times are processor time of this thread, since others may use the
     * machine too; CP-SAT's one worker is this thread.
     */
    public static String row(long seed, double seconds) {
        BarColouring problem = ColourJob.of(seed);
        BarColours.Found found = BarColours.of(problem, LOOKS, 1);
        double ours = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TIMES; i++) {
            long start = nanos();
            BarColours.of(problem, LOOKS, 1);
            long took = nanos() - start;
            ours = Math.min(ours, took / 1e6);
        }
        int[] chosen = new int[problem.bars()];
        for (int bar = 0; bar < chosen.length && found.isFound(); bar++) {
            chosen[bar] = found.chosen(bar);
        }
        double value = found.isFound() ? new BarChoice(problem, chosen).cost() : Double.POSITIVE_INFINITY;
        Loader.loadNativeLibraries();
        long begun = nanos();
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxTimeInSeconds(seconds);
        CpSolverStatus status = new ExactColours(problem).solved(solver);
        double theirs = (nanos() - begun) / 1e6;
        boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        double other = any ? solver.objectiveValue() / SCALE : Double.POSITIVE_INFINITY;
        double slack = problem.bars() * problem.fabrics() / SCALE;
        return String.format(
                Locale.ROOT,
                "%d,%d,%d,%.1f,%.1f,%.2f,%.1f,%.1f,%.1f,%.0f,%s",
                seed,
                problem.bars(),
                problem.fabrics(),
                value,
                found.bound(),
                ours,
                other,
                any ? solver.bestObjectiveBound() / SCALE : 0,
                theirs,
                theirs / ours,
                value < other - slack
                        ? status == CpSolverStatus.OPTIMAL ? "DISAGREE" : "better"
                        : value > other + slack ? "MISS" : found.bound() >= value - slack ? "same, proven" : "same");
    }

    private static long nanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private CpSolverStatus solved(CpSolver solver) {
        LinearExprBuilder[] used = new LinearExprBuilder[problem.fabrics()];
        for (int fabric = 0; fabric < used.length; fabric++) {
            used[fabric] = LinearExpr.newBuilder();
        }
        for (int bar = 0; bar < is.length; bar++) {
            for (int fabric = 0; fabric < used.length; fabric++) {
                is[bar][fabric] = model.newBoolVar("");
                cost.addTerm(is[bar][fabric], Math.round(SCALE * problem.alone(bar, fabric)));
                used[fabric].addTerm(is[bar][fabric], Math.round(problem.area(bar)));
            }
            model.addExactlyOne((Literal[]) is[bar]);
        }
        for (int fabric = 0; fabric < used.length; fabric++) {
            model.addLessOrEqual(used[fabric], (long) Math.floor(problem.room(fabric)));
        }
        for (int bar = 0; bar < is.length; bar++) {
            for (BarColouring.Meeting meeting : problem.meetingsOf(bar)) {
                if (meeting.other() < bar) {
                    meets(bar, meeting);
                }
            }
        }
        model.minimize(cost);
        return solver.solve(model);
    }

    private void meets(int bar, BarColouring.Meeting meeting) {
        for (int one = 0; one < problem.fabrics(); one++) {
            for (int other = 0; other < problem.fabrics(); other++) {
                long each = Math.round(SCALE * problem.between(meeting, one, other));
                if (each > 0) {
                    BoolVar both = model.newBoolVar("");
                    model.addBoolOr(new Literal[] {is[bar][one].not(), is[meeting.other()][other].not(), both});
                    cost.addTerm(both, each);
                }
            }
        }
    }
}
