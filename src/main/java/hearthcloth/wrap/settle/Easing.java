package hearthcloth.wrap.settle;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.pleat.ReefStrands;
import java.util.Arrays;

/** Eases the folds of a cloth. Lengths are for a cloth of 700 mm and scale with it; all are chosen for the drawing. */
final class Easing {

    private static final double USUAL_MM = 700;

    /** How soon it stands off farther. */
    private static final double SOON = 40;

    /** How deep cloth gathers towards a knot, over how wide a way, and in how many folds all round. */
    private static final double DEEP = 3.6;

    private static final double WIDE = 62;
    private static final double FOLDS = 13;

    /** What share of the way up to the strand of the knot the cloth itself goes, and how far off that begins. */
    private static final double UP = 0.55;

    /** That many diameters of a gathered end, and at most halfway to the middle of the cloth. */
    private static final double BEGINS = 7;

    private static final double HALFWAY = 0.5;

    /** So steep cloth rises at most, and so deep it gathers for its distance, that it need not stretch. */
    private static final double STEEP = 0.12;

    private static final double SHALLOW = 0.016;

    /** A knot farther off than this many gathered ends does not draw cloth up. */
    private static final double FARTHEST = 4;

    private static final int ROUNDS = 16;

    /** What share of the way to its neighbours' middle a point of quilting cotton goes in a round, and any at most. */
    private static final double SHARE = 0.5;

    private static final double MOST_SHARE = 0.9;
    private static final int PULLS = 320;

    /** Where a thread is still longer than this share, pulling goes on, up to so many rounds in all. */
    private static final int MOST_PULLS = 1600;

    private static final double LONGEST = 0.018;

    /** Threads give about this share before they are pulled straight; see the limits of {@code wrap.drape}. */
    private static final double GIVES = 0.008;

    /** The cosine of the turn from which two pieces meet in an edge. */
    private static final double TURN = 0.87;

    private final Web web;
    private final double scale;

    /** How stiff the cloth is at each point, and on the whole. */
    private final double[] stiff;

    private final double whole;

    Easing(Web web, double side, Stiffness stiffness) {
        this.web = web;
        this.scale = side / USUAL_MM;
        this.stiff = web.cloth.stream().mapToDouble(stiffness::at).toArray();
        this.whole = Arrays.stream(stiff).reduce(0, Double::sum) / Math.max(1, stiff.length);
    }

    /** Lifts the cloth off the gift, more where it is far from edges. */
    void lift(Stance stance) {
        double[] away = fromEdges();
        for (int k = 0; k < web.points(); k++) {
            double far = 1 - Elementary.exp(-away[k] / (SOON * scale));
            double by = stance.at(far * whole) * scale * (web.isUnder(k) ? 0.3 : 1);
            web.move(k, web.out(k).times(by));
        }
    }

    /** How far each point is from the next edge, along the cloth's lines. */
    private double[] fromEdges() {
        double[] away = new double[web.points()];
        for (int k = 0; k < away.length; k++) {
            away[k] = isSharp(k) ? 0 : Double.POSITIVE_INFINITY;
        }
        boolean changed = true;
        for (int round = 0; changed && round < 60; round++) {
            changed = false;
            for (int e = 0; e < web.rest.length; e++) {
                int a = web.lines[2 * e];
                int b = web.lines[2 * e + 1];
                double near = Math.min(away[a], away[b]) + web.rest[e];
                if (near < away[a] || near < away[b]) {
                    away[a] = Math.min(away[a], near);
                    away[b] = Math.min(away[b], near);
                    changed = true;
                }
            }
        }
        return away;
    }

    private boolean isSharp(int k) {
        return web.outs.get(k).stream()
                .anyMatch(one -> web.outs.get(k).stream().anyMatch(other -> one.dot(other) < TURN));
    }

    /** Draws cloth up to a knot and gathers it there. */
    void gather(ReefKnot knot) {
        ReefStrands reef = ReefStrands.of(knot);
        gather(knot, knot.leads().get(0), reef.first().get(0));
        gather(knot, knot.leads().get(1), reef.second().get(0));
    }

