package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A polygon followed in the full picture: its corners in raw pixels and, for each side, how well it was found.
 *
 * @param fits one for each side, from corner i to the next; a side too short or too faint has the line through its
 *     corners and a share of zero
 */
public record FittedPolygon(List<Point> corners, List<EdgeFit> sides, List<EdgeFit.Fit> fits) {

    /** Where a parabola crosses the line that fits it best, as a share of its length: (1 − 1/√3)/2. */
    private static final double BOWED = 0.2113;

    public FittedPolygon {
        corners = List.copyOf(corners);
        sides = List.copyOf(sides);
        fits = List.copyOf(fits);
    }

    /**
     * Follows a polygon.
     *
     * @param sides its sides as read in the picture
     * @param near how far a place may be off its side and still belong to it, in pixels
     * @param leash how far a corner may move from where it was, in pixels
     */
    public static FittedPolygon of(List<Point> rough, List<EdgeFit> sides, LensModel lens, double near, double leash) {
        List<EdgeFit.Fit> fits = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            EdgeFit side = sides.get(i);
            if (side.isUsable()) {
                EdgeFit.Fit fit = side.fit(lens, near);
                if (fit.share() > 0.25) {
                    fits.add(fit);
                    continue;
                }
            }
            Line line = Line.through(lens.straight(rough.get(i)), lens.straight(rough.get((i + 1) % rough.size())));
            fits.add(EdgeFit.Fit.unseen(line, near, near * 1.5, 0));
        }
        return new FittedPolygon(crossings(rough, lines(fits), lens, leash), sides, fits);
    }

    /**
     * Follows sides closely that are nearly right already. A side stays where it is when the picture shows no sharp
     * edge there, or one with cloth outside it or ground inside.
     *
     * @param rims how each side was placed
     * @param sides as read in the picture
     */
    public static FittedPolygon close(
            List<Point> corners,
            List<EdgeLocaliser.Rim> rims,
            List<EdgeFit> sides,
            LensModel lens,
            EdgeParameters.Following parameters) {
        List<EdgeFit.Fit> fits = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            Point a = lens.straight(corners.get(i));
            Point b = lens.straight(corners.get((i + 1) % corners.size()));
            EdgeFit.Fit fit = sides.get(i).isUsable()
                    ? sides.get(i).fit(lens, parameters.near())
                    : EdgeFit.Fit.unseen(
                            Line.through(a, b),
                            parameters.near(),
                            parameters.unsharp().deviation(),
                            0);
            double off = off(fit.line(), corners.get(i), corners.get((i + 1) % corners.size()), lens);
            EdgeLocaliser.Rim rim = rims.get(i);
            if (fit.share() < parameters.leastShare()
                    || off
                            > (rim.fringe() >= parameters.unsharp().fringe()
                                    ? parameters.frayedOff()
                                    : parameters.mostOff())
                    || rim.strip().loss(fit.line(), lens) > parameters.mostLoss()) {
                fit = EdgeFit.Fit.unseen(
                        Line.through(a, b),
                        parameters.near(),
                        parameters.unsharp().deviation(),
                        Math.max(fit.share() / 2, parameters.unsharp().byColour() * rim.clear()));
            } else {
                fit = fit.moved(sides.get(i).shift());
            }
            fits.add(fit.faded(rim.soft(), rim.fringe()));
        }
        return new FittedPolygon(crossings(corners, lines(fits), lens, 4 * parameters.mostOff()), sides, fits);
    }

    /**
     * How far a line is, at its worse end and in pixels, from one drawn straight in the picture. A side that the lens
     * bows crosses the straight line that fits it best at two places; the distance there says how far off that line is.
     */
    static double off(Line line, Point a, Point b, LensModel lens) {
        double one = line.off(lens.straight(a.towards(b, BOWED)));
        double two = line.off(lens.straight(a.towards(b, 1 - BOWED)));
        double further = (two - one) * BOWED / (1 - 2 * BOWED);
        return Math.max(Math.abs(one - further), Math.abs(two + further));
    }

    /**
     * The places where each side crosses the one before it.
     *
     * @param lines in straightened pixels
     * @param leash a crossing farther off than this is not used, and the corner stays
     */
    static List<Point> crossings(List<Point> rough, List<Line> lines, LensModel lens, double leash) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < rough.size(); i++) {
            Line before = lines.get(Math.floorMod(i - 1, lines.size()));
            Point cross = lens.bent(before.crossing(lines.get(i)));
            corners.add(cross.to(rough.get(i)) < leash ? cross : rough.get(i));
        }
        return corners;
    }

    /**
     * How far in from each side the cloth surely begins, in pixels. A place that scatters may be a thread's end or part
     * of a figure, and a side that is softer than the sheet's own may be a shade's, or that of threads too fine for the
     * picture. Something is always left of a thin piece.
     *
     * @param sharpest sharpness of the sheet's sides
     */
    public List<Double> insets(double sharpest, EdgeParameters.Unsharp parameters) {
        double most = parameters.mostInset() * Math.abs(Polygons.signedArea(corners)) / Polygons.perimeter(corners);
        return IntStream.range(0, corners.size())
                .mapToObj(i -> {
                    double softer = Math.max(0, sharpest - sides.get(i).sharpness());
                    return Math.min(most, parameters.firm() * (fits.get(i).scatter() + softer));
                })
                .toList();
    }

    /** The corners when every side lies farther in by some pixels. */
    public List<Point> inset(List<Double> pixels, LensModel lens) {
        List<Point> straight = corners.stream().map(lens::straight).toList();
        double inwards = Math.signum(Polygons.signedArea(straight));
        int n = corners.size();
        List<Line> moved = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Line side = Line.through(straight.get(i), straight.get((i + 1) % n));
            moved.add(side.moved(inwards * pixels.get(i)));
        }
        List<Point> inset = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            inset.add(lens.bent(moved.get(Math.floorMod(i - 1, n)).crossing(moved.get(i))));
        }
        return inset;
    }

    private static List<Line> lines(List<EdgeFit.Fit> fits) {
        return fits.stream().map(EdgeFit.Fit::line).toList();
    }

    /**
     * How badly the picture supports this polygon: the share of its rim where nothing was found, plus a little for
     * every corner, so that of two polygons the simpler one wins unless the other explains more.
     *
     * @param cornerCost what a corner adds, as a share of the rim
     */
    public double misfit(double cornerCost) {
        double all = 0;
        double bare = 0;
        for (int i = 0; i < corners.size(); i++) {
            double length = corners.get(i).to(corners.get((i + 1) % corners.size()));
            all += length;
            bare += length * (1 - Math.min(1, fits.get(i).share() / 0.8));
        }
        return bare / all + cornerCost * corners.size();
    }

    /** The sine of the angle at corner i, at least 0.05. */
    public double sine(int i) {
        Line before = fits.get(Math.floorMod(i - 1, fits.size())).line();
        return Math.max(0.05, Math.abs(before.sine(fits.get(i).line())));
    }

    /** The mean sharpness of its sides, see {@link EdgeFit}. */
    public double sharpness() {
        return sides.stream().mapToDouble(EdgeFit::sharpness).average().orElse(1);
    }

    public double worstDeviation() {
        return fits.stream().mapToDouble(EdgeFit.Fit::deviation).max().orElse(1);
    }
}
