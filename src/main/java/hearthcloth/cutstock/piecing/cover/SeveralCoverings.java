package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockCover;
import hearthcloth.cutstock.piecing.blocks.BlockSearch;
import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Goal;
import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.parameter.Beams;
import hearthcloth.cutstock.piecing.parameter.SeveralParameters;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Covers several rectangles from one heap. They are covered one after another; then a few of them are made anew together,
 * those that could not be covered first: of all covers found of each, some that share no scrap.
 */
public final class SeveralCoverings {

    private final Heap heap;
    private final SeveralParameters parameters;
    private final int[] widths;
    private final int[] heights;
    private final double cutPrice;
    private final BooleanSupplier spent;
    private final Random chance;
    private final Covered[] made;
    private int vain;

    /** Prepares; {@link #begin} and {@link #rework} do the work. */
    public SeveralCoverings(Heap heap, int[] widths, int[] heights, double cutPrice, BooleanSupplier spent, long seed) {
        this.heap = heap;
        this.parameters = heap.parameters().several();
        this.widths = widths;
        this.heights = heights;
        this.cutPrice = cutPrice;
        this.spent = spent;
        this.chance = new Random(seed);
        this.made = new Covered[widths.length];
    }

    /** What covers the n-th rectangle. */
    public Optional<Covered> made(int n) {
        return Optional.ofNullable(made[n]);
    }

    /** Whether all are covered and nothing is lost. */
    public boolean done() {
        return Arrays.stream(made).allMatch(cover -> cover != null && cover.lost() == 0);
    }

    /** Scraps that no cover takes. */
    public int[] unused() {
        BitSet used = new BitSet();
        for (Covered cover : made) {
            if (cover != null) {
                used.or(cover.scraps());
            }
        }
        return IntStream.range(0, heap.size()).filter(i -> !used.get(i)).toArray();
    }

    /** Whether one is lacking and was long sought in vain. */
    public boolean stuck() {
        return vain >= parameters.reworks().stuck() && Arrays.stream(made).anyMatch(cover -> cover == null);
    }

    /** Covers one after another, in the order they are given. */
    public void begin() {
        begin(IntStream.range(0, made.length).boxed().toList());
    }

    /** Covers one after another, in an order as chance has it. */
    public void beginShuffled() {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, made.length).boxed().toList());
        Collections.shuffle(order, chance);
        begin(order);
    }

    private void begin(List<Integer> order) {
        order.forEach(n -> cover(n, parameters.reworks().tries()));
    }

    /**
     * The net area that the rectangles that are not covered need, but for this one; nothing where there is not enough for
     * all, so that as many as can be are covered.
     */
    private long reservedBeside(int n) {
        long open = IntStream.range(0, made.length)
                .filter(i -> made[i] == null)
                .mapToLong(this::area)
                .sum();
        return open > heap.area(unused()) ? 0 : open - (made[n] == null ? area(n) : 0);
    }

    private long area(int n) {
        return (long) widths[n] * heights[n];
    }

    private void cover(int n, int tries) {
        Covering covering = new Covering(
                heap, widths[n], heights[n], unused(), cutPrice, spent, chance.nextLong(), reservedBeside(n));
        for (int i = 0; i < tries && !spent.getAsBoolean() && !covering.attempt(); i++) {}
        made[n] = covering.best().orElse(null);
    }

    /** Makes a few anew together; true if more are covered then, or less is lost. */
    public boolean rework() {
        List<Integer> some = some();
        Covered[] before = made.clone();
        long lost = 0;
        boolean full = true;
        for (int n : some) {
            full &= made[n] != null;
            lost += made[n] == null ? 0 : made[n].lost();
            made[n] = null;
        }
        boolean better = together(some, full ? lost : Long.MAX_VALUE / 4) && (!full || lost(some) < lost);
        if (!better && !(full && some.stream().allMatch(n -> made[n] != null))) {
            System.arraycopy(before, 0, made, 0, made.length);
        }
        vain = better ? 0 : vain + 1;
        return better;
    }

    private long lost(int n) {
        return made[n] == null ? 0 : made[n].lost();
    }

    private long lost(List<Integer> some) {
        return some.stream().mapToLong(n -> made[n].lost()).sum();
    }

    /** One that is not covered, if there is one, and one to three others; now and then those first that lose most. */
    private List<Integer> some() {
        List<Integer> all =
                new ArrayList<>(IntStream.range(0, made.length).boxed().toList());
        Collections.shuffle(all, chance);
        if (vain % 2 == 1) {
            long most = 1 + all.stream().mapToLong(this::lost).max().orElse(0);
            Map<Integer, Double> keys = new LinkedHashMap<>();
            all.forEach(n -> keys.put(n, -lost(n) - most * chance.nextDouble()));
            all.sort(Comparator.comparing(n -> keys.getOrDefault(n, 0.0)));
        }
        List<Integer> open =
                new ArrayList<>(all.stream().filter(n -> made[n] == null).toList());
        all.removeAll(open);
        List<Integer> some = new ArrayList<>(open.subList(0, Math.min(open.size(), vain % 5 == 4 ? 2 : 1)));
        int others = Math.min(all.size(), Math.min(parameters.reworks().together(), 2 + vain % 4) - some.size());
        some.addAll(all.subList(0, Math.max(0, others)));
        return some;
    }

    private boolean together(List<Integer> some, long mostLost) {
        int[] pool = pool(unused());
        long needed = some.stream().mapToLong(this::area).sum();
        long reserved = reservedBeside(some.get(0)) + area(some.get(0)) - needed;
        long free = heap.area(unused()) - needed - Math.max(0, reserved);
        long spare = Math.min(free < 0 ? Long.MAX_VALUE : free, heap.area(pool) - needed);
        if (spare < 0) {
            return false;
        }
        Map<List<Integer>, List<BlockCover>> bySize = new LinkedHashMap<>();
        List<List<BlockCover>> covers = new ArrayList<>();
        for (int n : some) {
            covers.add(bySize.computeIfAbsent(
                    List.of(widths[n], heights[n]), size -> Packing.sorted(covers(n, pool, spare, mostLost))));
        }
        long[] areas = Arrays.stream(pool).mapToLong(heap::area).toArray();
        List<BlockCover> best = new Packing(covers, areas, mostLost, parameters.looks()).best();
        for (int i = 0; i < best.size(); i++) {
            int n = some.get(i);
            Pieced tree = Heap.renumbered(best.get(i).tree().get(), k -> pool[k]);
            made[n] = Trimming.to(tree, widths[n], heights[n], heap.all().limits())
                    .map(cut -> new Covered(cut, widths[n], heights[n], heap.lost(cut)))
                    .orElse(null);
        }
        return !best.isEmpty() && some.stream().allMatch(n -> made[n] != null);
    }

    private List<BlockCover> covers(int n, int[] pool, long spare, long mostLost) {
        SeveralParameters.Covers looked = parameters.covers();
        Beams beams = looked.beams().widened(Math.min(looked.widest(), vain / looked.vain()));
        BlockSearch search = new BlockSearch(
                heap.all().pick(pool),
                new Goal(widths[n], heights[n], spare, mostLost),
                new Effort(looked.cap(), beams.each(), beams.spanning(), cutPrice, chance.nextLong()),
                heap.parameters().blocks());
        search.run(spent, Until.ALL);
        return search.covers();
    }

    private int[] pool(int[] scraps) {
        List<Integer> list = new ArrayList<>(Arrays.stream(scraps).boxed().toList());
        Collections.shuffle(list, chance);
        return list.stream().limit(Stock.MOST).mapToInt(i -> i).toArray();
    }
}
