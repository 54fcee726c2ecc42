package hearthcloth.photo.scene;

import java.util.List;

/**
 * Uneven light: a slope across the floor, two soft shadows, fall-off to the picture's corners, contact shadows.
 *
 * @param cast what each scrap casts to one side
 */
record Light(double slopeX, double slopeY, List<Shadow> shadows, double contact, double falloff, Cast cast) {

    Light(double slopeX, double slopeY, List<Shadow> shadows, double contact, double falloff) {
        this(slopeX, slopeY, shadows, contact, falloff, Cast.NONE);
    }

    /** The shadow that a lamp to one side makes beside whatever stands off the floor a little. */
    record Cast(double x, double y, double depth) {

        static final Cast NONE = new Cast(0, 0, 0);
        private static final int RAYS = 5;

        /** The share of light that is left beside a scrap. */
        double at(Scrap scrap, double x, double y) {
            int hidden = 0;
            for (int i = 1; i <= RAYS && depth > 0; i++) {
                hidden += scrap.holds(x - this.x * i / RAYS, y - this.y * i / RAYS) ? 1 : 0;
            }
            return 1 - depth * hidden / RAYS;
        }
    }

    Light with(Cast other) {
        return new Light(slopeX, slopeY, shadows, contact, falloff, other);
    }

    /** How far a shade reaches, in its half widths. */
    private static final double REACH = 1.3;

    /** An oval shade: its middle, its half widths, how much light it takes and how soft its edge is, as a share of these. */
    record Shadow(double x, double y, double acrossMm, double downMm, double depth, double soft) {}

    double at(double x, double y) {
        double light = 1 + slopeX * x + slopeY * y;
        // Counted, since this is asked for every ray and an iterator costs as much as a shadow.
        for (int i = 0; i < shadows.size(); i++) {
            Shadow s = shadows.get(i);
            double across = (x - s.x) / s.acrossMm;
            double down = (y - s.y) / s.downMm;
            double square = across * across + down * down;
            if (square < REACH * REACH) {
                double t = Math.max(0, Math.min(1, (REACH - Math.sqrt(square)) / s.soft));
                light *= 1 - s.depth * t * t * (3 - 2 * t);
            }
        }
        return light;
    }
}
