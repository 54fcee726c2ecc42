package hearthcloth.cutstock.join;

/** A bar's parts while it is being pieced: the strip of each, how much is cut, and how much could be cut at most. */
final class BarParts {

    final int[] source;
    final long[] cut;
    final long[] most;
    int count;

    BarParts(int capacity) {
        source = new int[capacity];
        cut = new long[capacity];
        most = new long[capacity];
    }

    void add(int from, long length, long longest) {
        source[count] = from;
        cut[count] = length;
        most[count++] = longest;
    }

    void copy(BarParts other) {
        count = other.count;
        System.arraycopy(other.source, 0, source, 0, count);
        System.arraycopy(other.cut, 0, cut, 0, count);
        System.arraycopy(other.most, 0, most, 0, count);
    }

    /** The number of parts. */
    public int count() {
        return count;
    }
}
