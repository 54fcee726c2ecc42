package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.PolygonSimplifier;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ConcavitySplit;
import java.util.List;
import java.util.stream.Stream;

/** Makes polygons of shapes: each with as few corners as the picture supports. */
final class ShapeTracing {

    private final PixelImage picture;
    private final ReferenceSheet sheet;
    private final LabThumbnail coarse;
    private final double step;
    private final ReadingParameters parameters;

    ShapeTracing(PixelImage picture, LabThumbnail coarse, ReferenceSheet sheet, ReadingParameters parameters) {
        this.picture = picture;
        this.coarse = coarse;
        this.step = coarse.step;
        this.sheet = sheet;
        this.parameters = parameters;
    }

    /** A shape and its polygon. */
    record Seen(Blob blob, FittedPolygon traced) {}

    Stream<Seen> parted(Blob blob, GroundModel on, LensModel lens) {
        ConcavitySplit parting =
                new ConcavitySplit(coarse, on, parameters.segment().parting());
        FittedPolygon whole = simplest(blob, lens);
        List<List<Point>> parts = parting.of(whole.corners());
        return parts.size() == 1
                ? Stream.of(new Seen(blob, whole))
                : parts.stream().map(parting::blob).map(part -> new Seen(part, simplest(part, lens)));
    }

    /**
     * The area, in square raw pixels, that must be missing at a corner for it to be empty; a card's rounded corners are
     * not cut off.
     */
    private double emptyArea(Blob blob) {
        double rounded = sheet.cornerRadius().isPositive()
                ? parameters.measuring().tracing().rounded() * blob.area()
                : 0;
        return Math.max(parameters.measuring().tracing().emptyArea() * step * step, rounded);
    }

    /** Of polygons from fine to rough, the one that the picture supports best. */
    FittedPolygon simplest(Blob blob, LensModel lens) {
        SubpixelEdges reader = new SubpixelEdges(
                picture,
                (int) Math.round(2.5 * step + 2),
                false,
                parameters.edge().steps());
        FittedPolygon best = null;
        double least = Double.MAX_VALUE;
        for (double tolerance : parameters.measuring().tracing().tolerances()) {
            List<Point> corners = PolygonSimplifier.of(blob.rim(), tolerance * step);
            if (best != null && corners.size() == best.corners().size()) {
                continue;
            }
            FittedPolygon traced = FittedPolygon.of(corners, reader.of(corners), lens, 2 + step * 0.5, 3 * step);
            double misfit = traced.misfit(parameters.measuring().tracing().cornerCost())
                    + parameters.measuring().tracing().emptyCorner() * blob.lacking(traced.corners(), emptyArea(blob))
                    + blob.straying(
                            traced.corners(), parameters.measuring().tracing().stray() * step);
            best = misfit < least ? traced : best;
            least = Math.min(least, misfit);
        }
        return java.util.Objects.requireNonNull(best);
    }
}
