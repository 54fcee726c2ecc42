package hearthcloth.wrap.drape;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import java.util.List;

/**
 * The open cloth as a grid of points along its own edges, row by row, with the lines and triangles between them. Its
 * places are those of the flat cloth on the table, times a scale.
 */
final class Grid {

    final int columns;
    final int rows;

    /** Between neighbours, the mean of both ways. */
    final double gap;

    final double[] u;
    final double[] v;

    /** Three points each, anticlockwise on the flat cloth. */
    final int[] triangles;

    /** Two points each: first all along the threads ({@link #threads} of them), then both diagonals of every cell. */
    final int[] lines;

    final int threads;

    /** The length of each line on the flat cloth. */
    final double[] rest;

    /** The sides of the triangles, two points each. */
    final int[] sides;

    /** Three points in a row each: first all along the threads ({@link #threadBends} of them), then along diagonals. */
    final int[] bends;

    final int threadBends;

    private final Creases creases;

    private Grid(List<Point> corners, int columns, int rows, double scale, Creases wanted) {
        this.columns = columns;
        this.rows = rows;
        this.u = new double[columns * rows];
        this.v = new double[columns * rows];
        Point across = corners.get(1).minus(corners.get(0)).times(scale / (columns - 1));
        Point up = corners.get(3).minus(corners.get(0)).times(scale / (rows - 1));
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                Point at = corners.get(0).times(scale).plus(across.times(i)).plus(up.times(j));
                u[j * columns + i] = at.x();
                v[j * columns + i] = at.y();
            }
        }
        this.gap = (Math.sqrt(across.dot(across)) + Math.sqrt(up.dot(up))) / 2;
        this.creases = wanted;
        creases.warp(this);
        Ints along = new Ints();
        Ints slanting = new Ints();
        Ints faces = new Ints();
        Ints rims = new Ints();
        Ints turns = new Ints();
        Ints slantTurns = new Ints();
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                lines(i, j, along, slanting);
                faces(i, j, faces, rims);
                bends(i, j, turns, slantTurns);
            }
        }
        this.threads = along.count() / 2;
        rims.addAll(along);
        along.addAll(slanting);
        this.lines = along.all();
        this.sides = rims.all();
        this.triangles = faces.all();
        this.threadBends = turns.count() / 3;
        turns.addAll(slantTurns);
        this.bends = turns.all();
        this.rest = new double[lines.length / 2];
        for (int e = 0; e < rest.length; e++) {
            double du = u[lines[2 * e]] - u[lines[2 * e + 1]];
            double dv = v[lines[2 * e]] - v[lines[2 * e + 1]];
            rest[e] = Math.sqrt(du * du + dv * dv);
        }
    }

    /**
     * A grid on a cloth.
     *
     * @param whole a rectangle
     * @param fine the number of points along its longer side
     * @param creases where it is folded; rows near them are moved onto them
     */
    static Grid of(ConvexPolygon whole, int fine, double scale, Creases creases) {
        List<Point> corners = whole.corners();
        double across = corners.get(0).to(corners.get(1));
        double up = corners.get(0).to(corners.get(3));
        double gap = Math.max(across, up) / (fine - 1);
        int columns = 1 + Math.max(2, (int) Math.round(across / gap));
        int rows = 1 + Math.max(2, (int) Math.round(up / gap));
        return new Grid(corners, columns, rows, scale, creases);
    }

    int points() {
        return u.length;
    }

    private void lines(int i, int j, Ints along, Ints slanting) {
        int k = j * columns + i;
        boolean right = i + 1 < columns;
        boolean above = j + 1 < rows;
        if (right) {
            along.add(k, k + 1);
        }
        if (above) {
            along.add(k, k + columns);
        }
        if (right && above) {
            slanting.add(k, k + columns + 1);
            slanting.add(k + 1, k + columns);
        }
    }

    /** Two triangles a cell: along a crease where there is one, else to and fro so that the cloth leans no way. */
    private void faces(int i, int j, Ints faces, Ints rims) {
        if (i + 1 >= columns || j + 1 >= rows) {
            return;
        }
        int k = j * columns + i;
        boolean rising =
                creases.isOn(this, k, k + columns + 1) || ((i + j) % 2 == 0 && !creases.isOn(this, k + 1, k + columns));
        if (rising) {
            faces.add(k, k + 1, k + columns + 1);
            faces.add(k, k + columns + 1, k + columns);
            rims.add(k, k + columns + 1);
        } else {
            faces.add(k, k + 1, k + columns);
            faces.add(k + 1, k + columns + 1, k + columns);
            rims.add(k + 1, k + columns);
        }
    }

    private void bends(int i, int j, Ints turns, Ints slanting) {
        int k = j * columns + i;
        boolean right = i + 2 < columns;
        boolean above = j + 2 < rows;
        if (right) {
            turns.add(k, k + 1, k + 2);
        }
        if (above) {
            turns.add(k, k + columns, k + 2 * columns);
        }
        if (right && above) {
            slanting.add(k, k + columns + 1, k + 2 * columns + 2);
            slanting.add(k + 2, k + columns + 1, k + 2 * columns);
        }
    }
}
