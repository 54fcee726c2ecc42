package hearthcloth.photo.scene;

/** Uneven light: a slope across the floor, two soft shadows, fall-off to the picture's corners, contact shadows. */
record Light(double slopeX, double slopeY, double[][] shadows, double contact, double falloff) {

    double at(double x, double y) {
        double light = 1 + slopeX * x + slopeY * y;
        for (double[] s : shadows) {
            double d = Math.hypot((x - s[0]) / s[2], (y - s[1]) / s[3]);
            double t = Math.max(0, Math.min(1, (1.3 - d) / 0.6));
            light *= 1 - s[4] * t * t * (3 - 2 * t);
        }
        return light;
    }
}
