package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Which bar is pieced from which parts of which strips, in flat arrays so that copying is cheap. A bar for which there
 * is not enough may be begun; its parts then cover only some of it.
 */
public final class Piecework implements JoinRules.Placed {

    /** The most parts of one bar. */
    private static final int MOST_PARTS = 64;

    private final long[] length;
    private final long[] leastPart;
    private final int[] mostParts;
    private final int[][] kinds;
    final int capacity;

    private final int[] parts;
    private final int[] strip;
    private final long[] cut;
    private final long[] used;
    private final long[] lacking;
    private final int mostJoins;
    private int joins;
    private int missing;
    private long missingLength;
    private long held;

    Piecework(List<WantedBar> bars, int slots, long loss) {
        int n = bars.size();
        length = bars.stream().mapToLong(WantedBar::length).toArray();
        leastPart = bars.stream().mapToLong(WantedBar::leastPart).toArray();
        mostParts = bars.stream().mapToInt(bar -> mostParts(bar, loss)).toArray();
        kinds = bars.stream()
                .map(bar -> bar.kinds().stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        capacity = Arrays.stream(mostParts).max().orElse(1);
        mostJoins = Arrays.stream(mostParts).sum();
        parts = new int[n];
        strip = new int[n * capacity];
        cut = new long[n * capacity];
        used = new long[slots];
        lacking = length.clone();
        missing = n;
        missingLength = Arrays.stream(length).sum();
    }

    /** The most parts a bar can have: each part is at least the least part, and adds more than a join loses. */
    private static int mostParts(WantedBar bar, long loss) {
        long gain = Math.max(bar.leastPart(), loss + 1) - loss;
        long possible = Math.max(1, (bar.length() - loss) / gain);
        return (int) Math.min(Math.min(possible, MOST_PARTS), bar.mostJoins() + 1L);
    }

    int bars() {
        return length.length;
    }

    long length(int bar) {
        return length[bar];
    }

    long leastPart(int bar) {
        return leastPart[bar];
    }

    int mostParts(int bar) {
        return mostParts[bar];
    }

    int[] kinds(int bar) {
        return kinds[bar];
    }

    /**
     * Sets how much of each strip counts as used only to keep it open, for the strips that parts are placed on from now
     * on.
     */
    void hold(long length) {
        held = length;
    }

    long[] used() {
        return used;
    }

    /** The joins in all bars that are pieced, without those only begun. */
    public int joins() {
        return joins;
    }

    /** More joins than all bars can have together. */
    int mostJoins() {
        return mostJoins;
    }

    /** The number of bars that are not pieced. */
    public int missing() {
        return missing;
    }

    /** A random one of the bars that are not pieced; there must be one. */
    int someMissing(SplittableRandom chance) {
        int skip = chance.nextInt(missing);
        int bar = 0;
        while (lacking[bar] == 0 || skip-- > 0) {
            bar++;
        }
        return bar;
    }

    /** The length still to be cut for them, including one more join's loss for each that is begun. */
    public long missingLength() {
        return missingLength;
    }

    /** The length still to be cut for a bar; 0 once it is pieced. */
    long lacking(int bar) {
        return lacking[bar];
    }

    /** Whether a bar is pieced and not only begun. */
    public boolean pieced(int bar) {
        return lacking[bar] == 0;
    }

    @Override
    public int parts(int bar) {
        return parts[bar];
    }

    @Override
    public long cut(int bar, int part) {
        return cut[bar * capacity + part];
    }

    /** The slot of the strip a part is cut from. */
    public int strip(int bar, int part) {
        return strip[bar * capacity + part];
    }

    /** Whether two bars could be pieced from strips of one kind. */
    boolean kindred(int one, int other) {
        for (int mine : kinds[one]) {
            for (int theirs : kinds[other]) {
                if (mine == theirs) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether two bars shared a strip in an earlier state. */
    boolean share(Piecework earlier, int one, int other) {
        for (int i = 0; i < earlier.parts[one]; i++) {
            for (int j = 0; j < earlier.parts[other]; j++) {
                if (earlier.strip[one * capacity + i] == earlier.strip[other * capacity + j]) {
                    return true;
                }
            }
        }
        return false;
    }

    void place(int bar, BarParts pieces, int ofKind, StripSource strips) {
        int at = bar * capacity;
        for (int i = 0; i < pieces.count; i++) {
            int source = pieces.source[i];
            int slot = source < 0 ? strips.open(ofKind, ~source, used) : source;
            if (slot < 0 || strips.length(slot) - used[slot] + held < pieces.cut[i]) {
                giveUp(bar, i, source < 0 ? slot : -1, strips);
                return;
            }
            strip[at + i] = slot;
            cut[at + i] = pieces.cut[i];
            used[slot] += pieces.cut[i];
        }
        parts[bar] = pieces.count;
        finish(bar);
    }

    private void finish(int bar) {
        joins += parts[bar] - 1;
        missing--;
        missingLength -= lacking[bar];
        lacking[bar] = 0;
    }

    /**
     * Adds a part as long as possible to a bar that is not pieced.
     *
     * @return whether more is lacking and could be added
     */
    boolean lengthen(int bar, int source, long longest, int ofKind, long loss, StripSource strips) {
        long wanted = parts[bar] == 0 ? length[bar] : Math.max(lacking[bar], leastPart[bar]);
        long part = Math.min(longest, wanted);
        if (part > lacking[bar] && !shorten(bar, part - lacking[bar])) {
            return false;
        }
        int slot = source < 0 ? strips.open(ofKind, ~source, used) : source;
        if (slot < 0) {
            return false;
        }
        strip[bar * capacity + parts[bar]] = slot;
        cut[bar * capacity + parts[bar]++] = part;
        used[slot] += part;
        if (part == lacking[bar]) {
            finish(bar);
            return false;
        }
        missingLength += loss - part;
        lacking[bar] += loss - part;
        return parts[bar] < mostParts[bar];
    }

    /** Shortens the parts of a bar that is begun, so that its last part can be long enough. */
    private boolean shorten(int bar, long by) {
        for (int at = bar * capacity; at < bar * capacity + parts[bar]; at++) {
            if (cut[at] - by >= leastPart[bar]) {
                cut[at] -= by;
                used[strip[at]] -= by;
                lacking[bar] += by;
                missingLength += by;
                return true;
            }
        }
        return false;
    }

    /**
     * Undoes a placing that found its strip no longer there, which happens when two chosen places turn out to be one.
     */
    private void giveUp(int bar, int done, int slot, StripSource strips) {
        if (slot >= 0) {
            strips.close(slot);
        }
        for (int i = 0; i < done; i++) {
            release(bar * capacity + i, strips);
        }
    }

    private void release(int at, StripSource strips) {
        int slot = strip[at];
        used[slot] -= cut[at];
        if (used[slot] == 0) {
            strips.close(slot);
        }
    }

    void remove(int bar, StripSource strips) {
        for (int i = 0; i < parts[bar]; i++) {
            release(bar * capacity + i, strips);
        }
        if (lacking[bar] == 0) {
            joins -= parts[bar] - 1;
            missing++;
        }
        missingLength += length[bar] - lacking[bar];
        lacking[bar] = length[bar];
        parts[bar] = 0;
    }

    void copy(Piecework other) {
        System.arraycopy(other.parts, 0, parts, 0, parts.length);
        System.arraycopy(other.strip, 0, strip, 0, strip.length);
        System.arraycopy(other.cut, 0, cut, 0, cut.length);
        System.arraycopy(other.used, 0, used, 0, used.length);
        System.arraycopy(other.lacking, 0, lacking, 0, lacking.length);
        joins = other.joins;
        missing = other.missing;
        missingLength = other.missingLength;
    }
}
