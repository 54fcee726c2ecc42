package hearthcloth.photo.edge;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Places the sides of cloth of even colour where the cloth ends and not where the shade beside it does: the profile across a
 * side, averaged along it, is explained as {@link ShadeFit} says.
 */
public final class ShadedRims {

    /** As far out as a profile reaches at most, in coarse pixels, and it has to reach at least. */
    private static final int OUTSIDE = 16;

    private static final int LEAST_OUTSIDE = 9;
    /** A side is read at so many places at most. */
    private static final int PLACES = 120;
    /** And at least. */
    private static final int FEWEST = 12;
    /** A place of the profile counts where the ground shows beside so large a share of the side. */
    private static final double SHOWN = 0.4;

    private final PixelImage picture;
    private final OccupancyMap occupied;
    private final double unit;
    private final EdgeParameters.Shaded parameters;

    /**
     * Prepares the reading.
     *
     * @param unit raw pixels to a coarse one
     */
    public ShadedRims(PixelImage picture, OccupancyMap occupied, double unit, EdgeParameters.Shaded parameters) {
        this.picture = picture;
        this.occupied = occupied;
        this.unit = unit;
        this.parameters = parameters;
    }

    /**
     * Where a side lies.
     *
     * @param at a place on its middle, in raw pixels
     * @param deviation across the side, in pixels
     * @param near a sharp edge no farther off is the same, and told more closely
     */
    public record Placed(Point at, double deviation, double near) {}

    /** Each side of a polygon, empty where cloth or ground is figured or something else than a shade lies beside it. */
    public List<Optional<Placed>> of(List<Point> corners, int own) {
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<Optional<Placed>> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(side(corners.get(i), corners.get((i + 1) % corners.size()), outwards, own));
        }
        return sides;
    }

    private Optional<Placed> side(Point a, Point b, int outwards, int own) {
        double length = a.to(b);
        double skip = Math.min(length / 4, Math.max(5 * unit, 0.1 * length));
        int count = (int) Math.min(PLACES, (length - 2 * skip) / unit);
        if (count < FEWEST) {
            return Optional.empty();
        }
        Across across = new Across(a, b, outwards, own);
        for (int i = 0; i < count; i++) {
            across.read((skip + (length - 2 * skip) * i / (count - 1)) / length);
        }
        int reach = across.reach(0, count);
        if (reach < LEAST_OUTSIDE || across.restless() > parameters.restless()) {
            return Optional.empty();
        }
        ShadeFit.Found whole = new ShadeFit(across.mean(0, count, reach)).found();
        if (whole.misfit() > parameters.misfit()) {
            return Optional.empty();
        }
        int half = count / 2;
        ShadeFit.Found first = new ShadeFit(across.mean(0, half, reach)).near(whole);
        ShadeFit.Found second = new ShadeFit(across.mean(half, count, reach)).near(whole);
        double bent = (first.at() + second.at()) / 2 - whole.at();
        double deviation = Math.hypot(parameters.least(), Math.hypot(bent, parameters.apart() * whole.apart()));
        return Optional.of(new Placed(across.at(0.5, whole.at()), unit * deviation, unit * parameters.near()));
    }

    /** What is seen across a side, by place along it and by distance outwards. */
    private final class Across {

        private final Point a;
        private final Point b;
        private final int own;
        private final double nx;
        private final double ny;
        private final List<double[][]> seen = new ArrayList<>();

        Across(Point a, Point b, int outwards, int own) {
            this.a = a;
            this.b = b;
            this.own = own;
            double length = a.to(b);
            nx = -(b.y() - a.y()) / length * outwards;
            ny = (b.x() - a.x()) / length * outwards;
        }

        void read(double share) {
            int count = (int) Math.round((ShadeFit.INSIDE + OUTSIDE) / ShadeFit.APART) + 1;
            double[][] profile = new double[count][];
            for (int k = 0; k < count; k++) {
                double out = k * ShadeFit.APART - ShadeFit.INSIDE;
                Point at = at(share, out);
                boolean hidden =
                        !picture.holds(at.x(), at.y(), 1) || (out > 2 && occupied.byOther(at.x(), at.y(), own));
                profile[k] = hidden ? new double[0] : new double[3];
                if (!hidden) {
                    picture.add(at.x(), at.y(), 1, profile[k]);
                }
            }
            seen.add(profile);
        }

        Point at(double share, double out) {
            return a.towards(b, share).plus(out * unit * nx, out * unit * ny);
        }

        /** As far out as the ground shows beside most of the side, in whole coarse pixels. */
        int reach(int from, int to) {
            int most = seen.get(0).length;
            int k = 0;
            while (k < most && shown(k, from, to) >= SHOWN * (to - from)) {
                k++;
            }
            return (int) Math.floor((k - 1) * ShadeFit.APART - ShadeFit.INSIDE);
        }

        private int shown(int k, int from, int to) {
            int shown = 0;
            for (double[][] profile : seen.subList(from, to)) {
                shown += profile[k].length > 0 ? 1 : 0;
            }
            return shown;
        }

        double[][] mean(int from, int to, int reach) {
            double[][] mean = new double[(int) Math.round((ShadeFit.INSIDE + reach) / ShadeFit.APART) + 1][3];
            for (int k = 0; k < mean.length; k++) {
                int shown = Math.max(1, shown(k, from, to));
                for (double[][] profile : seen.subList(from, to)) {
                    for (int c = 0; c < profile[k].length; c++) {
                        mean[k][c] += profile[k][c] / shown;
                    }
                }
            }
            return mean;
        }

        /** How much the cloth differs from place to place well inside, in steps of 255. */
        double restless() {
            int surely = (int) Math.round((ShadeFit.INSIDE - 6) / ShadeFit.APART);
            double sum = 0;
            double[] mean = new double[3];
            double[] squares = new double[3];
            double count = 0;
            for (double[][] profile : seen) {
                for (int k = 0; k <= surely; k++) {
                    for (int c = 0; c < profile[k].length; c++) {
                        mean[c] += profile[k][c];
                        squares[c] += profile[k][c] * profile[k][c];
                    }
                    count += profile[k].length / 3.0;
                }
            }
            for (int c = 0; c < 3; c++) {
                sum += squares[c] / count - mean[c] * mean[c] / (count * count);
            }
            return Math.sqrt(Math.max(0, sum) / 3);
        }
    }
}
