package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import java.util.ArrayList;
import java.util.List;

/** The gift itself as it stands on the open cloth, in a plain colour so that it is not taken for cloth. */
final class Body {

    private static final Colour CARD = Colour.of(0xcfcabd);
    private static final int SIDES = 24;
    private static final int BANDS = 12;

    private final List<Pane> panes = new ArrayList<>();

    private Body() {}

    static List<Pane> of(Gift gift) {
        Body body = new Body();
        if (gift instanceof Gift.Box box) {
            body.box(mm(box.along()) / 2, mm(box.across()) / 2, mm(box.height()), 0);
        } else if (gift instanceof Gift.Books books) {
            double wide = mm(books.width());
            double thick = mm(books.thickness());
            for (int way = -1; way <= 1; way += 2) {
                body.box(mm(books.height()) / 2, wide / 2, thick, way * (thick + wide / 2));
            }
        } else if (gift instanceof Gift.Round) {
            body.ball(mm(gift.longestSide()) / 2);
        } else if (gift instanceof Gift.Roll roll) {
            double half = mm(roll.length()) / 2;
            double r = mm(roll.diameter()) / 2;
            body.turned(new double[][] {{0, -half}, {r, -half}, {r, half}, {0, half}}, r, 1);
        } else if (gift instanceof Gift.Bottle bottle) {
            body.turned(profile(bottle, 0), 0, 0);
        } else if (gift instanceof Gift.TwoBottles two) {
            double r = mm(two.each().diameter()) / 2;
            double[][] profile = profile(two.each(), mm(two.apart()));
            body.turned(profile, r, 1);
            body.turned(profile, r, -1);
        }
        return body.panes;
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    /** Radius and position along the axis, from the base to the mouth, in millimetres. */
    private static double[][] profile(Gift.Bottle bottle, double base) {
        double r = mm(bottle.diameter()) / 2;
        double n = mm(bottle.neck()) / 2;
        double s = base + mm(bottle.shoulder());
        double h = base + mm(bottle.height());
        double foot = s + (h - s) * 0.45;
        return new double[][] {{0, base}, {r, base}, {r, s}, {n, foot}, {n, h}, {0, h}};
    }

    private void box(double halfX, double halfY, double height, double y) {
        double[][] ways = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}};
        for (double[] way : ways) {
            Vector out = new Vector(way[0], way[1], way[2]);
            Vector middle = new Vector(way[0] * halfX, y + way[1] * halfY, height / 2 + way[2] * height / 2);
            Vector one = way[2] != 0 ? new Vector(halfX, 0, 0) : new Vector(way[1] * halfX, way[0] * halfY, 0);
            Vector two = way[2] != 0 ? new Vector(0, halfY, 0) : new Vector(0, 0, height / 2);
            pane(
                    List.of(
                            middle.plus(one).plus(two),
                            middle.plus(one).minus(two),
                            middle.minus(one).minus(two),
                            middle.minus(one).plus(two)),
                    out);
        }
    }

    private void ball(double radius) {
        double[][] profile = new double[BANDS + 1][];
        for (int i = 0; i <= BANDS; i++) {
            double angle = Math.PI * i / BANDS;
            profile[i] = new double[] {radius * Math.sin(angle), radius * (1 - Math.cos(angle))};
        }
        turned(profile, 0, 0);
    }

    /**
     * Adds a profile turned about its axis: upright where {@code lying} is 0, otherwise along x in that direction, its
     * axis {@code up} above the ground.
     */
    private void turned(double[][] profile, double up, int lying) {
        for (int band = 1; band < profile.length; band++) {
            for (int i = 0; i < SIDES; i++) {
                List<Vector> corners = new ArrayList<>();
                corner(profile[band - 1], i, up, lying, corners);
                corner(profile[band - 1], i + 1, up, lying, corners);
                corner(profile[band], i + 1, up, lying, corners);
                corner(profile[band], i, up, lying, corners);
                Vector middle = corners.get(0)
                        .plus(corners.get(1))
                        .plus(corners.get(2))
                        .plus(corners.get(3))
                        .times(0.25);
                Vector square = corners.get(2)
                        .minus(corners.get(0))
                        .cross(corners.get(3).minus(corners.get(1)));
                double length = square.length();
                if (length < 1e-9) {
                    continue;
                }
                double along = (profile[band - 1][1] + profile[band][1]) / 2;
                double inwards = profile[band][1] > profile[profile.length / 2][1] ? -1 : 1;
                Vector axis = placed(new double[] {0, along + inwards * 1e-3}, 0, up, lying);
                double sense = square.dot(middle.minus(axis)) < 0 ? -1 : 1;
                pane(corners, square.times(sense / length));
            }
        }
    }

    private static void corner(double[] at, int i, double up, int lying, List<Vector> corners) {
        corners.add(placed(at, 2 * Math.PI * (i % SIDES) / SIDES, up, lying));
    }

    private static Vector placed(double[] at, double angle, double up, int lying) {
        double a = at[0] * Math.cos(angle);
        double b = at[0] * Math.sin(angle);
        return lying == 0 ? new Vector(a, b, at[1]) : new Vector(lying * at[1], a, up + b);
    }

    private void pane(List<Vector> corners, Vector out) {
        panes.add(new Pane(corners, out, true, new Pane.Skin.Plain(CARD)));
    }
}
