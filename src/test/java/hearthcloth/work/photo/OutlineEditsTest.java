package hearthcloth.work.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.work.photo.OutlineEdits.Placed;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Outlines changed by hand on a picture that shows the floor from straight above, a pixel a millimetre: {@link OutlineEdits},
 * {@link OutlineOrigin}, {@link FinishedOutline}, {@link MarkedGrain}.
 */
class OutlineEditsTest {

    private static final List<Point> SHEET =
            List.of(new Point(100, 100), new Point(310, 100), new Point(310, 397), new Point(100, 397));

    private static final FloorScale SCALE = new KeptScale(
                    1000, 800, 210, 297, SHEET, 0.3, List.of(new KeptScale.View(new Point(500, 400), 640, 0, 0, SHEET)))
            .scale();

    private static final OutlineEdits EDITS = new OutlineEdits(SCALE);

    private static final Lab GREEN = new Lab(45, -30, 25);

    private static final PieceAppearance LOOK =
            new PieceAppearance(GREEN, GREEN, GREEN, PieceAppearance.Pattern.PLAIN, 40);

    private static List<Placed> placed(double... places) {
        return Stream.iterate(0, i -> i < places.length, i -> i + 2)
                .map(i -> new Placed(new Point(places[i], places[i + 1]), 3))
                .toList();
    }

    private static PhotoSorting drawn(double... places) {
        return EDITS.drawn(PhotoSorting.of(List.of(), Set.of()), placed(places), outline -> LOOK, Set.of(), Set.of());
    }

    /** 120 mm across, 80 mm up. */
    private static PhotoSorting one() {
        return drawn(400, 100, 520, 100, 520, 180, 400, 180);
    }

    private static List<Point> corners(PhotoSorting sorting) {
        return sorting.piece("1").piece().outline().picture();
    }

    /** The shortest and the longest side. What is usable lies within by as much as she may have tapped beside a corner. */
    private static double[] sides(SortedPiece piece) {
        List<Double> sides = piece.piece().outline().sides().stream()
                .map(side -> side.length().in(Unit.MILLIMETRE))
                .sorted()
                .toList();
        assertThat(Math.min(piece.usable().width(), piece.usable().height())).isBetween(sides.get(0) - 9, sides.get(0));
        return new double[] {sides.get(0), sides.get(sides.size() - 1)};
    }

    private static double area(PhotoSorting sorting) {
        SortedPiece piece = sorting.piece("1");
        return piece.usable().width() * piece.usable().height();
    }

    @Test
    void a_piece_that_was_not_read_is_drawn_by_its_corners_and_measured() {
        SortedPiece piece = one().piece("1");
        assertThat(piece.isDrawn()).isTrue();
        assertThat(piece.byHand()).isTrue();
        assertThat(sides(piece)[0]).isCloseTo(80, within(0.5));
        assertThat(sides(piece)[1]).isCloseTo(120, within(0.5));
        assertThat(piece.rim()).isEqualTo(new OutlineOrigin.Drawn(List.of(3.0, 3.0, 3.0, 3.0)));
        // A place tapped twice is one corner, also where the outline ends at its beginning.
        assertThat(drawn(400, 100, 400.4, 100, 520, 100, 520, 180, 400, 180, 400, 100.3)
                        .piece("1")
                        .piece()
                        .outline()
                        .picture())
                .hasSize(4);
    }

    @Test
    void an_outline_that_cannot_be_is_refused_in_words() {
        double[] many = new double[2 * (OutlineEdits.MOST_DRAWN + 1)];
        for (int i = 0; i <= OutlineEdits.MOST_DRAWN; i++) {
            many[2 * i] = 600 + 100 * Math.cos(2 * Math.PI * i / (OutlineEdits.MOST_DRAWN + 1));
            many[2 * i + 1] = 400 + 100 * Math.sin(2 * Math.PI * i / (OutlineEdits.MOST_DRAWN + 1));
        }
        for (double[] places : List.of(
                many,
                new double[] {400, 100, 520, 100},
                new double[] {400, 100, 1200, 100, 520, 180},
                new double[] {400, 100, 404, 100, 404, 180, 400, 180},
                new double[] {400, 100, 520, 180, 520, 100, 400, 180})) {
            assertThatThrownBy(() -> drawn(places))
                    .isInstanceOf(MeasureException.class)
                    .message()
                    .isNotBlank();
        }
    }

