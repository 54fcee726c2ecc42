package hearthcloth.wrap.fold;

import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import java.util.ArrayList;
import java.util.List;

/**
 * A cloth brought up round a gift that is round about its upright middle line: a bottle or a ball. The gift is drawn as a
 * prism of {@link #SIDES} strips, the cloth as so many sectors. The middle of each sector lies on its strip, at true
 * length along it; the wedge between two strips is folded in half along its middle and pleated under one of them, about
 * the point where the strip's edges meet (or parallel, on a straight wall). Below the first shoulder this is continuous;
 * where the strips narrow, the pleats are parted from one band to the next, and their edges may stand out beneath the
 * neighbouring strips; near a ball's top by up to a band's height.
 *
 * <p>All four ends come to the top and are knotted there in pairs. For a bottle the steps take the second pair round the
 * body to a knot in front; that turn is not drawn, because cloth that goes round cannot also stand up the side, and the
 * gift must be covered. Its length is in {@link Fit}.
 */
final class TurnedFold {

    /** Strips round the gift; a multiple of four, so that each corner has one. */
    static final int SIDES = 24;

    /** Bands from pole to pole of a ball. */
    private static final int BANDS = 16;

    /** Free ends stand out to both sides of a knot at the top; nothing lies under them to hang over. */
    private static final double FLAT = Double.POSITIVE_INFINITY;

    private static final double HALF_ANGLE = Math.PI / SIDES;

    private final Outline cloth;
    private final Ends ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Knot> knots = new ArrayList<>();
    private final List<Band> bands;

    /** A ring of the gift between two heights: radius, height and way along the profile, at its lower and upper edge. */
    private record Band(double r0, double z0, double s0, double r1, double z1, double s1) {

        double slope() {
            return (r1 - r0) * Math.tan(HALF_ANGLE) / (s1 - s0);
        }

        boolean widens() {
            return slope() > -1e-12;
        }

        Facet.Part part() {
            return r1 > r0 && z1 - z0 < 1e-9 ? Facet.Part.BASE : r1 < 1e-9 ? Facet.Part.TOP : Facet.Part.WALL;
        }
    }

    private TurnedFold(Outline cloth, List<Band> bands, Ends ends) {
        this.cloth = cloth;
        this.bands = bands;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        List<Band> bands = fit.gift() instanceof Gift.Bottle bottle
                ? bottle(bottle)
                : ball(fit.gift().longestSide().in(Unit.MILLIMETRE));
        TurnedFold fold =
                new TurnedFold(laying.whole(), bands, Ends.of(fit.tail().in(Unit.MILLIMETRE)));
        fold.build(fit.gift() instanceof Gift.Round);
        return new Fold(fit, laying, fold.facets, fold.knots);
    }

    private static List<Band> bottle(Gift.Bottle bottle) {
        double r = bottle.diameter().in(Unit.MILLIMETRE) / 2;
        double n = bottle.neck().in(Unit.MILLIMETRE) / 2;
        double s = bottle.shoulder().in(Unit.MILLIMETRE);
        double h = bottle.height().in(Unit.MILLIMETRE);
        return profile(new double[][] {{0, 0}, {r, 0}, {r, s}, {n, h}, {0, h}});
    }

    /** Chords as long as their arcs, so that lengths along a meridian are true; the drawn ball is 0.2 % too large. */
    private static List<Band> ball(double diameter) {
        double arc = Math.PI / BANDS;
        double radius = diameter / 2 * (arc / 2) / Math.sin(arc / 2);
        double[][] points = new double[BANDS + 1][];
        for (int i = 0; i <= BANDS; i++) {
            points[i] = new double[] {radius * Math.sin(i * arc), radius * (1 - Math.cos(i * arc))};
        }
        points[BANDS][0] = 0;
        return profile(points);
    }

    private static List<Band> profile(double[][] points) {
        List<Band> bands = new ArrayList<>();
        double gone = 0;
        for (int i = 1; i < points.length; i++) {
            double[] a = points[i - 1];
            double[] b = points[i];
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            if (length > 1e-9) {
                bands.add(new Band(a[0], a[1], gone, b[0], b[1], gone + length));
                gone += length;
            }
        }
        return bands;
    }

