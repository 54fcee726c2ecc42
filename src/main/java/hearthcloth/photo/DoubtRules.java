package hearthcloth.photo;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.Hulls;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.OutlineOverlap;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.InteriorColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds reasons not to trust what was read about a piece. */
final class DoubtRules {

    /** A mean difference from the ground smaller than this may hide edges. */
    private static final double FAINT_CONTRAST = 12;
    /** A side of which less than this share was seen is faint. */
    private static final double FAINT_SHARE = 0.3;
    /** Places farther from the sheet than this are far, in diagonals of the sheet. */
    private static final double FAR = 3;
    /**
     * A give or take of more than this share of a side, and of more than {@link #VAGUE_MM} millimetres, is too much to
     * cut by.
     */
    private static final double VAGUE_SHARE = 0.03;

    private static final double VAGUE_MM = 3;
    /** A fringe of threads longer than this is reported, in millimetres. */
    private static final double FRINGE_MM = 0.8;
    /**
     * Two colours farther apart than this, in large connected areas, in a shape that is not compact, are probably two
     * pieces.
     */
    private static final double TWO_COLOURS = 10;

    /** The two colours are in connected areas when {@link InteriorColour.Halves#border} is below this. */
    private static final double TWO_BORDER = 2.2;
    /** A shape that fills less than this share of its convex hull is not compact. */
    private static final double COMPACT = 0.97;
    /** An outline with more corners than this is called uneven. */
    private static final int MOST_CORNERS = 9;

    /** A corner nearer to the picture's edge than this share of its longer side may be where the picture ends. */
    private static final double EDGE_SHARE = 0.002;

    private static final String AWAY =
            "It lies far from the sheet, where the picture tells sizes less surely; move it nearer.";

    private final List<Doubt> found = new ArrayList<>();

    private DoubtRules() {}

    static List<Doubt> of(
            Blob blob, FittedPolygon traced, PieceOutline outline, InteriorColour interior, FloorScale scale) {
        DoubtRules doubts = new DoubtRules();
        if (blob.cutOff()) {
            doubts.add(
                    Doubt.Kind.CUT_OFF,
                    "It runs off the picture; move it in or step back, and take the picture again.");
        }
        doubts.faint(traced, interior);
        doubts.touching(outline, interior);
        doubts.frayed(traced, scale);
        doubts.far(outline, scale);
        return doubts.found;
    }

    /**
     * The doubts about a piece that was drawn in by hand.
     *
     * @param rough whether a corner could be placed better from close up
     * @param others the pieces already on the photograph, by name
     */
    static List<Doubt> ofDrawn(PieceOutline outline, FloorScale scale, boolean rough, Map<String, ReadPiece> others) {
        DoubtRules doubts = new DoubtRules();
        if (outline.picture().stream().anyMatch(corner -> isAtTheEdge(corner, scale))) {
            doubts.add(
                    Doubt.Kind.CUT_OFF,
                    "It reaches the picture's edge; what lies beyond is not measured. Take the picture again if it runs on.");
        }
        others.entrySet().stream()
                .filter(other -> OutlineOverlap.isOver(outline, other.getValue().outline()))
                .forEach(other -> doubts.add(
                        Doubt.Kind.TOUCHING,
                        "It lies over piece " + other.getKey() + "; leave one of them out, or the same cloth comes in"
                                + " twice."));
        if (rough && isVague(outline, scale)) {
            doubts.add(
                    Doubt.Kind.UNEVEN,
                    "Its corners were placed roughly; look closely, and drag each to where it belongs.");
        }
        if (isFar(outline, scale)) {
            doubts.add(Doubt.Kind.FAR, AWAY);
        }
        return doubts.found;
    }

    private static boolean isAtTheEdge(Point corner, FloorScale scale) {
        double near = EDGE_SHARE * Math.max(scale.pictureWidth(), scale.pictureHeight());
        return Math.min(corner.x(), corner.y()) < near
                || scale.pictureWidth() - corner.x() < near
                || scale.pictureHeight() - corner.y() < near;
    }

