package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.EdgeLocaliser;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.LensEstimator;
import hearthcloth.photo.edge.ShadedRims;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.ground.IlluminationCorrection;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.PolygonSimplifier;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ForegroundMask;
import hearthcloth.photo.segment.InteriorColour;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The shapes that a picture shows on one ground, and each followed side by side. */
final class ShapeFollowing {

    /** How far a place may be off the side of faint paper and still belong to it, in pixels. */
    private static final double FAINT_NEAR = 1.2;

    /** A shape that changes its area by a larger share when it is placed again has lost its way, as among long threads. */
    private static final double SAME = 0.05;

    /** How far a placed side may be bridged, in coarse pixels, see {@link PolygonSimplifier#tidied}. */
    private static final double TIDY = 3;

    private final PixelImage picture;
    private final LabThumbnail coarse;
    private final LabThumbnail smooth;
    private final double step;
    private final ShapeTracing tracing;
    private final ReadingParameters parameters;
    private final Runnable told;

    /**
     * Prepares the search for shapes.
     *
     * @param smooth the coarse picture smoothed
     * @param told called when the shapes stand out and before their sides are placed
     */
    ShapeFollowing(
            PixelImage picture,
            LabThumbnail coarse,
            LabThumbnail smooth,
            ShapeTracing tracing,
            ReadingParameters parameters,
            Runnable told) {
        this.picture = picture;
        this.coarse = coarse;
        this.smooth = smooth;
        this.step = coarse.step;
        this.tracing = tracing;
        this.parameters = parameters;
        this.told = told;
    }

    /**
     * One shape with its sides placed.
     *
     * @param sides what the picture shows near the sides as placed; they hold for any lens
     * @param shaded where those sides lie beside which a shade was told from the cloth
     */
    record Followed(
            EdgeLocaliser.Laid laid,
            List<EdgeFit> sides,
            List<Optional<ShadedRims.Placed>> shaded,
            EdgeParameters.Following parameters) {

        FittedPolygon under(LensModel lens, double step) {
            return laid.isKnown()
                    ? FittedPolygon.of(laid.corners(), sides, lens, FAINT_NEAR, step)
                    : FittedPolygon.close(new FittedPolygon.Sides(laid, sides, shaded), lens, parameters);
        }
    }

    /**
     * Everything that the picture shows on one ground.
     *
     * @param lens as far as the pieces determine it
     */
    record Looked(
            GroundModel ground, List<Blob> blobs, List<Followed> followed, LensModel lens, List<FittedPolygon> traced) {

        /** All shapes, with an empty one in place of each that is cut off. */
        List<FittedPolygon> uncut() {
            return IntStream.range(0, blobs.size())
                    .mapToObj(i ->
                            blobs.get(i).cutOff() ? new FittedPolygon(List.of(), List.of(), List.of()) : traced.get(i))
                    .toList();
        }
    }

    /** Everything that stands out from the ground but what lies within {@code known} outlines. */
    Looked look(GroundModel on, List<List<Point>> known) {
        LensModel lens = LensModel.unknown(picture);
        List<ShapeTracing.Seen> seen = ForegroundMask.beside(known, smooth, on, parameters.segment()).stream()
                .parallel()
                .flatMap(blob -> tracing.parted(blob, on, lens))
                .toList();
        List<Blob> blobs = seen.stream().map(ShapeTracing.Seen::blob).toList();
        told.run();
        OccupancyMap occupied = new OccupancyMap(coarse, blobs);
        EdgeLocaliser rims = new EdgeLocaliser(
                new IlluminationCorrection(picture, coarse, on),
                occupied,
                (int) Math.round(5 * step + 6),
                parameters.edge());
        ShadedRims shaded =
                new ShadedRims(picture, occupied, step, parameters.edge().shaded());
        List<Followed> followed = IntStream.range(0, seen.size())
                .parallel()
                .mapToObj(i -> {
                    EdgeLocaliser.Laid laid = laid(rims, seen.get(i).traced().corners(), i, lens);
                    boolean isFigured =
                            InteriorColour.of(laid.corners(), coarse, on).figured();
                    return followed(laid, isFigured ? List.of() : shaded.of(laid.corners(), i));
                })
                .toList();
        Looked looked = looked(on, blobs, followed, lens);
        LensModel first = LensEstimator.estimated(
                lens,
                straightSides(looked),
                List.of(),
                1.5 + step * 0.25,
                parameters.edge().lens());
        return looked(on, blobs, followed, first);
    }

    /**
     * A shape with its sides placed, again where placing them left corners that are none: in a side that goes on, or beside a
     * side so short that shade made it.
     */
    private EdgeLocaliser.Laid laid(EdgeLocaliser rims, List<Point> rough, int own, LensModel lens) {
        EdgeLocaliser.Laid laid = rims.of(PolygonSimplifier.tidied(rough, 2 * step), own, lens);
        List<Point> tidied = PolygonSimplifier.tidied(laid.corners(), TIDY * step);
        if (tidied.size() == laid.corners().size()) {
            return laid;
        }
        EdgeLocaliser.Laid again = rims.of(tidied, own, lens);
        double before = Math.abs(Polygons.signedArea(laid.corners()));
        double after = Math.abs(Polygons.signedArea(again.corners()));
        return Math.abs(after - before) < SAME * before ? again : laid;
    }

    Followed followed(EdgeLocaliser.Laid laid) {
        return followed(laid, List.of());
    }

    private Followed followed(EdgeLocaliser.Laid laid, List<Optional<ShadedRims.Placed>> shaded) {
        List<EdgeFit> sides = new SubpixelEdges(
                        picture,
                        (int) Math.round(step + 2),
                        true,
                        parameters.edge().steps())
                .of(laid.corners());
        return new Followed(laid, sides, shaded, parameters.edge().following());
    }

    Looked looked(GroundModel on, List<Blob> blobs, List<Followed> followed, LensModel lens) {
        List<FittedPolygon> traced =
                followed.stream().parallel().map(f -> f.under(lens, step)).toList();
        return new Looked(on, blobs, followed, lens, traced);
    }

    /** The sides that are seen along most of their length and end in no threads: those that tell of the lens. */
    static List<EdgeFit> straightSides(Looked looked) {
        List<EdgeFit> sides = new ArrayList<>();
        for (int i = 0; i < looked.traced.size(); i++) {
            FittedPolygon traced = looked.traced.get(i);
            for (int s = 0; s < traced.sides().size(); s++) {
                EdgeFit.Fit fit = traced.fits().get(s);
                if (!looked.blobs.get(i).cutOff() && fit.share() > 0.6 && fit.fringe() == 0) {
                    sides.add(traced.sides().get(s));
                }
            }
        }
        return sides;
    }
}
