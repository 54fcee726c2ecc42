package hearthcloth.cutstock.piecing.compose;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A part of a cloth with everything that lies in one line taken as one row, A | (B | C) as A, B, C: their order is free.
 * Lengths are net.
 */
final class Row {

    final boolean beside;
    final List<Row> parts;
    final long width;
    final long height;
    private Optional<ScrapPatch> patch;
    long left;
    long top;

    private Row(boolean beside, List<Row> parts, long width, long height, Optional<ScrapPatch> patch) {
        this.beside = beside;
        this.parts = parts;
        this.width = width;
        this.height = height;
        this.patch = patch;
    }

    /** The rows of a tree at cut sizes, when a seam takes so much. */
    static Row of(Pieced tree, long seam) {
        if (tree instanceof ScrapPatch patch) {
            return new Row(false, List.of(), patch.width() - seam, patch.height() - seam, Optional.of(patch));
        }
        Joint joint = (Joint) tree;
        List<Row> parts = new ArrayList<>();
        collect(joint, joint.beside(), seam, parts);
        long width =
                joint.beside() ? parts.stream().mapToLong(part -> part.width).sum() : parts.get(0).width;
        long height = joint.beside()
                ? parts.get(0).height
                : parts.stream().mapToLong(part -> part.height).sum();
        return new Row(joint.beside(), parts, width, height, Optional.empty());
    }

    private static void collect(Pieced tree, boolean beside, long seam, List<Row> into) {
        if (tree instanceof Joint joint && joint.beside() == beside) {
            collect(joint.first(), beside, seam, into);
            collect(joint.second(), beside, seam, into);
        } else {
            into.add(of(tree, seam));
        }
    }

    /** The same as a tree of seams. */
    Pieced tree() {
        if (patch.isPresent()) {
            return patch.get();
        }
        Pieced tree = parts.get(0).tree();
        for (int i = 1; i < parts.size(); i++) {
            tree = new Joint(beside, tree, parts.get(i).tree());
        }
        return tree;
    }

    ScrapPatch patch() {
        return patch.orElseThrow();
    }

    /** Lays another patch of the same size here. */
    void lay(ScrapPatch other) {
        patch = Optional.of(other);
    }

    /** Says where this and all within lie. */
    void place(long x, long y) {
        left = x;
        top = y;
        long across = x;
        long down = y;
        for (Row part : parts) {
            part.place(across, down);
            across += beside ? part.width : 0;
            down += beside ? 0 : part.height;
        }
    }

    /** All rows within, this first, and all patches. */
    void collect(List<Row> rows, List<Row> patches) {
        (parts.isEmpty() ? patches : rows).add(this);
        parts.forEach(part -> part.collect(rows, patches));
    }

    /** The ends of seams on one of its edges: top or bottom where {@code level}, else left or right. */
    void ends(boolean level, boolean first, List<Long> into) {
        if (parts.isEmpty()) {
            return;
        }
        if (beside != level) {
            parts.get(first ? 0 : parts.size() - 1).ends(level, first, into);
            return;
        }
        for (int i = 0; i < parts.size(); i++) {
            Row part = parts.get(i);
            if (i > 0) {
                into.add(level ? part.left : part.top);
            }
            part.ends(level, first, into);
        }
    }
}
