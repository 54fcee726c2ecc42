package hearthcloth.draw.tied;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;

/**
 * A direction from which the gift is drawn, the maker at its near side; the eye is infinitely far away (a parallel
 * projection), so that equal lengths in one direction stay equal.
 *
 * @param key by which a catalogue names the direction
 * @param towards unit vector towards the eye
 * @param right unit vector to the right on the picture, {@code up} to its top
 */
record Eye(String key, Vector towards, Vector right, Vector up) {

    static final Eye ABOVE = of("above", 0, 0, 1);
    static final Eye FRONT = of("front", 0, -1, 0.2);
    static final Eye CORNER = of("corner", 0.62, -1, 0.78);

    static final Eye HIGH = of("above", 0, -1, 1.5);
    static final Eye RIGHT = of("right", 1, -0.55, 0.4);
    static final Eye LOW = of("front", 0.25, -1, 0.55);
    static final Eye SPINE = of("spine", 0, 1, 0.2);
    static final Eye BEHIND = of("corner", -0.62, 1, 0.78);

    /** The eyes for a finished gift: above, the front and a corner; for closed books the spine, where the knot is. */
    static List<Eye> on(Gift gift) {
        return gift instanceof Gift.Books ? List.of(ABOVE, SPINE, BEHIND) : List.of(ABOVE, FRONT, CORNER);
    }

    /** The eye for a moment of tying: where what has moved can be seen best. */
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

    private static Eye of(String key, double x, double y, double z) {
        Vector sum = new Vector(x, y, z);
        Vector towards = sum.times(1 / sum.length());
        Vector across = new Vector(-y, x, 0);
        Vector right = across.length() < 1e-9 ? new Vector(1, 0, 0) : across.times(1 / across.length());
        return new Eye(key, towards, right, towards.cross(right));
    }

    /** The position to the right on the picture, in millimetres of the gift. */
    double x(Vector place) {
        return right.dot(place);
    }

    /** The position down on the picture, in millimetres of the gift. */
    double y(Vector place) {
        return -up.dot(place);
    }
}
