package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.NumberFile;
import hearthcloth.benchmarks.sets.PiecingFile;
import hearthcloth.benchmarks.sets.PlantedCloths;
import hearthcloth.benchmarks.sets.Stashes;
import hearthcloth.benchmarks.sets.Wishes;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.together.Asked;
import hearthcloth.plan.together.Leftover;
import hearthcloth.plan.together.PlanningTogether;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many cloths planned together from one heap: how soon, how fair, and beside planning one after another. */
@Command(
        name = "kits",
        description = {
            "Plans so many squares from seeded stashes together, and one after another with as much time in all;",
            "or, given files, the cloths that planted heaps were cut from. Times are thread time of one thread.",
            "first ms: until everybody had something; twice: pieces that stand in two plans, counted here."
        })
final class Sharing implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "planted heaps of free piecing, instead of stashes")
    private List<Path> files = List.of();

    @Option(names = "--sets", defaultValue = "40", description = "seeded stashes (${DEFAULT-VALUE})")
    private int sets = 40;

    @Option(names = "--pieces", defaultValue = "200", description = "in each (${DEFAULT-VALUE})")
    private int pieces = 200;

    @Option(names = "--students", defaultValue = "12", description = "cloths (${DEFAULT-VALUE})")
    private int students = 12;

    @Option(names = "--cloth", defaultValue = "16", description = "finished side in inches (${DEFAULT-VALUE})")
    private int side = 16;

    @Option(names = "--not-in-turn", description = "leave out planning one after another")
    private boolean notInTurn;

    @Mixin
    private Allowance allowance = new Allowance();

    /** One division and how long it took. */
    private record Look(Together together, long first, long all) {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        warm();
        return files.isEmpty() ? stashes(out) : planted(out);
    }

    private void warm() {
        long end = System.nanoTime() + allowance.warmUp().nanos();
        for (long seed = -1; System.nanoTime() - end < 0; seed--) {
            look(Stashes.of(60, seed), asked(4, 14), 300_000_000L, seed);
        }
    }

    private static List<Asked> asked(int count, int side) {
        List<Asked> asked = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            asked.add(new Asked("Student " + i, Wishes.square(side, 1), Optional.empty()));
        }
        return asked;
    }

    private int stashes(PrintWriter out) {
        out.println("seed,made,first ms,all ms,worst,at least,joins,like hearths,dark spread,handed on,twice,"
                + "in turn made,in turn worst,in turn joins,in turn ms");
        boolean sound = true;
        for (int i = 0; i < sets; i++) {
            long seed = allowance.seed() + i;
            Stash stash = Stashes.of(pieces, seed);
            Look look = look(stash, asked(students, side), allowance.budget().nanos(), seed);
            var fairness = look.together.measure().fairness();
            int twice = twice(stash, look.together);
            sound &= twice == 0;
            out.println(String.format(
                    Locale.ROOT,
                    "%d,%d,%s,%s,%d,%d,%d,%d,%.2f,%d,%d,%s",
                    seed,
                    students - fairness.lacking(),
                    Verdict.milliseconds(look.first),
                    Verdict.milliseconds(look.all),
                    fairness.worst(),
                    look.together.measure().bound(),
                    fairness.joins(),
                    fairness.alike(),
                    fairness.shades().spread(),
                    fairness.shades().waits(),
                    twice,
                    notInTurn ? ",,," : inTurn(stash)));
            out.flush();
        }
        return sound ? 0 : 1;
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Look look(Stash stash, List<Asked> asked, long nanos, long seed) {
        long begin = now();
        long[] first = {0};
        Together together = PlanningTogether.plan(
                stash,
                asked,
                new PlanningTogether.Effort(
                        (int) Math.max(1, nanos / 1_000_000_000L), seed, Budget.until(() -> now() - begin > nanos)),
                told -> first[0] = first[0] == 0 ? now() - begin : first[0]);
        return new Look(together, first[0], now() - begin);
    }

    /** The planner's first proposal for each in turn, from what those before left whole, with as much time in all. */
    private String inTurn(Stash stash) {
        long begin = now();
        List<Piece> left = new ArrayList<>(stash.pieces());
        int made = 0;
        int worst = 0;
        int joins = 0;
        for (int i = 0; i < students; i++) {
            long from = now();
            long share = allowance.budget().nanos() / students;
            PlanOutcome outcome = Planner.plan(
                    new Stash(left),
                    Wishes.square(side, 1),
                    1,
                    Budget.until(() -> now() - from > share),
                    told -> {});
            if (outcome instanceof PlanOutcome.Proposals found) {
                Plan plan = found.plans().get(0);
                plan.cuts().forEach(cut -> left.remove(cut.piece()));
                made++;
                worst = Math.max(worst, plan.figures().joins());
                joins += plan.figures().joins();
            }
        }
        return made + "," + worst + "," + joins + "," + Verdict.milliseconds(now() - begin);
    }

    /** Pieces that stand in two plans, or in one without being there. */
    private static int twice(Stash stash, Together together) {
        Set<Piece> there = new HashSet<>(stash.pieces());
        together.leftovers().stream().map(Leftover::part).forEach(there::add);
        int twice = 0;
        for (Together.Part part : together.parts()) {
            List<PieceCut> cuts = part.plan().map(Plan::cuts).orElse(List.of());
            for (PieceCut cut : cuts) {
                twice += there.remove(cut.piece()) ? 0 : 1;
            }
        }
        return twice;
    }

    private int planted(PrintWriter out) {
        out.println("instance,asked,made,ms,twice");
        boolean sound = true;
        for (Path file : files) {
            PlantedCloths planted = PlantedCloths.of(PiecingFile.read(NumberFile.of(file)));
            Look look = look(planted.stash(), planted.asked(), allowance.budget().nanos(), allowance.seed());
            int twice = twice(planted.stash(), look.together);
            sound &= twice == 0;
            out.println(String.join(
                    ",",
                    String.valueOf(file.getFileName()),
                    String.valueOf(planted.asked().size()),
                    String.valueOf(planted.asked().size()
                            - look.together.measure().fairness().lacking()),
                    Verdict.milliseconds(look.all),
                    String.valueOf(twice)));
            out.flush();
        }
        return sound ? 0 : 1;
    }
}
