package hearthcloth.photo;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.parameter.MeasuringParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.Hulls;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.OutlineOverlap;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.InteriorColour;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Finds reasons not to trust what was read about a piece. */
final class DoubtRules {

    /** A smaller share of a cloth's colours is no second colour of it. */
    private static final double LEAST_HALF = 0.08;

    private final List<Doubt> found = new ArrayList<>();

    private final MeasuringParameters parameters;

    private DoubtRules(MeasuringParameters parameters) {
        this.parameters = parameters;
    }

    static List<Doubt> of(
            Blob blob,
            FittedPolygon traced,
            PieceOutline outline,
            InteriorColour interior,
            FloorScale scale,
            MeasuringParameters parameters) {
        DoubtRules doubts = new DoubtRules(parameters);
        if (blob.cutOff()) {
            doubts.add(Doubt.Kind.CUT_OFF, PhotographingSentences.doubtCutOff());
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
    static List<Doubt> ofDrawn(
            PieceOutline outline,
            FloorScale scale,
            boolean rough,
            Map<String, ReadPiece> others,
            MeasuringParameters parameters) {
        DoubtRules doubts = new DoubtRules(parameters);
        if (outline.picture().stream().anyMatch(corner -> doubts.isAtTheEdge(corner, scale))) {
            doubts.add(Doubt.Kind.CUT_OFF, PhotographingSentences.doubtEdge());
        }
        others.entrySet().stream()
                .filter(other -> OutlineOverlap.isOver(outline, other.getValue().outline()))
                .forEach(other -> doubts.add(
                        Doubt.Kind.TOUCHING, PhotographingSentences.doubtOver(Argument.text(other.getKey()))));
        if (rough && doubts.isVague(outline, scale)) {
            doubts.add(Doubt.Kind.UNEVEN, PhotographingSentences.doubtRough());
        }
        if (doubts.isFar(outline, scale)) {
            doubts.add(Doubt.Kind.FAR, PhotographingSentences.doubtFar());
        }
        return doubts.found;
    }

    private boolean isAtTheEdge(Point corner, FloorScale scale) {
        double near = parameters.vague().edgeShare() * Math.max(scale.pictureWidth(), scale.pictureHeight());
        return Math.min(corner.x(), corner.y()) < near
                || scale.pictureWidth() - corner.x() < near
                || scale.pictureHeight() - corner.y() < near;
    }

    private void add(Doubt.Kind kind, Sentence sentence) {
        found.add(new Doubt(kind, sentence));
    }

    private void faint(FittedPolygon traced, InteriorColour interior) {
        boolean isVague = traced.fits().stream()
                .anyMatch(fit -> fit.share() < parameters.doubts().sureShare()
                        || fit.scatter() > parameters.doubts().sureScatter());
        if (interior.contrast() < parameters.doubts().faintContrast() && isVague) {
            add(Doubt.Kind.FAINT, PhotographingSentences.doubtGround());
        } else if (isHidden(traced, interior)
                || traced.fits().stream()
                        .anyMatch(fit -> fit.share() < parameters.doubts().faintShare())) {
            add(Doubt.Kind.FAINT, PhotographingSentences.doubtRim());
        }
    }

    /** Whether one of a figured cloth's two colours is nearly the ground's, so that its rim is made out only between. */
    private boolean isHidden(FittedPolygon traced, InteriorColour interior) {
        InteriorColour.Halves halves = interior.halves();
        double apart =
                Math.min(halves.one().apart(interior.ground()), halves.two().apart(interior.ground()));
        return interior.figured()
                && halves.share() > LEAST_HALF
                && apart < parameters.doubts().hidden()
                && traced.fits().stream()
                        .anyMatch(fit -> fit.scatter() > parameters.doubts().restless());
    }

    private void touching(PieceOutline outline, InteriorColour interior) {
        InteriorColour.Halves halves = interior.halves();
        double compact = outline.areaMm2() / Hulls.hullArea(outline.floor());
        boolean twoColours = compact < parameters.doubts().twoCloths().compact()
                && interior.figured()
                && halves.share() > LEAST_HALF
                && halves.border() < parameters.doubts().twoCloths().border()
                && halves.one().apart(halves.two())
                        > parameters.doubts().twoCloths().apart();
        int hollows = hollows(outline.floor());
        if (twoColours || hollows >= 2) {
            add(Doubt.Kind.TOUCHING, PhotographingSentences.doubtTwo());
        } else if (outline.floor().size() > parameters.doubts().mostCorners()) {
            add(Doubt.Kind.UNEVEN, PhotographingSentences.doubtUneven());
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
        if (mm > parameters.doubts().fringeMm()) {
            add(Doubt.Kind.FRAYED, PhotographingSentences.doubtFrayed(Argument.number(Math.round(Math.ceil(mm)))));
        }
    }

    private void far(PieceOutline outline, FloorScale scale) {
        if (isFar(outline, scale)) {
            add(Doubt.Kind.FAR, PhotographingSentences.doubtFar());
        } else if (found.stream().noneMatch(Doubt::isOpen) && isVague(outline, scale)) {
            add(Doubt.Kind.UNEVEN, PhotographingSentences.doubtSides());
        }
    }

    /** Whether it lies where the sheet tells little: many diagonals of it away, or where it leaves much of a length open. */
    private boolean isFar(PieceOutline outline, FloorScale scale) {
        MeasuringParameters.Vague vague = parameters.vague();
        return outline.floor().stream()
                        .anyMatch(c -> scale.fromSheet(c) > parameters.doubts().far() * scale.sheetSpanMm())
                || IntStream.range(0, outline.sides().size())
                        .mapToObj(i -> scale.measured(
                                outline.picture().get(i),
                                outline.picture().get((i + 1) % outline.sides().size()),
                                0))
                        .anyMatch(side ->
                                mm(side.giveOrTake()) > Math.max(vague.farMm(), vague.farShare() * mm(side.length())));
    }

    private boolean isVague(PieceOutline outline, FloorScale scale) {
        for (int i = 0; i < outline.sides().size(); i++) {
            MeasuredLength side = outline.sides().get(i);
            Point from = outline.picture().get(i);
            Point to = outline.picture().get((i + 1) % outline.picture().size());
            if (ownDoubt(side, from, to, scale)
                    > Math.max(parameters.vague().mm(), parameters.vague().share() * mm(side.length()))) {
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
