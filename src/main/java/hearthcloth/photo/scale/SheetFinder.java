package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.measure.Unit;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.Homography;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Finds the shapes that may be the reference: four-sided ones that a camera could have made of the sheet's proportions,
 * with corners as round as its own. {@link SheetChoice} decides which of them it is.
 */
public final class SheetFinder {

    /**
     * The focal length of a telephone's main lens as a multiple of the picture's longer side
     * (docs/sources.md#focal-length). Another focal length explains a slanted A4 as a Letter and the other way round,
     * so it must explain much to be believed.
     */
    static final double USUAL_FOCAL = 0.74;

    private final PixelImage picture;
    private final LabThumbnail coarse;
    private final LensModel lens;
    private final SheetParameters parameters;
    private final Optional<Double> focalShare;
    private final double[] focals;
    /** The cost, as a skew, of each focal length because telephones seldom have it. */
    private final double[] unusual;

    public SheetFinder(
            PixelImage picture,
            LabThumbnail coarse,
            LensModel lens,
            Optional<Double> focalShare,
            SheetParameters parameters) {
        this.picture = picture;
        this.coarse = coarse;
        this.lens = lens;
        this.parameters = parameters;
        this.focalShare = focalShare;
        double side = 2 * Math.max(lens.middle().x(), lens.middle().y());
        this.focals = focalShare
                .map(f -> DoubleStream.of(0.96, 1, 1.04).map(s -> s * f * side))
                .orElse(DoubleStream.of(0.6, 0.64, 0.68, 0.72, 0.76, 0.8, 0.85, 0.92, 1, 1.1, 1.2)
                        .map(f -> f * side))
                .toArray();
        this.unusual = focals.clone();
        for (int i = 0; i < focals.length; i++) {
            double off = Math.abs(Math.log(focals[i] / side / USUAL_FOCAL))
                    - parameters.score().range();
            unusual[i] = focalShare.isPresent() ? 0 : parameters.score().unusual() * Math.max(0, off);
        }
    }

    /**
     * A shape that may be the sheet.
     *
     * @param corners raw pixels, matching (0,0), (w,0), (w,h), (0,h) of {@code size}
     * @param skew by how much, as a share, its proportions and angles are still wrong
     * @param score lower is likelier
     */
    public record Found(
            int index, List<Point> corners, FloorPlane.Turned size, double skew, double score, double deviation) {

        /** The area in square pixels. */
        double area() {
            return Math.abs(Polygons.signedArea(corners));
        }

        /** The shortest side in pixels. */
        double shortest() {
            double shortest = Double.MAX_VALUE;
            for (int i = 0; i < 4; i++) {
                shortest = Math.min(shortest, corners.get(i).to(corners.get((i + 1) % 4)));
            }
            return shortest;
        }
    }

