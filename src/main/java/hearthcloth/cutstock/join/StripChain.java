package hearthcloth.cutstock.join;

import java.util.SplittableRandom;

/**
 * Lays strips end to end and cuts bars off them one after another, so that a set of strips gives a set of bars with at
 * most one join for each strip but the first. Where a part would be too short, the parts before it are shortened. The
 * order of strips and bars is random, and several orders are tried.
 */
final class StripChain {

    /** The number of orders tried. */
    private static final int ORDERS = 12;

    private final long loss;
    private final long[] stripLength;
    private final long[] barLength;
    private final long[] leastPart;
    private final int[] mostParts;

    private final int[] strips;
    private final int[] bars;
    private int stripCount;
    private int barCount;

    // the parts, bar by bar in the order of bars
    private final int[] source;
    private final long[] cut;
    private final int[] firstPart;
    private int parts;

    private int next;
    private long left;

    StripChain(long[] stripLength, long[] barLength, long[] leastPart, int[] mostParts, long loss) {
        this.stripLength = stripLength;
        this.barLength = barLength;
        this.leastPart = leastPart;
        this.mostParts = mostParts;
        this.loss = loss;
        this.strips = new int[stripLength.length];
        this.bars = new int[barLength.length];
        this.source = new int[stripLength.length + barLength.length];
        this.cut = new long[stripLength.length + barLength.length];
        this.firstPart = new int[barLength.length + 1];
    }

    /** Empties the set. */
    void clear() {
        stripCount = 0;
        barCount = 0;
        parts = 0;
    }

    void addStrip(int strip) {
        strips[stripCount++] = strip;
    }

    void addBar(int bar) {
        bars[barCount++] = bar;
    }

    /** Whether a way was found; the parts then say how. */
    boolean lay(SplittableRandom chance) {
        if (barCount == 0 || lay()) {
            return true;
        }
        for (int order = 1; order < ORDERS && (barCount > 1 || order < 3); order++) {
            shuffle(strips, stripCount, chance);
            shuffle(bars, barCount, chance);
            if (lay()) {
                return true;
            }
        }
        return false;
    }

    private static void shuffle(int[] numbers, int count, SplittableRandom chance) {
        for (int i = count - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            int swap = numbers[i];
            numbers[i] = numbers[j];
            numbers[j] = swap;
        }
    }

    private boolean lay() {
        parts = 0;
        next = 0;
        left = 0;
        for (int i = 0; i < barCount; i++) {
            firstPart[i] = parts;
            if (!cut(bars[i], leastPart[bars[i]]) || parts - firstPart[i] > mostParts[bars[i]]) {
                return false;
            }
        }
        firstPart[barCount] = parts;
        return true;
    }

    /** Cuts a bar off the chain; a remainder too short for a part is thrown away. */
    private boolean cut(int bar, long least) {
        int first = parts;
        long need = barLength[bar];
        while (left < need) {
            if (left >= least && left > loss) {
                add(left);
                need += loss - left;
            }
            if (next == stripCount) {
                return false;
            }
            left = stripLength[strips[next++]];
        }
        long last = parts == first ? need : Math.max(need, least);
        if (last > left || !shorten(first, least, last - need)) {
            return false;
        }
        left -= last;
        add(last);
        return true;
    }

    private void add(long length) {
        source[parts] = strips[next - 1];
        cut[parts++] = length;
    }

    private boolean shorten(int first, long least, long by) {
        long lacking = by;
        for (int i = first; i < parts && lacking > 0; i++) {
            long less = Math.min(lacking, cut[i] - least);
            cut[i] -= less;
            lacking -= less;
        }
        return lacking == 0;
    }

    /** How many bars are in the set. */
    int bars() {
        return barCount;
    }

    /** The i-th bar of the set, in the order laid. */
    int bar(int i) {
        return bars[i];
    }

    /** Where the parts of the i-th bar begin; those of the next begin where they end. */
    int firstPart(int i) {
        return firstPart[i];
    }

    int source(int part) {
        return source[part];
    }

    long cut(int part) {
        return cut[part];
    }

    /** The length that a part could have if its bar needed more. */
    long most(int part) {
        int strip = source[part];
        for (int i = 0; i < parts; i++) {
            if (i != part && source[i] == strip) {
                return cut[part];
            }
        }
        return stripLength[strip];
    }
}
