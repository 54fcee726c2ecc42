package hearthcloth.wrap;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;

/**
 * How the gift stands on the cloth: how far off its middle, how the cloth is turned and which face ends outside.
 *
 * @param right how far the gift's middle lies to the right of the cloth's middle
 * @param away how far it lies away from the maker
 * @param quarterTurns quarter turns of the cloth, anticlockwise seen from above; 0 to 3
 * @param out the face that shows on the tied gift, which is the one lying on the table
 */
public record Placing(Length right, Length away, int quarterTurns, Face out) {

    /** The gift in the middle, the front outside. */
    public static final Placing CENTRED = new Placing(Length.ZERO, Length.ZERO, 0, Face.FRONT);

    public Placing {
        quarterTurns = Math.floorMod(quarterTurns, 4);
    }

    /** The same with the gift moved off the middle. */
    public Placing shifted(Length right, Length away) {
        return new Placing(right, away, quarterTurns, out);
    }

    /** The same with the cloth turned on by quarters. */
    public Placing turned(int quarters) {
        return new Placing(right, away, quarterTurns + quarters, out);
    }

    /** The same with this face outside. */
    public Placing showing(Face face) {
        return new Placing(right, away, quarterTurns, face);
    }
}
