package hearthcloth.photo;

import java.util.List;

/**
 * Something that stands out from the ground: its rim as coarse pixel centres in order round it, in full picture pixels.
 *
 * @param cutOff whether it runs off the picture
 */
record Blob(List<Spot> rim, boolean cutOff) {

    Blob {
        rim = List.copyOf(rim);
    }

    /** In square pixels. */
    double area() {
        return Math.abs(Shapes.signedArea(rim));
    }
}