    /**
     * The shapes that may be the sheet.
     *
     * @param shapes traced polygons with any number of corners; one that is cut off is an empty place in the list
     */
    List<Found> among(List<FittedPolygon> shapes, ReferenceSheet sheet) {
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            FittedPolygon shape = shapes.get(i);
            if (shape.corners().size() == 4 && convex(shape.corners())) {
                Found candidate = candidate(i, shape, sheet);
                if (candidate.skew <= parameters.proportions().most()
                        && candidate.score < parameters.score().most()
                        && isPlausible(candidate, sheet)) {
                    found.add(candidate);
                }
            }
        }
        return found;
    }

    /**
     * The most that a shape's skew is when nothing is wrong; it grows as the shortest side gets shorter, since its ends are
     * then known less well.
     */
    double usualSkew(Found found) {
        return parameters.proportions().usual() + parameters.proportions().pixels() / found.shortest();
    }

    /** By which it decides. */
    SheetParameters parameters() {
        return parameters;
    }

    /** Whether a shape may be the sheet. */
    public boolean isAmong(FittedPolygon shape, ReferenceSheet sheet) {
        return !among(List.of(shape), sheet).isEmpty();
    }

    /** A shape that she says is the sheet; how well its proportions fit is told by its skew. */
    Found said(FittedPolygon shape, ReferenceSheet sheet) {
        return candidate(-1, shape, sheet);
    }

    /** How far a shape is from what a camera can make of another sheet's proportions. */
    double skew(Found found, ReferenceSheet other) {
        boolean wide = found.size.width() > found.size.height();
        return skew(found.corners, wide ? lying(other) : upright(other));
    }

    /** How far a shape is from what a camera can make of any rectangle, up to a quarter longer or shorter than the sheet. */
    double offRectangle(Found found) {
        return DoubleStream.iterate(0.8, times -> times < 1.25, times -> times * 1.02)
                .map(times ->
                        skew(found.corners, new FloorPlane.Turned(found.size.width() * times, found.size.height())))
                .min()
                .orElse(found.skew);
    }

    /** The floor as it shows when this shape is the sheet. */
    FloorPlane plane(Found found) {
        return FloorPlane.of(lens, found.corners, found.size.width(), found.size.height());
    }

    /** How many times as large as the sheet something lies on its plane, by area. */
    double times(Found found, List<Point> corners) {
        FloorPlane plane = plane(found);
        List<Point> floor = corners.stream().map(plane::floor).toList();
        return Math.abs(Polygons.signedArea(floor)) / (found.size.width() * found.size.height());
    }

    /** Whether another shape may be a second sheet, as large as the first: not surely larger or smaller, nor by very much. */
    boolean isOneSize(Found found, Found other, ReferenceSheet sheet) {
        FloorScale first = FloorScale.of(found, sheet, lens, picture, focalShare);
        FloorScale second = FloorScale.of(other, sheet, lens, picture, focalShare);
        return first.compared(second, focalShare).isOneSize(parameters.whiter().sameSize());
    }

    private boolean isPlausible(Found found, ReferenceSheet sheet) {
        double pixels = Math.sqrt(found.area() / (found.size.width() * found.size.height()));
        if (Math.max(picture.width, picture.height) > parameters.proportions().mostSeenMm() * pixels) {
            return false;
        }
        double radius = sheet.cornerRadius().in(Unit.MILLIMETRE);
        return radius == 0
                || (pixels >= parameters.proportions().roundPixels()
                        && RoundedCorners.roundness(picture, plane(found), found.size, radius)
                                >= parameters.proportions().round());
    }

    static boolean convex(List<Point> corners) {
        double sign = Math.signum(Polygons.signedArea(corners));
        for (int i = 0; i < 4; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % 4);
            Point c = corners.get((i + 2) % 4);
            if (sign * ((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x())) <= 0) {
                return false;
            }
        }
        return true;
    }

    private static FloorPlane.Turned upright(ReferenceSheet sheet) {
        return new FloorPlane.Turned(
                Math.min(sheet.widthMm(), sheet.heightMm()), Math.max(sheet.widthMm(), sheet.heightMm()));
    }

    private static FloorPlane.Turned lying(ReferenceSheet sheet) {
        return new FloorPlane.Turned(
                Math.max(sheet.widthMm(), sheet.heightMm()), Math.min(sheet.widthMm(), sheet.heightMm()));
    }

    private Found candidate(int index, FittedPolygon shape, ReferenceSheet sheet) {
        List<Point> corners = new ArrayList<>(shape.corners());
        if (Polygons.signedArea(corners) < 0) {
            Collections.reverse(corners);
        }
        double one = skew(corners, upright(sheet));
        double two = skew(corners, lying(sheet));
        FloorPlane.Turned size = one <= two ? upright(sheet) : lying(sheet);
        double scatter = shape.fits().stream()
                .mapToDouble(EdgeFit.Fit::scatter)
                .average()
                .orElse(9);
        Found found = new Found(index, corners, size, Math.min(one, two), 0, shape.worstDeviation());
        double share = found.area() / (lens.unit() * lens.unit());
        double plain = plainness(corners, sheet.white())
                * (sheet.cornerRadius().isPositive() ? parameters.score().printed() : 1);
        double score = 2 * found.skew / usualSkew(found) + scatter / 3 + plain;
        score -= (sheet.white() ? 1 : parameters.score().larger()) * (Math.log10(share) + 2);
        return new Found(index, corners, size, found.skew, score, found.deviation);
    }

    private double skew(List<Point> corners, FloorPlane.Turned size) {
        List<Point> centred = corners.stream()
                .map(lens::straight)
                .map(c -> c.plus(-lens.middle().x(), -lens.middle().y()))
                .toList();
        Homography view = Homography.of(FloorPlane.rectangle(size.width(), size.height()), centred);
        double least = Double.MAX_VALUE;
        for (int i = 0; i < focals.length; i++) {
            least = Math.min(least, view.skew(focals[i]) + unusual[i]);
        }
        return least;
    }

    /** Low for plain shapes, and for white paper only if bright and without colour. */
    private double plainness(List<Point> corners, boolean white) {
        double[] mean = new double[3];
        double squares = 0;
        int count = 0;
        for (int i = 1; i < 12; i++) {
            for (int j = 1; j < 12; j++) {
                Point top = corners.get(0).towards(corners.get(1), i / 12.0);
                Point low = corners.get(3).towards(corners.get(2), i / 12.0);
                Point at = top.towards(low, j / 12.0);
                int x = Math.max(0, Math.min(coarse.width - 1, (int) (at.x() / coarse.step)));
                int y = Math.max(0, Math.min(coarse.height - 1, (int) (at.y() / coarse.step)));
                for (int c = 0; c < 3; c++) {
                    double v = coarse.lab[c].data[y * coarse.width + x];
                    mean[c] += v;
                    squares += c == 0 ? 0.25 * v * v : v * v;
                }
                count++;
            }
        }
        double spread = squares / count;
        for (int c = 0; c < 3; c++) {
            mean[c] /= count;
            spread -= c == 0 ? 0.25 * mean[c] * mean[c] : mean[c] * mean[c];
        }
        double figure = Math.sqrt(Math.max(0, spread)) / 4;
        return white ? figure + (95 - mean[0]) / 12 + Math.hypot(mean[1], mean[2]) / 8 : figure;
    }
}
