package hearthcloth.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the sides of a polygon to a fraction of a pixel in the full picture: across each side many short profiles are
 * read, each turned into a number that is one inside and nought outside, and the step in it is located.
 */
final class Sides {

    /** Colour change, in steps of 255, below which a profile says nothing. */
    private static final double LEAST_CHANGE = 9;

    /** A sharp edge falls from all to an eighth within this many pixels after its steepest place. */
    private static final double CLEAN_FALL = 2;

    /** Shorter threads do not matter, in pixels. */
    private static final double LEAST_FRINGE = 3;

    /** Threads beyond the edge cover less of the ground than this. */
    private static final double SOLID = 0.6;

    /** A level that only the shade beside a piece reaches. */
    private static final double SHADED = 1.2;

    /** A fall over two pixels that no fringe makes. */
    private static final double SHARP = 0.28;

    /** How a profile's colours become levels. */
    enum Levels {
        /** Along the change from outside to inside: best against noise, for plain cloth. */
        ALONG_THE_CHANGE,
        /** By how far each colour is from the ground's, whichever way: for figured cloth. */
        AWAY_FROM_THE_GROUND
    }

    private final Picture picture;
    private final Levels reading;
    /** How far to look either side of where the side should be, in pixels. */
    private final int reach;

    private final double[][] profile;
    private final double[] level;

    Sides(Picture picture, int reach, Levels reading) {
        this.picture = picture;
        this.reading = reading;
        this.reach = reach;
        profile = new double[2 * reach + 1][3];
        level = new double[2 * reach + 1];
    }

