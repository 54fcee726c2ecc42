package hearthcloth.stash;

import hearthcloth.colour.Colour;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A fabric by name: everything that all its pieces share.
 *
 * @param name as the maker calls it; any text that is not blank
 * @param faces whether it looks alike from both sides
 * @param nap whether it may be turned across
 * @param wrong the colour of its wrong side, or of its other face, where she says so
 */
public record Fabric(String name, Colour colour, Faces faces, Nap nap, Optional<Colour> wrong) {

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

    /** A fabric of whose wrong side no colour is known. */
    public Fabric(String name, Colour colour, Faces faces, Nap nap) {
        this(name, colour, faces, nap, Optional.empty());
    }

    /** The colour of its wrong side: as she says, else that of its right side. */
    public Colour wrongSide() {
        return wrong.orElse(colour);
    }

    /** The same fabric under another name. */
    public Fabric called(String other) {
        return new Fabric(other, colour, faces, nap, wrong);
    }

    /** The same fabric with both its sides seen otherwise. */
    public Fabric seen(UnaryOperator<Colour> eye) {
        return new Fabric(name, eye.apply(colour), faces, nap, wrong.map(eye));
    }
}
