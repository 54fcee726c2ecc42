package hearthcloth.photo.scene;

import java.util.List;

/** Uneven light: a slope across the floor, two soft shadows, fall-off to the picture's corners, contact shadows. */
record Light(double slopeX, double slopeY, List<Shadow> shadows, double contact, double falloff) {

    /** A soft oval shade: its middle, its half widths and how much light it takes. */
    record Shadow(double x, double y, double acrossMm, double downMm, double depth) {}

    double at(double x, double y) {
        double light = 1 + slopeX * x + slopeY * y;
        for (Shadow s : shadows) {
            double d = Math.hypot((x - s.x) / s.acrossMm, (y - s.y) / s.downMm);
            double t = Math.max(0, Math.min(1, (1.3 - d) / 0.6));
            light *= 1 - s.depth * t * t * (3 - 2 * t);
        }
        return light;
    }
}
