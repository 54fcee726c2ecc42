package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ShortClothException;
import hearthcloth.wrap.fold.Visible;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;

class BoxFoldTest {

    private static final Length TAIL = Length.cm(12);
    private static final List<String> BOXES = List.of("30x20x8", "20x20x20", "40x30x3", "60x12x12", "10x8x4");

    static Stream<Fit> fits() {
        return Stream.of(Tie.FOUR_CORNER, Tie.ERRAND, Tie.FLAT, Tie.TWO_KNOT, Tie.EDGE_ALONG_EDGE)
                .flatMap(tie -> BOXES.stream().flatMap(box -> fits(tie, Gift.parse("box " + box + " cm", null))));
    }

    static Stream<Fit> centredDiamonds() {
        return fits().filter(fit -> fit.tie() != Tie.EDGE_ALONG_EDGE
                && fit.cloth().isSquare()
                && fit.placing().equals(Placing.CENTRED));
    }

    static Stream<Fit> edgeAlongEdge() {
        return fits().filter(fit -> fit.tie() == Tie.EDGE_ALONG_EDGE);
    }

    /** The smallest cloth, one a tenth larger, an oblong one and one with the gift off its middle. */
    private static Stream<Fit> fits(Tie tie, Gift gift) {
        Length side = tie.smallestSquare(gift, TAIL);
        Length more = side.times(11).dividedBy(10, Rounding.UP);
        Placing off = Placing.CENTRED.shifted(Length.mm(11), Length.mm(-7)).turned(1);
        return Stream.of(
                tie.fit(gift, Size.square(side), TAIL),
                tie.fit(gift, Size.square(more), TAIL),
                tie.fit(gift, new Size(more.plus(Length.mm(20)), more), TAIL),
                tie.fit(gift, Size.square(more), TAIL, off));
    }

    @ParameterizedTest
    @MethodSource("fits")
    void cloth_is_never_stretched_and_every_bit_is_there_once(Fit fit) {
        Fold fold = TiedFold.of(fit);
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
    }

    /** JTS: in each of the six sides the facets cover the whole side, and nothing lies outside the box. */
    @ParameterizedTest
    @MethodSource("fits")
    void every_side_of_the_box_is_covered_and_nothing_sticks_out(Fit fit) {
        Fold fold = TiedFold.of(fit);
        Visible seen = Visible.of(fold);
        Gift.Box box = (Gift.Box) fit.gift();
        double l = box.along().in(Unit.MILLIMETRE);
        double w = box.across().in(Unit.MILLIMETRE);
        double h = box.height().in(Unit.MILLIMETRE);
        covers(seen, "underneath", l * w);
        covers(seen, "top", l * w);
        covers(seen, "left-wall", w * h);
        covers(seen, "right-wall", w * h);
        covers(seen, "near-wall", l * h);
        covers(seen, "far-wall", l * h);
        double out = 0;
        for (Facet facet : fold.facets()) {
            for (Vector corner : facet.isLoose() ? List.<Vector>of() : facet.corners()) {
                out = Math.max(out, Math.abs(corner.x()) - l / 2);
                out = Math.max(out, Math.abs(corner.y()) - w / 2);
                out = Math.max(out, Math.max(-corner.z(), corner.z() - h));
            }
        }
        assertThat(out).isLessThan(1e-6);
    }

    private static void covers(Visible seen, String plane, double area) {
        List<Facet> there = seen.fold().facets().stream()
                .filter(facet -> facet.plane().name().equals(plane))
                .toList();
        Geometry shadow = FoldJudge.shadow(
                there,
                place -> plane.endsWith("wall")
                        ? new Point(plane.startsWith("l") || plane.startsWith("r") ? place.y() : place.x(), place.z())
                        : new Point(place.x(), place.y()));
        assertThat(shadow.getArea()).as(plane).isCloseTo(area, within(1e-6 * area));
        double shown = seen.pieces().stream()
                .filter(piece -> piece.facet().plane().name().equals(plane))
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        assertThat(shown).as("shown on " + plane).isCloseTo(area, within(1e-6 * area));
    }

