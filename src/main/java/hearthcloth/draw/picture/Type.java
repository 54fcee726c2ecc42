package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Typeface;
import hearthcloth.draw.letters.Weight;

/**
 * How words are set.
 *
 * @param size of the em, in millimetres
 * @param anchor which end of the words stands at their point
 * @param way along or up the page
 */
public record Type(double size, Weight weight, Colour colour, Anchor anchor, Way way) {

    /** Which part of a line of words stands at its point. */
    public enum Anchor {
        START("start", 0),
        MIDDLE("middle", 0.5),
        END("end", 1);

        private final String word;
        private final double share;

        Anchor(String word, double share) {
            this.word = word;
            this.share = share;
        }

        /** The word in SVG. */
        String word() {
            return word;
        }

        /** The share of the words that lies before the point. */
        double share() {
            return share;
        }
    }

    /** Which way a line of words runs. */
    public enum Way {
        ALONG,
        /** From the foot of the page upwards, a quarter turn to the left. */
        UP
    }

    /** The printer's point in millimetres. */
    public static final double POINT = 25.4 / 72;

    public static Type of(double size, Weight weight, Colour colour) {
        return new Type(size, weight, colour, Anchor.START, Way.ALONG);
    }

    public Type at(Anchor other) {
        return new Type(size, weight, colour, other, way);
    }

    public Type running(Way other) {
        return new Type(size, weight, colour, anchor, other);
    }

    public Type in(Colour other) {
        return new Type(size, weight, other, anchor, way);
    }

    public Type in(Weight other) {
        return new Type(size, other, colour, anchor, way);
    }

    public Type sized(double other) {
        return new Type(other, weight, colour, anchor, way);
    }

    public double width(String text) {
        return Typeface.width(text, size, weight);
    }

    /** The distance between baselines, in millimetres. */
    public double leading() {
        return size * 1.28;
    }
}
