package hearthcloth.colour;

import java.util.function.UnaryOperator;

/**
 * How a figured cloth looks: the colour it is from across a room, and how far its own colours lie from that.
 *
 * @param mean what all its colours together look like from afar
 * @param spread the root mean square of CIEDE2000 between its colours and the mean; of two colours in equal parts it is half of
 *     what they differ by
 * @param lightness the standard deviation of its L*
 * @param repeatMm how far a figure is from the next, in millimetres of cloth
 */
public record Figure(Lab mean, double spread, double lightness, double repeatMm) {

    /** The same to other eyes: its mean as they see it. */
    public Figure seen(UnaryOperator<Colour> eye) {
        return new Figure(eye.apply(mean.toColour()).lab(), spread, lightness, repeatMm);
    }
}
