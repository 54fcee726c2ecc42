package hearthcloth.cutstock.join;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Keeps joins out of forbidden stretches and away from the joins of neighbouring bars, by changing the order of a bar's
 * parts and by moving length between parts whose strips have some to spare.
 *
 * <p>A depth-first search over orders and, for each join in turn, over the position nearest to the present one on
 * either side of what is forbidden. At most {@value #MOST_NODES} positions are examined, so an arrangement may be
 * missed. The position of join j is the sum of the first j cut lengths, less (j - 1) losses, less the offset.
 */
public final class JoinPlaces implements JoinRules {

    private static final int MOST_NODES = 400;

    /** A stretch in which no join may lie; its ends are allowed. */
    public record Stretch(long from, long to) {}

    /** Two bars whose joins stay apart: |p + shift - q| is at least the clearance. */
    public record Apart(int first, int second, long shift, long clearance) {}

    private final long loss;
    private final long offset;
    private final long[] length;
    private final long[] least;
    private final Stretch[][] forbidden;
    private final Apart[][] apart;

    private long[] from = new long[16];
    private long[] to = new long[16];
    private int stretches;
    private int nodes;
    private long[] position = new long[0];
    private int[] order = new int[0];

    /**
     * Rules for a list of bars.
     *
     * @param forbidden for each bar, where no join may lie
     * @param pairs which bars' joins must stay apart, by index in the list
     */
    public JoinPlaces(List<WantedBar> bars, List<List<Stretch>> forbidden, List<Apart> pairs, long loss, long offset) {
        this.loss = loss;
        this.offset = offset;
        this.length = bars.stream().mapToLong(WantedBar::length).toArray();
        this.least = bars.stream().mapToLong(WantedBar::leastPart).toArray();
        this.forbidden = forbidden.stream()
                .map(stretches -> stretches.toArray(Stretch[]::new))
                .toArray(Stretch[][]::new);
        this.apart = IntStream.range(0, bars.size())
                .mapToObj(bar -> pairs.stream()
                        .filter(pair -> pair.first() == bar || pair.second() == bar)
                        .toArray(Apart[]::new))
                .toArray(Apart[][]::new);
    }

    @Override
    public boolean concerns(int bar) {
        return forbidden[bar].length > 0 || apart[bar].length > 0;
    }

    @Override
    public boolean arrange(int bar, BarParts parts, Placed placed) {
        if (parts.count() < 2 || !concerns(bar)) {
            return true;
        }
        collect(bar, placed);
        if (stretches == 0 || stands(parts)) {
            return true;
        }
        nodes = 0;
        int count = parts.count();
        position = new long[count + 1];
        order = new int[count];
        position[0] = loss - offset;
        if (!seat(bar, parts, 0, 0)) {
            return false;
        }
        apply(parts);
        return true;
    }

    private void collect(int bar, Placed placed) {
        stretches = 0;
        for (Stretch stretch : forbidden[bar]) {
            forbid(stretch.from(), stretch.to());
        }
        for (Apart pair : apart[bar]) {
            boolean mine = pair.first() == bar;
            int other = mine ? pair.second() : pair.first();
            long shift = mine ? -pair.shift() : pair.shift();
            long at = loss - offset;
            for (int i = 0; i < placed.parts(other) - 1 && other != bar; i++) {
                at += placed.cut(other, i) - loss;
                forbid(at + shift - pair.clearance(), at + shift + pair.clearance());
            }
        }
    }

    private void forbid(long start, long end) {
        if (start < end) {
            if (stretches == from.length) {
                from = Arrays.copyOf(from, 2 * stretches);
                to = Arrays.copyOf(to, 2 * stretches);
            }
            from[stretches] = start;
            to[stretches++] = end;
        }
    }

    private boolean stands(BarParts parts) {
        long at = loss - offset;
        for (int i = 0; i < parts.count() - 1; i++) {
            at += parts.cut[i] - loss;
            if (settle(at, 1) != at) {
                return false;
            }
        }
        return true;
    }

    /** The nearest position from here in one direction that lies in no forbidden stretch. */
    private long settle(long start, int direction) {
        long at = start;
        for (int i = 0; i < stretches; i++) {
            if (from[i] < at && at < to[i]) {
                at = direction > 0 ? to[i] : from[i];
                i = -1;
            }
        }
        return at;
    }

    private boolean seat(int bar, BarParts parts, int depth, int seated) {
        int count = parts.count();
        if (depth == count - 1) {
            return last(bar, parts, seated);
        }
        for (int part = 0; part < count; part++) {
            if ((seated & 1 << part) != 0 || part > 30) {
                continue;
            }
            order[depth] = part;
            int next = seated | 1 << part;
            long end = length[bar] - offset;
            long low = Math.max(position[depth] + least[bar] - loss, end - reach(parts, next));
            long high = Math.min(
                    position[depth] + parts.most[part] - loss, end - (count - depth - 1) * (least[bar] - loss));
            if (low <= high && tryBoth(bar, parts, depth, next, low, high)) {
                return true;
            }
            if (nodes > MOST_NODES) {
                return false;
            }
        }
        return false;
    }

    private boolean tryBoth(int bar, BarParts parts, int depth, int next, long low, long high) {
        long wished = Math.max(low, Math.min(high, position[depth] + parts.cut[order[depth]] - loss));
        for (int direction = 1; direction >= -1; direction -= 2) {
            long at = settle(wished, direction);
            nodes++;
            if (at >= low && at <= high && (direction > 0 || at != wished)) {
                position[depth + 1] = at;
                if (seat(bar, parts, depth + 1, next)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The most that the parts not yet placed can reach. */
    private long reach(BarParts parts, int seated) {
        long sum = 0;
        for (int i = 0; i < parts.count(); i++) {
            if ((seated & 1 << i) == 0) {
                sum += parts.most[i] - loss;
            }
        }
        return sum;
    }

    private boolean last(int bar, BarParts parts, int seated) {
        int count = parts.count();
        order[count - 1] = Integer.numberOfTrailingZeros(~seated);
        position[count] = length[bar] - offset;
        long cut = position[count] - position[count - 1] + loss;
        return cut >= least[bar] && cut <= parts.most[order[count - 1]];
    }

    private void apply(BarParts parts) {
        int count = parts.count();
        BarParts old = new BarParts(count);
        old.copy(parts);
        for (int i = 0; i < count; i++) {
            parts.source[i] = old.source[order[i]];
            parts.most[i] = old.most[order[i]];
            parts.cut[i] = position[i + 1] - position[i] + loss;
        }
    }
}
