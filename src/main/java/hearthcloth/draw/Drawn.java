package hearthcloth.draw;

import hearthcloth.draw.picture.Picture;
import java.util.function.Function;

/** A picture and the scale it is drawn at. */
record Drawn(Picture picture, Scale scale) {

    /** How many scales are tried; the last is about a quarter of the first. */
    private static final int TRIES = 14;

    /**
     * The largest drawing that fits into {@code width} by {@code height} millimetres with all its dimensions and leaders.
     * Leaders take more room the smaller the drawing is; where nothing fits, the drawing that sticks out least.
     *
     * @param first the scale at which the bare drawing fits
     */
    static Drawn within(double width, double height, Scale first, Function<Scale, Picture> drawing) {
        Scale scale = first;
        Drawn best = new Drawn(drawing.apply(first), first);
        for (int i = 1; i < TRIES && best.excess(width, height) > 0; i++) {
            scale = scale.smaller();
            Drawn drawn = new Drawn(drawing.apply(scale), scale);
            best = drawn.excess(width, height) < best.excess(width, height) ? drawn : best;
        }
        return best;
    }

    /** How far it sticks out, in millimetres; 0 where it fits. */
    double excess(double width, double height) {
        return Math.max(0, Math.max(picture.width() - width, picture.height() - height));
    }
}
