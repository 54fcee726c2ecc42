package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockSearch;
import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Goal;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.parameter.Beams;
import hearthcloth.cutstock.piecing.parameter.CoverParameters;
import hearthcloth.cutstock.piecing.parameter.DiveParameters;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Covers one rectangle as well as the budget allows: dives until it is covered, then repairs and further dives. */
public final class Covering {

    private static final long ANY = Long.MAX_VALUE / 4;
    private final CoverParameters parameters;
    private final DiveParameters dives;
    private final Heap heap;
    private final int width;
    private final int height;
    private final int[] scraps;
    private final Dive dive;
    private final Repair repair;
    private final BooleanSupplier spent;
    private final SplittableRandom chance;
    private final double cutPrice;
    private final long reserved;
    private boolean exhausted;
    private long steps;
    private long diving;
    private long repairing;
    private int rounds;
    private int pools;
    private Optional<Covered> best = Optional.empty();

    public Covering(Heap heap, int width, int height, int[] scraps, double cutPrice, BooleanSupplier spent, long seed) {
        this(heap, width, height, scraps, cutPrice, spent, seed, 0);
    }

    /**
     * Prepares a cover beside which others need fabric too.
     *
     * @param reserved net area of the scraps that has to be left for others
     */
    Covering(
            Heap heap,
            int width,
            int height,
            int[] scraps,
            double cutPrice,
            BooleanSupplier spent,
            long seed,
            long reserved) {
        this.reserved = reserved;
        this.heap = heap;
        this.parameters = heap.parameters().cover();
        this.dives = parameters.dives();
        this.width = width;
        this.height = height;
        this.scraps = scraps;
        this.spent = () -> {
            steps++;
            return spent.getAsBoolean();
        };
        this.chance = new SplittableRandom(seed);
        this.dive = new Dive(heap, this.spent, chance);
        this.repair = new Repair(heap, scraps, this.spent, chance);
        this.cutPrice = cutPrice;
    }

    public Optional<Covered> best() {
        return best;
    }

    private long area() {
        return (long) width * height;
    }

    private long spare() {
        return heap.area(scraps) - area() - reserved;
    }

    /** The scraps to try: all, or those that must be in and some others. */
    private int[] pool() {
        long must = Arrays.stream(scraps)
                .filter(heap.all()::must)
                .mapToLong(heap::area)
                .sum();
        if (must == 0) {
            return scraps;
        }
        List<Double> beside = parameters.must().beside();
        double most = area() * (1 + beside.get(pools++ % beside.size()));
        int[] others = Arrays.stream(scraps).filter(i -> !heap.all().must(i)).toArray();
        IntStream.Builder some = IntStream.builder();
        long sum = must;
        for (int i = 0; i < others.length && sum < most; i++) {
            int j = i + chance.nextInt(others.length - i);
            int next = others[j];
            others[j] = others[i];
            some.add(next);
            sum += heap.area(next);
        }
        return IntStream.concat(Arrays.stream(scraps).filter(heap.all()::must), some.build())
                .toArray();
    }

    /** Tries once more to cover the rectangle; each try looks more widely. */
    public boolean attempt() {
        if (spare() >= 0) {
            take(dive.cover(width, height, pool(), reserved > 0 ? spare() : ANY, style(rounds++)));
        }
        return best.isPresent();
    }

    /** After how many attempts it is time to look at a smaller rectangle. */
    public int round() {
        return tight() ? parameters.heaps().tries() : dives.plenty().caps().size();
    }

    /** Whether nearly all scraps are needed. */
    public boolean tight() {
        return spare() < parameters.heaps().tight() * area();
    }

    /** Tries roughly: soon done, and content with much loss. */
    public boolean rough() {
        if (spare() >= 0) {
            List<Double> caps = dives.rough().caps();
            for (int i = 0; i < caps.size() && best.isEmpty(); i++) {
                take(dive.cover(width, height, pool(), ANY, style(dives.rough(), caps.get(i), 0, 0)));
            }
        }
        return best.isPresent();
    }

    /** Whether there are so few scraps that everything can be tried. */
    public boolean few() {
        return scraps.length <= parameters.heaps().few() && heap.all().rules().keepShort() == 0;
    }

    /** Tries everything; afterwards either nothing is better, or the budget is spent. */
    public void everything() {
        BlockSearch search = new BlockSearch(
                heap.all().pick(scraps),
                new Goal(
                        width,
                        height,
                        Math.max(0, spare()),
                        best.map(Covered::lost).orElse(ANY)),
                Effort.everything(),
                heap.parameters().blocks());
        search.run(spent, Until.BEST);
        search.best()
                .map(cover -> Heap.renumbered(cover.tree().get(), i -> scraps[i]))
                .flatMap(tree -> Trimming.to(tree, width, height, heap.all().limits()))
                .ifPresent(tree -> take(Optional.of(new Covered(tree, width, height, heap.lost(tree)))));
        exhausted = search.exhausted();
    }

    /** Whether nothing better can be found. */
    public boolean done() {
        return exhausted || (best.isPresent() && best.get().lost() == 0);
    }

    /** Makes one part of the cover anew, or tries all anew, as many steps of each; true if less is lost then. */
    public boolean improve() {
        Covered now = best.orElseThrow();
        double share = (double) now.lost() / area();
        long before = steps;
        if (diving <= repairing) {
            take(dive.cover(width, height, pool(), now.lost() - 1, bolder(share)));
            diving += steps - before;
        } else {
            CoverParameters.Caps caps = parameters.repair().caps();
            double cap = share * (1 + caps.wider() * chance.nextDouble());
            double bounded = Math.min(caps.most(), Math.max(caps.least(), cap));
            take(Optional.of(
                    repair.once(now, effort(bounded, parameters.repair().beams(), true))));
            repairing += steps - before;
        }
        return best.get().lost() < now.lost();
    }

    /** A dive that might lose less than this share. */
    private Dive.Style bolder(double share) {
        List<Double> shares = dives.bolder().caps();
        double cap = share * shares.get(chance.nextInt(shares.size()));
        int wide = chance.nextInt(parameters.heaps().widest() + 1);
        int longer = chance.nextInt(parameters.heaps().widest() + 1);
        return style(dives.bolder(), cap, wide, longer).until(Until.BEST);
    }

    private Dive.Style style(int round) {
        int widest = parameters.heaps().widest();
        if (spare() == 0) {
            int wide = round % Math.max(1, widest);
            return style(dives.exact(), dives.exact().caps().get(0), wide, wide);
        }
        DiveParameters.Dive kind = tight() ? dives.tight() : dives.plenty();
        int wide = Math.min(widest, round / round());
        return style(kind, kind.caps().get(round % kind.caps().size()), wide, wide);
    }

    /** A dive that ends with the first cover. */
    private Dive.Style style(DiveParameters.Dive kind, double cap, int wide, int longer) {
        return new Dive.Style(
                effort(cap, kind.laying().widened(wide), kind.cuts() == DiveParameters.Cuts.ALL),
                effort(cap, kind.last().widened(wide), kind.cuts() != DiveParameters.Cuts.NONE),
                kind.ends().scraps() + longer * kind.ends().step(),
                kind.ends().leave(),
                Until.FIRST);
    }

    private Effort effort(double cap, Beams beams, boolean cuts) {
        return new Effort(cap, beams.each(), beams.spanning(), cuts ? cutPrice : -1, 0);
    }

    private void take(Optional<Covered> next) {
        if (next.isPresent()
                && (best.isEmpty() || next.get().lost() <= best.get().lost())) {
            best = next;
        }
    }
}
