package hearthcloth.cutstock.job;

import java.util.stream.Stream;

/**
 * A rectangle of a stock piece and what becomes of it: a part, an offcut, or one straight cut from edge to edge and two
 * smaller rectangles. Read from the root it is the order of cutting.
 */
public sealed interface Cutting {

    /** Left edge, across the piece. */
    long x();

    /** Upper edge, along the piece. */
    long y();

    /** Extent across the piece. */
    long width();

    /** Extent along the piece. */
    long height();

    /** Area in square units. */
    default double area() {
        return (double) width() * height();
    }

    /** Every leaf under this rectangle, in cutting order. */
    default Stream<Cutting> leaves() {
        return this instanceof Cut cut
                ? Stream.concat(cut.first().leaves(), cut.second().leaves())
                : Stream.of(this);
    }

    /** How many cuts it takes. */
    default int cuts() {
        return this instanceof Cut cut ? 1 + cut.first().cuts() + cut.second().cuts() : 0;
    }

    /**
     * A wanted rectangle.
     *
     * @param demand the id of the block or bar
     * @param index which part of a bar, from 0 in the order of joining; 0 for a block
     * @param turned whether its own width runs along the piece's length
     */
    record Part(int demand, int index, long x, long y, long width, long height, boolean turned) implements Cutting {

        /** The extent that counts towards a bar's length. */
        public long cutLength() {
            return turned ? width : height;
        }
    }

    /** What is left over. */
    record Offcut(long x, long y, long width, long height) implements Cutting {}

    /**
     * A straight cut.
     *
     * @param lengthwise whether the cut runs along the piece's length, at x = at, and not across it, at y = at
     * @param first the left or upper side
     * @param second the right or lower side
     */
    record Cut(long x, long y, long width, long height, boolean lengthwise, long at, Cutting first, Cutting second)
            implements Cutting {}
}
