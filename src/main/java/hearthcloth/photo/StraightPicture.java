package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import java.awt.image.BufferedImage;
import java.util.List;

/** A cloth as seen straight from above, its longest side level, for the record of what was made. */
public final class StraightPicture {

    /** So much of the ground shows all round, as a share of the cloth's longer side. */
    private static final double MARGIN = 0.04;

    private final FloorScale scale;
    private final Point along;
    private final double left;
    private final double top;
    private final double wide;
    private final double high;

    private StraightPicture(FloorScale scale, PieceOutline cloth) {
        this.scale = scale;
        List<Point> floor = cloth.floor();
        Point longest = new Point(1, 0);
        double most = 0;
        for (int i = 0; i < floor.size(); i++) {
            Point side = floor.get((i + 1) % floor.size()).minus(floor.get(i));
            double length = Math.hypot(side.x(), side.y());
            if (length > most) {
                most = length;
                // Turned by the least that makes it level, so that what is up in the picture stays up.
                double sign = side.x() < 0 ? -1 : 1;
                longest = side.times(sign / length);
            }
        }
        this.along = longest;
        double margin = MARGIN * most;
        left = floor.stream().mapToDouble(this::across).min().orElse(0) - margin;
        top = floor.stream().mapToDouble(this::down).min().orElse(0) - margin;
        wide = floor.stream().mapToDouble(this::across).max().orElse(0) + margin - left;
        high = floor.stream().mapToDouble(this::down).max().orElse(0) + margin - top;
    }

    private double across(Point floor) {
        return floor.x() * along.x() + floor.y() * along.y();
    }

    private double down(Point floor) {
        return floor.y() * along.x() - floor.x() * along.y();
    }

    /**
     * The picture as a JPEG.
     *
     * @param cloth an outline that was read off {@code picture}, or off a larger one of the same
     * @param longSide of the result, in pixels
     */
    public static byte[] jpeg(Photograph picture, FloorScale scale, PieceOutline cloth, int longSide) {
        return Photograph.jpeg(new StraightPicture(scale, cloth).drawn(picture.pixels(), longSide));
    }

    private BufferedImage drawn(PixelImage from, int longSide) {
        double mm = Math.max(wide, high) / longSide;
        double shrink = (double) from.width / scale.pictureWidth();
        BufferedImage out = new BufferedImage(
                (int) Math.max(1, Math.round(wide / mm)),
                (int) Math.max(1, Math.round(high / mm)),
                BufferedImage.TYPE_INT_RGB);
        double[] rgb = new double[3];
        for (int v = 0; v < out.getHeight(); v++) {
            for (int u = 0; u < out.getWidth(); u++) {
                double x = left + (u + 0.5) * mm;
                double y = top + (v + 0.5) * mm;
                Point at = scale.inPicture(new Point(x * along.x() - y * along.y(), x * along.y() + y * along.x()))
                        .times(shrink);
                java.util.Arrays.fill(rgb, 0);
                if (from.holds(at.x(), at.y(), 2)) {
                    from.add(at.x(), at.y(), 1, rgb);
                }
                out.setRGB(u, v, step(rgb[0]) << 16 | step(rgb[1]) << 8 | step(rgb[2]));
            }
        }
        return out;
    }

    private static int step(double value) {
        return (int) Math.round(Math.max(0, Math.min(255, value)));
    }
}
