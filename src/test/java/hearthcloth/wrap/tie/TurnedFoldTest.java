package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Corner;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.FitTails;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.pleat.Band;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TurnedFoldTest {

    private static final Length TAIL = Length.cm(12);

    static Stream<Fit> fits() {
        return Stream.of("bottle 7.5 x 30 cm", "bottle 10 x 14 cm", "ball 12 cm", "ball 25 cm")
                .map(text -> Gift.parse(text, null))
                .flatMap(gift -> {
                    Tie tie = Tie.suiting(gift).get(0);
                    Length side = tie.smallestSquare(gift, TAIL);
                    Size longer = new Size(side, side.plus(Length.mm(25)));
                    return Stream.of(tie.fit(gift, Size.square(side), TAIL), tie.fit(gift, longer, TAIL));
                });
    }

    @ParameterizedTest
    @MethodSource("fits")
    void cloth_is_never_stretched_and_every_bit_is_there_once(Fit fit) {
        Fold fold = TiedFold.of(fit);
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
    }

    /** The strips that show are the prism's whole strips: perimeter times length, band by band; the mouth is under knots. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_gift_is_covered_from_the_table_to_the_mouth(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double around = 2 * Band.SIDES * Math.tan(Math.PI / Band.SIDES);
        FoldJudge.agreesWithJts(Visible.of(fold));
        double shown = Visible.of(fold).pieces().stream()
                .filter(piece ->
                        piece.facet().part() == Facet.Part.WALL || piece.facet().part() == Facet.Part.BASE)
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        if (fit.gift() instanceof Gift.Bottle bottle) {
            double r = bottle.diameter().in(Unit.MILLIMETRE) / 2;
            double n = bottle.neck().in(Unit.MILLIMETRE) / 2;
            double s = bottle.shoulder().in(Unit.MILLIMETRE);
            double taut = Math.hypot(r - n, bottle.height().in(Unit.MILLIMETRE) - s);
            double whole = around * (r * r / 2 + r * s + (r + n) / 2 * taut);
            assertThat(shown).isCloseTo(whole, within(1e-6 * whole));
        } else {
            double r = fit.gift().longestSide().in(Unit.MILLIMETRE) / 2;
            // a sphere's 4 π r², drawn with straight facets; all but the topmost band, which counts as top
            Visible.Shares shares = Visible.of(fold).shares(fold.laying().whole());
            double all = shares.top() + shares.sides() + shares.underneath();
            assertThat(all).isCloseTo(4 * Math.PI * r * r, within(0.012 * 4 * Math.PI * r * r));
        }
    }

    /** First derivation: of the disc of cloth that reaches a ball's top, 4/π² shows. */
    @Test
    void four_in_ten_of_a_balls_cloth_shows() {
        Gift ball = Gift.parse("ball 25 cm", null);
        Fit fit = Tie.ROUND.fit(ball, Size.square(Tie.ROUND.smallestSquare(ball, TAIL)), TAIL);
        Visible visible = Visible.of(TiedFold.of(fit));
        double disc = Math.PI * Math.pow(Math.PI * 125, 2);
        double seen = visible.pieces().stream()
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        assertThat(seen / disc).isCloseTo(4 / (Math.PI * Math.PI), within(0.006));
    }

    /** First derivation: 677 of 4624 cm² of a 68 cm cloth show round a wine bottle (body, shoulder and mouth). */
    @Test
    void a_wine_bottle_shows_a_seventh_of_its_cloth() {
        Gift wine = Gift.Bottle.of(Length.mm(75), Length.mm(300));
        Visible visible = Visible.of(TiedFold.of(Tie.ONE_BOTTLE.fit(wine, Size.square(Length.cm(68)), TAIL)));
        double seen = visible.pieces().stream()
                .filter(piece -> piece.facet().plane().where() != FacetPlane.Where.UNDERNEATH)
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        assertThat(seen / 4624_00).isBetween(0.13, 0.16);
    }

    @ParameterizedTest
    @MethodSource("fits")
    void path_and_tail_make_up_the_half_diagonal(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double tail = 0;
        double all = 0;
        for (Facet facet : fold.facets()) {
            ConvexPolygon on = facet.cloth().between(new Point(1, 0), 0, 1e-6).above(new Point(0, 1), 0);
            double run = on.area() / 1e-6;
            all += run;
            tail += facet.part() == Facet.Part.KNOT || facet.part() == Facet.Part.TAIL ? run : 0;
        }
        Size cloth = fit.cloth();
        double reach = cloth.width().plus(cloth.height()).in(Unit.MILLIMETRE) / (2 * Math.sqrt(2));
        double aside = cloth.height().minus(cloth.width()).in(Unit.MILLIMETRE) / (2 * Math.sqrt(2));
        assertThat(all).isCloseTo(reach - aside, within(1e-2));
        if (cloth.isSquare()) {
            assertThat(tail).isCloseTo(FitTails.left(fit, Corner.FAR).in(Unit.MILLIMETRE), within(1e-2));
        }
    }
}
