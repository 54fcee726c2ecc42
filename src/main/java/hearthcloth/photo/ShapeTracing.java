package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.PolygonSimplifier;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ConcavitySplit;
import java.util.List;
import java.util.stream.Stream;

/** Makes polygons of shapes: each with as few corners as the picture supports. */
final class ShapeTracing {

    /** How far a rim may be off its polygon, in coarse pixels; each is tried. */
    private static final double[] TOLERANCES = {2.2, 3.5, 6, 9, 13};

    /** What a corner without cloth in it adds to a polygon's {@link FittedPolygon#misfit}. */
    private static final double EMPTY_CORNER = 0.1;
    /**
     * A corner counts as empty when at least this much is missing there, in square coarse pixels: twice what the
     * opening of the mask takes from a sharp corner.
     */
    private static final double EMPTY_AREA = 20;
    /**
     * Three times the share of its area that a card lacks at a corner, (1 − π/4) r² of ID-1's sides
     * (docs/sources.md#card).
     */
    private static final double ROUNDED = 0.0015;

    /** A rim farther from a polygon than this follows none of its sides, as in the notch of an L, in coarse pixels. */
    private static final double STRAY = 4;

    private final PixelImage picture;
    private final ReferenceSheet sheet;
    private final LabThumbnail coarse;
    private final double step;

    ShapeTracing(PixelImage picture, LabThumbnail coarse, ReferenceSheet sheet) {
        this.picture = picture;
        this.coarse = coarse;
        this.step = coarse.step;
        this.sheet = sheet;
    }

    /** A shape and its polygon. */
    record Seen(Blob blob, FittedPolygon traced) {}

    Stream<Seen> parted(Blob blob, GroundModel on, LensModel lens) {
        ConcavitySplit parting = new ConcavitySplit(coarse, on);
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
        double rounded = sheet.cornerRadius().isPositive() ? ROUNDED * blob.area() : 0;
        return Math.max(EMPTY_AREA * step * step, rounded);
    }

    /** Of polygons from fine to rough, the one that the picture supports best. */
    FittedPolygon simplest(Blob blob, LensModel lens) {
        SubpixelEdges reader = new SubpixelEdges(picture, (int) Math.round(2.5 * step + 2), false);
        FittedPolygon best = null;
        double least = Double.MAX_VALUE;
        for (double tolerance : TOLERANCES) {
            List<Point> corners = PolygonSimplifier.of(blob.rim(), tolerance * step);
            if (best != null && corners.size() == best.corners().size()) {
                continue;
            }
            FittedPolygon traced = FittedPolygon.of(corners, reader.of(corners), lens, 2 + step * 0.5, 3 * step);
            double misfit = traced.misfit()
                    + EMPTY_CORNER * blob.lacking(traced.corners(), emptyArea(blob))
                    + blob.straying(traced.corners(), STRAY * step);
            best = misfit < least ? traced : best;
            least = Math.min(least, misfit);
        }
        return java.util.Objects.requireNonNull(best);
    }
}
