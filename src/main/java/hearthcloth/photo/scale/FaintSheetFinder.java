package hearthcloth.photo.scale;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.EdgelMap;
import hearthcloth.photo.edge.Edgels;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.HoughSegments;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.Hulls;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.OccupancyMap;
import hearthcloth.photo.segment.RimColourProfile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Looks for white paper on ground nearly of its own colour, such as a crumpled bedsheet whose folds differ from each
 * other more than from the paper: four long straight edges that end where they meet, in proportions that a camera can
 * make of the sheet's, with the same change of colour all round.
 *
 * <p>It demands more than {@link SheetFinder} does, since any lines on the ground may cross.
 */
public final class FaintSheetFinder {

    private final PixelImage picture;
    private final LabThumbnail smooth;
    private final LensModel lens;
    private final OccupancyMap occupied;
    private final SheetParameters.Faint parameters;
    private final EdgeParameters.Steps steps;
    private final EdgelMap map;
    private final List<Line> lines;

    /**
     * Prepares the search.
     *
     * @param smooth the smoothed coarse picture
     */
    public FaintSheetFinder(
            PixelImage picture,
            LabThumbnail smooth,
            LensModel lens,
            OccupancyMap occupied,
            ReadingParameters parameters) {
        this.parameters = parameters.sheet().faint();
        this.steps = parameters.edge().steps();
        this.picture = picture;
        this.smooth = smooth;
        this.lens = lens;
        this.occupied = occupied;
        List<Edgels.Edgel> edgels = Edgels.in(
                        smooth.smoothed(this.parameters.paper().smoothing()),
                        occupied::isFree,
                        this.parameters.edgels())
                .stream()
                .map(this::straightened)
                .toList();
        map = new EdgelMap(edgels, smooth.width, smooth.height, this.parameters.edgels());
        lines = HoughSegments.of(edgels, this.parameters.rows());
    }

    private Edgels.Edgel straightened(Edgels.Edgel e) {
        Point at = lens.straight(new Point(e.x() * smooth.step, e.y() * smooth.step));
        return new Edgels.Edgel(at.x() / smooth.step, at.y() / smooth.step, e.angle());
    }

    /**
     * The quadrilaterals that may be the sheet, each as its corners in raw pixels; none when two that are not the same
     * overlap.
     */
    public List<List<Point>> like(ReferenceSheet sheet, SheetFinder finder) {
        List<List<Point>> found = new ArrayList<>();
        rounds().filter(round -> round.shown() >= parameters.round().leastRound())
                .map(round -> traced(round.corners()))
                .filter(shape -> isSheet(shape, sheet, finder))
                .sorted(Comparator.comparingDouble(FaintSheetFinder::scatter))
                .map(FittedPolygon::corners)
                .filter(corners -> found.stream().noneMatch(other -> isSame(other, corners)))
                .forEach(found::add);
        boolean sure =
                found.stream().allMatch(one -> found.stream().allMatch(other -> one == other || !overlap(one, other)));
        return sure ? found : List.of();
    }

    /**
     * Four lines that close.
     *
     * @param shown the share of their length on which an edge shows
     */
    private record Round(List<Point> corners, double shown) {}

    private Stream<Round> rounds() {
        List<int[]> pairs = new ArrayList<>();
        double opposite = Math.sin(Math.toRadians(parameters.round().oppositeDegrees()));
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                if (Math.abs(lines.get(i).sine(lines.get(j))) < opposite) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        return IntStream.range(0, pairs.size())
                .boxed()
                .flatMap(p -> pairs.subList(p + 1, pairs.size()).stream().flatMap(q -> round(pairs.get(p), q)));
    }

    private Stream<Round> round(int[] one, int[] two) {
        Line a = lines.get(one[0]);
        Line b = lines.get(two[0]);
        Line c = lines.get(one[1]);
        Line d = lines.get(two[1]);
        double neighbouring = Math.sin(Math.toRadians(parameters.round().neighbouringDegrees()));
        if (Math.abs(a.sine(b)) < neighbouring || Math.abs(c.sine(d)) < neighbouring) {
            return Stream.empty();
        }
        List<Point> corners = List.of(d.crossing(a), a.crossing(b), b.crossing(c), c.crossing(d));
        double least = 1;
        double sum = 0;
        double all = 0;
        for (int i = 0; i < 4; i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % 4);
            double length = from.to(to);
            if (length < parameters.round().shortest() || !isInside(from)) {
                return Stream.empty();
            }
            double shown = map.shown(from, to);
            least = Math.min(least, shown);
            sum += shown * length;
            all += length;
        }
        return least < parameters.round().leastSide() || goesOn(corners)
                ? Stream.empty()
                : Stream.of(new Round(corners, sum / all));
    }

    private boolean isInside(Point at) {
        return at.x() > 0 && at.y() > 0 && at.x() < smooth.width && at.y() < smooth.height;
    }

    private boolean goesOn(List<Point> corners) {
        for (int i = 0; i < 4; i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % 4);
            if (map.beyond(from, to) > parameters.round().mostBeyond()
                    || map.beyond(to, from) > parameters.round().mostBeyond()) {
                return true;
            }
        }
        return false;
    }

    private FittedPolygon traced(List<Point> corners) {
        List<Point> raw = corners.stream()
                .map(c -> lens.bent(new Point(c.x() * smooth.step, c.y() * smooth.step)))
                .toList();
        return followed(followed(raw, 2 * smooth.step + 2, 4).corners(), smooth.step + 2, 2);
    }

    private FittedPolygon followed(List<Point> corners, int reach, double leash) {
        return FittedPolygon.of(
                corners,
                new SubpixelEdges(picture, reach, false, steps).of(corners),
                lens,
                parameters.paper().near(),
                leash * smooth.step);
    }

    private boolean isSheet(FittedPolygon shape, ReferenceSheet sheet, SheetFinder finder) {
        return shape.fits().stream()
                        .allMatch(fit -> fit.share() > parameters.paper().leastShare())
                && finder.among(List.of(shape), sheet).stream()
                        .anyMatch(found -> found.skew() <= finder.usualSkew(found))
                && RimColourProfile.of(shape.corners(), smooth, occupied).isOfOneKind();
    }

    private static double scatter(FittedPolygon shape) {
        return shape.fits().stream().mapToDouble(EdgeFit.Fit::scatter).sum();
    }

    private boolean isSame(List<Point> one, List<Point> other) {
        double near = parameters.paper().same() * smooth.step;
        return one.stream().allMatch(a -> other.stream().anyMatch(b -> a.to(b) < near));
    }

    private static boolean overlap(List<Point> one, List<Point> other) {
        return holdsInner(one, other) || holdsInner(other, one);
    }

    private static boolean holdsInner(List<Point> one, List<Point> other) {
        Point inner = Hulls.inner(other);
        return Polygons.inside(one, inner.x(), inner.y());
    }
}
