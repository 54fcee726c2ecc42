package hearthcloth.photo.ground;

import hearthcloth.photo.image.LabThumbnail;

/** Colours as differences from the ground as they would be under even light, counted in small bins of CIELAB. */
public final class ColourHistogram {

    /** The side of a bin in CIELAB units; there are {@link #SIDE} bins along each axis. */
    private static final double BIN = 5;

    private static final int SIDE = 40;

    public static final int BINS = SIDE * SIDE * SIDE;
    /** What CIELAB adds to lightness so that it grows with the cube root of light (CIE 15, docs/sources.md#lab). */
    private static final double BLACK = 16;

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final double light;

    public ColourHistogram(LabThumbnail coarse, GroundModel ground) {
        this.coarse = coarse;
        this.ground = ground;
        float[] at = new float[3];
        ground.at(coarse.width / 2, coarse.height / 2, at);
        light = Math.max(1, at[0]) + BLACK;
    }

    /** The bin of a coarse pixel's difference from the ground. */
    public int bin(int i) {
        float[] at = new float[3];
        ground.at(i % coarse.width, i / coarse.width, at);
        double even = light / (Math.max(1, at[0]) + BLACK);
        int bin = 0;
        for (int c = 0; c < 3; c++) {
            double step = even * (coarse.lab[c].data[i] - at[c]) / BIN + SIDE / 2.0;
            bin = bin * SIDE + (int) Math.max(1, Math.min(SIDE - 2, step));
        }
        return bin;
    }

    /** The bins that hold at least this share of some pixels, and the bins that touch them. */
    public boolean[] among(int[] pixels, double share) {
        int[] times = new int[BINS];
        for (int i : pixels) {
            times[bin(i)]++;
        }
        boolean[] out = new boolean[BINS];
        for (int i = 0; i < BINS; i++) {
            if (times[i] > share * pixels.length) {
                for (int near : around(i)) {
                    out[near] = true;
                }
            }
        }
        return out;
    }

    /** A bin and all bins that touch it. */
    public static int[] around(int bin) {
        int[] out = new int[27];
        for (int i = 0; i < out.length; i++) {
            out[i] = bin + (i % 3 - 1) + (i / 3 % 3 - 1) * SIDE + (i / 9 - 1) * SIDE * SIDE;
        }
        return out;
    }
}
