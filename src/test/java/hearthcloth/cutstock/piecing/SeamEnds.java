package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays a cloth out in finished places and looks at every pair of seams that end on the two sides of another. Shares nothing
 * with the search: seams are lines in the plane here.
 */
final class SeamEnds {

    /** A seam from (x, y) on, level or upright. */
    private record Line(boolean level, long x, long y, long length) {
        boolean endsOn(Line other, boolean before) {
            long at = level ? (before ? x + length : x) : (before ? y + length : y);
            long on = other.level ? other.y : other.x;
            long across = level ? y : x;
            long from = other.level ? other.x : other.y;
            return level != other.level && at == on && across > from && across < from + other.length;
        }

        long across() {
            return level ? y : x;
        }
    }

    private final long first;
    private final long second;
    private final List<Line> lines = new ArrayList<>();

    private SeamEnds(long first, long second) {
        this.first = first;
        this.second = second;
    }

    /** The least distance, when each seam takes so much of what lies to its left or above, and of what lies beyond. */
    static long nearest(Pieced tree, long first, long second) {
        SeamEnds ends = new SeamEnds(first, second);
        ends.lay(tree, 0, 0);
        long nearest = Long.MAX_VALUE;
        for (Line seam : ends.lines) {
            for (Line a : ends.lines) {
                for (Line b : ends.lines) {
                    if (a.endsOn(seam, true) && b.endsOn(seam, false)) {
                        nearest = Math.min(nearest, Math.abs(a.across() - b.across()));
                    }
                }
            }
        }
        return nearest;
    }

    /** Lays a part with its cut corner at a place; gives its cut width and height. */
    private long[] lay(Pieced tree, long x, long y) {
        if (tree instanceof ScrapPatch patch) {
            return new long[] {patch.width(), patch.height()};
        }
        Joint joint = (Joint) tree;
        long[] a = lay(joint.first(), x, y);
        long eaten = first + second;
        if (joint.beside()) {
            long[] b = lay(joint.second(), x + a[0] - eaten, y);
            lines.add(new Line(false, x + a[0] - first, y + second, a[1] - eaten));
            return new long[] {a[0] + b[0] - eaten, a[1]};
        }
        long[] b = lay(joint.second(), x, y + a[1] - eaten);
        lines.add(new Line(true, x + second, y + a[1] - first, a[0] - eaten));
        return new long[] {a[0], a[1] + b[1] - eaten};
    }
}
