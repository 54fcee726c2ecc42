package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.junit.jupiter.api.Test;

/** {@link EdgeLocaliser}: an {@link EdgeBand} along each side, read by a {@link PieceColourClassifier}. */
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
        return new IlluminationCorrection(
                painted.picture(), coarse, GroundModel.of(coarse, GroundParameters.standard()));
    }

    private static OccupancyMap occupied(Painted painted, Blob... others) {
        List<Blob> blobs = new ArrayList<>(List.of(new Blob(PIECE, false)));
        blobs.addAll(List.of(others));
        return new OccupancyMap(painted.coarse(), blobs);
    }

    private static PieceColourClassifier classifier(Painted painted, Blob... others) {
        return PieceColourClassifier.of(
                light(painted),
                occupied(painted, others),
                PIECE,
                0,
                REACH,
                EdgeParameters.standard().colours());
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
                classifier(painted),
                a.plus(inA * nx, inA * ny),
                b.plus(inB * nx, inB * ny),
                -1,
                STRAIGHT,
                REACH,
                EdgeParameters.standard());
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

        List<Point> sharp = new BluntCorners(
                        classifier(whole),
                        REACH,
                        EdgeParameters.standard().placing().blunt())
                .sharpened(blunt);
        assertThat(sharp).hasSize(4).anyMatch(one -> one.to(corner) < 1.5);

        Painted cut = new Painted(320, 240, FLOOR, 3).soft(blunt, CLOTH);
        assertThat(new BluntCorners(
                                classifier(cut),
                                REACH,
                                EdgeParameters.standard().placing().blunt())
                        .sharpened(blunt))
                .hasSize(5);
    }

    @Test
    void every_corner_is_found_from_a_rough_outline() {
        Painted painted = painted();
        EdgeLocaliser localiser =
                new EdgeLocaliser(light(painted), occupied(painted), REACH, EdgeParameters.standard());
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
        assertThat(doubt.sentence().english()).contains("The Letter hardly differs");
    }
}
