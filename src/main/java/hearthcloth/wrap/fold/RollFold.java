package hearthcloth.wrap.fold;

import static hearthcloth.wrap.fold.Panels.FAR;
import static hearthcloth.wrap.fold.Panels.LEFT;
import static hearthcloth.wrap.fold.Panels.NEAR;
import static hearthcloth.wrap.fold.Panels.RIGHT;
import static hearthcloth.wrap.fold.Space.UP;

import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.ArrayList;
import java.util.List;

/**
 * A roll on the left–right diagonal. In the roll wrap the cloth is wound from the near tip to the far one, the ends are
 * folded in over the discs and brought back along the roll as cords to its middle, crossed there and taken half a round
 * to the knot; it is drawn turned over, as it ends, with the knot on top. In the two-knot wrap near and far meet on top
 * after half a round each and turn along the roll to the two knots. The tube's wall is one exact, continuous sheet; ends
 * are parted from it at the rim, where real cloth is gathered.
 */
final class RollFold {

    private final double radius;
    private final double length;
    private final Outline cloth;
    private final Ends ends;
    private final List<Facet> facets = new ArrayList<>();
    private final List<Facet> loose = new ArrayList<>();
    private final List<Knot> knots = new ArrayList<>();

    private RollFold(Gift.Roll roll, Outline cloth, Ends ends) {
        this.radius = roll.diameter().in(Unit.MILLIMETRE) / 2;
        this.length = roll.length().in(Unit.MILLIMETRE);
        this.cloth = cloth;
        this.ends = ends;
    }

    static Fold of(Fit fit) {
        if (!(fit.gift() instanceof Gift.Roll roll)) {
            throw new IllegalArgumentException(fit.gift() + " is not a roll");
        }
        Laying laying = new Laying(fit.cloth(), fit.placing(), true);
        RollFold fold = new RollFold(roll, laying.whole(), Ends.of(fit.tail().in(Unit.MILLIMETRE)));
        if (fit.tie() == Tie.TWO_KNOT) {
            fold.twoKnot();
        } else {
            fold.wound();
        }
        fold.facets.addAll(fold.loose);
        return new Fold(fit, laying, fold.facets, fold.knots);
    }

    /** Half a cord's width: never less than it would bunch to, and wide enough to be drawn. */
    private double cord() {
        return Math.max(ends.bunch(), 0.7 * radius);
    }

    private static int sense(Point way) {
        return way.u() < 0 ? -1 : 1;
    }

    /** The half of the roll on one side of the middle. */
    private Tube tube(Point way, Space down) {
        return new Tube(
                "tube",
                new Space(0, 0, radius),
                Space.flat(way),
                down,
                new Space(0, -down.z(), 0),
                sense(way),
                0,
                radius);
    }

    private Outline half(Point way) {
        return cloth.above(way, 0);
    }

    private void wound() {
        Space top = UP.times(2 * radius + ends.bunch());
        for (Point way : List.of(LEFT, RIGHT)) {
            Tube tube = tube(way, UP);
            facets.addAll(tube.wall(half(way).below(way, length / 2)));
            facets.addAll(tube.disc(half(way), length / 2));
            double gone = length / 2 + radius;
            Strip.Path path = back(way, UP.times(-1), gone, length / 2);
            double turn = path.gone();
            Space side = Space.flat(way.left()).times(-1);
            double knot = turn + Math.PI * radius;
            Outline rest = half(way).above(way, gone);
            Strip cord = new Strip(new Point(0, 0), way, side, cord());
            loose.addAll(cord.lay(rest.below(way, turn), path.runs()));
            // crossed under the middle: the cord turns square, left end one way round and right end the other
            int round = sense(way);
            Strip.Path up = tube(way, UP.times(-1)).halfRound(new Space(0, 0, 0), turn, round, 0);
            Strip strip = new Strip(new Point(0, 0), way, Space.flat(RIGHT), cord());
            loose.addAll(strip.lay(rest.between(way, turn, knot), up.runs()));
            Space out = new Space(0, round, 0);
            loose.addAll(ends.lay(rest.above(way, knot), way.times(knot), way, top, out, Space.flat(RIGHT), radius));
        }
        double reach = length + 2 * radius + Math.PI * radius;
        knots.add(new Knot(
                top,
                Space.flat(FAR),
                UP,
                ends.bunch(),
                ends.taken(),
                0,
                List.of(new Knot.Lead(LEFT.times(reach), LEFT), new Knot.Lead(RIGHT.times(reach), RIGHT))));
    }

    /** From the middle of the end's disc to its rim, {@code toward}, and back along the roll for {@code run}. */
    private Strip.Path back(Point way, Space toward, double gone, double run) {
        Space out = Space.flat(way);
        Space middle = out.times(length / 2).plus(UP.times(radius));
        return new Strip.Path(middle, gone)
                .on(toward, radius, Facet.Part.CORD, new Plane("cord over end " + way, out))
                .on(out.times(-1), run, Facet.Part.CORD, new Plane("cord along " + way, toward));
    }

    private void twoKnot() {
        double around = Math.PI * radius;
        double turn = Math.max(0, (length + 2 * radius - around) / 2);
        double z = 2 * radius + ends.bunch();
        for (Point way : List.of(LEFT, RIGHT)) {
            Tube tube = tube(way, UP.times(-1));
            Outline body = half(way).between(FAR, -around, around);
            facets.addAll(tube.wall(body.below(way, length / 2)));
            facets.addAll(tube.disc(body, length / 2));
            // the ends' cloth beyond the meeting line goes with the end as well
            double gone = length / 2 + radius;
            Strip.Path path = back(way, UP, gone, Math.max(0, length / 2 - turn));
            double knot = length + 2 * radius - turn;
            Space side = Space.flat(way.left());
            Outline end = cloth.above(way, length / 2);
            Strip cord = new Strip(new Point(0, 0), way, side, cord());
            loose.addAll(cord.lay(body.between(way, gone, knot), path.runs()));
            for (Point beside : List.of(NEAR, FAR)) {
                loose.addAll(cord.lay(end.above(beside, around).below(way, knot), path.runs()));
            }
            Space at = Space.flat(way).times(turn).plus(UP.times(z));
            loose.addAll(
                    ends.lay(end.above(way, knot), way.times(knot), way, at, Space.flat(way), side, length / 2 - turn));
            Point ridge = way.left().times(-1);
            knots.add(new Knot(
                    at,
                    Space.flat(way),
                    UP,
                    ends.bunch(),
                    ends.taken(),
                    0,
                    List.of(new Knot.Lead(ridge.times(around + turn), ridge), new Knot.Lead(way.times(knot), way))));
        }
        nearAndFar(around, turn, z);
    }

    /** Near and far ends, met on top after half a round, turn along the roll, near to the right, far to the left. */
    private void nearAndFar(double around, double turn, double z) {
        for (Point way : List.of(NEAR, FAR)) {
            Point toward = way.left();
            Space along = Space.flat(toward);
            Outline rest = cloth.between(RIGHT, -length / 2, length / 2).above(way, around);
            Strip.Path path = new Strip.Path(UP.times(z), around)
                    .on(along, turn, Facet.Part.CORD, new Plane("cord along " + way, UP));
            double knot = around + turn;
            Space side = Space.flat(way);
            Strip cord = new Strip(new Point(0, 0), way, side, cord());
            loose.addAll(cord.lay(rest.below(way, knot), path.runs()));
            Space at = along.times(turn).plus(UP.times(z));
            loose.addAll(ends.lay(rest.above(way, knot), way.times(knot), way, at, along.times(-1), side, turn + 1));
        }
    }
}
