package hearthcloth.photo.edge;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.image.SrgbLinear;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the sides of a polygon to a fraction of a pixel in the full picture. Many short profiles are read across each
 * side, each is turned into a level that is one inside and zero outside, and the step in it is located.
 */
public final class SubpixelEdges {

    /**
     * A sharp step seems nearer to the middle between two samples than it is. So that this does not bend a side, each
     * place is sampled at another fraction of a pixel; the golden ratio spreads the fractions evenly.
     */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final PixelImage picture;
    /** How far to either side of its expected place a side is looked for, in pixels. */
    private final int reach;

    private final double[][] profile;
    private final double[] level;
    /** The same profile in light, see {@link SrgbLinear}. */
    private final double[][] light;

    private final double[] lit;

    private final boolean byLight;
    private final EdgeParameters.Steps parameters;

    /**
     * Prepares the reading of profiles.
     *
     * @param byLight whether to find how far the light moves each side
     */
    public SubpixelEdges(PixelImage picture, int reach, boolean byLight, EdgeParameters.Steps parameters) {
        this.picture = picture;
        this.reach = reach;
        this.byLight = byLight;
        this.parameters = parameters;
        profile = new double[2 * reach + 1][3];
        level = new double[2 * reach + 1];
        light = new double[2 * reach + 1][3];
        lit = new double[2 * reach + 1];
    }

    /** The sides of a polygon given by its corners in raw pixels; side i runs from corner i to the next. */
    public List<EdgeFit> of(List<Point> corners) {
        int outside = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<EdgeFit> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(side(corners.get(i), corners.get((i + 1) % corners.size()), outside));
        }
        return sides;
    }

    private EdgeFit side(Point a, Point b, int outside) {
        double length = a.to(b);
        double skip = Math.min(length / 4, Math.max(3, Math.max(reach * 0.6, length * 0.08)));
        int count = (int) Math.max(4, Math.min(220, (length - 2 * skip) / 1.5));
        double dx = (b.x() - a.x()) / length;
        double dy = (b.y() - a.y()) / length;
        double nx = -dy * outside;
        double ny = dx * outside;
        List<Point> places = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        double sharp = 0;
        List<Double> further = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point on = a.towards(b, (skip + (length - 2 * skip) * i / (count - 1)) / length);
            double phase = i * GOLDEN % 1 - 0.5;
            Point at = on.plus(phase * nx, phase * ny);
            if (!picture.holds(at.x(), at.y(), reach + 2)) {
                continue;
            }
            read(at, dx, dy, nx, ny);
            Step step = step();
            if (step.size > parameters.leastChange()) {
                places.add(at.plus(step.at * nx, step.at * ny));
                weights.add(Math.min(1, step.size * step.size / 900));
                sharp += step.sharp;
                if (byLight && places.size() % parameters.lit() == 1) {
                    further.add(further(step.at + reach));
                }
            }
        }
        double sharpness = sharp / Math.max(1, places.size());
        return new EdgeFit(places, weights, outside * shift(further, sharpness), sharpness);
    }

    /**
     * One place of a side.
     *
     * @param at where the step is, in pixels outwards
     * @param size of the colour change, in steps of 255
     * @param sharp the share of it that happens within two pixels
     */
    private record Step(double at, double size, double sharp) {}

    /**
     * How far outwards of its steps in colour a side lies. A soft side moves less, since shade and threads are soft
     * too, but not because of a lens.
     */
    private double shift(List<Double> further, double sharpness) {
        if (further.isEmpty()) {
            return 0;
        }
        further.sort(null);
        return parameters.toned() * Math.max(0, 2 * sharpness - 1) * further.get(further.size() / 2);
    }

    private void read(Point at, double dx, double dy, double nx, double ny) {
        for (int t = -reach; t <= reach; t++) {
            double[] sum = profile[t + reach];
            Arrays.fill(sum, 0);
            double x = at.x() + t * nx;
            double y = at.y() + t * ny;
            picture.add(x - dx, y - dy, 0.25, sum);
            picture.add(x, y, 0.5, sum);
            picture.add(x + dx, y + dy, 0.25, sum);
        }
    }

    private Step step() {
        double size = levels(profile, level);
        int n = profile.length;
        int cut = bestCut(level);
        double at = cut - 0.5;
        double before = Double.MAX_VALUE;
        for (int round = 0; round < parameters.centrings() && Math.abs(at - before) > parameters.settled(); round++) {
            before = at;
            at = centred(level, at);
        }
        double sharp = level[Math.max(0, cut - 2)] - level[Math.min(n - 1, cut + 1)];
        return new Step(at - reach, size, Math.max(0, Math.min(1, sharp)));
    }

    /** How much farther outwards the light has its step than the colour values, in pixels. */
    private double further(double at) {
        for (int i = 0; i < profile.length; i++) {
            for (int c = 0; c < 3; c++) {
                light[i][c] = SrgbLinear.ofSteps(profile[i][c]);
            }
        }
        levels(light, lit);
        return centred(lit, centred(lit, at)) - at;
    }

    /**
     * The middle of the fall about a place. The window moves with what it finds. One that stays on whole pixels would
     * draw the step to its own middle where cloth is restless, and so make a bowed side straighter.
     */
    private double centred(double[] level, double at) {
        double weight = 1e-12;
        double moment = 1e-12 * at;
        int from = (int) Math.max(1, Math.ceil(at + 0.5 - parameters.window()));
        int to = (int) Math.min(level.length - 1, Math.floor(at + 0.5 + parameters.window()));
        for (int i = from; i <= to; i++) {
            double fall = Math.max(0, level[i - 1] - level[i]);
            double t = (i - 0.5 - at) / parameters.window();
            double w = fall * fall * (1 - t * t) * (1 - t * t);
            weight += w;
            moment += w * (i - 0.5);
        }
        return moment / weight;
    }

    /** Turns a profile into levels, one inside and zero outside; returns the size of the change, in steps of 255. */
    private double levels(double[][] profile, double[] level) {
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
        for (int i = 0; i < n; i++) {
            level[i] = 0;
            for (int c = 0; c < 3; c++) {
                level[i] += (profile[i][c] - base[c]) * change[c] / Math.max(1e-9, squares);
            }
        }
        return Math.sqrt(squares);
    }

    /** The place before which the levels are nearest one and after which they are nearest zero. */
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
