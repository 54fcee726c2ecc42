package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a covered rectangle with all that lies in a row taken as one row: A | (B | C) has three parts. Any of them
 * may be put together anew, since their order costs nothing.
 */
final class Plank {

    final boolean beside;
    final List<Plank> parts = new ArrayList<>();
    Pieced leaf;
    long width;
    long height;
    int patches;

    private Plank(boolean beside, Pieced leaf) {
        this.beside = beside;
        this.leaf = leaf;
    }

    static Plank of(Pieced tree) {
        if (tree instanceof ScrapPatch patch) {
            Plank plank = new Plank(false, patch);
            plank.width = patch.width();
            plank.height = patch.height();
            plank.patches = 1;
            return plank;
        }
        Joint joint = (Joint) tree;
        Plank plank = new Plank(joint.beside(), tree);
        plank.take(joint);
        for (Plank part : plank.parts) {
            plank.width = plank.beside ? plank.width + part.width : part.width;
            plank.height = plank.beside ? part.height : plank.height + part.height;
            plank.patches += part.patches;
        }
        return plank;
    }

    private void take(Joint joint) {
        for (Pieced side : List.of(joint.first(), joint.second())) {
            if (side instanceof Joint inner && inner.beside() == beside) {
                take(inner);
            } else {
                parts.add(of(side));
            }
        }
    }

    boolean isPatch() {
        return parts.isEmpty();
    }

    Pieced tree() {
        return isPatch() ? leaf : row(parts);
    }

    /** Parts of this row as one tree. */
    Pieced row(List<Plank> some) {
        Pieced tree = some.get(0).tree();
        for (int i = 1; i < some.size(); i++) {
            tree = new Joint(beside, tree, some.get(i).tree());
        }
        return tree;
    }

    /** All rows within, this one first. */
    void rows(List<Plank> into) {
        if (!isPatch()) {
            into.add(this);
            parts.forEach(part -> part.rows(into));
        }
    }
}
