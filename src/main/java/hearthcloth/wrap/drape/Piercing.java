package hearthcloth.wrap.drape;

/** Which sides of triangles pass through other cloth. */
final class Piercing {

    private final Grid grid;
    private final double[] x;
    private final boolean[] left;

    /**
     * Looks at a cloth.
     *
     * @param x three numbers a point
     * @param left points whose sides and triangles are left out
     */
    Piercing(Grid grid, double[] x, boolean[] left) {
        this.grid = grid;
        this.x = x;
        this.left = left;
    }

    /** For each side of {@link Grid#sides} whether it passes through a triangle. */
    boolean[] sides() {
        int[] ends = grid.sides;
        double[] middles = new double[3 * ends.length / 2];
        double longest = 0;
        for (int e = 0; e < ends.length / 2; e++) {
            for (int i = 0; i < 3; i++) {
                double p = x[3 * ends[2 * e] + i];
                double q = x[3 * ends[2 * e + 1] + i];
                middles[3 * e + i] = (p + q) / 2;
                longest = Math.max(longest, Math.abs(p - q));
            }
        }
        Buckets buckets = new Buckets();
        buckets.fill(middles, ends.length / 2, grid.gap);
        boolean[] pierced = new boolean[ends.length / 2];
        Buckets.Box box = new Buckets.Box();
        for (int t = 0; t < grid.triangles.length; t += 3) {
            if (!left[grid.triangles[t]] && !left[grid.triangles[t + 1]] && !left[grid.triangles[t + 2]]) {
                box.of(x, grid.triangles[t], grid.triangles[t + 1]);
                box.with(x, grid.triangles[t + 2]);
                box.grow(longest / 2 + 1e-9);
                int found = buckets.gather(box);
                for (int q = 0; q < found; q++) {
                    pierced[buckets.gathered[q]] |= pierces(buckets.gathered[q], t);
                }
            }
        }
        return pierced;
    }

    private boolean pierces(int e, int t) {
        int p = grid.sides[2 * e];
        int q = grid.sides[2 * e + 1];
        if (left[p] || left[q]) {
            return false;
        }
        for (int i = t; i < t + 3; i++) {
            if (grid.triangles[i] == p || grid.triangles[i] == q) {
                return false;
            }
        }
        return crosses(3 * p, 3 * q, 3 * grid.triangles[t], 3 * grid.triangles[t + 1], 3 * grid.triangles[t + 2]);
    }

    /** Whether the line from p to q passes through the triangle a b c. */
    private boolean crosses(int p, int q, int a, int b, int c) {
        double dx = x[q] - x[p];
        double dy = x[q + 1] - x[p + 1];
        double dz = x[q + 2] - x[p + 2];
        double ux = x[b] - x[a];
        double uy = x[b + 1] - x[a + 1];
        double uz = x[b + 2] - x[a + 2];
        double vx = x[c] - x[a];
        double vy = x[c + 1] - x[a + 1];
        double vz = x[c + 2] - x[a + 2];
        double hx = dy * vz - dz * vy;
        double hy = dz * vx - dx * vz;
        double hz = dx * vy - dy * vx;
        double det = ux * hx + uy * hy + uz * hz;
        if (Math.abs(det) < 1e-9) {
            return false;
        }
        double sx = x[p] - x[a];
        double sy = x[p + 1] - x[a + 1];
        double sz = x[p + 2] - x[a + 2];
        double onB = (sx * hx + sy * hy + sz * hz) / det;
        double qx = sy * uz - sz * uy;
        double qy = sz * ux - sx * uz;
        double qz = sx * uy - sy * ux;
        double onC = (dx * qx + dy * qy + dz * qz) / det;
        double along = (vx * qx + vy * qy + vz * qz) / det;
        return onB >= 0 && onC >= 0 && onB + onC <= 1 && along > 0 && along < 1;
    }
}
