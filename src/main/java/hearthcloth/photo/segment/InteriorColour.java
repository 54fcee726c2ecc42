package hearthcloth.photo.segment;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import java.util.List;

/**
 * The colours inside a polygon, a little way in from its rim, and the colour of the ground there.
 *
 * @param colour mean colour
 * @param ground mean of the ground's colour as lit there
 * @param spread root mean square difference from the mean, with the gradient of the light removed
 * @param contrast root mean square difference from the ground as lit there
 * @param halves the two colours it is mostly made of
 */
public record InteriorColour(Lab colour, Lab ground, double spread, double contrast, Halves halves) {

    /** Colours are taken no nearer to the rim than this, in coarse pixels. */
    private static final double INSET = 2;
    /** Plain cloth, with its weave and the camera's noise, spreads less than this. */
    private static final double PLAIN_SPREAD = 3.5;

    /** A grid of about this many places is enough for the means. */
    private static final int MOST_SAMPLES = 4000;

    /**
     * The colours divided into two clusters.
     *
     * @param share of the smaller cluster, from 0 to 0.5
     * @param border number of neighbouring places of different clusters over the square root of the count: about one
     *     when a straight line divides them
     */
    public record Halves(Lab one, Lab two, double share, double border) {}

    public boolean figured() {
        return spread > PLAIN_SPREAD;
    }

    /**
     * Reads the inside of a polygon.
     *
     * @param corners in raw pixels of the full picture
     */
    public static InteriorColour of(List<Point> corners, LabThumbnail coarse, GroundModel ground) {
        List<Point> polygon = corners.stream()
                .map(c -> new Point(c.x() / coarse.step, c.y() / coarse.step))
                .toList();
        int low = (int) Math.max(0, polygon.stream().mapToDouble(Point::y).min().orElse(0));
        int high = (int) Math.min(
                coarse.height - 1, polygon.stream().mapToDouble(Point::y).max().orElse(0));
        int left =
                (int) Math.max(0, polygon.stream().mapToDouble(Point::x).min().orElse(0));
        int right = (int) Math.min(
                coarse.width - 1, polygon.stream().mapToDouble(Point::x).max().orElse(0));
        int stride = (int) Math.max(
                1, Math.ceil(Math.sqrt(Math.max(1.0, high - low + 1) * Math.max(1, right - left + 1) / MOST_SAMPLES)));
        InteriorSamples samples =
                new InteriorSamples(Math.max(0, (right - left) / stride + 1), Math.max(0, (high - low) / stride + 1));
        float[] under = new float[3];
        for (int v = 0; v < samples.down; v++) {
            for (int u = 0; u < samples.across; u++) {
                int x = left + u * stride;
                int y = low + v * stride;
                if (Polygons.wellInside(polygon, x + 0.5, y + 0.5, INSET)) {
                    ground.at(x, y, under);
                    samples.put(u, v, coarse, y * coarse.width + x, under);
                }
            }
        }
        return samples.interior();
    }
}
