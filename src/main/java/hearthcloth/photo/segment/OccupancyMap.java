package hearthcloth.photo.segment;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import java.util.Arrays;
import java.util.List;

/** Which shape lies where, roughly, so that the surroundings of one piece are not taken from its neighbour. */
public final class OccupancyMap {

    /** Shapes are enlarged by this much all round, in coarse pixels. */
    private static final int MARGIN = 2;

    private final int step;
    private final int width;
    private final int height;
    /** Zero for ground, otherwise the shape's index plus one. */
    private final int[] by;

    public OccupancyMap(LabThumbnail coarse, List<Blob> blobs) {
        this(coarse, blobs, MARGIN);
    }

    /**
     * Marks the shapes.
     *
     * @param margin by how much shapes are enlarged all round, in coarse pixels
     */
    public OccupancyMap(LabThumbnail coarse, List<Blob> blobs, int margin) {
        step = coarse.step;
        width = coarse.width;
        height = coarse.height;
        by = new int[width * height];
        for (int i = 0; i < blobs.size(); i++) {
            fill(blobs.get(i).rim(), i + 1);
        }
        for (int round = 0; round < margin; round++) {
            grow();
        }
    }

    private void fill(List<Point> rim, int mark) {
        double top = rim.stream().mapToDouble(Point::y).min().orElse(0) / step;
        double low = rim.stream().mapToDouble(Point::y).max().orElse(0) / step;
        for (int y = (int) Math.max(0, top); y <= Math.min(height - 1, low); y++) {
            double[] cuts = crossings(rim, y + 0.51);
            for (int i = 0; i + 1 < cuts.length; i += 2) {
                for (int x = (int) Math.max(0, cuts[i]); x <= Math.min(width - 1, cuts[i + 1]); x++) {
                    by[y * width + x] = mark;
                }
            }
        }
    }

    private double[] crossings(List<Point> rim, double y) {
        double[] cuts = new double[rim.size()];
        int n = 0;
        Point before = rim.get(rim.size() - 1);
        for (Point spot : rim) {
            double a = before.y() / step;
            double b = spot.y() / step;
            if ((a > y) != (b > y)) {
                cuts[n++] = (before.x() + (spot.x() - before.x()) * (y - a) / (b - a)) / step;
            }
            before = spot;
        }
        double[] out = Arrays.copyOf(cuts, n);
        Arrays.sort(out);
        return out;
    }

    private void grow() {
        int[] old = by.clone();
        for (int y = 1; y < height - 1; y++) {
            for (int i = y * width + 1; i < (y + 1) * width - 1; i++) {
                if (old[i] == 0) {
                    by[i] = Math.max(Math.max(old[i - 1], old[i + 1]), Math.max(old[i - width], old[i + width]));
                }
            }
        }
    }

    /** Whether a shape other than {@code own} lies at a raw place. */
    public boolean byOther(double x, double y, int own) {
        int u = (int) (x / step);
        int v = (int) (y / step);
        if (u < 0 || v < 0 || u >= width || v >= height) {
            return true;
        }
        int mark = by[v * width + u];
        return mark != 0 && mark != own + 1;
    }

    /** Whether no shape lies at a coarse pixel. */
    public boolean isFree(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && by[y * width + x] == 0;
    }
}
