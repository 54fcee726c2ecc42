package hearthcloth.draw.tied;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;


/**
 * From where the gift is looked at, the maker at its near side; far off, so that equal lengths in one way stay equal.
 *
 * @param words as a caption: {@code from above}
 * @param towards unit way towards the eye
 * @param right unit way to the right on the picture, {@code up} to its top
 */
record Eye(String words, Vector towards, Vector right, Vector up) {

    static final Eye ABOVE = of("From above", 0, 0, 1);
    static final Eye FRONT = of("From the front", 0, -1, 0.2);
    static final Eye CORNER = of("From a corner", 0.62, -1, 0.78);

    static final Eye HIGH = of("From above", 0, -1, 1.5);
    static final Eye RIGHT = of("From the right", 1, -0.55, 0.4);
    static final Eye LOW = of("From the front", 0.25, -1, 0.55);
    static final Eye SPINE = of("From the spine", 0, 1, 0.2);
    static final Eye BEHIND = of("From a corner", -0.62, 1, 0.78);

    /** Above, the front and a corner; of closed books the spine, where the knot is. */
    static List<Eye> on(Gift gift) {
        return gift instanceof Gift.Books ? List.of(ABOVE, SPINE, BEHIND) : List.of(ABOVE, FRONT, CORNER);
    }

    /** On the cloth at a moment of tying: from where what has moved is seen best. */
    static Eye at(TyingMoment moment, Gift gift) {
        return switch (moment) {
            case LAID, NEAR_OVER, ALL_BUT_FAR, FLAPS_OVER -> HIGH;
            case FIRST_PAIR -> gift instanceof Gift.Box ? HIGH : CORNER;
            case CROSSED -> gift instanceof Gift.Bottle ? BEHIND : CORNER;
            case CLOSED -> BEHIND;
            case TIED -> on(gift).get(2);
            // across the arch, so that one sees through it
            case HANDLE -> gift instanceof Gift.Bottle ? RIGHT : LOW;
            default -> CORNER;
        };
    }

    private static Eye of(String words, double x, double y, double z) {
        Vector sum = new Vector(x, y, z);
        Vector towards = sum.times(1 / sum.length());
        Vector across = new Vector(-y, x, 0);
        Vector right = across.length() < 1e-9 ? new Vector(1, 0, 0) : across.times(1 / across.length());
        return new Eye(words, towards, right, towards.cross(right));
    }

    /** To the right on the picture, in millimetres of the gift. */
    double x(Vector place) {
        return right.dot(place);
    }

    /** Down on the picture. */
    double y(Vector place) {
        return -up.dot(place);
    }
}