    private void build(boolean neighbours) {
        Band last = bands.get(bands.size() - 1);
        List<List<Outline>> spare = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            for (Band band : bands.subList(0, bands.size() - 1)) {
                strip(i, band);
            }
            spare.add(mouth(i, last));
        }
        tie(neighbours, last, spare);
    }

    /** Opposite corners, one pair over the other; or neighbours, the two knots side by side. */
    private void tie(boolean neighbours, Band last, List<List<Outline>> spare) {
        Space up = Space.UP;
        Space top = up.times(last.z1 + ends.bunch());
        double beside = 1.6 * ends.bunch() * Math.sqrt(0.5);
        Space apart = new Space(beside, -beside, 0);
        Space one = neighbours ? new Space(Math.sqrt(0.5), Math.sqrt(0.5), 0) : new Space(0, 1, 0);
        Space two = neighbours ? one : new Space(1, 0, 0);
        Space first = neighbours ? top.plus(apart) : top;
        Space second = neighbours ? top.minus(apart) : top.plus(up.times(2 * ends.bunch()));
        for (int corner = 0; corner < SIDES; corner += SIDES / 4) {
            Point way = way(corner);
            List<Outline> rest = new ArrayList<>();
            for (int i = corner - SIDES / 8; i < corner + SIDES / 8; i++) {
                rest.addAll(spare.get(Math.floorMod(i, SIDES)));
            }
            boolean nearOrFar = corner % (SIDES / 2) != 0;
            boolean inFirst = neighbours ? corner == 0 || corner == 3 * SIDES / 4 : nearOrFar;
            Space along = inFirst ? one : two;
            Space out = along.times(Math.signum(along.dot(Space.flat(way))));
            Space at = inFirst ? first : second;
            facets.addAll(ends.lay(rest, way.times(last.s1), way, at, out, up.cross(out), FLAT));
        }
        int quarter = SIDES / 4;
        knots.add(knot(first, one, 0, last, neighbours ? List.of(3 * quarter, 0) : List.of(3 * quarter, quarter)));
        int over = neighbours ? 0 : 1;
        knots.add(knot(second, two, over, last, neighbours ? List.of(2 * quarter, quarter) : List.of(2 * quarter, 0)));
    }

    private Knot knot(Space at, Space along, int over, Band last, List<Integer> corners) {
        List<Knot.Lead> leads = corners.stream()
                .map(corner -> new Knot.Lead(way(corner).times(last.s1), way(corner)))
                .toList();
        return new Knot(at, along, Space.UP, ends.bunch(), ends.taken(), over, leads);
    }

    private static Point way(int i) {
        double angle = 2 * Math.PI * i / SIDES;
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    private static Point between(int i) {
        double angle = 2 * Math.PI * (i + 0.5) / SIDES;
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    private Outline sector(int i) {
        return cloth.above(way(i), 0)
                .below(between(i).left(), 0)
                .above(between(Math.floorMod(i - 1, SIDES)).left(), 0);
    }

    /** The topmost band, one triangle of each strip; the cloth beside and beyond it, returned, is gathered into the knots. */
    private List<Outline> mouth(int i, Band band) {
        Laid laid = laid(i, band);
        Outline own = sector(i).between(way(i), band.s0, band.s1);
        Outline shown = laid.pleating.within(own, 0);
        add(band.part(), shown, laid.pleating.motion(0), laid.plane);
        List<Outline> spare = new ArrayList<>(shown.isEmpty() ? List.of(own) : own.without(shown));
        spare.add(sector(i).above(way(i), band.s1));
        return spare;
    }

    /** How a strip of a band is laid. */
    private record Laid(Pleating pleating, Plane plane) {}

    private static Laid laid(int i, Band band) {
        Point axis = way(i);
        Space out = Space.flat(axis);
        Space foot = out.times(band.r0).plus(new Space(0, 0, band.z0));
        Space rise = out.times(band.r1 - band.r0)
                .plus(new Space(0, 0, band.z1 - band.z0))
                .unit();
        Plane plane = new Plane(
                "strip " + i + "." + band.s0,
                rise.cross(Space.flat(axis.left())).times(-1));
        return new Laid(pleating(axis, band, foot, rise), plane);
    }

    /** One strip of one band: the pleats of the wedge on its left, both halves, then the middle. */
    private void strip(int i, Band band) {
        Point axis = way(i);
        Pleating pleating = laid(i, band).pleating;
        Plane plane = laid(i, band).plane;
        Outline own = sector(i).between(axis, band.s0, band.s1);
        Point next = way((i + 1) % SIDES);
        Point fold = between(i);
        Outline across = sector((i + 1) % SIDES).between(next, band.s0, band.s1).mirrored(fold);
        int left = band.widens() ? 1 : -1;
        for (int k = pleating.most(own); k > 0; k--) {
            Motion motion = pleating.motion(left * k);
            // the neighbour's half of the wedge lies on this one's: the same pleats in the mirror of the fold between
            Outline theirs = pleating.within(across, left * k).mirrored(fold);
            add(Facet.Part.TUCK, theirs, motion.foldedOver(fold), plane);
            add(Facet.Part.TUCK, pleating.within(own, left * k), motion, plane);
        }
        add(band.part(), pleating.within(own, 0), pleating.motion(0), plane);
    }

    private void add(Facet.Part part, Outline outline, Motion motion, Plane plane) {
        if (!outline.isEmpty()) {
            facets.add(new Facet(part, outline, motion, plane));
        }
    }

    /** Straight walls pleat side by side; else about where the strip's edges meet, behind it or ahead. */
    private static Pleating pleating(Point axis, Band band, Space foot, Space rise) {
        Space side = Space.flat(axis.left());
        double half = band.r0 * Math.tan(HALF_ANGLE);
        double slope = band.slope();
        if (Math.abs(slope) < 1e-12) {
            return new Pleating.Parallel(axis.times(band.s0), axis, foot, rise, side, half);
        }
        double ahead = -half / slope;
        double sense = Math.signum(slope);
        return new Pleating.Fan(
                axis.times(band.s0 + ahead),
                axis.times(sense),
                foot.plus(rise.times(ahead)),
                rise.times(sense),
                side.times(sense),
                Math.atan(Math.abs(slope)));
    }
}
