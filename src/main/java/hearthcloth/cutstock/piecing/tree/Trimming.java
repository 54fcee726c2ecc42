package hearthcloth.cutstock.piecing.tree;

import java.util.List;
import java.util.Optional;

/**
 * Brings a tree whose patches are still as large as their scraps to a wished size. What stands out is trimmed where a unit
 * cuts into fewest patches; no patch becomes smaller than the least. Sides that meet are then equal.
 *
 * <p>Sizes are net: beside each other widths add up and the height is the lesser of the two.
 */
public final class Trimming {

    private final TrimLimits limits;

    private Trimming(TrimLimits limits) {
        this.limits = limits;
    }

    /** The tree at exactly this net size; empty if it is too small, or a patch would be trimmed too far. */
    public static Optional<Pieced> to(Pieced tree, long width, long height, TrimLimits limits) {
        Trimming trimming = new Trimming(limits);
        Part part = trimming.part(tree);
        boolean possible = part.width >= width
                && part.height >= height
                && part.width - part.give.width <= width
                && part.height - part.give.height <= height;
        return possible ? Optional.of(trimming.cut(part, width, height)) : Optional.empty();
    }

    /**
     * The net size a tree has before anything stands out over it, and how far that can be trimmed.
     *
     * @param offWidth how much can come off the width before a patch is trimmed too far
     * @param offHeight the same of the height
     */
    public record Extent(long width, long height, long offWidth, long offHeight) {}

    /** The largest size of a tree; its sides may be negative to trim where patches are too small already. */
    public static Extent extent(Pieced tree, TrimLimits limits) {
        Part part = new Trimming(limits).part(tree);
        return new Extent(part.width, part.height, part.give.width, part.give.height);
    }

    /** A part with its size, how much can be trimmed, and how many patches a unit off cuts into. */
    private record Part(Pieced tree, List<Part> parts, long width, long height, Give give) {}

    private record Give(long width, long height, int acrossWidth, int acrossHeight) {}

    private Part part(Pieced tree) {
        if (tree instanceof ScrapPatch patch) {
            return new Part(
                    tree,
                    List.of(),
                    patch.width(),
                    patch.height(),
                    new Give(limits.offWidth(patch), limits.offHeight(patch), 1, 1));
        }
        Joint joint = (Joint) tree;
        Part a = part(joint.first());
        Part b = part(joint.second());
        return joint.beside() ? beside(tree, a, b) : above(tree, a, b);
    }

    private static Part beside(Pieced tree, Part a, Part b) {
        long height = Math.min(a.height, b.height);
        long give = Math.min(a.give.height - a.height, b.give.height - b.height) + height;
        return new Part(
                tree,
                List.of(a, b),
                a.width + b.width,
                height,
                new Give(
                        a.give.width + b.give.width,
                        give,
                        Math.min(a.give.acrossWidth, b.give.acrossWidth),
                        a.give.acrossHeight + b.give.acrossHeight));
    }

    private static Part above(Pieced tree, Part a, Part b) {
        long width = Math.min(a.width, b.width);
        long give = Math.min(a.give.width - a.width, b.give.width - b.width) + width;
        return new Part(
                tree,
                List.of(a, b),
                width,
                a.height + b.height,
                new Give(
                        give,
                        a.give.height + b.give.height,
                        a.give.acrossWidth + b.give.acrossWidth,
                        Math.min(a.give.acrossHeight, b.give.acrossHeight)));
    }

    private Pieced cut(Part part, long width, long height) {
        if (part.tree instanceof ScrapPatch patch) {
            return new ScrapPatch(patch.scrap(), patch.turned(), width, height);
        }
        Part a = part.parts.get(0);
        Part b = part.parts.get(1);
        if (((Joint) part.tree).beside()) {
            long off = a.width + b.width - width;
            long offA = a.give.acrossWidth <= b.give.acrossWidth
                    ? Math.min(off, a.give.width)
                    : off - Math.min(off, b.give.width);
            return new Joint(true, cut(a, a.width - offA, height), cut(b, b.width - off + offA, height));
        }
        long off = a.height + b.height - height;
        long offA = a.give.acrossHeight <= b.give.acrossHeight
                ? Math.min(off, a.give.height)
                : off - Math.min(off, b.give.height);
        return new Joint(false, cut(a, width, a.height - offA), cut(b, width, b.height - off + offA));
    }
}
