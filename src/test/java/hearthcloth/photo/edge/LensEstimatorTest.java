package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The lens that {@link LensEstimator} takes from each side's {@link EdgeCurvature}. */
class LensEstimatorTest {

    private static final LensModel WIDE = new LensModel(new Point(1_000, 750), 1_250, 0, 0.02);

    /** A side from one place to another, bowed by so much, as a lens shows it. */
    private static EdgeFit side(LensModel shows, Point from, Point to, double sagitta, double noise, long seed) {
        Random chance = new Random(seed);
        Line line = Line.through(from, to);
        List<Point> places = IntStream.range(0, 120)
                .mapToObj(i -> {
                    double share = i / 119.0;
                    double off = sagitta * 4 * share * (1 - share) + noise * chance.nextGaussian();
                    return shows.bent(from.towards(to, share).plus(-off * line.dy(), off * line.dx()));
                })
                .toList();
        return new EdgeFit(places, places.stream().map(p -> 1.0).toList(), 0, 1);
    }

    @Test
    void the_sagitta_of_a_bowed_side_is_measured_and_that_of_a_straight_one_is_nothing() {
        for (double sagitta : new double[] {-3, 0, 1.5}) {
            EdgeFit side = side(WIDE, new Point(300, 400), new Point(900, 700), sagitta, 0.2, 1);
            EdgeCurvature bow = EdgeCurvature.of(
                            side, WIDE, 4, EdgeParameters.standard().lens().side())
                    .orElseThrow();

            assertThat(Math.abs(bow.sagitta())).isCloseTo(Math.abs(sagitta), within(0.12));
            assertThat(bow.length()).isCloseTo(Math.hypot(600, 300), within(3.0));
            // of 120 places with 0.2 noise each, three counting as one: about 0.2 x sqrt(3 / (120 x 4/45))
            assertThat(bow.deviation()).isBetween(0.06, 0.16);
            assertThat(bow.waver()).isLessThan(0.15);
        }
        EdgeCurvature left = EdgeCurvature.of(
                        side(WIDE, new Point(300, 400), new Point(900, 700), 2, 0, 1),
                        WIDE,
                        4,
                        EdgeParameters.standard().lens().side())
                .orElseThrow();
        EdgeCurvature right = EdgeCurvature.of(
                        side(WIDE, new Point(300, 400), new Point(900, 700), -2, 0, 1),
                        WIDE,
                        4,
                        EdgeParameters.standard().lens().side())
                .orElseThrow();
        assertThat(left.sagitta()).isCloseTo(-right.sagitta(), within(0.05));
    }

    @Test
    void places_of_another_edge_do_not_bow_a_side_and_scattered_ones_say_little() {
        EdgeFit side = side(WIDE, new Point(300, 400), new Point(900, 400), 1, 0.1, 2);
        EdgeFit mixed = shifted(side, i -> i % 5 == 2 ? 30 : 0);

        assertThat(Math.abs(EdgeCurvature.of(
                                mixed, WIDE, 4, EdgeParameters.standard().lens().side())
                        .orElseThrow()
                        .sagitta()))
                .isCloseTo(1, within(0.1));
        Random chance = new Random(3);
        assertThat(EdgeCurvature.of(
                                shifted(side, i -> 60 * chance.nextGaussian()),
                                WIDE,
                                4,
                                EdgeParameters.standard().lens().side())
                        .map(EdgeCurvature::deviation)
                        .orElse(99.0))
                .isGreaterThan(10);
    }

    private static EdgeFit shifted(EdgeFit side, IntToDoubleFunction down) {
        List<Point> places = IntStream.range(0, side.places().size())
                .mapToObj(i -> side.places().get(i).plus(0, down.applyAsDouble(i)))
                .toList();
        return new EdgeFit(places, side.weights(), 0, 1);
    }

    @Test
    void a_short_side_or_few_places_are_not_used() {
        EdgeFit side = side(WIDE, new Point(300, 400), new Point(900, 400), 1, 0.1, 2);
        EdgeFit few = new EdgeFit(side.places().subList(0, 19), side.weights().subList(0, 19), 0, 1);

        assertThat(EdgeCurvature.of(
                        few, WIDE, 4, EdgeParameters.standard().lens().side()))
                .isEmpty();
        EdgeFit enough =
                new EdgeFit(side.places().subList(0, 20), side.weights().subList(0, 20), 0, 1);
        assertThat(EdgeCurvature.of(
                        enough, WIDE, 4, EdgeParameters.standard().lens().side()))
                .isPresent();
        assertThat(EdgeCurvature.of(
                        side(WIDE, new Point(300, 400), new Point(359, 400), 0, 0, 2),
                        WIDE,
                        4,
                        EdgeParameters.standard().lens().side()))
                .isEmpty();
        assertThat(EdgeCurvature.of(
                        side(WIDE, new Point(300, 400), new Point(361, 400), 0, 0, 2),
                        WIDE,
                        4,
                        EdgeParameters.standard().lens().side()))
                .isPresent();
    }