    private static double[] ring(int corners) {
        double[] places = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            places[2 * i] = 600 + 100 * Math.cos(2 * Math.PI * i / corners);
            places[2 * i + 1] = 400 + 100 * Math.sin(2 * Math.PI * i / corners);
        }
        return places;
    }

    @Test
    void as_many_corners_as_may_be_and_corners_a_pixel_apart_are_taken_and_a_rim_of_the_picture_is_in_it() {
        assertThat(corners(drawn(ring(OutlineEdits.MOST_DRAWN)))).hasSize(OutlineEdits.MOST_DRAWN);
        assertThat(corners(drawn(400, 100, 401, 100, 520, 100, 520, 180, 400, 180)))
                .hasSize(5);
        assertThat(corners(drawn(0, 0, 1000, 0, 1000, 800))).hasSize(3);
        assertThatThrownBy(() -> drawn(0, 0, 1000, 0, 1000, 800.5)).message().contains("picture");
        assertThatThrownBy(() -> drawn(400, 100, 520, 100)).message().contains("three");
        assertThatThrownBy(() -> drawn(ring(OutlineEdits.MOST_DRAWN + 1)))
                .message()
                .contains("12");
    }

    @Test
    void a_piece_may_be_as_narrow_as_the_narrowest_and_no_narrower() {
        assertThat(sides(drawn(400, 100, 520, 100, 520, 118, 400, 118).piece("1"))[0])
                .isCloseTo(18, within(0.5));
        assertThatThrownBy(() -> drawn(400, 100, 520, 100, 520, 109, 400, 109)).isInstanceOf(MeasureException.class);
    }

    @Test
    void a_grain_is_marked_by_a_line_of_a_pixel_at_least() {
        assertThat(EDITS.grain(one(), "1", new Point(400, 100), new Point(401, 100))
                        .piece("1")
                        .grain())
                .isPresent();
    }

    @Test
    void a_corner_more_keeps_a_marked_grain() {
        PhotoSorting along = EDITS.grain(one(), "1", new Point(400, 100), new Point(480, 180));
        MarkedGrain grain = EDITS.cornerMore(along, "1", 0).piece("1").grain().orElseThrow();
        assertThat(grain.angleRad())
                .isEqualTo(along.piece("1").grain().orElseThrow().angleRad());
        // The search for the rectangle begins at other corners.
        assertThat(grain.usable().width())
                .isCloseTo(along.piece("1").grain().orElseThrow().usable().width(), within(0.1));
    }

    @Test
    void a_corner_that_is_moved_stays_in_the_picture_and_the_piece_is_measured_again() {
        PhotoSorting larger =
                EDITS.corner(EDITS.corner(one(), "1", 2, new Point(520, 220)), "1", 3, new Point(400, 220));
        assertThat(corners(larger).get(2)).isEqualTo(new Point(520, 220));
        assertThat(sides(larger.piece("1"))[1]).isCloseTo(120, within(0.5));
        assertThat(sides(larger.piece("1"))[0]).isCloseTo(120, within(0.5));
        assertThat(larger.piece("1").rim()).isEqualTo(new OutlineOrigin.Drawn(List.of(3.0, 3.0, 2.0, 2.0)));
        assertThat(corners(EDITS.corner(one(), "1", 1, new Point(5000, -20))).get(1))
                .isEqualTo(new Point(1000, 0));
        assertThatThrownBy(() -> EDITS.corner(one(), "1", 4, new Point(1, 1))).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> EDITS.corner(one(), "1", -1, new Point(1, 1))).isInstanceOf(MeasureException.class);
    }

    @Test
    void a_corner_more_lies_in_the_middle_of_its_side_and_one_less_is_as_before() {
        PhotoSorting more = EDITS.cornerMore(one(), "1", 3);
        assertThat(corners(more)).hasSize(5).endsWith(new Point(400, 140));
        assertThat(((OutlineOrigin.Drawn) more.piece("1").rim()).pixels()).hasSize(5);
        assertThat(corners(EDITS.cornerLess(more, "1", 4))).isEqualTo(corners(one()));
        assertThat(EDITS.cornerLess(more, "1", 4).piece("1").rim())
                .isEqualTo(one().piece("1").rim());
        assertThat(new OutlineOrigin.Drawn(List.of(2.0, 4.0, 3.0)).more(0).pixels())
                .containsExactly(2.0, 4.0, 4.0, 3.0);
        assertThat(new OutlineOrigin.Moved().pixels(3)).hasSize(3).isEqualTo(new OutlineOrigin.Read().pixels(3));
    }

    @Test
    void a_piece_divided_along_a_line_is_two_that_are_as_sure_as_the_whole_was() {
        PhotoSorting parts = EDITS.split(
                one(), "1", new Point(460, 50), new Point(460, 250), (whole, both) -> List.of(LOOK, LOOK), Set.of());
        assertThat(parts.pieces()).extracting(SortedPiece::key).containsExactly("1a", "1b");
        for (SortedPiece part : parts.pieces()) {
            assertThat(sides(part)[0]).isCloseTo(60, within(0.5));
            assertThat(sides(part)[1]).isCloseTo(80, within(0.5));
            assertThat(part.isDrawn()).isTrue();
        }
        assertThatThrownBy(() -> EDITS.split(
                        one(),
                        "1",
                        new Point(700, 50),
                        new Point(700, 250),
                        (whole, both) -> List.of(LOOK, LOOK),
                        Set.of()))
                .isInstanceOf(MeasureException.class);
    }

    @Test
    void along_a_marked_grain_the_usable_rectangle_is_another_and_without_it_as_before() {
        PhotoSorting along = EDITS.grain(one(), "1", new Point(400, 100), new Point(480, 180));
        assertThat(along.piece("1").grain()).isPresent();
        assertThat(area(along)).isLessThan(area(one()));
        assertThat(Math.abs(along.piece("1").grain().orElseThrow().angleRad()) % (Math.PI / 2))
                .isCloseTo(Math.PI / 4, within(0.01));
        assertThat(EDITS.noGrain(along, "1").piece("1").usable())
                .isEqualTo(one().piece("1").usable());
        assertThatThrownBy(() -> EDITS.grain(one(), "1", new Point(400, 100), new Point(400.5, 100)))
                .isInstanceOf(MeasureException.class);
    }

    @Test
    void four_corners_tell_diagonals_and_how_square_they_are() {
        FinishedOutline square =
                FinishedOutline.of(one().piece("1").piece().outline(), SCALE).orElseThrow();
        assertThat(square.sides()).hasSize(4);
        assertThat(square.offSquareDeg()).isCloseTo(0, within(0.1));
        assertThat(square.isSame()).isTrue();
        assertThat(square.diagonals().get(0).length().in(Unit.MILLIMETRE)).isCloseTo(Math.hypot(120, 80), within(0.5));

        // What the sheet leaves uncertain is common to all; what the taps add is each diagonal's own.
        double shared = SCALE.measured(new Point(400, 100), new Point(520, 180), 0)
                .giveOrTake()
                .in(Unit.MILLIMETRE);
        double own = square.diagonals().get(0).giveOrTake().in(Unit.MILLIMETRE);
        assertThat(own).isGreaterThan(shared);
        FinishedOutline rough = FinishedOutline.of(
                        EDITS.drawn(
                                        PhotoSorting.of(List.of(), Set.of()),
                                        placed(400, 100, 520, 100, 520, 180, 400, 180).stream()
                                                .map(corner -> new Placed(corner.at(), 9))
                                                .toList(),
                                        outline -> LOOK,
                                        Set.of(),
                                        Set.of())
                                .piece("1")
                                .piece()
                                .outline(),
                        SCALE)
                .orElseThrow();
        double rougher = rough.diagonals().get(0).giveOrTake().in(Unit.MILLIMETRE);
        assertThat((rougher * rougher - shared * shared) / (own * own - shared * shared))
                .isCloseTo(9, within(0.5));

        FinishedOutline leaning = FinishedOutline.of(
                        drawn(400, 100, 520, 100, 560, 180, 440, 180)
                                .piece("1")
                                .piece()
                                .outline(),
                        SCALE)
                .orElseThrow();
        assertThat(leaning.isSame()).isFalse();
        assertThat(leaning.offSquareDeg()).isCloseTo(Math.toDegrees(Math.atan2(40, 80)), within(0.5));
        assertThat(FinishedOutline.of(
                        EDITS.cornerMore(one(), "1", 0).piece("1").piece().outline(), SCALE))
                .isEmpty();
    }
}
