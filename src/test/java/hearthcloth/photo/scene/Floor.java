package hearthcloth.photo.scene;

/** What the scraps lie on. */
record Floor(Kind kind, Paint paint, long seed) {

    enum Kind {
        PLAIN,
        WOOD,
        CARPET
    }

    private static final double PLANK_MM = 118;

    Paint at(double x, double y) {
        return paint.times(
                switch (kind) {
                    case PLAIN -> 1 + 0.02 * Noise.smooth(seed, x / 90, y / 90);
                    case WOOD -> wood(x, y);
                    case CARPET -> carpet(x, y);
                });
    }

    private double wood(double x, double y) {
        long plank = (long) Math.floor(y / PLANK_MM);
        double across = y - plank * PLANK_MM;
        double end = x + 400 * Noise.at(seed + 7, plank, 0);
        double along = end - 900 * Math.floor(end / 900);
        if (across < 1.6 || along < 1.2) {
            return 0.45;
        }
        double board = 0.09 * Noise.at(seed, plank, (long) Math.floor(end / 900));
        double wave = 4 * Noise.smooth(seed + 3, x / 160, (double) plank);
        double grain = 0.09 * Noise.smooth(seed + plank, x / 120, (across + wave) / 5)
                + 0.06 * Noise.smooth(seed + 50 + plank, x / 60, (across + wave) / 1.7);
        return 1 + board + grain;
    }

    private double carpet(double x, double y) {
        return 1
                + 0.20 * Noise.smooth(seed, x / 2.2, y / 2.2)
                + 0.10 * Noise.smooth(seed + 1, x / 5, y / 5)
                + 0.05 * Noise.smooth(seed + 2, x / 60, y / 60);
    }
}
