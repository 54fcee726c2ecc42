package hearthcloth.photo.image;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;
import java.util.stream.IntStream;

/**
 * The picture averaged down to about 1200 pixels on its longer side and converted to CIELAB, for finding what lies
 * where.
 */
public final class LabThumbnail {

    /** The length aimed at for the longer side, in pixels. */
    private static final int LONG_SIDE = 1200;

    /** Raw pixels to one coarse pixel, along a side. */
    public final int step;

    public final int width;
    public final int height;
    /** The planes of L*, a* and b*. */
    public final GrayF32[] lab = new GrayF32[3];

    private LabThumbnail(int step, int width, int height) {
        this.step = step;
        this.width = width;
        this.height = height;
        for (int c = 0; c < 3; c++) {
            lab[c] = new GrayF32(width, height);
        }
    }

    public static LabThumbnail of(PixelImage picture) {
        int step = Math.max(1, (int) Math.round(Math.max(picture.width, picture.height) / (double) LONG_SIDE));
        LabThumbnail coarse = new LabThumbnail(step, picture.width / step, picture.height / step);
        IntStream.range(0, coarse.height).parallel().forEach(y -> coarse.row(picture, y));
        return coarse;
    }

    private void row(PixelImage picture, int y) {
        double[] out = new double[3];
        double share = 1.0 / (step * step);
        for (int x = 0; x < width; x++) {
            double r = 0;
            double g = 0;
            double b = 0;
            for (int dy = 0; dy < step; dy++) {
                for (int dx = 0; dx < step; dx++) {
                    int rgb = picture.rgb(x * step + dx, y * step + dy);
                    r += LabTables.light(rgb >> 16 & 255);
                    g += LabTables.light(rgb >> 8 & 255);
                    b += LabTables.light(rgb & 255);
                }
            }
            LabTables.lab(r * share, g * share, b * share, out);
            for (int c = 0; c < 3; c++) {
                lab[c].data[y * width + x] = (float) out[c];
            }
        }
    }

    /** The same picture with each plane smoothed by a Gaussian of this sigma, in coarse pixels. */
    public LabThumbnail smoothed(double sigma) {
        LabThumbnail out = new LabThumbnail(step, width, height);
        for (int c = 0; c < 3; c++) {
            BlurImageOps.gaussian(lab[c], out.lab[c], sigma, -1, null);
        }
        return out;
    }
}
