package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Strips that lie ready, all of the bars' width; each is its own place and its own slot. */
final class FixedStrips implements StripSource {

    private final long[] lengths;
    private final int[] places;
    private final boolean[] open;
    private final boolean[] saved;

    FixedStrips(List<Long> lengths) {
        this.lengths = lengths.stream().mapToLong(Long::longValue).toArray();
        this.places = IntStream.range(0, this.lengths.length)
                .boxed()
                .sorted(Comparator.comparingLong(lengths::get))
                .mapToInt(Integer::intValue)
                .toArray();
        this.open = new boolean[this.lengths.length];
        this.saved = open.clone();
    }

    @Override
    public int slots() {
        return lengths.length;
    }

    @Override
    public int[] places(int kind) {
        return places;
    }

    @Override
    public int firstPassing() {
        return 0;
    }

    @Override
    public int passingLimit() {
        return 0;
    }

    @Override
    public boolean isTail(int place) {
        return false;
    }

    @Override
    public long offered(int kind, int place, long[] used) {
        return open[place] ? 0 : lengths[place];
    }

    @Override
    public int copies(int kind, int place, long[] used) {
        return open[place] ? 0 : 1;
    }

    @Override
    public int open(int kind, int place, long[] used) {
        open[place] = true;
        return place;
    }

    @Override
    public void close(int slot) {
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
        return true;
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
        System.arraycopy(open, 0, saved, 0, open.length);
    }

    @Override
    public void restore() {
        System.arraycopy(saved, 0, open, 0, open.length);
    }

    @Override
    public String toString() {
        return Arrays.toString(lengths);
    }
}
