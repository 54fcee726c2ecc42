package hearthcloth.draw.soft;

import hearthcloth.draw.picture.Picture;
import java.util.ArrayList;
import java.util.List;

/** A face of the cloth to lay on its surface, in several finenesses, each half the one before. */
public final class Skin {

    /** Red, green and blue from 0 to 255, three a dot; from the finest on. */
    private final List<float[]> levels = new ArrayList<>();

    private final int side;

    private Skin(int side, float[] finest) {
        this.side = side;
        levels.add(finest);
        for (int wide = side; wide > 1; wide /= 2) {
            levels.add(halved(levels.get(levels.size() - 1), wide));
        }
    }

    /**
     * A face from its drawing.
     *
     * @param side of the finest, in dots, a power of two; the drawing is stretched to a square
     */
    public static Skin of(Picture picture, int side) {
        Painting painting = Painting.of(picture, side, side);
        float[] finest = new float[3 * side * side];
        for (int k = 0; k < side * side; k++) {
            for (int c = 0; c < 3; c++) {
                finest[3 * k + c] = 255 * (painting.dots[4 * k + c] + 1 - painting.dots[4 * k + 3]);
            }
        }
        return new Skin(side, finest);
    }

    private static float[] halved(float[] fine, int wide) {
        int half = wide / 2;
        float[] coarse = new float[3 * half * half];
        for (int y = 0; y < half; y++) {
            for (int x = 0; x < half; x++) {
                for (int c = 0; c < 3; c++) {
                    int at = 3 * (2 * y * wide + 2 * x) + c;
                    coarse[3 * (y * half + x) + c] =
                            (fine[at] + fine[at + 3] + fine[at + 3 * wide] + fine[at + 3 * wide + 3]) / 4;
                }
            }
        }
        return coarse;
    }

    int side() {
        return side;
    }

    /** How coarse it is best taken where so many dots of the finest fall on one along a line. */
    int level(double times) {
        int level = 0;
        for (double most = 1.41; times > most && level < levels.size() - 1; most *= 2) {
            level++;
        }
        return level;
    }

    /** The mean of the four nearest dots at shares of width and height. */
    void sample(int level, double u, double v, double[] into) {
        float[] dots = levels.get(level);
        int wide = side >> level;
        double x = Math.max(0, Math.min(wide - 1.0, u * wide - 0.5));
        double y = Math.max(0, Math.min(wide - 1.0, v * wide - 0.5));
        int left = (int) x;
        int top = (int) y;
        double right = x - left;
        double below = y - top;
        int a = 3 * (top * wide + left);
        int b = 3 * (top * wide + Math.min(left + 1, wide - 1));
        int c = 3 * (Math.min(top + 1, wide - 1) * wide + left);
        int d = 3 * (Math.min(top + 1, wide - 1) * wide + Math.min(left + 1, wide - 1));
        for (int i = 0; i < 3; i++) {
            double upper = dots[a + i] + (dots[b + i] - dots[a + i]) * right;
            double lower = dots[c + i] + (dots[d + i] - dots[c + i]) * right;
            into[i] = upper + (lower - upper) * below;
        }
    }
}
