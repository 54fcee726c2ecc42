package hearthcloth.wrap.drape;

import java.util.Arrays;

/** Where the points of a cloth are in one step: before it, as it goes on, and how fast. Three numbers a point. */
final class Sheet {

    final Grid grid;

    /** Before the step: cloth lies through no cloth. */
    final double[] x;

    /** In the step. */
    final double[] p;

    /** What the speed after the step is counted from: {@link #x}, moved along by pushes that give no speed. */
    final double[] from;

    final double[] speed;

    /** 1 where a point moves freely, 0 where it is held. */
    final double[] ease;

    /** Whether a point is inside a knot. */
    final boolean[] knotted;

    /** Whether cloth is not kept from cloth at a point, as inside a knot. */
    final boolean[] loose;

    /** The distance cloth keeps from cloth at a point. */
    final double[] thickness;

    /** That distance away from knots. */
    final double full;

    Sheet(Grid grid, double thickness) {
        this.full = thickness;
        int n = grid.points();
        this.grid = grid;
        this.x = new double[3 * n];
        this.p = new double[3 * n];
        this.from = new double[3 * n];
        this.speed = new double[3 * n];
        this.ease = new double[n];
        this.knotted = new boolean[n];
        this.loose = new boolean[n];
        this.thickness = new double[n];
        Arrays.fill(ease, 1);
        Arrays.fill(this.thickness, thickness);
    }

    int points() {
        return ease.length;
    }

    /** Begins a step: nothing has moved yet. */
    void begin() {
        System.arraycopy(x, 0, p, 0, x.length);
        System.arraycopy(x, 0, from, 0, x.length);
    }

    /** Ends a step of this many seconds. */
    void settle(double seconds) {
        for (int i = 0; i < x.length; i++) {
            speed[i] = (p[i] - from[i]) / seconds;
            x[i] = p[i];
        }
    }
}
