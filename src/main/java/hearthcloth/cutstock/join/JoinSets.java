package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Bars and strips in sets, each set of strips giving its set of bars. Joins are fewest when there are as many sets as
 * possible, since a connected set of k strips has k - 1 joins however it is cut (docs/sources.md#fragmented-packing). A
 * strip that gives nothing is a set of its own.
 *
 * <p>A strip counts as its length less one loss, a bar as a debt of its length; a set can do its work when the sum is
 * at least minus one loss, and anything more is slack. To win one more set, one is broken in two, of which one works
 * and the other, the hole, falls short. Then the hole is put together with one other set at a time and the two are
 * divided anew, so that the other works with the least slack possible and the hole collects the rest, until it works
 * too. The slack of all sets together does not change, so little has to be found by chance.
 */
final class JoinSets {

    private final int strips;
    private final long[] value;
    private final int[] set;
    private final StripChain chain;
    private final SubsetSums split = new SubsetSums();

    private int count;
    private int hole;
    private final long[] slack;
    private final int[] stripsIn;
    private final int[] barsIn;
    private final boolean[] changed;

    private final int[] items;
    private int itemCount;
    private final long[] free = new long[SubsetSums.MOST];

    /**
     * Starts from sets that work.
     *
     * @param set for each strip, then for each bar, the number of its set
     */
    JoinSets(long[] stripLength, long[] barLength, long loss, int[] set, int sets, StripChain chain) {
        this.strips = stripLength.length;
        this.chain = chain;
        this.set = set;
        this.count = sets;
        this.value = new long[set.length];
        for (int i = 0; i < set.length; i++) {
            value[i] = i < strips ? stripLength[i] - loss : -barLength[i - strips];
        }
        this.slack = new long[sets + 1];
        this.stripsIn = new int[sets + 1];
        this.barsIn = new int[sets + 1];
        this.changed = new boolean[sets + 1];
        this.items = new int[set.length];
        Arrays.fill(slack, loss);
        for (int i = 0; i < set.length; i++) {
            put(i, set[i]);
        }
    }

    private void put(int item, int into) {
        set[item] = into;
        slack[into] += value[item];
        if (item < strips) {
            stripsIn[into]++;
        } else {
            barsIn[into]++;
        }
    }

    private void take(int item) {
        int from = set[item];
        slack[from] -= value[item];
        if (item < strips) {
            stripsIn[from]--;
        } else {
            barsIn[from]--;
        }
    }

    /** The number of sets. */
    int count() {
        return count;
    }

    /** Tries to win one more set with at most this many divisions; if false, the sets are no longer usable. */
    boolean win(int divisions, SplittableRandom chance) {
        int broken = set[strips + chance.nextInt(set.length - strips)];
        hole = count++;
        return stripsIn[broken] > 1 && divide(broken, hole, chance) && fill(hole, divisions, chance);
    }

    /**
     * Tries to make a set work that falls short, with the help of strips that give nothing; if false, the sets are no
     * longer usable.
     */
    boolean help(int lacking, int divisions, SplittableRandom chance) {
        for (int strip = 0; strip < strips && slack[lacking] < 0; strip++) {
            if (barsIn[set[strip]] == 0) {
                take(strip);
                put(strip, lacking);
            }
        }
        changed[lacking] = true;
        return fill(lacking, divisions, chance);
    }

    private boolean fill(int lacking, int divisions, SplittableRandom chance) {
        hole = lacking;
        idleShortest();
        for (int i = 0; i < divisions; i++) {
            if (slack[hole] >= 0 && works(hole, chance)) {
                return true;
            }
            int one = set[strips + chance.nextInt(set.length - strips)];
            int other = chance.nextInt(4) == 0 ? chance.nextInt(count) : hole;
            if (one != other && one != hole && stripsIn[other] > 0) {
                divide(one, other, chance);
            }
        }
        return false;
    }

    /** Exchanges strips so that those which give nothing are the shortest, which only adds slack to the other sets. */
    private void idleShortest() {
        Integer[] byLength = new Integer[strips];
        Arrays.setAll(byLength, i -> i);
        Arrays.sort(byLength, (i, j) -> Long.compare(value[i], value[j]));
        int low = 0;
        for (int high = strips - 1; high > low; high--) {
            int idle = byLength[high];
            if (barsIn[set[idle]] > 0 || stripsIn[set[idle]] > 1) {
                continue;
            }
            while (low < high && barsIn[set[byLength[low]]] == 0) {
                low++;
            }
            exchange(idle, byLength[low++]);
        }
    }

    private void exchange(int one, int other) {
        int mine = set[one];
        int yours = set[other];
        take(one);
        take(other);
        put(one, yours);
        put(other, mine);
        changed[mine] = true;
        changed[yours] = true;
    }

    /** Lays a set out again; its parts are then in the chain. */
    boolean works(int number, SplittableRandom chance) {
        chain.clear();
        for (int i = 0; i < set.length; i++) {
            if (set[i] == number) {
                add(i);
            }
        }
        return chain.lay(chance);
    }

    private void add(int item) {
        if (item < strips) {
            chain.addStrip(item);
        } else {
            chain.addBar(item - strips);
        }
    }

    /** Divides the contents of two sets anew, so that the first works with the least slack. */
    private boolean divide(int one, int other, SplittableRandom chance) {
        long before = collect(one, other);
        long base = before;
        int last = Math.min(itemCount, SubsetSums.MOST);
        for (int i = 0; i < last; i++) {
            int j = i + chance.nextInt(itemCount - i);
            int swap = items[i];
            items[i] = items[j];
            items[j] = swap;
            free[i] = value[items[i]];
            base -= set[items[i]] == one ? free[i] : 0;
        }
        int found = split.find(free, last, -base);
        for (int i = 0; i < found; i++) {
            if (stripsIn[other] > 0 && split.sum(i) + base > before) {
                return false;
            }
            if (fits(one, other, split.mask(i), last, chance)) {
                for (int k = 0; k < last; k++) {
                    take(items[k]);
                    put(items[k], (split.mask(i) >> k & 1) == 1 ? one : other);
                }
                changed[one] = true;
                changed[other] = true;
                return true;
            }
        }
        return false;
    }

    /** Lists the contents of the two sets; returns the slack of the first. */
    private long collect(int one, int other) {
        itemCount = 0;
        for (int i = 0; i < set.length; i++) {
            if (set[i] == one || set[i] == other) {
                items[itemCount++] = i;
            }
        }
        return slack[one];
    }

    private boolean fits(int one, int other, int mask, int last, SplittableRandom chance) {
        return layable(one, mask, 1, last, chance)
                && (other == hole ? holds(mask, last, other) : layable(other, mask, 0, last, chance));
    }

    private boolean layable(int number, int mask, int side, int last, SplittableRandom chance) {
        chain.clear();
        int strip = 0;
        for (int k = 0; k < itemCount; k++) {
            int item = items[k];
            if (k < last ? (mask >> k & 1) == side : set[item] == number) {
                add(item);
                strip += item < strips ? 1 : 0;
            }
        }
        return strip > 0 && chain.lay(chance);
    }

    /** Whether a strip is left for the hole. */
    private boolean holds(int mask, int last, int number) {
        for (int k = 0; k < itemCount; k++) {
            if (items[k] < strips && (k < last ? (mask >> k & 1) == 0 : set[items[k]] == number)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a set differs from what it was at first. */
    boolean changed(int number) {
        return changed[number];
    }

    /** The set of a bar. */
    int ofBar(int bar) {
        return set[strips + bar];
    }
}
