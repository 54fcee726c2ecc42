package hearthcloth.cutstock.cutjoin;

import hearthcloth.Ablation;
import hearthcloth.Changed;
import hearthcloth.Processor;
import hearthcloth.cutstock.job.CutFigures;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What each stage of the search for the fewest joins earns: it is left out, or set to its plain form, and the same jobs are
 * searched again with as many steps. The jobs are seeded ones and those of {@code src/test/resources/bench} whose best plan was
 * planted. Run by {@code ./check ablate search}, not as a test: {@code SearchAblation FIRST_SEED COUNT STEPS SECONDS
 * [CHANGE...]}; with changes such as {@code walk.warmest=1} only the search as it is and the search so changed are compared.
 */
final class SearchAblation {

    private static final Map<String, String[]> STAGES = stages();

    private final List<CutJoinJob> jobs = new ArrayList<>();
    private final long steps;

    private static Map<String, String[]> stages() {
        String never = String.valueOf(Integer.MAX_VALUE);
        Map<String, String[]> all = new LinkedHashMap<>();
        all.put("one placing of the blocks", new String[] {"attempts.placings=1"});
        all.put("blocks always in the best spot", new String[] {"attempts.variety=0"});
        all.put("one attempt kept", new String[] {"attempts.kept=1"});
        all.put("sets never divided anew", new String[] {"reduction.first=" + never, "reduction.every=" + never});
        all.put("no fresh strip in a set", new String[] {"reduction.fresh=0"});
        all.put("no bar part by part", new String[] {"piecing.stepwise=" + never});
        all.put("every bar part by part", new String[] {"piecing.stepwise=1"});
        all.put("one try for a bar", new String[] {"piecing.attempts=1"});
        all.put("remainders count alike", new String[] {"piecing.spread=0"});
        all.put("never worse on the way", new String[] {"walk.warmest=1e-9", "walk.coolest=1e-9"});
        all.put("always as warm", new String[] {"walk.coolest=0.4"});
        all.put("cuts cost nothing", new String[] {"costs.perCut=0"});
        all.put("slivers cost nothing", new String[] {"costs.perSliver=0"});
        all.put("touched pieces cost nothing", new String[] {"costs.perTouched=0"});
        return all;
    }

    private SearchAblation(long first, int count, long steps) {
        this.steps = steps;
        for (long seed = first; seed < first + count; seed++) {
            jobs.add(RandomJobs.job(seed));
        }
        Stream.of("planted01", "planted02", "planted04", "planted13", "planted15")
                .map(name -> BenchJobs.cutAndJoin(BenchJobs.lines("/bench/" + name + ".txt")))
                .forEach(jobs::add);
        Stream.of("join002", "join003", "join025", "join032", "join048", "join050", "join059", "join084", "join095")
                .map(name -> BenchJobs.join(BenchJobs.lines("/bench/" + name + ".txt")))
                .forEach(jobs::add);
    }

    public static void main(String[] args) {
        SearchAblation ablation =
                new SearchAblation(Long.parseLong(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2]));
        long end = System.nanoTime() + Long.parseLong(args[3]) * 1_000_000_000;
        SearchParameters standard = SearchParameters.standard();
        ablation.all(standard); // Java learns the search, so that the first row's time is like the others'.
        List<Result> known = ablation.all(standard);
        System.out.println(
                "| search | made | joins | cuts | lost, per cent of what is used | fewest joins proved | better than as it"
                        + " is | worse | processor seconds |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        ablation.row("as it is", standard, known);
        Ablation.rows(
                STAGES,
                Arrays.copyOfRange(args, 4, args.length),
                end,
                (name, changes) -> ablation.row(name, Changed.with(standard, changes), known));
    }

    /** What came of one job; without a plan all but the time is zero. */
    private record Result(boolean found, int joins, int cuts, double lost, double used, boolean proved) {}

    private List<Result> all(SearchParameters parameters) {
        List<Result> results = new ArrayList<>();
        for (CutJoinJob job : jobs) {
            CutOutcome outcome = new CutAndJoin(job, parameters).search(Budget.steps(steps), 1, better -> {});
            if (outcome instanceof CutOutcome.Found found) {
                CutFigures figures = found.plan().figures();
                results.add(new Result(
                        true,
                        figures.joins(),
                        figures.cuts(),
                        figures.sliverArea(),
                        figures.usedArea(),
                        figures.joins() == found.bounds().joins()));
            } else {
                results.add(new Result(false, 0, 0, 0, 0, false));
            }
        }
        return results;
    }

    private void row(String name, SearchParameters parameters, List<Result> known) {
        double begin = Processor.seconds();
        List<Result> results = all(parameters);
        double seconds = Processor.seconds() - begin;
        int better = 0;
        int worse = 0;
        for (int i = 0; i < results.size(); i++) {
            int order = Integer.compare(rank(results.get(i)), rank(known.get(i)));
            better += order < 0 ? 1 : 0;
            worse += order > 0 ? 1 : 0;
        }
        double lost = results.stream().mapToDouble(Result::lost).sum();
        double used = results.stream().mapToDouble(Result::used).sum();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d of %d | %d | %d | %.2f | %d | %d | %d | %.1f |%n",
                name,
                results.stream().filter(Result::found).count(),
                results.size(),
                results.stream().mapToInt(Result::joins).sum(),
                results.stream().mapToInt(Result::cuts).sum(),
                100 * lost / Math.max(1, used),
                results.stream().filter(Result::proved).count(),
                better,
                worse,
                seconds);
    }

    /** By joins; a job that cannot be made ranks last. */
    private static int rank(Result result) {
        return result.found ? result.joins : Integer.MAX_VALUE;
    }
}
