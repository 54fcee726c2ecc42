package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.ground.IlluminationCorrection;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * {@link EdgeLocaliser}: an {@link EdgeBand} along each side, read by a {@link PieceColourClassifier}; and the lens that
 * {@link LensEstimator} takes from each side's {@link EdgeCurvature}.
 */
class EdgeLocaliserTest {

    private static final int FLOOR = 0x8a7a60;
    private static final int CLOTH = 0x2c4a70;
    private static final int REACH = 10;
    private static final LensModel STRAIGHT = new LensModel(new Point(160, 120), 200, 0, 0.01);
    private static final List<Point> PIECE =
            List.of(new Point(90.3, 70.6), new Point(220.4, 78.2), new Point(212.7, 170.5), new Point(84.1, 160.2));

    private static Painted painted() {
        return new Painted(320, 240, FLOOR, 3).soft(PIECE, CLOTH);
    }

    private static IlluminationCorrection light(Painted painted) {
        LabThumbnail coarse = painted.coarse();
        return new IlluminationCorrection(painted.picture(), coarse, GroundModel.of(coarse, GroundParameters.standard()));
    }

    private static OccupancyMap occupied(Painted painted, Blob... others) {
        List<Blob> blobs = new ArrayList<>(List.of(new Blob(PIECE, false)));
        blobs.addAll(List.of(others));
        return new OccupancyMap(painted.coarse(), blobs);
    }

    private static PieceColourClassifier classifier(Painted painted, Blob... others) {
        return PieceColourClassifier.of(light(painted), occupied(painted, others), PIECE, 0, REACH, EdgeParameters.standard().colours());
    }

    @Test
    void the_piece_s_own_colours_tell_it_from_the_ground_and_from_its_shade() {
        Painted painted = painted().lit((x, y) -> x > 235 && x < 250 ? 0.75 : 1);
        PieceColourClassifier telling = classifier(painted);
        double[] colour = new double[3];

        assertThat(telling.at(150, 120, colour)).isGreaterThan(0.95);
        assertThat(colour[2]).isCloseTo(0x70, within(8.0));
        assertThat(telling.at(150, 40, colour)).isLessThan(0.05);
        // shade beside a piece is ground too
        assertThat(telling.at(242, 120, colour)).isLessThan(0.1);
    }

    @Test
    void a_colour_seen_nowhere_says_nothing_either_way() {
        Painted painted = painted().box(290, 20, 8, 8, 0xf020f0);

        assertThat(classifier(painted).at(294, 24, new double[3])).isCloseTo(0.5, within(0.02));
    }

    @Test
    void another_piece_beside_it_is_neither() {
        Blob other = new Blob(
                List.of(new Point(240, 80), new Point(300, 80), new Point(300, 160), new Point(240, 160)), false);
        PieceColourClassifier telling = classifier(painted().box(240, 80, 60, 80, 0xc04040), other);

        assertThat(telling.isOthers(270, 120)).isTrue();
        assertThat(telling.isOthers(150, 120)).isFalse();
        assertThat(telling.isOthers(150, 40)).isFalse();
        assertThat(telling.holds(new Point(150, 40))).isTrue();
        assertThat(telling.holds(new Point(319.5, 40))).isFalse();
    }

    private static EdgeBand band(Painted painted, double inA, double inB) {
        // the upper side, moved into the piece by so much at either end
        Point a = PIECE.get(0);
        Point b = PIECE.get(1);
        double length = a.to(b);
        double nx = -(b.y() - a.y()) / length;
        double ny = (b.x() - a.x()) / length;
        return new EdgeBand(
                classifier(painted), a.plus(inA * nx, inA * ny), b.plus(inB * nx, inB * ny), -1, STRAIGHT, REACH, EdgeParameters.standard());
    }

    @Test
    void the_line_is_found_where_cloth_ends_wherever_it_was_looked_for() {
        Painted painted = painted();
        for (double[] in : new double[][] {{0, 0}, {4, 4}, {-5, -5}, {5, -3}, {-2, 6}}) {
            double[] best = band(painted, in[0], in[1]).best(0.62);

            assertThat(best[0]).as("%s", in[0]).isCloseTo(in[0], within(0.7));
            assertThat(best[1]).as("%s", in[1]).isCloseTo(in[1], within(0.7));
        }
    }

