package hearthcloth.wrap.drape;

import hearthcloth.geometry.ConvexPolygon;

/** Small cloths laid out by hand. */
final class Sheets {

    private Sheets() {}

    /** A square of {@code fine} points along each side, ten millimetres apart, flat at a height, its middle over the origin. */
    static Sheet flat(int fine, double thickness, double height) {
        double half = 5.0 * (fine - 1);
        Grid grid = Grid.of(ConvexPolygon.rectangle(-half, -half, half, half), fine, 1, Creases.NONE);
        Sheet sheet = new Sheet(grid, thickness);
        for (int k = 0; k < sheet.points(); k++) {
            put(sheet, k, grid.u[k], grid.v[k], height);
        }
        sheet.begin();
        return sheet;
    }

    static void put(Sheet sheet, int k, double x, double y, double z) {
        sheet.x[3 * k] = x;
        sheet.x[3 * k + 1] = y;
        sheet.x[3 * k + 2] = z;
    }

    /** The right half laid over the left one at a distance, the step not begun. */
    static Sheet folded(int fine, double thickness, double apart) {
        Sheet sheet = flat(fine, thickness, 0);
        for (int k = 0; k < sheet.points(); k++) {
            if (sheet.grid.u[k] > 1) {
                // a quarter of a cell off, so that points lie over triangles and not over points
                put(sheet, k, 2.5 - sheet.grid.u[k], sheet.grid.v[k] + 2.5, apart);
            }
        }
        sheet.begin();
        return sheet;
    }

    /** The sum of all places, three numbers. */
    static double[] sum(Sheet sheet) {
        double[] sum = new double[3];
        for (int i = 0; i < sheet.p.length; i++) {
            sum[i % 3] += sheet.p[i];
        }
        return sum;
    }
}
