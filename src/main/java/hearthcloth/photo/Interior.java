package hearthcloth.photo;

import java.util.List;

/**
 * The colours inside a polygon, a little way in from its rim, and the ground's there; CIELAB.
 *
 * @param l mean lightness
 * @param a mean green to red
 * @param b mean blue to yellow
 * @param spread root mean square difference from the mean, the fall of the light taken out
 * @param contrast root mean square difference from the ground as lit there
 */
record Interior(double l, double a, double b, double spread, double contrast) {

    /** How far from the rim colours are taken, in coarse pixels. */
    private static final double INSET = 2;
    /** Plain cloth, its weave and the camera's noise stay below this. */
    private static final double PLAIN_SPREAD = 3.5;

    boolean figured() {
        return spread > PLAIN_SPREAD;
    }

    /** @param corners in raw pixels of the full picture */
    static Interior of(List<Spot> corners, Coarse coarse, Ground ground) {
        List<Spot> polygon = corners.stream()
                .map(c -> new Spot(c.x() / coarse.step, c.y() / coarse.step))
                .toList();
        Sums sums = new Sums();
        float[] under = new float[3];
        int low = (int) Math.max(0, polygon.stream().mapToDouble(Spot::y).min().orElse(0));
        int high = (int) Math.min(coarse.height - 1, polygon.stream().mapToDouble(Spot::y).max().orElse(0));
        int left = (int) Math.max(0, polygon.stream().mapToDouble(Spot::x).min().orElse(0));
        int right = (int) Math.min(coarse.width - 1, polygon.stream().mapToDouble(Spot::x).max().orElse(0));
        int stride = Math.max(1, (int) Math.sqrt((double) (high - low) * (right - left) / 4000));
        for (int y = low; y <= high; y += stride) {
            for (int x = left; x <= right; x += stride) {
                if (wellInside(polygon, x + 0.5, y + 0.5)) {
                    ground.at(x, y, under);
                    int i = y * coarse.width + x;
                    sums.add(coarse.lab[0].data[i], coarse.lab[1].data[i], coarse.lab[2].data[i], under);
                }
            }
        }
        return sums.interior();
    }

    private static boolean wellInside(List<Spot> polygon, double x, double y) {
        return Shapes.inside(polygon, x - INSET, y)
                && Shapes.inside(polygon, x + INSET, y)
                && Shapes.inside(polygon, x, y - INSET)
                && Shapes.inside(polygon, x, y + INSET);
    }

    /** Running sums; lightness for the spread is taken relative to the ground's, so that shade is no figure. */
    private static final class Sums {
        private int count;
        private final double[] mean = new double[3];
        private double level;
        private double levelSquares;
        private double tintSquares;
        private double apart;

        void add(double l, double a, double b, float[] under) {
            count++;
            mean[0] += l;
            mean[1] += a;
            mean[2] += b;
            double lit = l * 50 / Math.max(5, under[0]);
            level += lit;
            levelSquares += lit * lit;
            tintSquares += a * a + b * b;
            apart += Math.pow(l - under[0], 2) + Math.pow(a - under[1], 2) + Math.pow(b - under[2], 2);
        }

        Interior interior() {
            if (count == 0) {
                return new Interior(0, 0, 0, 0, 0);
            }
            double l = mean[0] / count;
            double a = mean[1] / count;
            double b = mean[2] / count;
            double lit = level / count;
            double shrink = l / Math.max(1, lit);
            double squares = (levelSquares / count - lit * lit) * shrink * shrink + tintSquares / count - a * a - b * b;
            return new Interior(l, a, b, Math.sqrt(Math.max(0, squares)), Math.sqrt(apart / count));
        }
    }
}