    private void gather(ReefKnot knot, ReefKnot.Lead lead, Vector strand) {
        int nearest = nearest(lead.from());
        Vector up = strand.minus(web.place(nearest));
        if (up.length() > FARTHEST * knot.bunch() || lead.from().to(web.cloth.get(nearest)) > knot.bunch()) {
            return;
        }
        double reach =
                Math.min(BEGINS * knot.bunch(), HALFWAY * Math.sqrt(lead.from().dot(lead.from())));
        double high = Math.min(UP, STEEP * reach / Math.max(1e-9, up.length()));
        for (int k = 0; k < web.points(); k++) {
            Point off = web.cloth.get(k).minus(lead.from());
            double away = Math.sqrt(off.dot(off));
            if (web.isEased(k) && away < 3 * WIDE * scale && off.dot(lead.axis()) < knot.bunch()) {
                double share = Math.max(0, 1 - away / reach);
                web.move(k, up.times(high * share * share * (3 - 2 * share)));
                web.move(k, web.out(k).times(folds(off, lead, away)));
            }
        }
    }

    /** How high a gather stands here; folds run towards the knot. */
    private double folds(Point off, ReefKnot.Lead lead, double away) {
        double angle = Elementary.atan2(off.dot(lead.axis().left()), -off.dot(lead.axis()));
        double wide = away / (WIDE * scale);
        double deep = Math.min(SHALLOW * away, DEEP * Math.sqrt(whole) * scale * Elementary.exp(-wide * wide));
        return deep * (1 + Elementary.cos(FOLDS / Math.sqrt(whole) * angle + 0.8 * Elementary.sin(2.3 * angle + wide)));
    }

    private int nearest(Point at) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < web.points(); k++) {
            double away = web.cloth.get(k).to(at);
            if (away < least) {
                least = away;
                best = k;
            }
        }
        return best;
    }

    /** Rounds edges and folds, and pulls stretched threads back. */
    void round() {
        for (int round = 0; round < ROUNDS; round++) {
            smooth();
        }
        for (int pull = 0; pull < PULLS || (pull < MOST_PULLS && isStretched()); pull++) {
            pull(pull % 2 == 0);
        }
    }

    /** Whether a thread that is eased is still longer than it may be shown. */
    private boolean isStretched() {
        for (int e = 0; e < web.rest.length; e++) {
            int a = web.lines[2 * e];
            int b = web.lines[2 * e + 1];
            boolean isEased = web.isEased(a) && web.isEased(b);
            if (isEased && web.place(a).minus(web.place(b)).length() > web.rest[e] * (1 + LONGEST)) {
                return true;
            }
        }
        return false;
    }

    /** Every point goes out or in towards the middle of its neighbours; along the cloth it stays, and at a rim. */
    private void smooth() {
        int n = web.points();
        double[] sum = new double[3 * n];
        int[] count = new int[n];
        for (int e = 0; e < web.rest.length; e++) {
            int a = web.lines[2 * e];
            int b = web.lines[2 * e + 1];
            for (int c = 0; c < 3; c++) {
                sum[3 * a + c] += web.x[3 * b + c];
                sum[3 * b + c] += web.x[3 * a + c];
            }
            count[a]++;
            count[b]++;
        }
        for (int k = 0; k < n; k++) {
            if (count[k] > 0 && !web.edge[k] && web.isEased(k)) {
                Vector middle = new Vector(sum[3 * k], sum[3 * k + 1], sum[3 * k + 2]).times(1.0 / count[k]);
                Vector out = web.out(k);
                double share = Math.min(MOST_SHARE, SHARE * stiff[k]);
                web.move(k, out.times(share * out.dot(middle.minus(web.place(k)))));
                web.keepOut(k);
            }
        }
    }

    private void pull(boolean forwards) {
        int all = web.rest.length;
        for (int z = 0; z < all; z++) {
            pull(forwards ? z : all - 1 - z);
        }
        for (int k = 0; k < web.points(); k++) {
            web.keepOut(k);
        }
    }

    private void pull(int e) {
        int a = web.lines[2 * e];
        int b = web.lines[2 * e + 1];
        Vector way = web.place(b).minus(web.place(a));
        double length = way.length();
        double most = web.rest[e] * (1 + GIVES);
        if (length > most) {
            double both = web.isEased(a) && web.isEased(b) ? 2 : 1;
            Vector by = way.times((length - most) / length / both);
            if (web.isEased(a)) {
                web.move(a, by);
            }
            if (web.isEased(b)) {
                web.move(b, by.times(-1));
            }
        }
    }
}
