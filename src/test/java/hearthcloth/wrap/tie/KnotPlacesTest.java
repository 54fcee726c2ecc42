package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Corner;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.FitTails;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Where each way of folding ties its knots, by hand, and how much of each corner reaches them, against {@link Fit}, whose
 * demands were derived apart from the folds and are held to two derivations (docs/sources.md#two-derivations).
 */
class KnotPlacesTest {

    private static final Length TAIL = Length.cm(12);

    /** 12 cm of a corner of cloth 0.25 mm thick pack to √(16 · 0.25 · 120/π) mm (docs/sources.md#bunch). */
    private static final double BUNCH = Math.sqrt(16 * 0.25 * 120 / Math.PI);

    private static final Gift BOX = Gift.parse("box 30 x 20 x 8 cm", null);
    private static final Gift LONG = Gift.parse("box 60 x 12 x 12 cm", null);
    private static final Gift BOTTLE = Gift.parse("bottle 8 x 30 cm", null);
    private static final Gift BOTTLES = Gift.parse("two bottles 8 x 30 cm", null);
    private static final Gift BALL = Gift.parse("ball 22 cm", null);
    private static final Gift BOOKS = Gift.parse("books 21 x 15 x 2 cm", null);
    private static final Gift ROLL = Gift.parse("roll 6 x 38 cm", null);

    /** In a square cloth a twentieth larger than the smallest. */
    private static Fit fit(Tie tie, Gift gift) {
        Length side = tie.smallestSquare(gift, TAIL).times(21).dividedBy(20, Rounding.UP);
        return tie.fit(gift, Size.square(side), TAIL);
    }

    private static double halfDiagonal(Fit fit) {
        return fit.cloth().width().in(Unit.MILLIMETRE) / Math.sqrt(2);
    }

    private static List<Vector> places(Fold fold) {
        return fold.knots().stream().map(ReefKnot::at).toList();
    }

    private static void areAt(Fold fold, Vector... places) {
        assertThat(fold.knots()).hasSize(places.length);
        for (int i = 0; i < places.length; i++) {
            assertThat(places(fold).get(i).minus(places[i]).length())
                    .as("knot %s at %s", i, places(fold).get(i))
                    .isLessThan(1e-9);
        }
    }

    /** What is left of each corner beyond its knot is what the fit says, and there are as many leads as knotted corners. */
    private static void leaveWhatTheFitSays(Fold fold, Corner... knotted) {
        leaveWhatTheFitSays(fold, 0, knotted);
    }

    /** The same where the drawn cloth goes on for so many millimetres between the place that the fit counts and the knot. */
    private static void leaveWhatTheFitSays(Fold fold, double onwards, Corner... knotted) {
        List<Corner> found = new ArrayList<>();
        for (ReefKnot knot : fold.knots()) {
            assertThat(knot.bunch()).isCloseTo(BUNCH, within(1e-9));
            for (ReefKnot.Lead lead : knot.leads()) {
                for (Corner corner : knotted) {
                    Point way = new Point(corner.right(), corner.away());
                    if (way.equals(new Point(
                            Math.round(lead.axis().x()), Math.round(lead.axis().y())))) {
                        found.add(corner);
                        double left = halfDiagonal(fold.fit()) - way.dot(lead.from()) + onwards;
                        assertThat(left)
                                .as("%s of %s", corner, fold.fit().tie())
                                .isCloseTo(FitTails.left(fold.fit(), corner).in(Unit.MILLIMETRE), within(1e-5));
                    }
                }
            }
        }
        assertThat(found).containsExactlyInAnyOrder(knotted);
    }

    private static final Corner[] ALL = {Corner.RIGHT, Corner.FAR, Corner.LEFT, Corner.NEAR};

    @Test
    void a_box_on_the_diagonal_is_tied_over_the_middle_of_its_top() {
        Fold four = BoxFold.of(fit(Tie.FOUR_CORNER, BOX));
        areAt(four, new Vector(0, 0, 80 + BUNCH), new Vector(0, 0, 80 + 3 * BUNCH));
        assertThat(four.knots()).extracting(ReefKnot::over).containsExactly(0, 1);
        leaveWhatTheFitSays(four, ALL);

        Fold errand = BoxFold.of(fit(Tie.ERRAND, BOX));
        areAt(errand, new Vector(0, 0, 80 + BUNCH));
        leaveWhatTheFitSays(errand, Corner.LEFT, Corner.RIGHT);

        assertThat(BoxFold.of(fit(Tie.FLAT, BOX)).knots()).isEmpty();
    }

    /** 60 × 12 × 12 cm: half the length less half the width, 24 cm, to either side; near turns right. */
    @Test
    void of_a_long_box_the_two_knots_lie_on_its_ridge() {
        Fold fold = BoxFold.of(fit(Tie.TWO_KNOT, LONG));

        areAt(fold, new Vector(240, 0, 120 + BUNCH), new Vector(-240, 0, 120 + BUNCH));
        leaveWhatTheFitSays(fold, ALL);
    }

    /** From the foot of the box's upright edge the way to the cloth's corner goes 8 cm up and half the diagonal across. */
    @Test
    void a_box_set_square_is_tied_over_the_middle_of_its_top_twice() {
        Fit fit = fit(Tie.EDGE_ALONG_EDGE, BOX);
        Fold fold = EdgeFold.of(fit);
        double half = fit.cloth().width().in(Unit.MILLIMETRE) / 2;

        areAt(fold, new Vector(0, 0, 80 + BUNCH), new Vector(0, 0, 80 + 3 * BUNCH));
        double path = 80 + Math.hypot(150, 100);
        double left = Math.hypot(half - 150, half - 100) - path;
        for (ReefKnot knot : fold.knots()) {
            for (ReefKnot.Lead lead : knot.leads()) {
                Point tip = new Point(
                        half * Math.signum(lead.axis().x()),
                        half * Math.signum(lead.axis().y()));
                assertThat(lead.from().to(tip)).isCloseTo(left, within(1e-6));
            }
        }
        assertThat(FitTails.left(fit, Corner.FAR_RIGHT).in(Unit.MILLIMETRE)).isCloseTo(left, within(1e-5));
        assertThat(EdgeFold.at(TyingMoment.FIRST_PAIR, fit).knots()).hasSize(1);
        assertThat(EdgeFold.at(TyingMoment.FLAPS_OVER, fit).knots()).hasSize(1);
    }

    /** Over the mouth at 30 cm, and in front at half the height of the shoulder, 19/30 of 30 cm, or a hair below. */
    @Test
    void a_bottle_is_tied_over_its_mouth_and_in_front() {
        Fit fit = fit(Tie.ONE_BOTTLE, BOTTLE);
        Fold fold = BottleFold.of(fit);

        assertThat(places(fold).get(0).minus(new Vector(0, 0, 300 + BUNCH)).length())
                .isLessThan(1e-9);
        Vector front = places(fold).get(1);
        assertThat(front.x()).isCloseTo(0, within(1e-9));
        assertThat(front.y()).isBetween(-40 - BUNCH - 1, -40 - BUNCH);
        assertThat(front.z()).isBetween(60.0, 95.0);
        leaveWhatTheFitSays(fold, ALL);
        assertThat(BottleFold.at(TyingMoment.CROSSED, fit).knots()).hasSize(1);
        assertThat(BottleFold.at(TyingMoment.HANDLE, fit).knots()).hasSize(2);
    }

    /** The fit counts the way to the mouth; what is drawn goes on from there to the middle between the tops, 4 cm. */
    @Test
    void two_bottles_are_tied_between_their_tops() {
        Fit fit = fit(Tie.TWO_BOTTLES, BOTTLES);

        areAt(PairFold.of(fit), new Vector(0, 0, 300 + BUNCH));
        leaveWhatTheFitSays(PairFold.of(fit), 40, Corner.LEFT, Corner.RIGHT);
        assertThat(PairFold.at(TyingMoment.STOOD, fit).knots()).isEmpty();
    }

    /** The ball's top is at 22 cm, 0.2 % more as it is drawn; the knots lie beside it, at the same height. */
    @Test
    void a_ball_is_tied_twice_at_its_top() {
        Fit fit = fit(Tie.ROUND, BALL);
        Fold fold = TurnedFold.of(fit);

        assertThat(fold.knots()).hasSize(2);
        Vector one = places(fold).get(0);
        Vector two = places(fold).get(1);
        assertThat(one.plus(two).times(0.5).minus(new Vector(0, 0, 220 + BUNCH)).length())
                .isLessThan(0.5);
        assertThat(one.minus(two).length()).isCloseTo(3.2 * BUNCH, within(1e-9));
        assertThat(one.z()).isCloseTo(two.z(), within(1e-9));
        leaveWhatTheFitSays(fold, ALL);
        // near and right are tied first
        assertThat(fold.knots().get(0).leads())
                .extracting(lead -> Math.round(lead.axis().x()) + " "
                        + Math.round(lead.axis().y()))
                .containsExactlyInAnyOrder("1 0", "0 -1");
    }

    @Test
    void books_are_tied_in_the_middle_of_their_spine() {
        Fit fit = fit(Tie.BOOKS, BOOKS);
        Fold fold = BooksFold.of(fit);

        areAt(fold, new Vector(0, BUNCH, 20));
        assertThat(fold.knots().get(0).up()).isEqualTo(new Vector(0, 1, 0));
        leaveWhatTheFitSays(fold, Corner.LEFT, Corner.RIGHT);
        assertThat(BooksFold.at(TyingMoment.ENDS_IN, fit).knots()).isEmpty();
        assertThat(BooksFold.at(TyingMoment.CLOSED, fit).knots()).isEmpty();
    }

    @Test
    void a_roll_is_tied_on_top_once_in_its_middle_or_twice_towards_its_ends() {
        Fit one = fit(Tie.ROLL, ROLL);
        areAt(RollFold.of(one), new Vector(0, 0, 60 + BUNCH));
        leaveWhatTheFitSays(RollFold.of(one), Corner.LEFT, Corner.RIGHT);
        assertThat(RollFold.at(TyingMoment.CROSSED, one).knots()).isEmpty();

        Fold two = RollFold.of(fit(Tie.TWO_KNOT, ROLL));
        // where both corners have as much left: (L + 2 r − π r)/2 from the middle
        double out = (380 + 60 - Math.PI * 30) / 2;
        assertThat(places(two))
                .extracting(Vector::x)
                .satisfiesExactlyInAnyOrder(
                        x -> assertThat(x).isCloseTo(out, within(1e-9)),
                        x -> assertThat(x).isCloseTo(-out, within(1e-9)));
        assertThat(places(two))
                .extracting(Vector::z)
                .allSatisfy(z -> assertThat(z).isCloseTo(60 + BUNCH, within(1e-9)));
        leaveWhatTheFitSays(two, ALL);
    }

    @Test
    void no_fold_takes_a_gift_it_is_not_made_for() {
        Fit box = fit(Tie.FOUR_CORNER, BOX);
        Fit bottle = fit(Tie.ONE_BOTTLE, BOTTLE);
        List<Function<Fit, Fold>> others = List.of(BottleFold::of, PairFold::of, BooksFold::of, RollFold::of);
        for (Function<Fit, Fold> fold : others) {
            assertThatThrownBy(() -> fold.apply(box)).isInstanceOf(IllegalArgumentException.class);
        }
        for (Function<Fit, Fold> fold : List.<Function<Fit, Fold>>of(BoxFold::of, EdgeFold::of)) {
            assertThatThrownBy(() -> fold.apply(bottle)).isInstanceOf(IllegalArgumentException.class);
        }
        Fold tied = BottleFold.of(bottle);
        assertThatThrownBy(() -> new BoxHalfway(tied, TyingMoment.SIDES_UP))
                .isInstanceOf(IllegalArgumentException.class);
        BoxHalfway done = new BoxHalfway(BoxFold.of(box), TyingMoment.TIED);
        assertThatThrownBy(done::fold).isInstanceOf(IllegalArgumentException.class);
    }

    /** Where the corner of the cloth itself lies. */
    private static Vector tip(Fold fold, int right, int away) {
        Point tip = new Point(right, away).times(halfDiagonal(fold.fit()));
        return fold.facets().stream()
                .filter(facet -> facet.cloth().corners().stream().anyMatch(corner -> corner.to(tip) < 1e-6))
                .findFirst()
                .orElseThrow()
                .motion()
                .at(tip);
    }

    private static void isAt(Vector tip, double x, double y, double z) {
        assertThat(tip.minus(new Vector(x, y, z)).length()).as("%s", tip).isLessThan(1e-6);
    }

    @Test
    void corners_of_a_box_that_wait_lie_on_the_table_or_stand_straight_up() {
        Fold flat = BoxFold.of(fit(Tie.FLAT, BOX));
        double d = halfDiagonal(flat.fit());
        Fold near = new BoxHalfway(flat, TyingMoment.NEAR_OVER).fold();
        isAt(tip(near, 0, 1), 0, d, 0);
        isAt(tip(near, 1, 0), d, 0, 0);
        isAt(tip(new BoxHalfway(flat, TyingMoment.ALL_BUT_FAR).fold(), 0, 1), 0, d, 0);

        Fold four = BoxFold.of(fit(Tie.FOUR_CORNER, BOX));
        double e = halfDiagonal(four.fit());
        Fold up = new BoxHalfway(four, TyingMoment.SIDES_UP).fold();
        isAt(tip(up, 1, 0), 150, 0, e - 150);
        isAt(tip(up, -1, 0), -150, 0, e - 150);
        isAt(tip(new BoxHalfway(four, TyingMoment.NEAR_AND_FAR).fold(), -1, 0), -e, 0, 0);

        Fold two = BoxFold.of(fit(Tie.TWO_KNOT, LONG));
        isAt(tip(new BoxHalfway(two, TyingMoment.ONE_SIDE).fold(), -1, 0), -halfDiagonal(two.fit()), 0, 0);
    }

    @Test
    void a_box_half_wrapped_has_the_knots_that_are_tied_by_then() {
        Fold four = BoxFold.of(fit(Tie.FOUR_CORNER, BOX));
        for (TyingMoment moment : List.of(TyingMoment.NEAR_AND_FAR, TyingMoment.SIDES_UP)) {
            assertThat(new BoxHalfway(four, moment).fold().knots())
                    .isEqualTo(four.knots().subList(0, 1));
        }
        Fold errand = BoxFold.of(fit(Tie.ERRAND, BOX));
        for (TyingMoment moment : List.of(TyingMoment.NEAR_OVER, TyingMoment.NEAR_AND_FAR, TyingMoment.SIDES_UP)) {
            assertThat(new BoxHalfway(errand, moment).fold().knots()).isEmpty();
        }
        assertThat(new BoxHalfway(errand, TyingMoment.HIDDEN).fold().knots()).isEqualTo(errand.knots());
        Fold two = BoxFold.of(fit(Tie.TWO_KNOT, LONG));
        assertThat(new BoxHalfway(two, TyingMoment.NEAR_AND_FAR).fold().knots()).isEmpty();
        assertThat(new BoxHalfway(two, TyingMoment.ONE_SIDE).fold().knots())
                .isEqualTo(two.knots().subList(0, 1));
    }

    /** Wings of a bottle hang on the flaps' edges, a quarter round: the tip is r plus what is beyond it out, r high. */
    @Test
    void the_second_pair_waits_on_the_table_or_is_held_out() {
        Fold ball = TurnedFold.of(fit(Tie.ROUND, BALL));
        Fold first = new Halfway(ball, TyingMoment.FIRST_PAIR).fold();
        isAt(tip(first, 0, 1), 0, halfDiagonal(ball.fit()), 0);
        isAt(tip(first, -1, 0), -halfDiagonal(ball.fit()), 0, 0);
        assertThat(first.knots()).isEqualTo(ball.knots().subList(0, 1));

        Fold bottle = BottleFold.of(fit(Tie.ONE_BOTTLE, BOTTLE));
        Fold wings = new Halfway(bottle, TyingMoment.FIRST_PAIR).fold();
        double quarter = 6 * 2 * 40 * Math.tan(Math.PI / 24);
        Vector tip = tip(wings, 1, 0);
        assertThat(tip.x()).isCloseTo(40 + halfDiagonal(bottle.fit()) - quarter, within(1e-6));
        assertThat(Math.abs(tip.y())).isLessThan(1);
        assertThat(tip.z()).isCloseTo(40, within(1e-6));
        assertThat(wings.knots()).isEqualTo(bottle.knots().subList(0, 1));
    }

    @Test
    void what_is_wound_up_lies_round_the_roll_and_books_are_folded_in_on_the_table() {
        Fold roll = RollFold.of(fit(Tie.ROLL, ROLL));
        Fold wound = new Halfway(roll, TyingMoment.WOUND).fold();
        assertThat(wound.knots()).isEmpty();
        for (Facet facet : wound.facets()) {
            assertThat(facet.corners())
                    .allSatisfy(corner ->
                            assertThat(Math.hypot(corner.y(), corner.z() - 30)).isBetween(29.0, 30.3));
        }
        Fold books = BooksFold.of(fit(Tie.BOOKS, BOOKS));
        Fold in = new Halfway(books, TyingMoment.WOUND).fold();
        isAt(tip(in, 1, 0), halfDiagonal(books.fit()), 0, 0);
        // up 2 cm, over 15 cm, down 2 cm at the gap's edge, and on along the gap
        double beyond = halfDiagonal(books.fit()) - (20 + 150 + 20 + 150 + 20);
        isAt(tip(in, 0, -1), 0, -20 + beyond, 0);
        isAt(tip(in, 0, 1), 0, 20 - beyond, 0);
    }
}
