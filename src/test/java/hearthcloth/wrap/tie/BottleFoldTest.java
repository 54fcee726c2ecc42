package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
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
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.pleat.Band;
import hearthcloth.wrap.pleat.Panels;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The second pair of a bottle's corners goes round its body to a knot in front. */
class BottleFoldTest {

    private static final Length TAIL = Length.cm(12);

    static Stream<Fit> fits() {
        return Stream.of("bottle 7.5 x 30 cm", "bottle 10 x 14 cm", "bottle 12 x 12 cm", "bottle 3 x 40 cm")
                .map(text -> Gift.parse(text, null))
                .flatMap(gift -> {
                    Length side = Tie.ONE_BOTTLE.smallestSquare(gift, TAIL);
                    Length more = side.times(11).dividedBy(10, Rounding.UP);
                    Placing off =
                            Placing.CENTRED.shifted(Length.mm(9), Length.mm(-6)).turned(1);
                    return Stream.of(
                            Tie.ONE_BOTTLE.fit(gift, Size.square(side), TAIL),
                            Tie.ONE_BOTTLE.fit(gift, new Size(more, more.plus(Length.mm(20))), TAIL),
                            Tie.ONE_BOTTLE.fit(gift, Size.square(more), TAIL, off));
                });
    }

    @ParameterizedTest
    @MethodSource("fits")
    void cloth_is_never_stretched_and_every_bit_is_there_once(Fit fit) {
        Fold fold = TiedFold.of(fit);
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
        FoldJudge.agreesWithJts(Visible.of(fold));
    }

    /** Two knots: one over the mouth, one in front of the body below the shoulder. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_second_knot_sits_in_front_of_the_body(Fit fit) {
        Gift.Bottle bottle = (Gift.Bottle) fit.gift();
        Fold fold = TiedFold.of(fit);
        assertThat(fold.knots()).hasSize(2);
        ReefKnot front = fold.knots().get(1);
        assertThat(front.at().y()).isLessThan(-bottle.diameter().in(Unit.MILLIMETRE) / 2);
        assertThat(front.at().z()).isBetween(0.0, bottle.shoulder().in(Unit.MILLIMETRE) / 2 + 1e-9);
        assertThat(fold.knots().get(0).at().z()).isGreaterThan(bottle.height().in(Unit.MILLIMETRE));
    }

    /** Cords hug the body, above the table: between it and a millimetre and a half off, corners of strips included. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_cords_lie_on_the_body(Fit fit) {
        double r = ((Gift.Bottle) fit.gift()).diameter().in(Unit.MILLIMETRE) / 2;
        for (Facet facet : TiedFold.of(fit).facets()) {
            if (facet.part() == Facet.Part.CORD) {
                for (Vector corner : facet.corners()) {
                    double away = Math.hypot(corner.x(), corner.y());
                    assertThat(away).isBetween(r, (r + 1.5) / Math.cos(Band.HALF_ANGLE));
                    assertThat(corner.z()).isGreaterThan(-1e-9);
                }
            }
        }
    }

    /** A cord runs on from strip to strip: its middle line, walked a millimetre at a time, never jumps. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_cords_middle_line_is_one_unbroken_line(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double r = ((Gift.Bottle) fit.gift()).diameter().in(Unit.MILLIMETRE) / 2;
        for (Point way : new Point[] {Panels.LEFT, Panels.RIGHT}) {
            @Nullable Vector last = null;
            double walked = 0;
            for (double gone = r + 0.5; ; gone++) {
                @Nullable
                Vector here = cord(fold, way.times(gone).plus(way.left().times(1e-4)));
                if (here == null) {
                    break;
                }
                if (last != null) {
                    // a strip's edge is turned within a step, which shortens it as the crow flies
                    assertThat(here.minus(last).length()).isBetween(0.97, 1 + 1e-6);
                }
                last = here;
                walked++;
            }
            Gift.Bottle bottle = (Gift.Bottle) fit.gift();
            double straight = Math.hypot(bottle.shoulder().in(Unit.MILLIMETRE) / 2, 1.5 * Math.PI * r);
            assertThat(walked).isGreaterThanOrEqualTo(Math.floor(straight) - 1);
        }
    }

    private static @Nullable Vector cord(Fold fold, Point point) {
        for (Facet facet : fold.facets()) {
            if (facet.part() == Facet.Part.CORD && holds(facet.cloth(), point)) {
                return facet.motion().at(point);
            }
        }
        return null;
    }

    private static boolean holds(ConvexPolygon outline, Point point) {
        for (int i = 0; i < outline.corners().size(); i++) {
            Point a = outline.corners().get(i);
            Point b = outline.corners().get((i + 1) % outline.corners().size());
            if (b.minus(a).left().dot(point.minus(a)) < -1e-9) {
                return false;
            }
        }
        return true;
    }

    /** On a square cloth with the bottle in its middle every corner's end is what the size was reckoned to leave. */
    @ParameterizedTest
    @MethodSource("fits")
    void way_and_end_make_up_the_half_diagonal(Fit fit) {
        if (!fit.cloth().isSquare() || !fit.placing().equals(Placing.CENTRED)) {
            return; // there the tip lies beside the axis
        }
        Fold fold = TiedFold.of(fit);
        for (Corner corner : new Corner[] {Corner.LEFT, Corner.RIGHT, Corner.NEAR, Corner.FAR}) {
            Point axis = new Point(corner.right(), corner.away());
            double all = 0;
            double tail = 0;
            for (Facet facet : fold.facets()) {
                double run = facet.cloth()
                                .between(axis.left(), 0, 1e-6)
                                .above(axis, 0)
                                .area()
                        / 1e-6;
                all += run;
                tail += facet.part() == Facet.Part.KNOT || facet.part() == Facet.Part.TAIL ? run : 0;
            }
            assertThat(all).isCloseTo(fit.cloth().width().in(Unit.MILLIMETRE) / Math.sqrt(2), within(0.05));
            // a squat bottle's cords cannot rise less, so their way is a little longer and their ends shorter
            double left = FitTails.left(fit, corner).in(Unit.MILLIMETRE);
            assertThat(tail).isBetween(left - 12, left + 0.05);
        }
    }
}