    @Test
    void a_side_answers_a_change_of_the_lens_as_that_lens_would_bend_it() {
        LensModel barrel = WIDE.with(0.02, 0);
        EdgeCurvature bow = EdgeCurvature.of(
                        side(barrel, new Point(200, 120), new Point(1_800, 160), 0, 0, 1),
                        WIDE,
                        4,
                        EdgeParameters.standard().lens().side())
                .orElseThrow();

        // straightened by 0.02 it would be straight
        assertThat(Math.abs(bow.sagitta())).isGreaterThan(3);
        assertThat(bow.sagitta() + 0.02 * bow.answer()).isCloseTo(0, within(0.1 * Math.abs(bow.sagitta())));
    }

    private static List<EdgeFit> sides(LensModel shows, double cloth) {
        Random chance = new Random(7);
        List<EdgeFit> sides = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            Point middle = new Point(500 + 1_000 * chance.nextDouble(), 300 + 900 * chance.nextDouble());
            double angle = 2 * Math.PI * chance.nextDouble();
            Point from = middle.plus(-450 * Math.cos(angle), -450 * Math.sin(angle));
            Point to = middle.plus(450 * Math.cos(angle), 450 * Math.sin(angle));
            sides.add(side(shows, from, to, cloth * chance.nextGaussian(), 0.15, i));
        }
        return sides;
    }

    @Test
    void the_lens_that_makes_cut_edges_straight_is_found() {
        for (double kappa : new double[] {-0.04, 0.03, 0.07}) {
            LensModel found = LensEstimator.estimated(
                    WIDE,
                    sides(WIDE.with(kappa, 0), 0.1),
                    List.of(),
                    2,
                    EdgeParameters.standard().lens());

            assertThat(found.kappa()).isCloseTo(kappa, within(0.004));
            assertThat(found.deviation()).isLessThan(0.004);
            assertThat(Math.abs(found.kappa() - kappa)).isLessThan(3 * found.deviation());
        }
    }

    @Test
    void a_few_edges_that_are_really_curved_hardly_change_it() {
        LensModel barrel = WIDE.with(0.03, 0);
        List<EdgeFit> sides = new ArrayList<>(sides(barrel, 0.1));
        for (int i = 0; i < 4; i++) {
            sides.add(side(barrel, new Point(150, 100 + 20 * i), new Point(750, 120 + 20 * i), 6, 0.15, i));
        }

        assertThat(LensEstimator.estimated(
                                WIDE,
                                sides,
                                List.of(),
                                4,
                                EdgeParameters.standard().lens())
                        .kappa())
                .isCloseTo(0.03, within(0.006));
    }

    @Test
    void without_edges_nothing_is_known_but_that_lenses_distort_little() {
        LensModel found = LensEstimator.estimated(
                WIDE.with(0.03, 0.01),
                List.of(),
                List.of(),
                2,
                EdgeParameters.standard().lens());

        assertThat(found.kappa()).isCloseTo(0, within(1e-9));
        assertThat(found.deviation()).isCloseTo(0.08, within(1e-9));
    }

    @Test
    void the_sheet_s_own_edges_count_more_than_cloth() {
        LensModel barrel = WIDE.with(0.05, 0);
        List<EdgeFit> paper = List.of(
                side(barrel, new Point(150, 120), new Point(1_850, 120), 0, 0.1, 1),
                side(barrel, new Point(150, 1_380), new Point(1_850, 1_380), 0, 0.1, 2));

        List<EdgeFit> all = new ArrayList<>(sides(barrel, 2));
        all.addAll(paper);
        LensModel asPaper = LensEstimator.estimated(
                WIDE, all, paper, 8, EdgeParameters.standard().lens());
        LensModel asCloth = LensEstimator.estimated(
                WIDE, all, List.of(), 8, EdgeParameters.standard().lens());

        // cloth that was cut with a bow of two pixels
        assertThat(asPaper.kappa()).isCloseTo(0.05, within(0.002));
        assertThat(asPaper.deviation()).isLessThan(0.7 * asCloth.deviation());
    }
}
