package hearthcloth.photo.scene;

/** How a fabric is coloured, in millimetres on the fabric itself. */
record Weave(Kind kind, Paint ground, Paint figure, double pitchMm, long seed) {

    enum Kind {
        PLAIN,
        STRIPE,
        CHECK,
        DOTS,
        PRINT
    }

    boolean figured() {
        return kind != Kind.PLAIN;
    }

    Paint at(double u, double v) {
        double thread = 1 + 0.03 * Noise.at(seed, (long) Math.floor(u / 0.6), (long) Math.floor(v / 0.6));
        return ground.mixed(figure, share(u, v)).times(thread);
    }

    /** The average over the fabric, by sampling. */
    Paint mean() {
        double sum = 0;
        int count = 0;
        for (double u = 0; u < 12 * pitchMm; u += pitchMm / 5) {
            for (double v = 0; v < 12 * pitchMm; v += pitchMm / 5) {
                sum += share(u, v);
                count++;
            }
        }
        return ground.mixed(figure, sum / count);
    }

    private double share(double u, double v) {
        double a = u / pitchMm - Math.floor(u / pitchMm);
        double b = v / pitchMm - Math.floor(v / pitchMm);
        return switch (kind) {
            case PLAIN -> 0;
            case STRIPE -> a < 0.4 ? 1 : 0;
            case CHECK -> ((a < 0.5 ? 1 : 0) + (b < 0.5 ? 1 : 0)) / 2.0;
            case DOTS -> Math.hypot(a - 0.5, b - 0.5) < 0.28 ? 1 : 0;
            case PRINT ->
                Noise.smooth(seed, u / pitchMm, v / pitchMm)
                                        + 0.4 * Noise.smooth(seed + 1, 2 * u / pitchMm, v / pitchMm)
                                > 0.12
                        ? 1
                        : 0;
        };
    }
}
