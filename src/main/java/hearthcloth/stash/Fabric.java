package hearthcloth.stash;

import hearthcloth.colour.Colour;

/**
 * A fabric by name: everything that all its pieces share.
 *
 * @param name as the maker calls it; any text that is not blank
 * @param faces whether it looks alike from both sides
 * @param nap whether it may be turned across
 */
public record Fabric(String name, Colour colour, Faces faces, Nap nap) {

    /** Whether the two sides of a fabric look alike. */
    public enum Faces {
        /** No right side: either face may show. */
        SAME,
        /** A right side, which should show on the front. */
        RIGHT
    }

    /** Which way a fabric may lie. */
    public enum Nap {
        ANY,
        /** One way: what is cut from it keeps its length along the piece's length. */
        LENGTHWISE
    }

    public Fabric {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a fabric has a name");
        }
    }
}
