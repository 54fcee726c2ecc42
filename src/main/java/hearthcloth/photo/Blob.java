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

    /** What the boxes round both share, of what they cover together. */
    double boxShare(Blob other) {
        double[] a = box();
        double[] b = other.box();
        double both = Math.max(0, Math.min(a[2], b[2]) - Math.max(a[0], b[0]))
                * Math.max(0, Math.min(a[3], b[3]) - Math.max(a[1], b[1]));
        double all = (a[2] - a[0]) * (a[3] - a[1]) + (b[2] - b[0]) * (b[3] - b[1]) - both;
        return both / Math.max(1, all);
    }

    private double[] box() {
        return new double[] {
            rim.stream().mapToDouble(Spot::x).min().orElse(0),
            rim.stream().mapToDouble(Spot::y).min().orElse(0),
            rim.stream().mapToDouble(Spot::x).max().orElse(0),
            rim.stream().mapToDouble(Spot::y).max().orElse(0)
        };
    }
}
