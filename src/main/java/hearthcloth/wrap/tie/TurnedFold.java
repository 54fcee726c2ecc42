package hearthcloth.wrap.tie;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.pleat.Band;
import hearthcloth.wrap.pleat.FoldedStrip;
import hearthcloth.wrap.pleat.HandleLoop;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Pleating;
import java.util.ArrayList;
import java.util.List;

/**
 * A cloth brought up round a ball. The ball is drawn as bands of {@link Band#SIDES} strips, the cloth as equally many
 * sectors. The middle of each sector lies on its strips, at true length along them; the wedge between two strips is
 * folded in half along its middle and pleated under one of them, about the point where the strip's edges meet. Below
 * the widest band this is continuous. Where the strips narrow, the pleats are parted from one band to the next, and
 * their edges may stand out beneath the neighbouring strips, near the top by up to a band's height.
 *
 * <p>All four ends come to the top and are knotted there, each to its neighbour, with the two knots side by side.
 */
final class TurnedFold {

    private static final int SIDES = Band.SIDES;

    /** Bands from pole to pole of a ball. */
    private static final int BANDS = 16;

    /** Free ends stand out to both sides of a knot at the top; nothing lies under them over which they could hang. */
    private static final double FLAT = Double.POSITIVE_INFINITY;

    private final ConvexPolygon cloth;
    private final KnotEnds ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<ReefKnot> knots = new ArrayList<>();
    private final List<Band> bands;

    private TurnedFold(ConvexPolygon cloth, List<Band> bands, KnotEnds ends) {
        this.cloth = cloth;
        this.bands = bands;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        return at(TyingMoment.TIED, fit);
    }

