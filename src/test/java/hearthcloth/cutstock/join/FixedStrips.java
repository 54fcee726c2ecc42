package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Strips that lie ready, each its own place and slot: the plainest {@link StripSource}. Nothing else is cut from one. The
 * benchmarks compile this file too.
 */
final class FixedStrips implements StripSource {

    private final long[] lengths;
    private final int[] kinds;
    private boolean[] open;
    private boolean[] saved;

    private FixedStrips(long[] lengths, int[] kinds) {
        this.lengths = lengths;
        this.kinds = kinds;
        this.open = new boolean[lengths.length];
        this.saved = open.clone();
    }

    /** Strips of one kind, 0. */
    static FixedStrips of(long... lengths) {
        return new FixedStrips(lengths.clone(), new int[lengths.length]);
    }

    /** Strips of several kinds. */
    static FixedStrips ofKinds(long[] lengths, int[] kinds) {
        return new FixedStrips(lengths.clone(), kinds.clone());
    }

    @Override
    public int slots() {
        return lengths.length;
    }

    @Override
    public int[] places(int kind) {
        return IntStream.range(0, lengths.length)
                .filter(i -> kinds[i] == kind)
                .boxed()
                .sorted(Comparator.comparingLong(i -> lengths[i]))
                .mapToInt(i -> i)
                .toArray();
    }

    @Override
    public int firstPassing() {
        return lengths.length;
    }

    @Override
    public int passingLimit() {
        return lengths.length;
    }

    @Override
    public boolean isTail(int place) {
        return false;
    }

    @Override
    public long offered(int kind, int place, long[] used) {
        return open[place] || kinds[place] != kind ? 0 : lengths[place];
    }

    @Override
    public int copies(int kind, int place, long[] used) {
        return open[place] ? 0 : 1;
    }

    @Override
    public int open(int kind, int place, long[] used) {
        if (offered(kind, place, used) == 0) {
            return -1;
        }
        open[place] = true;
        return place;
    }

    @Override
    public void close(int slot) {
        if (!open[slot]) {
            throw new IllegalStateException("strip " + slot + " is closed twice");
        }
        open[slot] = false;
    }

    @Override
    public int openLimit() {
        return lengths.length;
    }

    @Override
    public boolean isOpen(int slot) {
        return open[slot];
    }

    @Override
    public long length(int slot) {
        return lengths[slot];
    }

    @Override
    public long whole(int slot) {
        return lengths[slot];
    }

    @Override
    public int origin(int slot) {
        return slot;
    }

    @Override
    public int originOf(int place) {
        return place;
    }

    @Override
    public boolean serves(int slot, int kind) {
        return kinds[slot] == kind;
    }

    @Override
    public double openingCost(int kind, int place, long[] used) {
        return 0;
    }

    @Override
    public double cost(long[] used) {
        return 0;
    }

    @Override
    public void save() {
        saved = open.clone();
    }

    @Override
    public void restore() {
        open = saved.clone();
    }

    /** How many are open. */
    long opened() {
        return IntStream.range(0, open.length).filter(i -> open[i]).count();
    }

    /** What is wrong between the strips and what is cut from them; empty if nothing is. */
    String faults(Piecework work, long[] bars, long loss) {
        long[] cut = new long[lengths.length];
        for (int bar = 0; bar < bars.length; bar++) {
            long sum = 0;
            for (int i = 0; i < work.parts(bar); i++) {
                cut[work.strip(bar, i)] += work.cut(bar, i);
                sum += work.cut(bar, i) - (i == 0 ? 0 : loss);
            }
            if (work.pieced(bar) && sum != bars[bar]) {
                return "bar " + bar + " adds up to " + sum;
            }
        }
        for (int i = 0; i < lengths.length; i++) {
            if (cut[i] > lengths[i] || cut[i] != work.used()[i] || (cut[i] > 0) != open[i]) {
                return "strip " + i + " of " + lengths[i] + " gives " + Arrays.toString(cut);
            }
        }
        return "";
    }
}