    /** No step on the cloth gets longer in space: below the rim in every tie, everywhere in the flat wrap. */
    @ParameterizedTest
    @MethodSource("fits")
    void neighbouring_facets_hang_together(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double rim = ((Gift.Box) fit.gift()).height().in(Unit.MILLIMETRE) - 1e-9;
        List<Facet> whole = fold.facets().stream()
                .filter(facet -> fit.tie() == Tie.FLAT
                        || (facet.corners().stream().allMatch(corner -> corner.z() <= rim + 2e-9)
                                && facet.plane().where() != FacetPlane.Where.TOP
                                && !facet.isLoose()))
                .toList();
        Random chance = new Random(20261125);
        double longer = 0;
        for (int i = 0; i < 4000; i++) {
            Facet one = whole.get(chance.nextInt(whole.size()));
            Facet two = whole.get(chance.nextInt(whole.size()));
            Point a = FoldJudge.some(one.cloth(), chance);
            Point b = FoldJudge.some(two.cloth(), chance);
            double flat = Math.hypot(a.x() - b.x(), a.y() - b.y());
            double laid = one.motion().at(a).minus(two.motion().at(b)).length();
            longer = Math.max(longer, laid - flat);
        }
        assertThat(longer).isLessThan(1e-6);
    }

    /** Along each axis the path over the gift and what is left at the knot make up the half diagonal. */
    @ParameterizedTest
    @MethodSource("centredDiamonds")
    void path_and_tail_make_up_the_half_diagonal(Fit fit) {
        Fold fold = TiedFold.of(fit);
        double d = fit.cloth().width().in(Unit.MILLIMETRE) / Math.sqrt(2);
        for (Corner corner : List.of(Corner.RIGHT, Corner.LEFT, Corner.NEAR, Corner.FAR)) {
            double on = 0;
            double tail = 0;
            for (Facet facet : fold.facets()) {
                double run = onAxis(facet.cloth(), corner);
                boolean end = facet.part() == Facet.Part.KNOT || facet.part() == Facet.Part.TAIL;
                tail += end ? run : 0;
                on += end ? 0 : run;
            }
            assertThat(on + tail).isCloseTo(d, within(1e-6));
            boolean knotted = fit.tie() != Tie.FLAT && (fit.tie() != Tie.ERRAND || corner.away() == 0);
            double left = FitTails.left(fit, corner).in(Unit.MILLIMETRE);
            assertThat(tail).isCloseTo(knotted ? left : 0, within(1e-5));
        }
    }

    /** Length of the half axis, a hair beside it so that creases on it are not counted twice, inside an outline. */
    private static double onAxis(ConvexPolygon outline, Corner corner) {
        Point axis = new Point(corner.right(), corner.away());
        double hair = 1e-7;
        ConvexPolygon slit = outline.between(axis.left(), 0, hair).above(axis, 0);
        if (slit.isEmpty()) {
            slit = outline.between(axis.left(), hair, 2 * hair).above(axis, 0);
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : slit.corners()) {
            low = Math.min(low, axis.dot(point));
            high = Math.max(high, axis.dot(point));
        }
        return Math.max(0, high - low);
    }

    @Test
    void a_short_cloth_is_refused_with_the_size_that_would_do() {
        Gift gift = Gift.parse("box 30 x 20 x 8 cm", null);
        Fit fit = Tie.FOUR_CORNER.fit(gift, Size.square(Length.cm(60)), TAIL);
        assertThatThrownBy(() -> TiedFold.of(fit))
                .isInstanceOf(ShortClothException.class)
                .hasMessageContaining("70.8 cm is large enough");
    }

    /** Edge along edge: from the base's corner straight to the cloth's, path and end make up the whole way. */
    @ParameterizedTest
    @MethodSource("edgeAlongEdge")
    void path_and_tail_make_up_the_way_to_the_corner(Fit fit) {
        Fold fold = TiedFold.of(fit);
        Gift.Box box = (Gift.Box) fit.gift();
        Point foot = new Point(box.along().in(Unit.MILLIMETRE) / 2, box.across().in(Unit.MILLIMETRE) / 2);
        double hair = 1e-6;
        double all = 0;
        double tail = 0;
        Point tip = fold.laying().whole().corners().stream()
                .max(Comparator.comparing(corner -> corner.x() + corner.y()))
                .orElseThrow();
        Point way = tip.minus(foot);
        Point axis = way.times(1 / Math.hypot(way.x(), way.y()));
        for (Facet facet : fold.facets()) {
            double beside = axis.left().dot(foot);
            double run = facet.cloth()
                            .between(axis.left(), beside + hair, beside + 2 * hair)
                            .above(axis, axis.dot(foot))
                            .area()
                    / hair;
            all += run;
            tail += facet.part() == Facet.Part.KNOT || facet.part() == Facet.Part.TAIL ? run : 0;
        }
        assertThat(all).isCloseTo(Math.hypot(way.x(), way.y()), within(0.5));
        assertThat(tail).isCloseTo(FitTails.left(fit, Corner.FAR_RIGHT).in(Unit.MILLIMETRE), within(0.5));
    }
}