    @Test
    void the_rim_is_the_line_found_and_another_line_loses_by_how_far_off_it_is() {
        EdgeBand band = band(painted(), 3, 3);
        EdgeLocaliser.Rim rim = band.rim(band.best(0.62));

        assertThat(Math.abs(rim.line().off(PIECE.get(0)))).isLessThan(0.7);
        assertThat(Math.abs(rim.line().off(PIECE.get(1)))).isLessThan(0.7);
        assertThat(rim.fringe()).isLessThan(1.5);
        assertThat(rim.strip().loss(rim.line(), STRAIGHT)).isCloseTo(0, within(0.1));
        assertThat(rim.strip().loss(rim.line().moved(5), STRAIGHT)).isCloseTo(5, within(1.0));
        assertThat(rim.strip().loss(rim.line().moved(-5), STRAIGHT)).isCloseTo(5, within(1.0));
    }

    @Test
    void threads_that_stick_out_are_a_fringe_and_no_cloth() {
        Painted frayed = painted();
        for (int x = 92; x < 218; x += 4) {
            int edge = (int) Math.round(70.6 + (x - 90.3) * 7.6 / 130.1);
            frayed.box(x, edge - 6, 1, 6, CLOTH);
        }
        EdgeBand band = band(frayed, 0, 0);
        EdgeLocaliser.Rim rim = band.rim(band.best(0.62));

        assertThat(rim.fringe()).isBetween(3.5, 8.0);
        assertThat(Math.abs(rim.line().off(PIECE.get(0).towards(PIECE.get(1), 0.5))))
                .isLessThan(1);
    }

    @Test
    void a_shade_beside_a_clean_side_is_no_fringe_however_slantwise_it_runs() {
        Painted shaded = painted().lit((x, y) -> {
            double edge = 70.6 + (x - 90.3) * 7.6 / 130.1;
            double far = 3 + 4 * (x - 90) / 130;
            return x > 80 && x < 230 && y < edge && y > edge - far ? 0.55 : 1;
        });
        EdgeBand band = band(shaded, 0, 0);
        EdgeLocaliser.Rim rim = band.rim(band.best(0.62));

        assertThat(rim.fringe()).isLessThan(1.5);
        assertThat(rim.clear()).isGreaterThan(0.8);
    }

    @Test
    void a_corner_that_shade_has_blunted_is_whole_again_and_one_that_was_cut_off_is_not() {
        Painted whole = painted();
        Point corner = PIECE.get(1);
        List<Point> blunt = new ArrayList<>(PIECE);
        blunt.set(1, corner.towards(PIECE.get(0), 8 / corner.to(PIECE.get(0))));
        blunt.add(2, corner.towards(PIECE.get(2), 8 / corner.to(PIECE.get(2))));

        List<Point> sharp = new BluntCorners(classifier(whole), REACH, EdgeParameters.standard().placing().blunt()).sharpened(blunt);
        assertThat(sharp).hasSize(4).anyMatch(one -> one.to(corner) < 1.5);

        Painted cut = new Painted(320, 240, FLOOR, 3).soft(blunt, CLOTH);
        assertThat(new BluntCorners(classifier(cut), REACH, EdgeParameters.standard().placing().blunt()).sharpened(blunt)).hasSize(5);
    }

    @Test
    void every_corner_is_found_from_a_rough_outline() {
        Painted painted = painted();
        EdgeLocaliser localiser = new EdgeLocaliser(light(painted), occupied(painted), REACH, EdgeParameters.standard());
        Random chance = new Random(6);
        for (int round = 0; round < 3; round++) {
            List<Point> rough = PIECE.stream()
                    .map(c -> c.plus(5 * (chance.nextDouble() - 0.5) * 2, 5 * (chance.nextDouble() - 0.5) * 2))
                    .toList();

            EdgeLocaliser.Laid laid = localiser.of(rough, 0, STRAIGHT);

            assertThat(laid.rims()).hasSize(4);
            assertThat(laid.isFaint()).isFalse();
            assertThat(laid.moved()).isLessThan(1.5);
            for (int i = 0; i < 4; i++) {
                assertThat(laid.corners().get(i).to(PIECE.get(i)))
                        .as("corner %s", i)
                        .isLessThan(1.5);
            }
            assertThat(laid.doubt(ReferenceSheet.A4)).isEmpty();
        }
    }

    @Test
    void an_outline_that_goes_the_other_way_round_is_found_as_well() {
        Painted painted = painted();
        List<Point> back = List.of(PIECE.get(3), PIECE.get(2), PIECE.get(1), PIECE.get(0));
        EdgeLocaliser.Laid laid = new EdgeLocaliser(light(painted), occupied(painted), REACH, EdgeParameters.standard())
                .of(back.stream().map(c -> c.plus(3, -3)).toList(), 0, STRAIGHT);

        for (int i = 0; i < 4; i++) {
            assertThat(laid.corners().get(i).to(back.get(i))).isLessThan(1.5);
        }
    }

