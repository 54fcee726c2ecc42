package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.parameter.SheetParameters;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds long straight rows of edgels, the longest first, by a Hough transform in which each edgel votes only near its
 * own direction (docs/sources.md#edges-and-lines).
 */
public final class HoughSegments {

    /** Directions in half a turn. */
    private static final int TURNS = 120;

    private static final double TURN = Math.PI / TURNS;
    /** The width of a bin of distances, in coarse pixels. */
    private static final double BIN = 2;

    /** How far from a line an edgel may be, in coarse pixels. */
    private static final double NEAR = 2;

    private final List<Edgels.Edgel> edgels;
    private final SheetParameters.Rows parameters;
    private final int middle;
    private final int bins;
    private final int[] votes;
    private final BitSet gone = new BitSet();

    private HoughSegments(List<Edgels.Edgel> edgels, SheetParameters.Rows parameters) {
        this.edgels = edgels;
        this.parameters = parameters;
        double far =
                edgels.stream().mapToDouble(e -> Math.hypot(e.x(), e.y())).max().orElse(1);
        middle = (int) (far / BIN) + 2;
        bins = 2 * middle;
        votes = new int[TURNS * bins];
        edgels.forEach(e -> vote(e, 1));
    }

    /** Lines in coarse pixels along each of which the colour steps for a long way. */
    public static List<Line> of(List<Edgels.Edgel> edgels, SheetParameters.Rows parameters) {
        HoughSegments stretches = new HoughSegments(edgels, parameters);
        List<Line> out = new ArrayList<>();
        for (int round = 0; round < parameters.rounds() && out.size() < parameters.most(); round++) {
            int peak = stretches.peak();
            if (stretches.votes[peak] < parameters.shortest() * parameters.dense()) {
                break;
            }
            stretches.take(peak, out);
        }
        return out;
    }

    private void vote(Edgels.Edgel e, int by) {
        int at = (int) Math.round(e.angle() / TURN);
        for (int k = -parameters.sway(); k <= parameters.sway(); k++) {
            int turn = Math.floorMod(at + k, TURNS);
            double off = e.x() * Math.cos(turn * TURN) + e.y() * Math.sin(turn * TURN);
            votes[turn * bins + middle + (int) Math.floor(off / BIN)] += by;
        }
    }

    private int peak() {
        int best = 0;
        for (int i = 1; i < votes.length; i++) {
            best = votes[i] > votes[best] ? i : best;
        }
        return best;
    }

    private void take(int peak, List<Line> out) {
        int turn = peak / bins;
        double angle = turn * TURN;
        double off = (peak % bins - middle + 0.5) * BIN;
        Point at = new Point(off * Math.cos(angle), off * Math.sin(angle));
        Line line = new Line(at, -Math.sin(angle), Math.cos(angle));
        List<Integer> near = near(line, angle, 1.5 * NEAR);
        List<Integer> run = longestRun(near, line);
        for (int round = 0; round < 2 && run.size() > 2; round++) {
            line = Line.fitted(run.stream().map(i -> edgels.get(i).spot()).toList());
            run = longestRun(near(line, angle, NEAR), line);
        }
        double length = run.isEmpty() ? 0 : along(line, run.get(run.size() - 1)) - along(line, run.get(0));
        if (length >= parameters.shortest() && run.size() > parameters.dense() * length) {
            out.add(line);
        }
        for (int i : run.isEmpty() ? near : run) {
            gone.set(i);
            vote(edgels.get(i), -1);
        }
    }

    private List<Integer> near(Line line, double angle, double far) {
        List<Integer> near = new ArrayList<>();
        for (int i = 0; i < edgels.size(); i++) {
            Edgels.Edgel e = edgels.get(i);
            if (!gone.get(i)
                    && e.turned(angle) <= (parameters.sway() + 1) * TURN
                    && Math.abs(line.off(e.spot())) < far) {
                near.add(i);
            }
        }
        return near;
    }

    private double along(Line line, int i) {
        return line.along(edgels.get(i).spot());
    }

    /** The longest run of edgels without a long gap, in order along the line. */
    private List<Integer> longestRun(List<Integer> near, Line line) {
        List<Integer> sorted = new ArrayList<>(near);
        sorted.sort((a, b) -> Double.compare(along(line, a), along(line, b)));
        List<Integer> best = List.of();
        int from = 0;
        for (int k = 1; k <= sorted.size(); k++) {
            if (k == sorted.size()
                    || along(line, sorted.get(k)) - along(line, sorted.get(k - 1)) > parameters.longestGap()) {
                best = k - from > best.size() ? List.copyOf(sorted.subList(from, k)) : best;
                from = k;
            }
        }
        return best;
    }
}
