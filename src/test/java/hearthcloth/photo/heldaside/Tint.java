package hearthcloth.photo.heldaside;

/** A colour as light: linear shares of red, green and blue (IEC 61966-2-1 primaries). */
record Tint(double red, double green, double blue) {

    static Tint of(int rgb) {
        return new Tint(light(rgb >> 16 & 255), light(rgb >> 8 & 255), light(rgb & 255));
    }

    static Tint of(double[] rgb) {
        return new Tint(rgb[0], rgb[1], rgb[2]);
    }

    Tint times(double r, double g, double b) {
        return new Tint(red * r, green * g, blue * b);
    }

    Tint mixed(Tint other, double share) {
        return new Tint(
                red + share * (other.red - red),
                green + share * (other.green - green),
                blue + share * (other.blue - blue));
    }

    void into(double[] out, double brightness) {
        out[0] = red * brightness;
        out[1] = green * brightness;
        out[2] = blue * brightness;
    }

    /** Draws this over {@code out} with a share. */
    void over(double[] out, double share) {
        out[0] += share * (red - out[0]);
        out[1] += share * (green - out[1]);
        out[2] += share * (blue - out[2]);
    }

    /** CIELAB 1976 difference, both seen under a white of (1, 1, 1). */
    double difference(Tint other) {
        double[] a = lab();
        double[] b = other.lab();
        return Math.sqrt(square(a[0] - b[0]) + square(a[1] - b[1]) + square(a[2] - b[2]));
    }

    double luminance() {
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    }

    private double[] lab() {
        double r = Math.min(1, red);
        double g = Math.min(1, green);
        double b = Math.min(1, blue);
        double x = root((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
        double y = root(0.2126 * r + 0.7152 * g + 0.0722 * b);
        double z = root((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double square(double x) {
        return x * x;
    }

    private static double light(int code) {
        double c = code / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