    private void add(Doubt.Kind kind, String sentence) {
        found.add(new Doubt(kind, sentence));
    }

    private void faint(FittedPolygon traced, InteriorColour interior) {
        if (interior.contrast() < FAINT_CONTRAST) {
            add(Doubt.Kind.FAINT, "It hardly differs from what it lies on; lay it on something lighter or darker.");
        } else if (traced.fits().stream().anyMatch(fit -> fit.share() < FAINT_SHARE)) {
            add(Doubt.Kind.FAINT, "Part of its rim cannot be made out; check the outline or lay it on another ground.");
        }
    }

    private void touching(PieceOutline outline, InteriorColour interior) {
        InteriorColour.Halves halves = interior.halves();
        double compact = outline.areaMm2() / Hulls.hullArea(outline.floor());
        boolean twoColours = compact < COMPACT
                && interior.figured()
                && halves.share() > 0.08
                && halves.border() < TWO_BORDER
                && halves.one().apart(halves.two()) > TWO_COLOURS;
        int hollows = hollows(outline.floor());
        if (twoColours || hollows >= 2) {
            add(Doubt.Kind.TOUCHING, "It may be two pieces that touch or overlap; lay them apart, or split it here.");
        } else if (outline.floor().size() > MOST_CORNERS) {
            add(Doubt.Kind.UNEVEN, "Its rim is uneven; check the outline.");
        }
    }

    private static int hollows(List<Point> corners) {
        double sign = Math.signum(Polygons.signedArea(corners));
        int count = 0;
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Line in = Line.through(corners.get(i), corners.get((i + 1) % n));
            Line out = Line.through(corners.get((i + 1) % n), corners.get((i + 2) % n));
            count += sign * in.sine(out) < -0.25 ? 1 : 0;
        }
        return count;
    }

    private void frayed(FittedPolygon traced, FloorScale scale) {
        double fringe =
                traced.fits().stream().mapToDouble(EdgeFit.Fit::fringe).max().orElse(0);
        double mm = fringe / scale.pixelsPerMm(traced.corners().get(0));
        if (mm > FRINGE_MM) {
            add(
                    Doubt.Kind.FRAYED,
                    String.format(
                            Locale.ROOT,
                            "Its edges are frayed by about %.0f mm; it is measured without the threads. Trim it first to"
                                    + " be sure.",
                            Math.ceil(mm)));
        }
    }

    private void far(PieceOutline outline, FloorScale scale) {
        if (isFar(outline, scale)) {
            add(Doubt.Kind.FAR, AWAY);
        } else if (found.isEmpty() && isVague(outline, scale)) {
            add(Doubt.Kind.UNEVEN, "Its sides cannot be told well; check the outline.");
        }
    }

    private static boolean isFar(PieceOutline outline, FloorScale scale) {
        return outline.floor().stream().anyMatch(c -> c.to(scale.sheetMiddle()) > FAR * scale.sheetSpanMm());
    }

    private static boolean isVague(PieceOutline outline, FloorScale scale) {
        for (int i = 0; i < outline.sides().size(); i++) {
            MeasuredLength side = outline.sides().get(i);
            Point from = outline.picture().get(i);
            Point to = outline.picture().get((i + 1) % outline.picture().size());
            if (ownDoubt(side, from, to, scale) > Math.max(VAGUE_MM, VAGUE_SHARE * mm(side.length()))) {
                return true;
            }
        }
        return false;
    }

    /** Give or take of a side in millimetres, without how the sheet may lie: that is common to all and said by their ±. */
    private static double ownDoubt(MeasuredLength side, Point from, Point to, FloorScale scale) {
        double all = mm(scale.measured(from, to, 0).giveOrTake());
        double seen = mm(MeasuredLength.mm(0, scale.seenDeviation(from, to, 0)).giveOrTake());
        double whole = mm(side.giveOrTake());
        return Math.sqrt(Math.max(0, whole * whole - all * all + seen * seen));
    }

    private static double mm(hearthcloth.measure.Length length) {
        return length.in(hearthcloth.measure.Unit.MILLIMETRE);
    }
}
