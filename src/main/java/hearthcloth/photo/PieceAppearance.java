package hearthcloth.photo;

import hearthcloth.colour.ColourName;
import hearthcloth.colour.Lab;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.segment.InteriorColour;

/**
 * How a piece looks, with the room's light removed as far as the paper and the ground allow.
 *
 * @param colour mean colour
 * @param one the darker of the two colours it is mostly made of
 * @param two the lighter of them
 * @param pattern plain or figured
 * @param contrast CIELAB difference between its colours and the ground round it, as seen in the picture
 */
public record PieceAppearance(Lab colour, Lab one, Lab two, Pattern pattern, double contrast) {

    /** Whether a fabric has a figure that can be seen at arm's length. */
    public enum Pattern {
        PLAIN,
        FIGURED
    }

    /** Mean colours with a CIEDE2000 up to this may be of one fabric. */
    private static final double ALIKE = 6;
    /** The same for each of the two main colours of a figured fabric. */
    private static final double ALIKE_FIGURE = 10;

    /** The plain English name of its colour. */
    public String name() {
        return ColourName.of(colour.toColour());
    }

    /**
     * Whether two pieces may well be of one fabric: similar in colour (CIEDE2000) and, if figured, in both main
     * colours.
     */
    public boolean isLike(PieceAppearance other) {
        if (pattern != other.pattern || colour.difference(other.colour) > ALIKE) {
            return false;
        }
        return pattern == Pattern.PLAIN
                || Math.max(one.difference(other.one), two.difference(other.two)) <= ALIKE_FIGURE;
    }

    static PieceAppearance of(InteriorColour interior, WhiteBalance light) {
        Lab colour = light.of(interior.colour(), interior.ground());
        Lab one = light.of(interior.halves().one(), interior.ground());
        Lab two = light.of(interior.halves().two(), interior.ground());
        boolean swap = one.lightness() > two.lightness();
        return new PieceAppearance(
                colour,
                swap ? two : one,
                swap ? one : two,
                interior.figured() ? Pattern.FIGURED : Pattern.PLAIN,
                interior.contrast());
    }
}
