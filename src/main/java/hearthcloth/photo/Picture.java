package hearthcloth.photo;

/** Decoded pixels, upright, three bytes each; pixel (x, y) covers the unit square at (x, y). */
final class Picture {

    final int width;
    final int height;
    private final byte[] red;
    private final byte[] green;
    private final byte[] blue;

    Picture(int width, int height) {
        this.width = width;
        this.height = height;
        red = new byte[width * height];
        green = new byte[width * height];
        blue = new byte[width * height];
    }

    void put(int x, int y, int r, int g, int b) {
        int i = y * width + x;
        red[i] = (byte) r;
        green[i] = (byte) g;
        blue[i] = (byte) b;
    }

    int rgb(int x, int y) {
        int i = y * width + x;
        return (red[i] & 255) << 16 | (green[i] & 255) << 8 | (blue[i] & 255);
    }

    /** Whether a place lies inside by at least {@code margin} pixels. */
    boolean holds(double x, double y, double margin) {
        return x >= margin && y >= margin && x <= width - margin && y <= height - margin;
    }

    /** Adds the colour at a place, read between four pixels, to {@code sum} (red, green, blue; 0 to 255). */
    void add(double x, double y, double weight, double[] sum) {
        double px = Math.max(0, Math.min(width - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(height - 1.001, y - 0.5));
        int x0 = (int) px;
        int y0 = (int) py;
        double fx = px - x0;
        double fy = py - y0;
        int i = y0 * width + x0;
        double a = (1 - fx) * (1 - fy) * weight;
        double b = fx * (1 - fy) * weight;
        double c = (1 - fx) * fy * weight;
        double d = fx * fy * weight;
        sum[0] += between(red, i, a, b, c, d);
        sum[1] += between(green, i, a, b, c, d);
        sum[2] += between(blue, i, a, b, c, d);
    }

    private double between(byte[] plane, int i, double a, double b, double c, double d) {
        return a * (plane[i] & 255)
                + b * (plane[i + 1] & 255)
                + c * (plane[i + width] & 255)
                + d * (plane[i + width + 1] & 255);
    }
}
