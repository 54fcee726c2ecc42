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

    /** A place inside, for a shape that is not too bent. */
    Spot middle() {
        double x = rim.stream().mapToDouble(Spot::x).average().orElse(0);
        double y = rim.stream().mapToDouble(Spot::y).average().orElse(0);
        return new Spot(x, y);
    }
}
