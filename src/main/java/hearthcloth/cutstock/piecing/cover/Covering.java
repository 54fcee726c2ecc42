package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockSearch;
import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Goal;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Covers one rectangle as well as the budget allows: dives until it is covered, then repairs and further dives. */
public final class Covering {

    private static final double PLENTY = 0.12;
    private static final double[] LADDER = {0, 0.004, 0.012, 0.03, 0.06, 0.1, 0.15, 0.25};
    private static final double[] ROUGH = {0.06, 0.25, 1};
    private static final long ANY = Long.MAX_VALUE / 4;
    private static final double[] BOLDER = {0, 0.3, 0.8, 1.5};
    /**
     * Where some scraps must be in, so much more area than the rectangle's is tried at a time, must-be-in scraps and some of
     * the others by lot: a cover of the whole heap would hardly ever have all of them. Ours, from trials.
     */
    private static final double[] BESIDE_MUST = {0.3, 0.6, 0.15, 1.2};

    private static final int LEAVE = 16;
    private static final int FEW = 9;
    private static final double EXACT_CAP = 0.01;
    private static final double TIGHT_CAP = 0.06;

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
        double most = area() * (1 + BESIDE_MUST[pools++ % BESIDE_MUST.length]);
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
        return tight() ? 4 : LADDER.length;
    }

    /** Whether nearly all scraps are needed. */
    public boolean tight() {
        return spare() < PLENTY * area();
    }

    /** Tries roughly: soon done, and content with much loss. */
    public boolean rough() {
        if (spare() >= 0) {
            for (int i = 0; i < ROUGH.length && best.isEmpty(); i++) {
                Effort whole = new Effort(ROUGH[i], 60, 300, -1, 0);
                take(dive.cover(width, height, pool(), ANY, new Dive.Style(whole, whole, 20, LEAVE, Until.FIRST)));
            }
        }
        return best.isPresent();
    }

    /** Whether there are so few scraps that everything can be tried. */
    public boolean few() {
        return scraps.length <= FEW && heap.all().rules().keepShort() == 0;
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
                Effort.everything());
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
            double cap = Math.min(0.1, Math.max(0.01, share * (1 + 6 * chance.nextDouble())));
            take(Optional.of(repair.once(now, new Effort(cap, 60, 200, cutPrice, 0))));
            repairing += steps - before;
        }
        return best.get().lost() < now.lost();
    }

    /** A dive that might lose less than this share. */
    private Dive.Style bolder(double share) {
        double cap = share * BOLDER[chance.nextInt(BOLDER.length)];
        int wide = chance.nextInt(4);
        Effort laying = new Effort(cap, 100 << wide, 600 << wide, -1, 0);
        return new Dive.Style(
                laying, effort(cap, 100 << wide, 600 << wide), 16 + 6 * chance.nextInt(4), LEAVE, Until.BEST);
    }

    private Dive.Style style(int round) {
        if (spare() == 0) {
            int wide = round % 3;
            return new Dive.Style(
                    effort(EXACT_CAP, 400, 1000),
                    effort(EXACT_CAP, 4000 << wide, 16_000 << wide),
                    58 - 4 * wide,
                    34,
                    Until.FIRST);
        }
        if (tight()) {
            int wide = Math.min(3, round / 4);
            return new Dive.Style(
                    effort(TIGHT_CAP, 100, 1000),
                    effort(TIGHT_CAP, 1000 << wide, 3000 << wide),
                    24,
                    LEAVE,
                    Until.FIRST);
        }
        double cap = LADDER[round % LADDER.length];
        int wide = Math.min(3, round / LADDER.length);
        return new Dive.Style(
                new Effort(cap, 200 << wide, 1000 << wide, -1, 0),
                effort(cap, 200 << wide, 1000 << wide),
                24,
                LEAVE,
                Until.FIRST);
    }

    private Effort effort(double cap, int beam, int spanning) {
        return new Effort(cap, beam, spanning, cutPrice, 0);
    }

    private void take(Optional<Covered> next) {
        if (next.isPresent()
                && (best.isEmpty() || next.get().lost() <= best.get().lost())) {
            best = next;
        }
    }
}
