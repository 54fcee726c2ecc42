package hearthcloth.draw.cloth;

import hearthcloth.draw.picture.Picture;
import java.util.function.Function;

/** A picture and the scale it is drawn at. */
public record ScaledPicture(Picture picture, DrawingScale scale) {

    /** The number of scales tried; the last is about a quarter of the first. */
    private static final int TRIES = 14;

    /**
     * The largest drawing that fits into {@code width} by {@code height} millimetres with all its dimensions and
     * leaders. Leaders take more room the smaller the drawing is; where nothing fits, this is the drawing that exceeds
     * the room by least.
     *
     * @param first the scale at which the bare drawing fits
     */
    static ScaledPicture within(
            double width, double height, DrawingScale first, Function<DrawingScale, Picture> drawing) {
        DrawingScale scale = first;
        ScaledPicture best = new ScaledPicture(drawing.apply(first), first);
        for (int i = 1; i < TRIES && best.excess(width, height) > 0; i++) {
            scale = scale.smaller();
            ScaledPicture drawn = new ScaledPicture(drawing.apply(scale), scale);
            best = drawn.excess(width, height) < best.excess(width, height) ? drawn : best;
        }
        return best;
    }

    /** How far the drawing exceeds the room, in millimetres; 0 where it fits. */
    public double excess(double width, double height) {
        return Math.max(0, Math.max(picture.width() - width, picture.height() - height));
    }
}
