package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.tree.Pieced;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What lies on the table: scraps put together, part by part. Immutable.
 *
 * @param parts trees of net sizes in marks, their scraps numbered as in the heap; until the cloth is whole each patch is as
 *     large as its scrap
 * @param locked scraps that stay where they are put together when the rest is filled anew
 */
public record LaidOut(List<Pieced> parts, Set<Integer> locked) {

    public LaidOut {
        parts = List.copyOf(parts);
        locked = Set.copyOf(locked);
    }

    /** The part that has this scrap; −1 where it does not lie on the table. */
    public int partOf(int scrap) {
        for (int i = 0; i < parts.size(); i++) {
            if (HandTree.scraps(parts.get(i)).contains(scrap)) {
                return i;
            }
        }
        return -1;
    }

    /** All scraps on the table. */
    public Set<Integer> scraps() {
        Set<Integer> all = new TreeSet<>();
        parts.forEach(part -> all.addAll(HandTree.scraps(part)));
        return all;
    }

    /** The same with one scrap locked, or unlocked where it was. */
    public LaidOut lockTurned(int scrap) {
        Set<Integer> other = new TreeSet<>(locked);
        if (!other.remove(scrap)) {
            other.add(scrap);
        }
        return new LaidOut(parts, other);
    }

    /** The same without one part; its scraps lie in the heap again. */
    public LaidOut without(int part) {
        List<Pieced> left = new ArrayList<>(parts);
        left.remove(part);
        return of(left);
    }

    LaidOut with(Pieced part) {
        List<Pieced> more = new ArrayList<>(parts);
        more.add(part);
        return of(more);
    }

    LaidOut with(int part, Pieced other) {
        List<Pieced> changed = new ArrayList<>(parts);
        changed.set(part, other);
        return of(changed);
    }

    /** Other parts; locks of scraps that no longer lie there are gone. */
    LaidOut of(List<Pieced> other) {
        LaidOut next = new LaidOut(other, Set.of());
        Set<Integer> still = new TreeSet<>(locked);
        still.retainAll(next.scraps());
        return new LaidOut(other, still);
    }
}
