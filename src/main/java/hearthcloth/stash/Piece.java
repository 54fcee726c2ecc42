package hearthcloth.stash;

import hearthcloth.measure.Size;

/**
 * One physical piece of fabric: a scrap, a strip, a length off the bolt.
 *
 * @param id unique in its stash, short enough to pin to the cloth: {@code 4} or {@code 4-2} (row 4, the second of it)
 * @param size width across, height along the selvage (the file's {@code length})
 * @param row the line of the stash file it came from, from 1, the header being line 1
 */
public record Piece(String id, Fabric fabric, Size size, Washed washed, int row) {

    /** Whether a piece has been washed. */
    public enum Washed {
        YES,
        NO,
        UNKNOWN
    }

    /**
     * A part of this piece, cut off, under a number of its own; a mark before this piece's number stays before the
     * part's.
     */
    public Piece part(int number, Size partSize) {
        return new Piece(id.replaceFirst("\\d.*", "") + number, fabric, partSize, washed, number);
    }

    public double areaMm2() {
        return size.areaMm2();
    }
}
