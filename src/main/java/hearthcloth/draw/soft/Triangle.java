package hearthcloth.draw.soft;

/** A triangle on a grid of dots. */
final class Triangle {

    private final double[] x;
    private final double[] y;
    private final double twice;

    /** What is done at a dot: its place in the grid, and what share of it the second and the third corner have. */
    interface Dot {
        void at(int place, double second, double third);
    }

    Triangle(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.twice = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
    }

    /** Twice its area in dots, below 0 where its corners go round the other way. */
    double twice() {
        return twice;
    }

    /** All dots whose middles lie in it. */
    void dots(int width, int height, Dot dot) {
        if (Math.abs(twice) < 1e-12) {
            return;
        }
        int left = (int) Math.max(0, Math.ceil(least(x) - 0.5));
        int right = (int) Math.min(width - 1.0, Math.floor(most(x) - 0.5));
        int top = (int) Math.max(0, Math.ceil(least(y) - 0.5));
        int bottom = (int) Math.min(height - 1.0, Math.floor(most(y) - 0.5));
        for (int j = top; j <= bottom; j++) {
            for (int i = left; i <= right; i++) {
                double away = i + 0.5 - x[0];
                double down = j + 0.5 - y[0];
                double second = (away * (y[2] - y[0]) - (x[2] - x[0]) * down) / twice;
                double third = ((x[1] - x[0]) * down - away * (y[1] - y[0])) / twice;
                if (second >= 0 && third >= 0 && second + third <= 1) {
                    dot.at(j * width + i, second, third);
                }
            }
        }
    }

    private static double least(double[] three) {
        return Math.min(three[0], Math.min(three[1], three[2]));
    }

    private static double most(double[] three) {
        return Math.max(three[0], Math.max(three[1], three[2]));
    }
}
