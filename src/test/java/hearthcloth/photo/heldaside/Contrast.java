package hearthcloth.photo.heldaside;

import java.util.Random;

/** How far a scrap's mean colour is from that of the ground round it, in the light that falls there. */
final class Contrast {

    private static final int SAMPLES = 1500;
    /** The ring of ground that counts, mm from the rim. */
    private static final double NEAR = 3;

    private static final double FAR = 12;

    private final Floor floor;
    private final double exposure;
    private final Random chance;

    Contrast(Floor floor, double exposure, int seed) {
        this.floor = floor;
        this.exposure = exposure;
        this.chance = new Random(seed);
    }

    double of(Lying thing) {
        var box = thing.rim().polygon().getEnvelopeInternal();
        Mean inside = new Mean();
        Mean round = new Mean();
        for (int k = 0; k < SAMPLES; k++) {
            double x = box.getMinX() - FAR + (box.getWidth() + 2 * FAR) * chance.nextDouble();
            double y = box.getMinY() - FAR + (box.getHeight() + 2 * FAR) * chance.nextDouble();
            double deep = thing.rim().inside(x, y);
            if (deep > 0.5) {
                inside.add(thing.face(), x, y);
            } else if (deep < -NEAR && deep > -FAR) {
                round.add(floor.ground, x, y);
            }
        }
        return inside.tint().difference(round.tint());
    }

    private final class Mean {
        private final double[] sum = new double[3];
        private final double[] look = new double[3];
        private final double[] lit = new double[3];
        private int count;

        void add(Surface surface, double x, double y) {
            surface.colour(x, y, 0.5, look);
            floor.light.at(x, y, lit);
            for (int c = 0; c < 3; c++) {
                sum[c] += exposure * look[c] * lit[c];
            }
            count++;
        }

        Tint tint() {
            return new Tint(sum[0] / count, sum[1] / count, sum[2] / count);
        }
    }
}
