package hearthcloth.photo.heldaside;

import java.util.Arrays;
import java.util.List;

/** The floor with everything that lies on it, lowest first, lit. */
final class Floor {

    private static final double CELL = 4;
    /** How far from an edge its shadow and threads may be seen. */
    private static final double NEAR = 2.5;
    /** The height a scrap's edge stands up by, for its shadow. */
    private static final double LIFT = 0.5;

    final Surface ground;
    final List<Lying> things;
    final RoomLight light;
    private final double left;
    private final double top;
    private final int across;
    private final int[][] cells;

    Floor(Surface ground, List<Lying> things, RoomLight light) {
        this.ground = ground;
        this.things = List.copyOf(things);
        this.light = light;
        double l = Double.MAX_VALUE;
        double t = Double.MAX_VALUE;
        double r = -Double.MAX_VALUE;
        double b = -Double.MAX_VALUE;
        for (Lying thing : things) {
            var box = thing.rim().polygon().getEnvelopeInternal();
            l = Math.min(l, box.getMinX() - 30);
            t = Math.min(t, box.getMinY() - 30);
            r = Math.max(r, box.getMaxX() + 30);
            b = Math.max(b, box.getMaxY() + 30);
        }
        this.left = l;
        this.top = t;
        this.across = (int) Math.ceil((r - l) / CELL);
        this.cells = new int[across * (int) Math.ceil((b - t) / CELL)][];
        for (int i = 0; i < things.size(); i++) {
            enter(i, things.get(i).rim());
        }
    }

    /** Notes a thing in the cells it may be seen in: twice its number, and one more where it covers everything. */
    private void enter(int thing, Rim rim) {
        var box = rim.polygon().getEnvelopeInternal();
        double margin = NEAR + 1.6 * rim.reach + CELL;
        int fromY = (int) ((box.getMinY() - margin - top) / CELL);
        int toY = (int) ((box.getMaxY() + margin - top) / CELL);
        int fromX = (int) ((box.getMinX() - margin - left) / CELL);
        int toX = (int) ((box.getMaxX() + margin - left) / CELL);
        for (int j = Math.max(0, fromY); j <= Math.min(cells.length / across - 1, toY); j++) {
            for (int i = Math.max(0, fromX); i <= Math.min(across - 1, toX); i++) {
                double deep = rim.inside(left + (i + 0.5) * CELL, top + (j + 0.5) * CELL);
                if (deep > -margin) {
                    int code = 2 * thing + (deep > 0.75 * CELL ? 1 : 0);
                    int[] old = cells[j * across + i];
                    int[] more = old == null ? new int[1] : Arrays.copyOf(old, old.length + 1);
                    more[more.length - 1] = code;
                    cells[j * across + i] = more;
                }
            }
        }
    }

    /** What a place throws back of a light of 1, seen along a slant ({@code slopeX, slopeY} mm a mm of height). */
    void look(double x, double y, double slopeX, double slopeY, double footprint, double[] out, double[] spare) {
        int[] here = cell(x, y);
        int first = 0;
        for (int k = 0; k < here.length; k++) {
            first = (here[k] & 1) == 1 ? k : first;
        }
        if (here.length == 0 || (here[first] & 1) == 0) {
            ground.colour(x, y, footprint, out);
        }
        for (int k = first; k < here.length; k++) {
            Lying thing = things.get(here[k] >> 1);
            double tx = x - thing.thick() * slopeX;
            double ty = y - thing.thick() * slopeY;
            if ((here[k] & 1) == 1) {
                thing.face().colour(tx, ty, footprint, out);
            } else {
                edge(thing, x, y, tx, ty, footprint, out, spare);
            }
        }
    }

    private void edge(
            Lying thing, double x, double y, double tx, double ty, double footprint, double[] out, double[] spare) {
        double deep = thing.rim().inside(tx, ty);
        double cover = Grain.cover(deep, footprint);
        if (cover < 1) {
            shadow(thing, x, y, deep, out);
            double threads = thing.rim().reach > 0 ? thing.rim().threads(tx, ty, footprint) : 0;
            if (threads > 0) {
                thing.face().colour(tx, ty, 3, spare);
                Tint.of(spare).over(out, threads);
            }
        }
        if (cover > 0) {
            thing.face().colour(tx, ty, footprint, spare);
            Tint.of(spare).over(out, cover);
        }
    }

    private void shadow(Lying thing, double x, double y, double deep, double[] out) {
        if (deep < -NEAR) {
            return;
        }
        double high = Math.min(LIFT, 2 * thing.thick());
        double towards = thing.rim().inside(x - high * light.castX(), y - high * light.castY());
        double soft = 0.25 + high * 0.9;
        double dark = 0.42 * Grain.step(-soft, soft, towards) + 0.2 * high * Math.exp(deep / 0.9);
        double lit = 1 - Math.min(0.6, dark);
        out[0] *= lit;
        out[1] *= lit;
        out[2] *= lit;
    }

    private int[] cell(double x, double y) {
        int i = (int) Math.floor((x - left) / CELL);
        int j = (int) Math.floor((y - top) / CELL);
        if (i < 0 || j < 0 || i >= across || j * across + i >= cells.length) {
            return new int[0];
        }
        int[] here = cells[j * across + i];
        return here == null ? new int[0] : here;
    }
}
