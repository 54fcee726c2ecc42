package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.cover.Covered;
import hearthcloth.cutstock.piecing.cover.Covering;
import hearthcloth.cutstock.piecing.cover.Heap;
import hearthcloth.cutstock.piecing.cover.SeveralCoverings;
import hearthcloth.cutstock.piecing.exact.ExactCovering;
import hearthcloth.cutstock.piecing.parameter.PiecingParameters;
import hearthcloth.cutstock.piecing.parameter.ShortHeapParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Finds how to piece cloths from a heap of scraps: the wished size first, then least lost, then few scraps cut in two.
 *
 * <p>The budget says when it is spent; each time it is asked is one step. With the same job, seed and number of steps the
 * plans are the same.
 */
public final class FreePiecing {

    private final PiecingJob job;
    private final PiecingParameters parameters;
    private final ShortHeapParameters.Smaller smaller;
    private final Heap heap;

    /** Prepares a job; the work is done by {@link #search}. */
    public FreePiecing(PiecingJob job) {
        this(job, PiecingParameters.standard());
    }

    /** Prepares a job that is searched with other values. */
    FreePiecing(PiecingJob job, PiecingParameters parameters) {
        this.job = job;
        this.parameters = parameters;
        this.smaller = parameters.shortHeap().smaller();
        this.heap = new Heap(stock(job), parameters);
    }

    private static Stock stock(PiecingJob job) {
        int seam = (int) job.allowances().seam();
        int least = (int) job.allowances().cutToShow(job.terms().least()) - seam;
        int count = job.scraps().size();
        int[] widths = new int[count];
        int[] heights = new int[count];
        boolean[] turnable = new boolean[count];
        for (int i = 0; i < count; i++) {
            Scrap scrap = job.scraps().get(i);
            widths[i] = (int) Math.max(0, scrap.width() - seam);
            heights[i] = (int) Math.max(0, scrap.height() - seam);
            turnable[i] = scrap.turnable();
        }
        Stock.Rules rules =
                new Stock.Rules(seam, Math.max(1, least), (int) job.terms().keepShort(), (int)
                        job.terms().keepLong());
        Stock stock = Stock.of(widths, heights, turnable, rules);
        for (int i = 0; i < count; i++) {
            Scrap.Handling asked = job.scraps().get(i).handling();
            if (!asked.equals(Scrap.Handling.ANY)) {
                stock = stock.asking(
                        i,
                        new Stock.Asked(
                                asked.must() && job.cloths().size() == 1, asked.whole(), (int) asked.offWidth(), (int)
                                        asked.offHeight()));
            }
        }
        return stock;
    }

    /**
     * Searches until the budget is spent or nothing better exists.
     *
     * @param spent asked before each step; true ends the search
     * @param improvements told each better plan as it is found, on this thread
     */
    public PiecingPlan search(BooleanSupplier spent, long seed, Consumer<? super PiecingPlan> improvements) {
        Run run = new Run(spent, seed, improvements);
        if (job.cloths().size() == 1) {
            run.one();
        } else {
            run.several();
        }
        return run.best.orElseGet(() -> plan(List.of()));
    }

    private int netWidth(int cloth, double share) {
        return (int)
                Math.floor(share * job.allowances().net(job.cloths().get(cloth).width()));
    }

    private int netHeight(int cloth, double share) {
        return (int)
                Math.floor(share * job.allowances().net(job.cloths().get(cloth).height()));
    }

    private PiecingPlan plan(List<PiecedCloth> cloths) {
        long wished = job.cloths().stream()
                .mapToLong(size -> PiecingBounds.net(job, size))
                .sum();
        long made = cloths.stream()
                .mapToLong(cloth -> PiecingBounds.net(job, cloth.made()))
                .sum();
        long[] sums = new long[3];
        cloths.forEach(cloth -> add(cloth.tree(), sums));
        return new PiecingPlan(cloths, new PiecingPlan.Figures(wished - made, wished, sums[0], sums[1], (int)
                Math.max(0, sums[2] - cloths.size())));
    }

    /** Adds up what is lost, cut, and the patches. */
    private void add(Pieced tree, long[] sums) {
        if (tree instanceof Joint joint) {
            add(joint.first(), sums);
            add(joint.second(), sums);
            return;
        }
        ScrapPatch patch = (ScrapPatch) tree;
        long seam = job.allowances().seam();
        sums[0] +=
                heap.lost(new ScrapPatch(patch.scrap(), patch.turned(), patch.width() - seam, patch.height() - seam));
        sums[1] += patch.width() * patch.height();
        sums[2]++;
    }

    private PiecedCloth cloth(int number, Covered covered) {
        Allowances sewn = job.allowances();
        WishedCloth made = new WishedCloth(
                covered.width() + sewn.seam() - 2 * sewn.hem(), covered.height() + sewn.seam() - 2 * sewn.hem());
        return new PiecedCloth(number, made, cut(covered.tree()));
    }

