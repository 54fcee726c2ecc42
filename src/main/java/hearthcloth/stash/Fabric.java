package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.colour.Lab;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A fabric by name: everything that all its pieces share.
 *
 * @param name as the maker calls it; any text that is not blank
 * @param faces whether it looks alike from both sides
 * @param nap whether it may be turned across
 * @param wrong the colour of its wrong side, or of its other face, where she says so
 * @param pictured how figured it is, read off her picture of it; two fabrics are the same whether or not there is one
 */
public record Fabric(
        String name, Colour colour, Faces faces, Nap nap, Optional<Colour> wrong, Optional<Figure> pictured) {

    /** Whether the two sides of a fabric look alike. */
    public enum Faces {
        /** No right side: either face may show, also where they have colours of their own. */
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

    /** A fabric of which there is no picture. */
    public Fabric(String name, Colour colour, Faces faces, Nap nap, Optional<Colour> wrong) {
        this(name, colour, faces, nap, wrong, Optional.empty());
    }

    /** A fabric of whose wrong side no colour is known. */
    public Fabric(String name, Colour colour, Faces faces, Nap nap) {
        this(name, colour, faces, nap, Optional.empty());
    }

    /** The colour of its wrong side: as she says, else that of its right side. */
    public Colour wrongSide() {
        return wrong.orElse(colour);
    }

    /** Whether its two sides are told apart: one is the right one, or the other has a colour of its own. */
    public boolean isSided() {
        return faces == Faces.RIGHT || isTwoFaced();
    }

    /** Whether either of two faces of different colours may lie outside, since neither is the right one. */
    public boolean isTurnable() {
        return faces == Faces.SAME && isTwoFaced();
    }

    private boolean isTwoFaced() {
        return !wrongSide().equals(colour);
    }

    /** The same fabric under another name. */
    public Fabric called(String other) {
        return new Fabric(other, colour, faces, nap, wrong, pictured);
    }

    /** The same fabric with both its sides seen otherwise. */
    public Fabric seen(UnaryOperator<Colour> eye) {
        return new Fabric(
                name, eye.apply(colour), faces, nap, wrong.map(eye), pictured.map(figure -> figure.seen(eye)));
    }

    /** The same fabric with what her picture of it shows. */
    public Fabric pictured(Figure figure) {
        return new Fabric(name, colour, faces, nap, wrong, Optional.of(figure));
    }

    /** How figured it is: as her picture shows, else as its words tell; empty for plain cloth. */
    public Optional<Figure> figure() {
        return pictured.isPresent() ? pictured : FabricPattern.said(this);
    }

    /** What its right side looks like from across a room. */
    public Lab mean() {
        return pictured.map(Figure::mean).orElseGet(colour::lab);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Fabric that
                        && name.equals(that.name)
                        && colour.equals(that.colour)
                        && faces == that.faces
                        && nap == that.nap
                        && wrong.equals(that.wrong));
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + colour.hashCode();
    }

    @Override
    public String toString() {
        return "Fabric[" + name + ", " + colour.hex() + ", " + faces + ", " + nap
                + wrong.map(side -> ", " + side.hex()).orElse("") + "]";
    }
}
