package hearthcloth.photo.heldaside;

import java.util.List;

/**
 * A woven cloth as light sees it.
 *
 * @param look its figure
 * @param size of the figure's repeat, mm
 * @param thread from one thread to the next, mm
 * @param tints its colours, the first its ground
 */
record Fabric(Look look, double size, double thread, int seed, List<Tint> tints) {

    /** Figures. */
    enum Look {
        PLAIN,
        STRIPED,
        CHECKED,
        DOTTED,
        FLOWERED
    }

    Fabric {
        tints = List.copyOf(tints);
    }

    /** The share of light thrown back, {@code u} and {@code v} along its threads. */
    void colour(double u, double v, double footprint, double[] out) {
        tints.get(0).into(out, 1);
        switch (look) {
            case PLAIN -> {}
            case STRIPED -> stripes(u, footprint, out);
            case CHECKED -> checks(u, v, footprint, out);
            case DOTTED -> dots(u, v, footprint, out);
            case FLOWERED -> flowers(u, v, footprint, out);
        }
        double cloth = thread(seed, u, v, thread, 0.16, footprint);
        double crease = 0.03 * Grain.smooth(seed + 3, u / 55, v / 70) + 0.02 * Grain.smooth(seed + 4, u / 19, v / 24);
        double b = 1 + cloth + crease;
        out[0] *= b;
        out[1] *= b;
        out[2] *= b;
    }

    /** The ups and downs of threads and of thick places in them, about 0. */
    static double thread(int seed, double u, double v, double pitch, double strength, double footprint) {
        double seen = Grain.seenShare(pitch, footprint);
        double weave =
                seen == 0 ? 0 : seen * strength * Math.cos(2 * Math.PI * u / pitch) * Math.cos(2 * Math.PI * v / pitch);
        double across = Grain.seenShare(2.4 * pitch, footprint);
        if (across == 0) {
            return weave;
        }
        double warp = Grain.smooth(seed, u / (1.6 * pitch), v / 38);
        double weft = Grain.smooth(seed + 1, u / 38, v / (1.6 * pitch));
        return weave + 0.32 * strength * across * (warp + weft);
    }

    private void stripes(double u, double footprint, double[] out) {
        double at = u / size - Math.floor(u / size);
        band(at, 0.10, 0.42, footprint, tints.get(1), 1, out);
        if (tints.size() > 2) {
            band(at, 0.60, 0.72, footprint, tints.get(2), 1, out);
        }
    }

    private void checks(double u, double v, double footprint, double[] out) {
        band(u / size - Math.floor(u / size), 0.0, 0.5, footprint, tints.get(1), 0.55, out);
        band(v / size - Math.floor(v / size), 0.0, 0.5, footprint, tints.get(1), 0.55, out);
        if (tints.size() > 2) {
            band(u / size - Math.floor(u / size), 0.70, 0.78, footprint, tints.get(2), 0.5, out);
            band(v / size - Math.floor(v / size), 0.70, 0.78, footprint, tints.get(2), 0.5, out);
        }
    }

    private void band(double at, double from, double to, double footprint, Tint tint, double share, double[] out) {
        double in = Math.min(at - from, to - at);
        double round = Math.max(in, Math.min(at + 1 - from, to - at - 1));
        tint.over(out, share * Grain.cover(Math.max(round, Math.min(at - 1 - from, to - at + 1)) * size, footprint));
    }

    private void dots(double u, double v, double footprint, double[] out) {
        double row = Math.floor(v / size);
        double shifted = u / size + (((long) row & 1) == 0 ? 0 : 0.5);
        double du = (shifted - Math.floor(shifted) - 0.5) * size;
        double dv = (v / size - row - 0.5) * size;
        tints.get(1).over(out, Grain.cover(size * 0.27 - Math.hypot(du, dv), footprint));
    }

    private void flowers(double u, double v, double footprint, double[] out) {
        long i = (long) Math.floor(u / size);
        long j = (long) Math.floor(v / size);
        for (long a = i - 1; a <= i + 1; a++) {
            for (long b = j - 1; b <= j + 1; b++) {
                double cu = (a + 0.2 + 0.6 * Grain.share(seed, a, b)) * size;
                double cv = (b + 0.2 + 0.6 * Grain.share(seed + 9L, a, b)) * size;
                if (Math.hypot(u - cu, v - cv) < 0.75 * size) {
                    flower(u - cu, v - cv, Grain.share(seed + 17L, a, b), footprint, out);
                }
            }
        }
    }

    private void flower(double du, double dv, double turn, double footprint, double[] out) {
        double r = Math.hypot(du, dv);
        double angle = Math.atan2(dv, du) + 7 * turn;
        double big = size * (0.22 + 0.14 * turn);
        double leaf = size * 0.5 * Math.max(0, Math.cos(2 * angle + 1)) * 0.9;
        Tint green = tints.get(tints.size() - 1);
        green.over(
                out,
                0.9
                        * Grain.cover(
                                Math.min(leaf * 0.9 - r, 0.09 * size - Math.abs(r * Math.sin(angle + 0.5))),
                                footprint));
        double petals = big * (0.72 + 0.28 * Math.cos(5 * angle));
        tints.get(1).over(out, Grain.cover(petals - r, footprint));
        tints.get(1).mixed(tints.get(0), 0.4).over(out, 0.7 * Grain.cover(petals * 0.55 - r, footprint));
        green.mixed(new Tint(0.7, 0.5, 0.1), 0.8).over(out, Grain.cover(big * 0.2 - r, footprint));
    }
}
