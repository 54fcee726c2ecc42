package hearthcloth.photo.ground;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;

/**
 * The picture as it would be under even light: the colour at every place is scaled so that the ground under it would be
 * the same everywhere. Scaling encoded values is right as far as encoding is a power law, which sRGB nearly is.
 */
public final class IlluminationCorrection {

    /** The distance between the places at which the scale is worked out, in coarse pixels. */
    private static final int TILE = 8;
    /** Ground darker than this counts as this bright, in steps of 255, so that no place is brightened without limit. */
    private static final double LEAST = 8;

    private final PixelImage picture;
    private final double perTile;
    private final int across;
    private final int down;
    private final float[][] gain;

    public IlluminationCorrection(PixelImage picture, LabThumbnail coarse, GroundModel ground) {
        this.picture = picture;
        perTile = (double) coarse.step * TILE;
        across = Math.max(2, coarse.width / TILE);
        down = Math.max(2, coarse.height / TILE);
        gain = new float[3][across * down];
        double[] mean = new double[3];
        float[] lab = new float[3];
        for (int t = 0; t < across * down; t++) {
            ground.at(t % across * TILE + TILE / 2, t / across * TILE + TILE / 2, lab);
            Colour colour = new Lab(Math.max(0, Math.min(100, lab[0])), lab[1], lab[2]).toColour();
            double[] rgb = {colour.red(), colour.green(), colour.blue()};
            for (int c = 0; c < 3; c++) {
                gain[c][t] = (float) Math.max(LEAST, rgb[c]);
                mean[c] += gain[c][t] / (across * down);
            }
        }
        for (int c = 0; c < 3; c++) {
            for (int t = 0; t < across * down; t++) {
                gain[c][t] = (float) (mean[c] / gain[c][t]);
            }
        }
    }

    public boolean holds(Point at) {
        return picture.holds(at.x(), at.y(), 2);
    }

    /** The colour at a raw place under even light, red, green and blue from 0 to 255, written to {@code out}. */
    public void at(double x, double y, double[] out) {
        out[0] = 0;
        out[1] = 0;
        out[2] = 0;
        picture.add(x, y, 1, out);
        double tx = Math.max(0, Math.min(across - 1.001, x / perTile - 0.5));
        double ty = Math.max(0, Math.min(down - 1.001, y / perTile - 0.5));
        int x0 = (int) tx;
        int y0 = (int) ty;
        double fx = tx - x0;
        double fy = ty - y0;
        int i = y0 * across + x0;
        for (int c = 0; c < 3; c++) {
            float[] g = gain[c];
            out[c] *= (g[i] * (1 - fx) + g[i + 1] * fx) * (1 - fy)
                    + (g[i + across] * (1 - fx) + g[i + across + 1] * fx) * fy;
        }
    }
}
