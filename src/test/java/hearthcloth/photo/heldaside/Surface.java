package hearthcloth.photo.heldaside;

/** Anything that throws light back, by place on the floor. */
interface Surface {

    /** The share of light thrown back at a place, by a sample {@code footprint} wide, into {@code out}. */
    void colour(double x, double y, double footprint, double[] out);

    /** Its mean over a patch of {@code size} about a place. */
    default Tint mean(double x, double y, double size) {
        double[] sum = new double[3];
        double[] one = new double[3];
        int n = 24;
        for (int i = 0; i < n * n; i++) {
            int row = i / n;
            int column = i % n;
            colour(x + size * ((column + 0.5) / n - 0.5), y + size * ((row + 0.5) / n - 0.5), 0.4, one);
            for (int c = 0; c < 3; c++) {
                sum[c] += one[c] / (n * n);
            }
        }
        return Tint.of(sum);
    }

    /** The same turned by an angle, its own origin at a place. */
    default Surface laid(double originX, double originY, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return (x, y, footprint, out) -> {
            double dx = x - originX;
            double dy = y - originY;
            colour(c * dx + s * dy, -s * dx + c * dy, footprint, out);
        };
    }
}
