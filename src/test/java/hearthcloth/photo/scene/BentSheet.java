package hearthcloth.photo.scene;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A printed sheet that does not lie flat. It is bent in one direction only, as paper bends: its length along the bend is kept
 * exactly, and its height above the floor follows a profile. A little crumpling may be added, too low to stretch it.
 */
final class BentSheet {

    /** The step of the profile's table, in millimetres of the floor. */
    private static final double STEP = 0.5;

    private static final int SPAN = 1200;

    /** How a sheet is bent: the height in millimetres at each place along the bend, and how high creases stand. */
    record Bend(double directionRad, DoubleUnaryOperator heightMm, double creaseMm, long seed) {

        static Bend none() {
            return new Bend(0, t -> 0, 0, 1);
        }

        /** Beyond a line it rises as a parabola, to a height reached at {@code far} millimetres from its middle. */
        static Bend curled(double directionRad, double from, double far, double height) {
            return new Bend(directionRad, t -> t < from ? 0 : height * Math.pow((t - from) / (far - from), 2), 0, 1);
        }

        /** It stands off the floor in its middle, having been rolled. */
        static Bend arched(double directionRad, double half, double height) {
            return new Bend(
                    directionRad,
                    t -> Math.abs(t) > half ? 0 : height * Math.pow(Math.cos(t / half * 1.5708), 2),
                    0,
                    1);
        }

        /** One half of it lies in waves, as when it was crumpled and smoothed again. */
        static Bend crumpled(double directionRad, double from, double wave, double height, double crease, long seed) {
            return new Bend(
                    directionRad,
                    t -> t < from ? 0 : height * Math.pow(Math.sin((t - from) / wave * Math.PI), 2),
                    crease,
                    seed);
        }
    }

    private final BufferedImage print;
    private final double pixelsPerMm;
    private final double x;
    private final double y;
    private final double turn;
    private final Bend bend;
    private final double turnCos;
    private final double turnSin;
    private final double bendCos;
    private final double bendSin;

    /** Nothing of it is seen where the floor behind lies farther than this from its middle, in millimetres. */
    private final double reach;

    /** Length of paper from its middle, and height, for each step along the bend. */
    private final double[] along = new double[2 * SPAN + 1];

    private final double[] height = new double[2 * SPAN + 1];

    BentSheet(BufferedImage print, double pixelsPerMm, double x, double y, double turn, Bend bend) {
        this.print = print;
        this.pixelsPerMm = pixelsPerMm;
        this.x = x;
        this.y = y;
        this.turn = turn;
        this.bend = bend;
        this.turnCos = Math.cos(turn);
        this.turnSin = Math.sin(turn);
        this.bendCos = Math.cos(bend.directionRad);
        this.bendSin = Math.sin(bend.directionRad);
        for (int i = 0; i < height.length; i++) {
            height[i] = bend.heightMm.applyAsDouble((i - SPAN) * STEP);
        }
        for (int i = 1; i <= SPAN; i++) {
            along[SPAN + i] = along[SPAN + i - 1] + Math.hypot(STEP, height[SPAN + i] - height[SPAN + i - 1]);
            along[SPAN - i] = along[SPAN - i + 1] - Math.hypot(STEP, height[SPAN - i] - height[SPAN - i + 1]);
        }
        double high = Arrays.stream(height).max().orElse(0) + Math.abs(bend.creaseMm);
        // Seen from no lower than 20° over the floor, what stands so high hides the floor up to three times as far
        // behind.
        reach = Math.hypot(print.getWidth(), print.getHeight()) / pixelsPerMm / 2 + 3 * high + 1;
    }

    /** The four corners of a flat sheet on the floor, from the upper left of the print on. */
    double[][] corners() {
        double w = print.getWidth() / pixelsPerMm / 2;
        double h = print.getHeight() / pixelsPerMm / 2;
        double[][] out = {{-w, h}, {w, h}, {w, -h}, {-w, -h}};
        for (double[] c : out) {
            double u = c[0];
            c[0] = x + u * Math.cos(turn) - c[1] * Math.sin(turn);
            c[1] = y + u * Math.sin(turn) + c[1] * Math.cos(turn);
        }
        return out;
    }

    /** What the sheet shows at a place of the picture, with its own shading; empty where it does not lie. */
    Optional<Paint> seen(Camera camera, double px, double py) {
        double z = 0;
        double[] at = local(camera.at(px, py, 0));
        if (at[0] * at[0] + at[1] * at[1] > reach * reach) {
            return Optional.empty();
        }
        for (int i = 0; i < 14; i++) {
            double next = heightAt(at);
            if (Math.abs(next - z) < 0.01) {
                break;
            }
            z = (z + 2 * next) / 3;
            at = local(camera.at(px, py, z));
        }
        double cos = bendCos;
        double sin = bendSin;
        double t = at[0] * cos + at[1] * sin;
        double c = at[1] * cos - at[0] * sin;
        double s = table(along, t);
        double u = (s * cos - c * sin) * pixelsPerMm + print.getWidth() / 2.0;
        double v = print.getHeight() / 2.0 - (s * sin + c * cos) * pixelsPerMm;
        if (u < 0 || v < 0 || u >= print.getWidth() || v >= print.getHeight()) {
            return Optional.empty();
        }
        double slope = (heightAt(local0(at, cos, sin, 1)) - heightAt(local0(at, cos, sin, -1))) / 2;
        double shade = Math.max(0.55, Math.min(1.2, 1 - 0.55 * slope));
        return Optional.of(Paint.srgb(print.getRGB((int) u, (int) v)).times(shade * 0.93));
    }

    private static double[] local0(double[] at, double cos, double sin, double by) {
        return new double[] {at[0] + by * cos, at[1] + by * sin};
    }

    private double heightAt(double[] at) {
        double t = at[0] * bendCos + at[1] * bendSin;
        double crease = bend.creaseMm == 0
                ? 0
                : bend.creaseMm * Math.abs(Noise.smooth(bend.seed, at[0] / 23 + 50, at[1] / 23 + 50));
        return table(height, t) + crease;
    }

    private static double table(double[] of, double t) {
        double at = Math.max(0, Math.min(of.length - 1.001, t / STEP + SPAN));
        int i = (int) at;
        return of[i] + (of[i + 1] - of[i]) * (at - i);
    }

    private double[] local(double[] floor) {
        double dx = floor[0] - x;
        double dy = floor[1] - y;
        return new double[] {dx * turnCos + dy * turnSin, dy * turnCos - dx * turnSin};
    }
}
