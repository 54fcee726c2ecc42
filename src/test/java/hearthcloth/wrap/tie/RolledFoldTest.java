package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Corner;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.FitTails;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.pleat.KnotEnds;
import hearthcloth.wrap.pleat.Tube;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rolls, two bottles and books. */
class RolledFoldTest {

    private static final Length TAIL = Length.cm(12);

    static Stream<Fit> fits() {
        return Stream.of(
                        "roll 6 x 38 cm",
                        "roll 12 x 61 cm",
                        "roll 10 x 12 cm",
                        "two bottles 7.5 x 30 cm",
                        "two bottles 4 x 16 cm",
                        "books 21 x 14.8 x 2 cm",
                        "books 14.8 x 10.5 x 1.5 cm")
                .map(text -> Gift.parse(text, null))
                .flatMap(gift -> Tie.suiting(gift).stream().map(tie -> fit(tie, gift)));
    }

    private static Fit fit(Tie tie, Gift gift) {
        return tie.fit(gift, Size.square(tie.smallestSquare(gift, TAIL)), TAIL);
    }

    @ParameterizedTest
    @MethodSource("fits")
    void cloth_is_never_stretched_and_every_bit_is_there_once(Fit fit) {
        Fold fold = TiedFold.of(fit);
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
    }

    /** What shows is the whole surface of the wrapped thing: prism wall and both ends, or the six sides of the books. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_whole_surface_is_covered(Fit fit) {
        Visible visible = Visible.of(TiedFold.of(fit));
        FoldJudge.agreesWithJts(visible);
        double end = Math.pow(Math.PI / Tube.SIDES, 2) * Tube.SIDES / Math.tan(Math.PI / Tube.SIDES);
        if (fit.gift() instanceof Gift.Roll roll) {
            double r = roll.diameter().in(Unit.MILLIMETRE) / 2;
            double l = roll.length().in(Unit.MILLIMETRE);
            shows(visible, name -> name.startsWith("tube side"), 2 * Math.PI * r * l);
            shows(visible, name -> name.startsWith("tube end"), 2 * end * r * r);
        } else if (fit.gift() instanceof Gift.TwoBottles two) {
            double r = two.each().diameter().in(Unit.MILLIMETRE) / 2;
            double h = two.each().height().in(Unit.MILLIMETRE);
            shows(visible, name -> name.contains(" side "), 2 * 2 * Math.PI * r * h);
            shows(visible, name -> name.contains(" end "), 2 * end * r * r);
            shows(visible, name -> name.equals("underneath"), 4 * r * 2 * r);
        } else if (fit.gift() instanceof Gift.Books books) {
            double a = books.height().in(Unit.MILLIMETRE);
            double b = books.width().in(Unit.MILLIMETRE);
            double c = books.thickness().in(Unit.MILLIMETRE);
            shows(visible, name -> name.equals("underneath"), a * b);
            shows(visible, name -> name.equals("top"), a * b);
            shows(visible, name -> name.equals("spine"), a * 2 * c);
            shows(visible, name -> name.startsWith("fore-edge"), a * 2 * c);
            shows(visible, name -> name.startsWith("right end"), b * 2 * c);
            shows(visible, name -> name.startsWith("left end"), b * 2 * c);
        }
    }

    private static void shows(Visible visible, Predicate<String> plane, double area) {
        double shown = visible.pieces().stream()
                .filter(piece -> plane.test(piece.facet().plane().name()))
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        assertThat(shown).isCloseTo(area, within(1e-6 * area));
    }

    /** Along the left–right diagonal the path over the gift and the end make up the half diagonal. */
    @ParameterizedTest
    @MethodSource("fits")
    void path_and_tail_make_up_the_half_diagonal(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double extra = fit.gift() instanceof Gift.TwoBottles two
                ? two.each().diameter().in(Unit.MILLIMETRE) / 2 // on from the mouth to the knot between the tops
                : 0;
        double hair = 1e-6;
        double all = 0;
        double tail = 0;
        for (Facet facet : fold.facets()) {
            double run = facet.cloth()
                            .between(new Point(0, 1), hair, 2 * hair)
                            .above(new Point(1, 0), 0)
                            .area()
                    / hair;
            all += run;
            tail += facet.part() == Facet.Part.KNOT || facet.part() == Facet.Part.TAIL ? run : 0;
        }
        assertThat(all).isCloseTo(fit.cloth().width().in(Unit.MILLIMETRE) / Math.sqrt(2), within(0.5));
        assertThat(tail + extra).isCloseTo(FitTails.left(fit, Corner.RIGHT).in(Unit.MILLIMETRE), within(0.5));
    }

    static Stream<Fit> rolls() {
        return Stream.of("roll 6 x 38 cm", "roll 12 x 61 cm", "roll 2 x 30 cm", "roll 10 x 12 cm")
                .map(text -> Gift.parse(text, null))
                .flatMap(gift -> Tie.suiting(gift).stream().map(tie -> fit(tie, gift)));
    }

    /** Cords lie on the roll, round it and over its ends: nowhere farther off than half a cord is thick. */
    @ParameterizedTest
    @MethodSource("rolls")
    void cords_lie_on_the_roll(Fit fit) {
        Gift.Roll roll = (Gift.Roll) fit.gift();
        double r = roll.diameter().in(Unit.MILLIMETRE) / 2;
        double half = roll.length().in(Unit.MILLIMETRE) / 2;
        double thick = KnotEnds.of(fit.tail().in(Unit.MILLIMETRE)).bunch() / 2;
        for (TyingMoment moment : TyingMoment.of(fit.tie(), roll)) {
            for (Facet facet : TiedFold.at(moment, TiedFold.of(fit)).facets()) {
                if (facet.part() != Facet.Part.CORD) {
                    continue;
                }
                for (Vector corner : facet.corners()) {
                    double round = Math.hypot(corner.y(), corner.z() - r) - r;
                    double end = Math.abs(corner.x()) - half;
                    double off = Math.max(round, end);
                    assertThat(off).as(moment + " " + facet.plane().name()).isBetween(-0.02 * r, thick);
                }
            }
        }
    }
}
