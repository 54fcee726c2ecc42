package hearthcloth.photo.segment;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import hearthcloth.photo.plane.Hulls;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Divides a shape that is two pieces grown together. A short chord must join two hollow corners, and either the colours
 * on its two sides differ or the chord is very short. Two similar pieces that touch along much of an edge are left for
 * the maker to split.
 */
public final class ConcavitySplit {

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final SegmentParameters.Parting parameters;

    public ConcavitySplit(LabThumbnail coarse, GroundModel ground, SegmentParameters.Parting parameters) {
        this.coarse = coarse;
        this.ground = ground;
        this.parameters = parameters;
    }

    /** The two parts on either side of a chord, and the chord's length in pixels. */
    private record Cut(List<Point> one, List<Point> two, double length) {}

    /**
     * The parts of a shape, one or more.
     *
     * @param corners in raw pixels
     */
    public List<List<Point>> of(List<Point> corners) {
        boolean compact = Math.abs(Polygons.signedArea(corners)) > parameters.compact() * Hulls.hullArea(corners);
        Optional<Cut> cut = compact ? Optional.empty() : best(corners);
        if (cut.isEmpty()) {
            return List.of(corners);
        }
        List<List<Point>> parts = new ArrayList<>(of(cut.get().one()));
        parts.addAll(of(cut.get().two()));
        return parts;
    }

    private Optional<Cut> best(List<Point> corners) {
        int n = corners.size();
        double sign = Math.signum(Polygons.signedArea(corners));
        Cut best = null;
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                if (n - (j - i) >= 2 && isHollow(corners, i, sign) && isHollow(corners, j, sign)) {
                    Cut cut = new Cut(
                            part(corners, i, j),
                            part(corners, j, i + n),
                            corners.get(i).to(corners.get(j)));
                    if ((best == null || cut.length < best.length) && isTwo(cut, corners)) {
                        best = cut;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isHollow(List<Point> corners, int i, double sign) {
        int n = corners.size();
        Line in = Line.through(corners.get(Math.floorMod(i - 1, n)), corners.get(i));
        Line out = Line.through(corners.get(i), corners.get((i + 1) % n));
        return sign * in.sine(out) < -parameters.chords().hollow() || in.dx() * out.dx() + in.dy() * out.dy() < -0.9;
    }

    private static List<Point> part(List<Point> corners, int from, int to) {
        List<Point> out = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            out.add(corners.get(i % corners.size()));
        }
        return out;
    }

    private boolean isTwo(Cut cut, List<Point> whole) {
        double one = Math.abs(Polygons.signedArea(cut.one));
        double two = Math.abs(Polygons.signedArea(cut.two));
        double root = Math.sqrt(Math.min(one, two));
        double least = parameters.chords().leastArea() * coarse.step * coarse.step;
        double all = Math.abs(Polygons.signedArea(whole));
        if (Math.min(one, two) < least
                || cut.length > parameters.chords().longest() * root
                || Math.abs(one + two - all) > 0.02 * all) {
            return false;
        }
        return cut.length < parameters.chords().bridge() * root || isOfTwoColours(cut);
    }

    private boolean isOfTwoColours(Cut cut) {
        InteriorColour one = InteriorColour.of(cut.one, coarse, ground);
        InteriorColour two = InteriorColour.of(cut.two, coarse, ground);
        return one.colour().apart(two.colour()) > parameters.chords().twoColours();
    }

    /** A part as a shape of its own, with its rim in steps of a coarse pixel. */
    public Blob blob(List<Point> part) {
        List<Point> rim = new ArrayList<>();
        boolean cutOff = false;
        for (int i = 0; i < part.size(); i++) {
            Point a = part.get(i);
            Point b = part.get((i + 1) % part.size());
            int steps = (int) Math.max(1, a.to(b) / coarse.step);
            for (int s = 0; s < steps; s++) {
                rim.add(a.towards(b, (double) s / steps));
            }
            double far = 2.0 * coarse.step;
            cutOff |= a.x() < far
                    || a.y() < far
                    || a.x() > coarse.width * coarse.step - far
                    || a.y() > coarse.height * coarse.step - far;
        }
        return new Blob(rim, cutOff);
    }
}