    /** The fold tied, or with one of the knots passed under the other as a handle. */
    static Fold at(TyingMoment moment, Fit fit) {
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        List<Band> bands = ball(fit.gift().longestSide().in(Unit.MILLIMETRE));
        TurnedFold fold =
                new TurnedFold(laying.whole(), bands, KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)));
        fold.build(moment);
        return new Fold(fit, laying, fold.facets, fold.knots);
    }

    /**
     * The ball's bands, with chords as long as their arcs, so that lengths along a meridian are true; the drawn ball is
     * 0.2 % too large.
     */
    private static List<Band> ball(double diameter) {
        double arc = Math.PI / BANDS;
        double radius = diameter / 2 * (arc / 2) / Elementary.sin(arc / 2);
        double[][] points = new double[BANDS + 1][];
        for (int i = 0; i <= BANDS; i++) {
            points[i] = new double[] {radius * Elementary.sin(i * arc), radius * (1 - Elementary.cos(i * arc))};
        }
        points[BANDS][0] = 0;
        return Band.profile(points);
    }

    private void build(TyingMoment moment) {
        Band last = bands.get(bands.size() - 1);
        List<List<ConvexPolygon>> spare = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            for (Band band : bands.subList(0, bands.size() - 1)) {
                strip(i, band);
            }
            spare.add(mouth(i, last));
        }
        tie(moment, last, spare);
    }

    /** Ties neighbouring corners, near to right and left to far. */
    private void tie(TyingMoment moment, Band last, List<List<ConvexPolygon>> spare) {
        Vector up = Vector.UP;
        Vector top = up.times(last.z1() + ends.bunch());
        double beside = 1.6 * ends.bunch() * Math.sqrt(0.5);
        Vector apart = new Vector(beside, -beside, 0);
        Vector along = new Vector(Math.sqrt(0.5), Math.sqrt(0.5), 0);
        // a handle comes out from under the first knot, which then sits a little behind the top
        Vector first = moment == TyingMoment.HANDLE ? top.minus(apart.times(0.3)) : top.plus(apart);
        for (int corner = 0; corner < SIDES; corner += SIDES / 4) {
            boolean inFirst = corner == 0 || corner == 3 * SIDES / 4;
            if (inFirst || moment != TyingMoment.HANDLE) {
                Point way = Band.way(corner);
                Vector out = along.times(Math.signum(along.dot(Vector.flat(way))));
                Vector at = inFirst ? first : top.minus(apart);
                List<ConvexPolygon> rest = rest(corner, spare);
                facets.addAll(ends.lay(rest, way.times(last.s1()), way, at, out, up.cross(out), FLAT));
            }
        }
        int quarter = SIDES / 4;
        knots.add(knot(first, along, last, List.of(3 * quarter, 0)));
        knots.add(
                moment == TyingMoment.HANDLE
                        ? handle(last, spare)
                        : knot(top.minus(apart), along, last, List.of(2 * quarter, quarter)));
    }

    private static List<ConvexPolygon> rest(int corner, List<List<ConvexPolygon>> spare) {
        List<ConvexPolygon> rest = new ArrayList<>();
        for (int i = corner - SIDES / 8; i < corner + SIDES / 8; i++) {
            rest.addAll(spare.get(Math.floorMod(i, SIDES)));
        }
        rest.removeIf(ConvexPolygon::isEmpty);
        return rest;
    }

    /** The far and left ends passed under the first knot and standing up beyond it as a handle, tied at the tips. */
    private ReefKnot handle(Band last, List<List<ConvexPolygon>> spare) {
        Vector along = new Vector(Math.sqrt(0.5), Math.sqrt(0.5), 0);
        Vector ahead = new Vector(Math.sqrt(0.5), -Math.sqrt(0.5), 0);
        double under = 1.3 * ends.bunch();
        Vector pole = Vector.UP.times(last.z1() + 0.6);
        List<HandleLoop.End> handle = new ArrayList<>();
        for (int corner : List.of(SIDES / 4, SIDES / 2)) {
            Point way = Band.way(corner);
            int sense = corner == SIDES / 4 ? 1 : -1;
            List<ConvexPolygon> rest = rest(corner, spare);
            Vector start = pole.plus(along.times(sense * ends.bunch() / 2));
            facets.addAll(ends.pack(rest, way.times(last.s1()), way, start, ahead, along.times(sense)));
            FoldedStrip.Path path = new FoldedStrip.Path(start, 0)
                    .on(ahead, under, Facet.Part.CORD, new FacetPlane("under " + way, Vector.UP));
            FoldedStrip strip = new FoldedStrip(way.times(last.s1()), way, along.times(sense), ends.bunch() / 2);
            List<ConvexPolygon> beyond = new ArrayList<>();
            for (ConvexPolygon outline : rest) {
                facets.addAll(strip.lay(outline.between(way, last.s1(), last.s1() + under), path.runs()));
                beyond.add(outline.above(way, last.s1() + under));
            }
            beyond.removeIf(ConvexPolygon::isEmpty);
            handle.add(new HandleLoop.End(beyond, way.times(last.s1() + under), way, sense));
        }
        HandleLoop loop = new HandleLoop(pole.plus(ahead.times(under)), along, ends.bunch(), false);
        return loop.lay(handle.get(1), handle.get(0), facets);
    }

    private ReefKnot knot(Vector at, Vector along, Band last, List<Integer> corners) {
        List<ReefKnot.Lead> leads = corners.stream()
                .map(corner -> new ReefKnot.Lead(Band.way(corner).times(last.s1()), Band.way(corner)))
                .toList();
        return new ReefKnot(at, along, Vector.UP, ends.bunch(), ends.taken(), 0, leads);
    }

    private static Point between(int i) {
        double angle = 2 * Math.PI * (i + 0.5) / SIDES;
        return new Point(Elementary.cos(angle), Elementary.sin(angle));
    }

    private ConvexPolygon sector(int i) {
        return cloth.above(Band.way(i), 0)
                .below(between(i).left(), 0)
                .above(between(Math.floorMod(i - 1, SIDES)).left(), 0);
    }

    /**
     * Lays the topmost band, one triangle of each strip; returns the cloth beside and beyond it, which is gathered into
     * the knots.
     */
    private List<ConvexPolygon> mouth(int i, Band band) {
        Pleating pleating = pleating(i, band);
        ConvexPolygon own = sector(i).between(Band.way(i), band.s0(), band.s1());
        ConvexPolygon shown = pleating.within(own, 0);
        add(band.part(), shown, pleating.motion(0), band.plane(i));
        List<ConvexPolygon> spare = new ArrayList<>(shown.isEmpty() ? List.of(own) : own.without(shown));
        spare.add(sector(i).above(Band.way(i), band.s1()));
        return spare;
    }

    private static Pleating pleating(int i, Band band) {
        return band.pleating(Band.way(i).times(band.s0()), Band.way(i), i);
    }

    /** Lays one strip of one band: the pleats of the wedge on its left, both halves, then the middle. */
    private void strip(int i, Band band) {
        Pleating pleating = pleating(i, band);
        FacetPlane plane = band.plane(i);
        ConvexPolygon own = sector(i).between(Band.way(i), band.s0(), band.s1());
        Point next = Band.way((i + 1) % SIDES);
        Point fold = between(i);
        ConvexPolygon across =
                sector((i + 1) % SIDES).between(next, band.s0(), band.s1()).mirrored(fold);
        int left = band.widens() ? 1 : -1;
        for (int k = pleating.most(own); k > 0; k--) {
            Motion motion = pleating.motion(left * k);
            // the neighbour's half of the wedge lies on this one's: the same pleats in the mirror of the fold between
            ConvexPolygon theirs = pleating.within(across, left * k).mirrored(fold);
            add(Facet.Part.TUCK, theirs, motion.foldedOver(fold), plane);
            add(Facet.Part.TUCK, pleating.within(own, left * k), motion, plane);
        }
        add(band.part(), pleating.within(own, 0), pleating.motion(0), plane);
    }

    private void add(Facet.Part part, ConvexPolygon outline, Motion motion, FacetPlane plane) {
        if (!outline.isEmpty()) {
            facets.add(new Facet(part, outline, motion, plane));
        }
    }
}