    @Test
    void faint_paper_is_doubted_by_its_name() {
        EdgeLocaliser.Laid faint = EdgeLocaliser.Laid.faint(PIECE);

        assertThat(faint.isFaint()).isTrue();
        assertThat(faint.corners()).isEqualTo(PIECE);
        Doubt doubt = faint.doubt(ReferenceSheet.LETTER).orElseThrow();
        assertThat(doubt.kind()).isEqualTo(Doubt.Kind.SHEET);
        assertThat(doubt.sentence()).contains("The Letter hardly differs");
    }

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
            EdgeCurvature bow = EdgeCurvature.of(side, WIDE, 4, EdgeParameters.standard().lens().side()).orElseThrow();

            assertThat(Math.abs(bow.sagitta())).isCloseTo(Math.abs(sagitta), within(0.12));
            assertThat(bow.length()).isCloseTo(Math.hypot(600, 300), within(3.0));
            // of 120 places with 0.2 noise each, three counting as one: about 0.2 x sqrt(3 / (120 x 4/45))
            assertThat(bow.deviation()).isBetween(0.06, 0.16);
            assertThat(bow.waver()).isLessThan(0.15);
        }
        EdgeCurvature left = EdgeCurvature.of(side(WIDE, new Point(300, 400), new Point(900, 700), 2, 0, 1), WIDE, 4, EdgeParameters.standard().lens().side())
                .orElseThrow();
        EdgeCurvature right = EdgeCurvature.of(side(WIDE, new Point(300, 400), new Point(900, 700), -2, 0, 1), WIDE, 4, EdgeParameters.standard().lens().side())
                .orElseThrow();
        assertThat(left.sagitta()).isCloseTo(-right.sagitta(), within(0.05));
    }

    @Test
    void places_of_another_edge_do_not_bow_a_side_and_scattered_ones_say_little() {
        EdgeFit side = side(WIDE, new Point(300, 400), new Point(900, 400), 1, 0.1, 2);
        EdgeFit mixed = shifted(side, i -> i % 5 == 2 ? 30 : 0);

        assertThat(Math.abs(EdgeCurvature.of(mixed, WIDE, 4, EdgeParameters.standard().lens().side()).orElseThrow().sagitta()))
                .isCloseTo(1, within(0.1));
        Random chance = new Random(3);
        assertThat(EdgeCurvature.of(shifted(side, i -> 60 * chance.nextGaussian()), WIDE, 4, EdgeParameters.standard().lens().side())
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

        assertThat(EdgeCurvature.of(few, WIDE, 4, EdgeParameters.standard().lens().side())).isEmpty();
        EdgeFit enough =
                new EdgeFit(side.places().subList(0, 20), side.weights().subList(0, 20), 0, 1);
        assertThat(EdgeCurvature.of(enough, WIDE, 4, EdgeParameters.standard().lens().side())).isPresent();
        assertThat(EdgeCurvature.of(side(WIDE, new Point(300, 400), new Point(359, 400), 0, 0, 2), WIDE, 4, EdgeParameters.standard().lens().side()))
                .isEmpty();
        assertThat(EdgeCurvature.of(side(WIDE, new Point(300, 400), new Point(361, 400), 0, 0, 2), WIDE, 4, EdgeParameters.standard().lens().side()))
                .isPresent();
    }

    @Test
    void a_side_answers_a_change_of_the_lens_as_that_lens_would_bend_it() {
        LensModel barrel = WIDE.with(0.02, 0);
        EdgeCurvature bow = EdgeCurvature.of(side(barrel, new Point(200, 120), new Point(1_800, 160), 0, 0, 1), WIDE, 4, EdgeParameters.standard().lens().side())
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
            LensModel found = LensEstimator.estimated(WIDE, sides(WIDE.with(kappa, 0), 0.1), List.of(), 2, EdgeParameters.standard().lens());

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

        assertThat(LensEstimator.estimated(WIDE, sides, List.of(), 4, EdgeParameters.standard().lens()).kappa()).isCloseTo(0.03, within(0.006));
    }

    @Test
    void without_edges_nothing_is_known_but_that_lenses_distort_little() {
        LensModel found = LensEstimator.estimated(WIDE.with(0.03, 0.01), List.of(), List.of(), 2, EdgeParameters.standard().lens());

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
        LensModel asPaper = LensEstimator.estimated(WIDE, all, paper, 8, EdgeParameters.standard().lens());
        LensModel asCloth = LensEstimator.estimated(WIDE, all, List.of(), 8, EdgeParameters.standard().lens());

        // cloth that was cut with a bow of two pixels
        assertThat(asPaper.kappa()).isCloseTo(0.05, within(0.002));
        assertThat(asPaper.deviation()).isLessThan(0.7 * asCloth.deviation());
    }
}
