package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.PolygonSimplifier;
import hearthcloth.photo.segment.ColourRegion;
import java.util.List;

/**
 * Finds the rim round a place that was tapped. What is of the colour there is taken with more and more difference allowed; of the
 * shapes that come out, the one whose sides the picture shows best is the piece.
 */
final class ShapeAtTap {

    /** Differences that are tried, in CIELAB units. */
    private static final double[] LIKE = {4, 6, 8, 11, 15, 20, 26};

    /** How far a rim may be off its polygon, in coarse pixels. */
    private static final double[] TOLERANCES = {2.2, 4, 7};

    /** A polygon of whose rim more than this share shows nowhere is no piece. */
    private static final double MOST_MISFIT = 0.45;

    /** A piece with more corners is not told by its rim; she draws it. */
    private static final int MOST_CORNERS = 12;

    private final PixelImage picture;
    private final LabThumbnail smooth;
    private final LensModel lens;

    ShapeAtTap(PixelImage picture) {
        this.picture = picture;
        this.smooth = LabThumbnail.of(picture).smoothed(1.2);
        this.lens = LensModel.unknown(picture);
    }

    List<Point> corners(Point tap) {
        List<Point> best = List.of();
        double least = MOST_MISFIT;
        for (double like : LIKE) {
            List<Point> rim = ColourRegion.rim(tap, like, smooth);
            for (double tolerance : TOLERANCES) {
                List<Point> rough = rim.isEmpty() ? rim : PolygonSimplifier.of(rim, tolerance * smooth.step);
                if (rough.size() < 3 || rough.size() > MOST_CORNERS) {
                    continue;
                }
                int reach = 3 * smooth.step + 3;
                FittedPolygon traced = FittedPolygon.of(
                        rough, new SubpixelEdges(picture, reach, false).of(rough), lens, 2, 3 * smooth.step);
                if (traced.misfit() < least && Polygons.inside(traced.corners(), tap.x(), tap.y())) {
                    least = traced.misfit();
                    best = traced.corners();
                }
            }
        }
        return best;
    }
}
