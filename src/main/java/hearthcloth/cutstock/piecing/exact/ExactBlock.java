package hearthcloth.cutstock.piecing.exact;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.Optional;

/**
 * A rectangle of whole scraps, of which nothing is trimmed.
 *
 * @param isTurnable whether all its scraps may be turned by a quarter; then its longer side lies across
 */
record ExactBlock(ScrapSet scraps, int width, int height, boolean isTurnable, Parts parts) {

    /** What it is made of. */
    sealed interface Parts {

        Parts turned();
    }

    /** One scrap, turned or not. */
    record One(int scrap, boolean isTurned) implements Parts {
        @Override
        public One turned() {
            return new One(scrap, !isTurned);
        }
    }

    /** Two blocks, beside or above each other. */
    record Two(boolean isBeside, Laid first, Laid second) implements Parts {
        @Override
        public Two turned() {
            return new Two(!isBeside, first.turned(), second.turned());
        }
    }

    /** A block as it lies in a larger one. */
    record Laid(ExactBlock block, boolean isTurned) {

        Laid turned() {
            return new Laid(block, !isTurned);
        }
    }

    static ExactBlock of(int scrap, int width, int height, boolean isTurnable) {
        return new ExactBlock(ScrapSet.of(scrap), width, height, isTurnable, new One(scrap, false)).lying();
    }

    private ExactBlock lying() {
        return isTurnable && width < height
                ? new ExactBlock(scraps, /* width= */ height, /* height= */ width, true, parts.turned())
                : this;
    }

    /** The length of a side: the width, or the height. */
    int side(boolean isWidth) {
        return isWidth ? width : height;
    }

    /**
     * The two joined at these sides, which are equally long; empty where they have a scrap in common or one lies as it may not.
     *
     * @param atWidth whether this one is joined at its width
     * @param otherAtWidth whether the other is
     */
    Optional<ExactBlock> with(boolean atWidth, ExactBlock other, boolean otherAtWidth) {
        boolean both = isTurnable && other.isTurnable;
        if (!scraps.isApartFrom(other.scraps) || (atWidth != otherAtWidth && !isTurnable && !other.isTurnable)) {
            return Optional.empty();
        }
        // as they lie: one that may not be turned says which side is joined
        boolean above = isTurnable ? !other.isTurnable && otherAtWidth : atWidth;
        int sum = side(!atWidth) + other.side(!otherAtWidth);
        int edge = side(atWidth);
        Two parts = new Two(!above, new Laid(this, above != atWidth), new Laid(other, above != otherAtWidth));
        return Optional.of(
                new ExactBlock(scraps.with(other.scraps), above ? edge : sum, above ? sum : edge, both, parts).lying());
    }

    /** Whether it covers a rectangle just so, turned by a quarter if it may be. */
    boolean covers(int wide, int high) {
        return (width == wide && height == high) || (isTurnable && width == high && height == wide);
    }

    /** The tree that covers a rectangle. */
    Pieced tree(int wide, int high) {
        return tree(parts, width, height, !(width == wide && height == high));
    }

    private static Pieced tree(Parts parts, int width, int height, boolean isTurned) {
        if (parts instanceof One one) {
            return new ScrapPatch(
                    one.scrap(), one.isTurned() ^ isTurned, isTurned ? height : width, isTurned ? width : height);
        }
        Two two = (Two) parts;
        return new Joint(two.isBeside() ^ isTurned, tree(two.first(), isTurned), tree(two.second(), isTurned));
    }

    private static Pieced tree(Laid laid, boolean isTurned) {
        ExactBlock block = laid.block();
        return tree(block.parts(), block.width(), block.height(), laid.isTurned() ^ isTurned);
    }
}