    /** The sides of a polygon given by its corners in raw pixels; side i runs from corner i to the next. */
    List<Side> of(List<Spot> corners) {
        int outside = Shapes.signedArea(corners) > 0 ? -1 : 1;
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(side(corners.get(i), corners.get((i + 1) % corners.size()), outside));
        }
        return sides;
    }

    private Side side(Spot a, Spot b, int outside) {
        double length = a.to(b);
        double skip = Math.min(length / 4, Math.max(3, Math.max(reach * 0.6, length * 0.08)));
        int count = (int) Math.max(4, Math.min(220, (length - 2 * skip) / 1.5));
        double dx = (b.x() - a.x()) / length;
        double dy = (b.y() - a.y()) / length;
        double nx = -dy * outside;
        double ny = dx * outside;
        List<Spot> places = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        double sharp = 0;
        for (int i = 0; i < count; i++) {
            Spot at = a.towards(b, (skip + (length - 2 * skip) * i / (count - 1)) / length);
            if (!picture.holds(at.x(), at.y(), reach + 2)) {
                continue;
            }
            read(at, dx, dy, nx, ny);
            double[] step = step();
            if (step[1] > LEAST_CHANGE) {
                places.add(at.plus(step[0] * nx, step[0] * ny));
                weights.add(Math.min(1, step[1] * step[1] / 900));
                sharp += step[2];
            }
        }
        return new Side(places, weights, outside, sharp / Math.max(1, places.size()));
    }

    /**
     * Looks at the side as a whole: the mean of all its profiles, along the line found. A clean edge falls at once. Where
     * threads stick out the fall has a shoulder; then the places are read again with this longer reach, so that those
     * between the threads agree on the edge of the solid cloth. A line found inside the cloth is moved to its rim.
     */
    Side.Fit settled(Side.Fit fit, Side side, Spot a, Spot b, Lens lens, double near) {
        double[] mean = meanLevel(fit, side, lens);
        if (first(mean, 0.15) - first(mean, 0.85) > CLEAN_FALL + LEAST_FRINGE) {
            Side wide = side(a, b, side.outside());
            if (wide.isUsable()) {
                Side.Fit again = wide.fit(lens, near);
                double[] meanAgain = meanLevel(again, wide, lens);
                return moved(again, meanAgain, side.outside());
            }
        }
        return moved(fit, mean, side.outside());
    }

    private Side.Fit moved(Side.Fit fit, double[] mean, int outside) {
        int shade = shade(mean);
        if (shade > 0) {
            return fit.moved(shade - reach, outside).lessSure(0.5);
        }
        int solid = outermostFall(mean);
        double fringe = last(mean, 0.12) - solid - CLEAN_FALL;
        int shift = solid - reach;
        if (fringe < LEAST_FRINGE) {
            return Math.abs(shift) < 2 ? fit : fit.moved(shift, outside);
        }
        return fit.moved(shift, outside).frayed(fringe);
    }

    /**
     * Where the shade that a piece casts begins, if that is darker than the piece itself: the profile then rises above one
     * beyond the edge before it falls. Nought when it does not.
     */
    private static int shade(double[] mean) {
        int peak = 0;
        for (int i = mean.length / 4; i < mean.length - 2; i++) {
            peak = mean[i] > Math.max(SHADED, mean[peak]) ? i : peak;
        }
        int at = peak;
        for (int i = Math.max(2, peak - 5); i < peak; i++) {
            at = fall(mean, i) < fall(mean, at) ? i : at;
        }
        return at;
    }

    private static int first(double[] mean, double below) {
        int i = 0;
        while (i < mean.length - 1 && mean[i] > below) {
            i++;
        }
        return i;
    }

    private static int last(double[] mean, double above) {
        int i = mean.length - 1;
        while (i > 2 && mean[i] < above) {
            i--;
        }
        return i;
    }

    /**
     * Where the cloth ends, from the inside out: the last sharp fall, for a row of figures may look half like the ground
     * but ends sharply, as fringe does not; without one, the steepest fall near where the level last is that of cloth.
     */
    private int outermostFall(double[] mean) {
        int about = Math.max(3, Math.min(mean.length - 4, last(mean, SOLID)));
        for (int i = mean.length - 4; reading == Levels.AWAY_FROM_THE_GROUND && i > about + 2; i--) {
            if (fall(mean, i) > SHARP && fall(mean, i) >= fall(mean, i - 1)) {
                return i;
            }
        }
        int at = about;
        for (int i = about - 2; i <= about + 2; i++) {
            at = fall(mean, i) > fall(mean, at) ? i : at;
        }
        return at;
    }

    private static double fall(double[] mean, int i) {
        return mean[i - 1] - mean[i + 1];
    }

    private double[] meanLevel(Side.Fit fit, Side side, Lens lens) {
        int n = profile.length;
        double[] sum = new double[n];
        double weight = 1e-9;
        Line line = fit.line();
        for (int k = 0; k < side.places().size(); k += 2) {
            Spot place = side.places().get(k);
            double along = line.along(lens.straight(place));
            Spot at = lens.bent(line.at().plus(along * line.dx(), along * line.dy()));
            if (picture.holds(at.x(), at.y(), reach + 2)) {
                int out = side.outside();
                read(at, line.dx(), line.dy(), -line.dy() * out, line.dx() * out);
                double size = levels();
                double trust = Math.min(1, size * size / 900);
                weight += trust;
                for (int i = 0; i < n; i++) {
                    sum[i] += trust * level[i];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            sum[i] /= weight;
        }
        return sum;
    }

    private void read(Spot at, double dx, double dy, double nx, double ny) {
        for (int t = -reach; t <= reach; t++) {
            double[] sum = profile[t + reach];
            sum[0] = 0;
            sum[1] = 0;
            sum[2] = 0;
            double x = at.x() + t * nx;
            double y = at.y() + t * ny;
            picture.add(x - dx, y - dy, 0.25, sum);
            picture.add(x, y, 0.5, sum);
            picture.add(x + dx, y + dy, 0.25, sum);
        }
    }

    /** Where the step is (pixels outwards), how large it is, and how much of it happens within two pixels. */
    private double[] step() {
        double size = levels();
        int n = profile.length;
        int cut = bestCut(level);
        double weight = 1e-12;
        double moment = 0;
        for (int i = Math.max(1, cut - 2); i <= Math.min(n - 1, cut + 2); i++) {
            double fall = Math.max(0, level[i - 1] - level[i]);
            weight += fall * fall;
            moment += fall * fall * (i - 0.5);
        }
        double at = weight > 1e-9 ? moment / weight : cut - 0.5;
        double sharp = level[Math.max(0, cut - 2)] - level[Math.min(n - 1, cut + 1)];
        return new double[] {at - reach, size, Math.max(0, Math.min(1, sharp))};
    }

    /** Turns the profile into levels, one inside and nought outside; returns the size of the colour change. */
    private double levels() {
        double[] change = new double[3];
        double[] base = new double[3];
        int n = profile.length;
        int quarter = Math.max(2, n / 4);
        double squares = 0;
        for (int c = 0; c < 3; c++) {
            double in = 0;
            double out = 0;
            for (int i = 0; i < quarter; i++) {
                in += profile[i][c];
                out += profile[n - 1 - i][c];
            }
            base[c] = out / quarter;
            change[c] = (in - out) / quarter;
            squares += change[c] * change[c];
        }
        if (reading == Levels.AWAY_FROM_THE_GROUND) {
            return away(base, quarter);
        }
        for (int i = 0; i < n; i++) {
            level[i] = 0;
            for (int c = 0; c < 3; c++) {
                level[i] += (profile[i][c] - base[c]) * change[c] / Math.max(1e-9, squares);
            }
        }
        return Math.sqrt(squares);
    }

    /** Distance from the outside colour, less what the outside itself strays, clipped to one at the inside's mean. */
    private double away(double[] base, int quarter) {
        int n = profile.length;
        double in = 0;
        double out = 0;
        for (int i = 0; i < n; i++) {
            double r = profile[i][0] - base[0];
            double g = profile[i][1] - base[1];
            double b = profile[i][2] - base[2];
            level[i] = Math.sqrt(r * r + g * g + b * b);
            in += i < quarter ? level[i] / quarter : 0;
            out += i >= n - quarter ? level[i] / quarter : 0;
        }
        for (int i = 0; i < n; i++) {
            level[i] = Math.min(1, (level[i] - out) / Math.max(1e-9, in - out));
        }
        return Math.max(0, in - out);
    }

    /** The place before which the levels are nearest one and after which nearest nought. */
    private static int bestCut(double[] level) {
        double error = 0;
        for (double v : level) {
            error += v * v;
        }
        double least = error;
        int best = 0;
        for (int i = 0; i < level.length; i++) {
            error += (level[i] - 1) * (level[i] - 1) - level[i] * level[i];
            if (error < least) {
                least = error;
                best = i + 1;
            }
        }
        return best;
    }
}
