package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockCover;
import hearthcloth.cutstock.piecing.blocks.BlockSearch;
import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Goal;
import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.parameter.CoverParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Covers a rectangle of many scraps: a block that reaches from side to side and loses little is laid, then the rest is
 * covered from what is left, until it is small enough to be searched as a whole.
 */
final class Dive {

    private final Heap heap;
    private final CoverParameters parameters;
    private final BooleanSupplier spent;
    private final SplittableRandom chance;

    Dive(Heap heap, BooleanSupplier spent, SplittableRandom chance) {
        this.heap = heap;
        this.parameters = heap.parameters().cover();
        this.spent = spent;
        this.chance = chance;
    }

    /**
     * How a dive is made.
     *
     * @param laying how widely blocks to be laid are looked for
     * @param last how widely the last rectangle is searched
     * @param end about how many scraps the last rectangle may need
     * @param leave about how many scraps the last rectangle needs at least, to be varied enough
     * @param until whether the first cover is enough
     */
    record Style(Effort laying, Effort last, int end, int leave, Until until) {

        Style until(Until other) {
            return new Style(laying, last, end, leave, other);
        }
    }

    /** Tries once. */
    Optional<Covered> cover(int width, int height, int[] scraps, long mostLost, Style style) {
        List<Lay> lays = new ArrayList<>();
        int[] left = scraps;
        int wide = width;
        int high = height;
        long lost = 0;
        while (true) {
            long spare = heap.area(left) - (long) wide * high;
            if (spare < 0
                    || lost > mostLost
                    || Math.min(wide, high) < heap.all().rules().least()) {
                return Optional.empty();
            }
            double needed = left.length * ((double) wide * high) / heap.area(left);
            boolean last = needed <= style.end;
            int[] some = some(left);
            Effort effort = (last ? style.last : style.laying).seeded(chance.nextLong());
            BlockSearch search = new BlockSearch(
                    heap.all().pick(some),
                    new Goal(wide, high, spare, mostLost - lost),
                    effort,
                    heap.parameters().blocks());
            search.run(spent, style.until);
            Optional<BlockCover> best = search.best();
            if (best.isPresent()) {
                return finished(lays, numbered(best.get(), some), width, height);
            }
            if (last || spent.getAsBoolean()) {
                return Optional.empty();
            }
            Optional<BlockCover> chosen = choose(
                    search.spanning(),
                    needed,
                    wide,
                    high,
                    style.leave,
                    heap.all().pick(some).must());
            if (chosen.isEmpty()) {
                return Optional.empty();
            }
            BlockCover lay = chosen.get();
            boolean beside = lay.height() == high && (lay.width() != wide);
            lays.add(new Lay(beside, numbered(lay, some)));
            lost += lay.lost();
            wide -= beside ? lay.width() : 0;
            high -= beside ? 0 : lay.height();
            left = without(left, some, lay.scraps());
        }
    }

    private record Lay(boolean beside, Pieced tree) {}

    private Optional<Covered> finished(List<Lay> lays, Pieced last, int width, int height) {
        Pieced tree = last;
        for (int i = lays.size() - 1; i >= 0; i--) {
            tree = new Joint(lays.get(i).beside, lays.get(i).tree, tree);
        }
        return Trimming.to(tree, width, height, heap.all().limits())
                .map(cut -> new Covered(cut, width, height, heap.lost(cut)));
    }

    /** The block that loses least of its area, of a half by lot, that leaves enough to be varied at the end. */
    private Optional<BlockCover> choose(
            List<BlockCover> spanning, double needed, int wide, int high, int leave, long must) {
        int least = heap.all().rules().least();
        double perScrap = (double) wide * high / needed;
        double most = Math.max(parameters.laying().most() * wide * high, (double) wide * high - leave * perScrap);
        return spanning.stream()
                .filter(lay -> (double) lay.width() * lay.height() <= most)
                .filter(lay -> lay.height() == high ? wide - lay.width() >= least : high - lay.height() >= least)
                .filter(lay -> chance.nextInt(parameters.laying().lot()) > 0)
                .min(Comparator.comparingDouble(lay -> value(lay, must)));
    }

    private double value(BlockCover lay, long must) {
        double area = (double) lay.width() * lay.height();
        double keen =
                must == 0 ? 0 : parameters.must().keen() * Long.bitCount(lay.scraps() & must) / Long.bitCount(must);
        return lay.lost() / area - parameters.laying().perScrap() * area / Long.bitCount(lay.scraps()) - keen;
    }

    private int[] some(int[] left) {
        if (left.length <= Stock.MOST) {
            return left;
        }
        int[] shuffled = mustFirst(left);
        int fixed = (int) Arrays.stream(left).filter(heap.all()::must).count();
        for (int i = Math.min(fixed, Stock.MOST); i < Stock.MOST; i++) {
            int j = i + chance.nextInt(shuffled.length - i);
            int kept = shuffled[i];
            shuffled[i] = shuffled[j];
            shuffled[j] = kept;
        }
        return Arrays.copyOf(shuffled, Stock.MOST);
    }

    private int[] mustFirst(int[] left) {
        return IntStream.concat(
                        Arrays.stream(left).filter(heap.all()::must),
                        Arrays.stream(left).filter(i -> !heap.all().must(i)))
                .toArray();
    }

    private static Pieced numbered(BlockCover cover, int[] some) {
        return Heap.renumbered(cover.tree().get(), i -> some[i]);
    }

    private static int[] without(int[] left, int[] some, long taken) {
        java.util.BitSet gone = new java.util.BitSet();
        for (int i = 0; i < some.length; i++) {
            if ((taken >>> i & 1) != 0) {
                gone.set(some[i]);
            }
        }
        return Arrays.stream(left).filter(i -> !gone.get(i)).toArray();
    }
}
