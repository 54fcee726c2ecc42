package hearthcloth.photo.image;

import java.util.stream.IntStream;

/** Decoded pixels, upright; pixel (x, y) covers the unit square at (x, y). */
public final class PixelImage {

    public final int width;
    public final int height;
    /** Blue, green and red of each pixel, row by row. */
    private final byte[] bytes;

    public PixelImage(int width, int height) {
        this(width, height, new byte[3 * width * height]);
    }

    /**
     * A picture of these pixels.
     *
     * @param bytes blue, green and red of each pixel, row by row; kept, not copied
     */
    public PixelImage(int width, int height, byte[] bytes) {
        this.width = width;
        this.height = height;
        this.bytes = bytes;
    }

    public void put(int x, int y, int r, int g, int b) {
        int i = 3 * (y * width + x);
        bytes[i] = (byte) b;
        bytes[i + 1] = (byte) g;
        bytes[i + 2] = (byte) r;
    }

    public int rgb(int x, int y) {
        int i = 3 * (y * width + x);
        return (bytes[i + 2] & 255) << 16 | (bytes[i + 1] & 255) << 8 | (bytes[i] & 255);
    }

    /** The same picture with one pixel, their mean, for each four. */
    public PixelImage halved() {
        PixelImage half = new PixelImage(width / 2, height / 2);
        IntStream.range(0, half.height).parallel().forEach(y -> {
            for (int x = 0; x < half.width; x++) {
                for (int c = 0; c < 3; c++) {
                    int i = 3 * (2 * y * width + 2 * x) + c;
                    int sum = (bytes[i] & 255)
                            + (bytes[i + 3] & 255)
                            + (bytes[i + 3 * width] & 255)
                            + (bytes[i + 3 * width + 3] & 255);
                    half.bytes[3 * (y * half.width + x) + c] = (byte) ((sum + 2) / 4);
                }
            }
        });
        return half;
    }

    /** Whether a place lies inside the picture by at least {@code margin} pixels. */
    public boolean holds(double x, double y, double margin) {
        return x >= margin && y >= margin && x <= width - margin && y <= height - margin;
    }

    /**
     * Adds the colour at a place, interpolated between four pixels and times {@code weight}, to {@code sum} (red,
     * green, blue; 0 to 255).
     */
    public void add(double x, double y, double weight, double[] sum) {
        double px = Math.max(0, Math.min(width - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(height - 1.001, y - 0.5));
        int x0 = (int) px;
        int y0 = (int) py;
        double fx = px - x0;
        double fy = py - y0;
        int i = 3 * (y0 * width + x0);
        double a = (1 - fx) * (1 - fy) * weight;
        double b = fx * (1 - fy) * weight;
        double c = (1 - fx) * fy * weight;
        double d = fx * fy * weight;
        sum[0] += between(i + 2, a, b, c, d);
        sum[1] += between(i + 1, a, b, c, d);
        sum[2] += between(i, a, b, c, d);
    }

    private double between(int i, double a, double b, double c, double d) {
        int below = i + 3 * width;
        return a * (bytes[i] & 255)
                + b * (bytes[i + 3] & 255)
                + c * (bytes[below] & 255)
                + d * (bytes[below + 3] & 255);
    }
}
