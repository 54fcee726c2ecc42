package hearthcloth.cutstock.piecing;

import hearthcloth.Ablation;
import hearthcloth.Changed;
import hearthcloth.Processor;
import hearthcloth.cutstock.piecing.parameter.PiecingParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What each stage of the search for cloths of scraps earns: it is left out, or set to its plain form, and the heaps that lie
 * beside the tests are searched again with as many steps, from several seeds. Run by {@code ./check ablate piecing}, not as a
 * test: {@code PiecingAblation SEEDS STEPS SECONDS [CHANGE...]}; with changes such as {@code blocks.slack=1} only the search as it
 * is and the search so changed are compared.
 */
final class PiecingAblation {

    private static final List<String> HEAPS = List.of(
            "decoy-n020-s1",
            "exact-n030-s2",
            "grown-n015-s2",
            "half-n030-s1",
            "several-exact-k03-s1",
            "wild-c030-p60-s2");

    private static final Map<String, String[]> STAGES = stages();

    private final List<PiecingJob> jobs = HEAPS.stream().map(PiecingSets::read).toList();
    private final int seeds;
    private final long steps;

    private static Map<String, String[]> stages() {
        Map<String, String[]> all = new LinkedHashMap<>();
        all.put("cutting a scrap costs nothing", new String[] {"cutPrice=0"});
        all.put("no heap is tight", new String[] {"cover.heaps.tight=0"});
        all.put("every heap is tight", new String[] {"cover.heaps.tight=1e9"});
        all.put("dives always as wide", new String[] {"cover.heaps.widest=0"});
        all.put("one strictness for dives", new String[] {"cover.dives.plenty.caps=0.06"});
        all.put("the best block is laid", new String[] {"cover.laying.lot=2147483647"});
        all.put("parts of three patches made anew", new String[] {"cover.repair.patches.most=3"});
        all.put("parts made anew of their own scraps", new String[] {"cover.repair.scraps=1"});
        all.put("lossless parts never made anew", new String[] {"cover.repair.lossless=2147483647"});
        all.put("two cloths made anew together", new String[] {"several.reworks.together=2"});
        all.put("edges differ by no more than may be lost", new String[] {"blocks.slack=1"});
        all.put("no chance among blocks", new String[] {"blocks.keys.jumble=0", "blocks.keys.lot=0"});
        all.put("scraps hard to place not first", new String[] {"blocks.keys.ease=2147483647"});
        all.put("what the heap has to spare is free", new String[] {"blocks.spare.price=0"});
        all.put("one block of the same scraps", new String[] {"blocks.same=1"});
        return all;
    }

    private PiecingAblation(int seeds, long steps) {
        this.seeds = seeds;
        this.steps = steps;
    }

    public static void main(String[] args) {
        PiecingAblation ablation = new PiecingAblation(Integer.parseInt(args[0]), Long.parseLong(args[1]));
        long end = System.nanoTime() + Long.parseLong(args[2]) * 1_000_000_000;
        PiecingParameters standard = PiecingParameters.standard();
        List<PiecingPlan.Figures> known = ablation.all(standard);
        System.out.println(
                "| search | full | lacking, per cent | lost, per cent of what is cut | better than as it is | worse |"
                        + " processor seconds |");
        System.out.println("|---|---|---|---|---|---|---|");
        ablation.row("as it is", standard, known);
        Ablation.rows(
                STAGES,
                Arrays.copyOfRange(args, 3, args.length),
                end,
                (name, changes) -> ablation.row(name, Changed.with(standard, changes), known));
    }

    private List<PiecingPlan.Figures> all(PiecingParameters parameters) {
        List<PiecingPlan.Figures> all = new ArrayList<>();
        for (PiecingJob job : jobs) {
            for (int seed = 1; seed <= seeds; seed++) {
                long[] left = {steps};
                all.add(new FreePiecing(job, parameters)
                        .search(() -> left[0]-- <= 0, seed, better -> {})
                        .figures());
            }
        }
        return all;
    }

    private void row(String name, PiecingParameters parameters, List<PiecingPlan.Figures> known) {
        double begin = Processor.seconds();
        List<PiecingPlan.Figures> all = all(parameters);
        double seconds = Processor.seconds() - begin;
        int better = 0;
        int worse = 0;
        for (int i = 0; i < all.size(); i++) {
            int order = all.get(i).compareTo(known.get(i));
            better += order < 0 ? 1 : 0;
            worse += order > 0 ? 1 : 0;
        }
        Stream<PiecingPlan.Figures> full = all.stream().filter(PiecingPlan.Figures::full);
        System.out.printf(
                Locale.ROOT,
                "| %s | %d of %d | %.2f | %.2f | %d | %d | %.1f |%n",
                name,
                all.stream().filter(PiecingPlan.Figures::full).count(),
                all.size(),
                all.stream()
                        .mapToDouble(figures -> 100.0 * figures.missing() / figures.wished())
                        .average()
                        .orElse(0),
                full.mapToDouble(PiecingPlan.Figures::lostPercent).average().orElse(0),
                better,
                worse,
                seconds);
    }
}