    /** The tree at cut sizes. */
    private Pieced cut(Pieced net) {
        if (net instanceof Joint joint) {
            return new Joint(joint.beside(), cut(joint.first()), cut(joint.second()));
        }
        ScrapPatch patch = (ScrapPatch) net;
        long seam = job.allowances().seam();
        return new ScrapPatch(patch.scrap(), patch.turned(), patch.width() + seam, patch.height() + seam);
    }

    /** One search: the best it has found so far. */
    private final class Run {
        private final BooleanSupplier spent;
        private final long seed;
        private final Consumer<? super PiecingPlan> improvements;
        private Optional<PiecingPlan> best = Optional.empty();
        private double share;
        private boolean near;
        private int vain;

        Run(BooleanSupplier spent, long seed, Consumer<? super PiecingPlan> improvements) {
            this.spent = spent;
            this.seed = seed;
            this.improvements = improvements;
        }

        private Covering covering(int cloth, double share, int[] scraps) {
            int width = netWidth(cloth, share);
            int height = netHeight(cloth, share);
            double price = parameters.cutPrice() * width * height;
            return new Covering(heap, width, height, scraps, price, spent, seed);
        }

        /** One cloth; a smaller one first where the wished one is not found soon. */
        void one() {
            int[] all = IntStream.range(0, job.scraps().size()).toArray();
            Covering whole = covering(0, 1, all);
            if (whole.tight() && all.length > smaller.smallHeap()) {
                smaller(all);
            }
            boolean covered = whole.attempt();
            if (whole.few()) {
                whole.everything();
                covered = whole.best().isPresent();
            }
            for (int round = 0; !covered && !spent.getAsBoolean() && vain < smaller.vain(); round++) {
                if (whole.done() || (round % whole.round() == whole.round() - 1)) {
                    smaller(all);
                }
                covered = !whole.done() && whole.attempt();
                vain = whole.done() ? vain + 1 : 0;
            }
            whole.best().ifPresent(cover -> offer(List.of(cloth(0, cover))));
            while (covered && !whole.done() && !spent.getAsBoolean()) {
                if (whole.improve()) {
                    offer(List.of(cloth(0, whole.best().orElseThrow())));
                }
            }
        }

        /** A smaller cloth: one that is soon found at first, then ever nearer to the wished size. */
        private void smaller(int[] all) {
            if (share > 0) {
                double nearer = share + (1 - share) * (near ? smaller.nearer() : smaller.careful());
                near = smaller(all, nearer);
                return;
            }
            List<Double> shares = smaller.shares();
            for (int i = 0; i < shares.size() && share == 0 && (i == 0 || !spent.getAsBoolean()); i++) {
                near = smaller(all, shares.get(i));
            }
        }

        private boolean smaller(int[] all, double size) {
            if (Math.min(netWidth(0, size), netHeight(0, size)) < 1) {
                return false;
            }
            Covering covering = covering(0, size, all);
            if (!covering.rough()) {
                return false;
            }
            share = size;
            offer(List.of(cloth(0, covering.best().orElseThrow())));
            return true;
        }

        void several() {
            int count = job.cloths().size();
            int[] widths = IntStream.range(0, count).map(n -> netWidth(n, 1)).toArray();
            int[] heights = IntStream.range(0, count).map(n -> netHeight(n, 1)).toArray();
            double price = parameters.cutPrice() * widths[0] * heights[0];
            boolean done = exactly(widths, heights);
            for (int start = 0; !done && (start == 0 || !spent.getAsBoolean()); start++) {
                SeveralCoverings coverings = new SeveralCoverings(heap, widths, heights, price, spent, seed + start);
                if (start == 0) {
                    coverings.begin();
                } else {
                    coverings.beginShuffled();
                }
                offer(coverings);
                while (!coverings.done() && !coverings.stuck() && !spent.getAsBoolean()) {
                    if (coverings.rework()) {
                        offer(coverings);
                    }
                }
                done = coverings.done();
            }
        }

        /** Where the heap gives just these cloths. */
        private boolean exactly(int[] widths, int[] heights) {
            Optional<List<Pieced>> trees = ExactCovering.of(
                    heap.all(), widths, heights, parameters.several().exact(), spent);
            trees.ifPresent(all -> offer(IntStream.range(0, all.size())
                    .mapToObj(n -> cloth(n, new Covered(all.get(n), widths[n], heights[n], 0)))
                    .toList()));
            return trees.isPresent();
        }

        private void offer(SeveralCoverings coverings) {
            List<PiecedCloth> cloths = new ArrayList<>();
            for (int n = 0; n < job.cloths().size(); n++) {
                int number = n;
                coverings.made(n).ifPresent(covered -> cloths.add(cloth(number, covered)));
            }
            offer(cloths);
        }

        private void offer(List<PiecedCloth> cloths) {
            PiecingPlan plan = plan(cloths);
            if (best.isEmpty() || plan.figures().compareTo(best.get().figures()) < 0) {
                best = Optional.of(plan);
                improvements.accept(plan);
            }
        }
    }
}
