package hearthcloth.photo;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;
import java.util.stream.IntStream;

/** The picture averaged down to about 1200 pixels and turned to CIELAB, for finding what lies where. */
final class Coarse {

    private static final int LONG_SIDE = 1200;

    /** Full pixels to one coarse pixel. */
    final int step;

    final int width;
    final int height;
    /** L, a and b. */
    final GrayF32[] lab = new GrayF32[3];

    private Coarse(int step, int width, int height) {
        this.step = step;
        this.width = width;
        this.height = height;
        for (int c = 0; c < 3; c++) {
            lab[c] = new GrayF32(width, height);
        }
    }

    static Coarse of(Picture picture) {
        int step = Math.max(1, (int) Math.round(Math.max(picture.width, picture.height) / (double) LONG_SIDE));
        Coarse coarse = new Coarse(step, picture.width / step, picture.height / step);
        IntStream.range(0, coarse.height).parallel().forEach(y -> coarse.row(picture, y));
        return coarse;
    }

    private void row(Picture picture, int y) {
        double[] out = new double[3];
        double share = 1.0 / (step * step);
        for (int x = 0; x < width; x++) {
            double r = 0;
            double g = 0;
            double b = 0;
            for (int dy = 0; dy < step; dy++) {
                for (int dx = 0; dx < step; dx++) {
                    int rgb = picture.rgb(x * step + dx, y * step + dy);
                    r += Hues.light(rgb >> 16 & 255);
                    g += Hues.light(rgb >> 8 & 255);
                    b += Hues.light(rgb & 255);
                }
            }
            Hues.lab(r * share, g * share, b * share, out);
            for (int c = 0; c < 3; c++) {
                lab[c].data[y * width + x] = (float) out[c];
            }
        }
    }

    /** The same, each plane smoothed. */
    Coarse smoothed(double sigma) {
        Coarse out = new Coarse(step, width, height);
        for (int c = 0; c < 3; c++) {
            BlurImageOps.gaussian(lab[c], out.lab[c], sigma, -1, null);
        }
        return out;
    }
}
