package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    /** A side of which no sharp edge was used counts as seen along no more than this share. */
    private static final double MOST_UNSEEN = 0.5;

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
     * The sides of a shape as placed, and what the picture shows near them.
     *
     * @param sides as read in the picture
     * @param shaded where a side lies beside which a shade was told from the cloth; empty where none was looked at
     */
    public record Sides(EdgeLocaliser.Laid laid, List<EdgeFit> sides, List<Optional<ShadedRims.Placed>> shaded) {
        public Sides {
            sides = List.copyOf(sides);
            shaded = List.copyOf(shaded);
        }

        private Optional<ShadedRims.Placed> shaded(int i) {
            return shaded.isEmpty() ? Optional.empty() : shaded.get(i);
        }
    }

    /**
     * Follows sides closely that are nearly right already. A side stays where it is when the picture shows no sharp
     * edge there, or one with cloth outside it or ground inside.
     */
    public static FittedPolygon close(Sides seen, LensModel lens, EdgeParameters.Following parameters) {
        List<Point> corners = seen.laid.corners();
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<EdgeFit.Fit> fits = new ArrayList<>();
        for (int i = 0; i < seen.sides.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            EdgeLocaliser.Rim rim = seen.laid.rims().get(i);
            EdgeFit.Fit fit = sharp(seen.sides.get(i), from, to, rim, lens, parameters);
            boolean isShadeless =
                    seen.sides.get(i).sharpness() > parameters.unsharp().shadeless();
            fits.add(seen.shaded(i)
                    .map(placed -> {
                        double off = fit.line().off(lens.straight(placed.at()));
                        boolean isThreads = rim.fringe() > 0 && off * outwards > 0;
                        return shaded(fit, isShadeless || isThreads, off, placed)
                                .faded(rim.fringe(), rim.fringe());
                    })
                    .orElseGet(() -> fit.faded(rim.soft(), rim.fringe())));
        }
        return new FittedPolygon(crossings(corners, lines(fits), lens, 4 * parameters.mostOff()), seen.sides, fits);
    }

    /**
     * An edge that agrees with what shade leaves of the cloth stays; any other side moves there as it runs.
     *
     * @param stays whether a seen edge stays in any case: it is too sharp to be a shade's, or what seems cloth beyond it is
     *     threads
     * @param off how far off the side it was told from the shade
     */
    private static EdgeFit.Fit shaded(EdgeFit.Fit fit, boolean stays, double off, ShadedRims.Placed placed) {
        boolean agrees = Math.abs(off) <= placed.near() && fit.deviation() < placed.deviation();
        return fit.share() > MOST_UNSEEN && (stays || agrees)
                ? fit.agreed(off, stays)
                : fit.placed(off, placed.deviation());
    }

    private static EdgeFit.Fit sharp(
            EdgeFit side,
            Point from,
            Point to,
            EdgeLocaliser.Rim rim,
            LensModel lens,
            EdgeParameters.Following parameters) {
        Line straight = Line.through(lens.straight(from), lens.straight(to));
        double deviation = parameters.unsharp().deviation();
        EdgeFit.Fit fit = side.isUsable()
                ? side.fit(lens, parameters.near())
                : EdgeFit.Fit.unseen(straight, parameters.near(), deviation, 0);
        double most = rim.fringe() >= parameters.unsharp().fringe() ? parameters.frayedOff() : parameters.mostOff();
        if (fit.share() < parameters.leastShare()
                || off(fit.line(), from, to, lens) > most
                || rim.strip().loss(fit.line(), lens) > parameters.mostLoss()) {
            double share = Math.max(fit.share() / 2, parameters.unsharp().byColour() * rim.clear());
            return EdgeFit.Fit.unseen(straight, parameters.near(), deviation, share);
        }
        return fit.moved(side.shift());
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
