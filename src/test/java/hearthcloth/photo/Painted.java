package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;

/** A small picture painted pixel by pixel, with a little of a camera's noise; the same for the same strokes. */
public final class Painted {

    private static final int FINE = 4;

    private final PixelImage picture;
    private final Random chance = new Random(5);
    private final int grain;

    /**
     * A picture of one colour.
     *
     * @param grain how much the noise changes a value at most, in steps of 255
     */
    public Painted(int width, int height, int colour, int grain) {
        this.picture = new PixelImage(width, height);
        this.grain = grain;
        box(0, 0, width, height, colour);
    }

    /** Paints a rectangle. */
    public Painted box(int left, int top, int width, int height, int colour) {
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                put(x, y, colour, 1);
            }
        }
        return this;
    }

    /** Paints a polygon; a pixel that it covers in part gets as much of its colour. */
    public Painted polygon(List<Point> corners, int colour) {
        return painted(corners, colour, at -> covered(corners, at));
    }

    /** Paints a polygon whose rim fades over two pixels, as a lens makes it. */
    public Painted soft(List<Point> corners, int colour) {
        return painted(corners, colour, at -> {
            double off = Polygons.toRim(at, corners) * (Polygons.inside(corners, at.x(), at.y()) ? 1 : -1);
            return Math.max(0, Math.min(1, 0.5 + off / 2));
        });
    }

    private Painted painted(List<Point> corners, int colour, ToDoubleFunction<Point> share) {
        DoubleSummaryStatistics across = corners.stream().mapToDouble(Point::x).summaryStatistics();
        DoubleSummaryStatistics down = corners.stream().mapToDouble(Point::y).summaryStatistics();
        for (int y = (int) Math.max(0, down.getMin() - 2); y < Math.min(picture.height, down.getMax() + 2); y++) {
            for (int x = (int) Math.max(0, across.getMin() - 2);
                    x < Math.min(picture.width, across.getMax() + 2);
                    x++) {
                put(x, y, colour, share.applyAsDouble(new Point(x + 0.5, y + 0.5)));
            }
        }
        return this;
    }

    /** Multiplies every value by the light at its place. */
    public Painted lit(DoubleBinaryOperator light) {
        for (int y = 0; y < picture.height; y++) {
            for (int x = 0; x < picture.width; x++) {
                int rgb = picture.rgb(x, y);
                double by = light.applyAsDouble(x, y);
                picture.put(
                        x, y, (int) (by * (rgb >> 16 & 255)), (int) (by * (rgb >> 8 & 255)), (int) (by * (rgb & 255)));
            }
        }
        return this;
    }

    private static double covered(List<Point> corners, Point at) {
        if (Polygons.toRim(at, corners) > 1) {
            return Polygons.inside(corners, at.x(), at.y()) ? 1 : 0;
        }
        int count = 0;
        for (int i = 0; i < FINE * FINE; i++) {
            double u = at.x() + (i % FINE + 0.5) / FINE - 0.5;
            double v = at.y() + (Math.floorDiv(i, FINE) + 0.5) / FINE - 0.5;
            count += Polygons.inside(corners, u, v) ? 1 : 0;
        }
        return (double) count / (FINE * FINE);
    }

    private void put(int x, int y, int colour, double share) {
        if (share == 0) {
            return;
        }
        int by = grain == 0 ? 0 : chance.nextInt(2 * grain + 1) - grain;
        int under = picture.rgb(x, y);
        int[] mixed = new int[3];
        for (int c = 0; c < 3; c++) {
            int shift = 16 - 8 * c;
            double value = share * ((colour >> shift & 255) + by) + (1 - share) * (under >> shift & 255);
            mixed[c] = (int) Math.max(0, Math.min(255, Math.round(value)));
        }
        picture.put(x, y, mixed[0], mixed[1], mixed[2]);
    }

    public PixelImage picture() {
        return picture;
    }

    /** The picture as the search for pieces sees it. */
    public LabThumbnail coarse() {
        return LabThumbnail.of(picture);
    }
}
