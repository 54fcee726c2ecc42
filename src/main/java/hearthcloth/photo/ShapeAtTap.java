package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.MeasuringParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.PolygonSimplifier;
import hearthcloth.photo.segment.ColourRegion;
import java.util.List;

/**
 * Finds the rim round a place that was tapped. What is of the colour there is taken with more and more difference allowed; of the
 * shapes that come out, the one whose sides the picture shows best is the piece.
 */
final class ShapeAtTap {

    /** A corner may move so many times as far as its sides are looked for: at a right angle √2 times, at 60° twice. */
    private static final double CORNERS = 2;

    private final PixelImage picture;
    private final LabThumbnail smooth;
    private final LensModel lens;
    private final ReadingParameters parameters;

    ShapeAtTap(PixelImage picture, ReadingParameters parameters) {
        this.parameters = parameters;
        this.picture = picture;
        this.smooth = LabThumbnail.of(picture).smoothed(1.2);
        this.lens = LensModel.unknown(picture);
    }

    List<Point> corners(Point tap) {
        MeasuringParameters.Tapped tapped = parameters.measuring().tapped();
        double cornerCost = parameters.measuring().tracing().cornerCost();
        List<Point> best = List.of();
        double least = tapped.mostMisfit();
        for (double like : tapped.likes()) {
            List<Point> rim = ColourRegion.rim(tap, like, smooth, parameters.segment());
            for (double tolerance : tapped.tolerances()) {
                List<Point> rough = rim.isEmpty() ? rim : PolygonSimplifier.of(rim, tolerance * smooth.step);
                if (rough.size() < 3 || rough.size() > tapped.mostCorners()) {
                    continue;
                }
                int reach = 3 * smooth.step + 3;
                FittedPolygon traced = FittedPolygon.of(
                        rough,
                        new SubpixelEdges(
                                        picture, reach, false, parameters.edge().steps())
                                .of(rough),
                        lens,
                        2,
                        CORNERS * reach);
                if (traced.misfit(cornerCost) < least && Polygons.inside(traced.corners(), tap.x(), tap.y())) {
                    least = traced.misfit(cornerCost);
                    best = traced.corners();
                }
            }
        }
        return best;
    }
}
