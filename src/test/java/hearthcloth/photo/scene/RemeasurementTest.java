package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.Remeasurement;
import hearthcloth.photo.StraightPicture;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.photo.scene.Photographs.Known;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.photo.FinishedOutline;
import hearthcloth.work.photo.OutlineEdits;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.SeenTwice;
import hearthcloth.work.photo.SortedPiece;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a hand changes on a drawn photograph of known pieces, measured again. */
class RemeasurementTest {

    private static final int NAVY = 0x33506b;
    private static final int WINE = 0x7a1f2b;
    private static final int YELLOW = 0xe0c341;

    private static byte[] photograph = {};
    private static List<ReadPiece> pieces = List.of();
    private static FloorScale scale = new KeptScale(1, 1, 1, 1, List.of(), 0, List.of()).scale();

    @BeforeAll
    static void read() {
        photograph = Photographs.of(
                List.of(
                        Known.rectangle(-220, 0, 150, 90, 20, NAVY),
                        Known.rectangle(190, 0, 80, 130, 0, WINE),
                        Known.rectangle(270, 0, 80, 110, 0, YELLOW)),
                740,
                1800,
                8);
        Reading.Read read = (Reading.Read) PhotoReader.read(photograph, ReferenceSheet.A4, ReadingProgress.NONE);
        pieces = read.pieces();
        scale = read.scale();
    }

    private static ReadPiece navy() {
        return pieces.stream()
                .min(Comparator.comparingDouble(
                        p -> p.outline().picture().get(0).x()))
                .orElseThrow();
    }

    private static ReadPiece touching() {
        return pieces.stream()
                .max(Comparator.comparingDouble(
                        p -> p.outline().picture().get(0).x()))
                .orElseThrow();
    }

    @Test
    void a_scale_that_was_kept_measures_what_the_first_one_did() {
        FloorScale again = scale.kept().scale();

        assertThat(again.kept().views()).hasSameSizeAs(scale.kept().views());
        for (ReadPiece piece : pieces) {
            List<Point> corners = piece.outline().picture();
            for (int i = 0; i < corners.size(); i++) {
                assertThat(again.onFloor(corners.get(i)).to(scale.onFloor(corners.get(i))))
                        .isLessThan(1e-6);
                assertThat(again.byHand(corners).sides().get(i).giveOrTake().nm())
                        .isCloseTo(
                                scale.byHand(corners)
                                        .sides()
                                        .get(i)
                                        .giveOrTake()
                                        .nm(),
                                within(1000L));
            }
        }
    }

    @Test
    void a_corner_put_where_it_was_measures_the_same_but_less_surely() {
        ReadPiece read = navy();
        ReadPiece again = new Remeasurement(scale)
                .outlined(read, read.outline().picture(), Optional.empty())
                .orElseThrow();

        assertThat(again.outline().areaMm2()).isCloseTo(read.outline().areaMm2(), within(1.0));
        assertThat(again.usable().area()).isLessThan(read.outline().areaMm2());
        for (int i = 0; i < 4; i++) {
            assertThat(again.outline().sides().get(i).giveOrTake())
                    .isGreaterThanOrEqualTo(read.outline().sides().get(i).giveOrTake());
        }
    }

    @Test
    void the_usable_rectangle_lies_along_a_marked_grain_and_inside_the_piece() {
        ReadPiece read = navy();
        double side = new Remeasurement(scale)
                .direction(
                        read.outline().picture().get(0),
                        read.outline().picture().get(1));
        ReadPiece along = new Remeasurement(scale).along(read, Optional.of(side));
        ReadPiece slanting = new Remeasurement(scale).along(read, Optional.of(side + Math.PI / 4));

        assertThat(along.usable().area())
                .isCloseTo(read.usable().area(), within(read.usable().area() * 0.03));
        assertThat(slanting.usable().area()).isLessThan(0.75 * read.usable().area());
        assertThat(new Remeasurement(scale)
                        .along(read, Optional.empty())
                        .usable()
                        .area())
                .isCloseTo(read.usable().area(), within(read.usable().area() * 0.02));
    }

    @Test
    void two_pieces_that_touch_are_parted_and_each_has_its_own_size_and_colour() {
        PhotoSorting sorting = PhotoSorting.of(pieces, List.of());
        String key = String.valueOf(touching().number());
        assertThat(touching().doubts()).isNotEmpty();
        byte[] small = Photograph.of(photograph).small(1600);
        Point top = scale.inPicture(seam(0.0));
        Point low = scale.inPicture(seam(1.0));
        PhotoSorting now = new OutlineEdits(scale)
                .split(
                        sorting,
                        key,
                        top,
                        low,
                        (whole, parts) -> Photograph.ofSmall(small).looks(whole, parts, scale.pictureWidth()),
                        List.of());

        assertThat(now.find(key)).isEmpty();
        List<SortedPiece> halves = List.of(now.piece(key + "a"), now.piece(key + "b"));
        assertThat(halves).allMatch(SortedPiece::isSure);
        assertThat(halves.get(0).group()).isNotEqualTo(halves.get(1).group());
        assertThat(halves).anyMatch(half -> isLike(half, WINE, 80, 130));
        assertThat(halves).anyMatch(half -> isLike(half, YELLOW, 80, 110));
        assertThat(PhotoSorting.isAmong(key, List.of(key + "a"))).isTrue();
        assertThat(PhotoSorting.isAmong(key + "b", List.of(key))).isTrue();
        assertThat(PhotoSorting.isAmong(key + "b", List.of(key + "a"))).isFalse();
        assertThat(PhotoSorting.isAmong("1", List.of("12"))).isFalse();
    }

    /** Where the two pieces that touch meet, on the floor as the reader has it: between its two hollow corners. */
    private static Point seam(double share) {
        List<Point> floor = new ArrayList<>(touching().outline().floor());
        double x = floor.stream().mapToDouble(Point::x).min().orElseThrow();
        double y0 = floor.stream().mapToDouble(Point::y).min().orElseThrow();
        double y1 = floor.stream().mapToDouble(Point::y).max().orElseThrow();
        double x1 = floor.stream().mapToDouble(Point::x).max().orElseThrow();
        boolean upright = y1 - y0 < x1 - x;
        double far = share * 1.4 - 0.2;
        return upright ? new Point((x + x1) / 2, y0 + far * (y1 - y0)) : new Point(x + far * (x1 - x), (y0 + y1) / 2);
    }

    private static boolean isLike(SortedPiece half, int colour, double width, double height) {
        double across = Math.min(half.usable().width(), half.usable().height());
        double along = Math.max(half.usable().width(), half.usable().height());
        return half.look().colour().difference(Colour.of(colour).lab()) < 14
                && across > width - 6
                && across <= width + 0.5
                && along > height - 6
                && along <= height + 0.5;
    }

    @Test
    void what_leaves_no_outline_is_refused_in_words() {
        PhotoSorting sorting = PhotoSorting.of(pieces, List.of());
        String key = String.valueOf(navy().number());
        OutlineEdits hand = new OutlineEdits(scale);
        Point opposite = navy().outline().picture().get(2);
        Point beyond = beyondTheOtherSide(navy().outline().picture());

        assertThatThrownBy(() -> hand.corner(sorting, key, 7, opposite)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> hand.corner(sorting, key, 0, beyond))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("three corners");
        PhotoSorting three = hand.cornerLess(sorting, key, 0);
        assertThat(three.piece(key).piece().outline().picture()).hasSize(3);
        assertThatThrownBy(() -> hand.cornerLess(three, key, 0)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> hand.split(
                        sorting, key, new Point(0, 0), new Point(9, 0), (whole, parts) -> List.of(), List.of()))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("right across");
        assertThat(hand.cornerMore(sorting, key, 0).piece(key).piece().outline().areaMm2())
                .isCloseTo(navy().outline().areaMm2(), within(20.0));
    }

    /** Where the first corner drags its sides across the side that lies over against it. */
    private static Point beyondTheOtherSide(List<Point> c) {
        double x = c.get(2).x() + c.get(3).x() - (c.get(0).x() + c.get(1).x()) / 2;
        double y = c.get(2).y() + c.get(3).y() - (c.get(0).y() + c.get(1).y()) / 2;
        return new Point(x, y);
    }

    @Test
    void a_swatch_is_a_square_of_the_cloth_alone_in_its_colour() throws IOException {
        byte[] jpeg = Photograph.of(photograph).cutOut(scale, navy().usable(), 70, 200, Colour.of(NAVY));
        BufferedImage swatch = ImageIO.read(new ByteArrayInputStream(jpeg));

        assertThat(swatch.getWidth()).isEqualTo(200);
        for (int x = 5; x < 200; x += 38) {
            for (int y = 5; y < 200; y += 38) {
                Colour seen = Colour.of(swatch.getRGB(x, y) & 0xffffff);
                assertThat(seen.lab().difference(Colour.of(NAVY).lab()))
                        .as(x + ", " + y)
                        .isLessThan(9);
            }
        }
    }

    @Test
    void a_grain_is_said_by_its_length() {
        PhotoSorting sorting = PhotoSorting.of(pieces, List.of());
        String key = String.valueOf(navy().number());
        List<Point> corners = navy().outline().picture();
        double first = navy().outline().sides().get(0).length().in(Unit.MILLIMETRE);
        SortedPiece along = new OutlineEdits(scale)
                .grain(sorting, key, corners.get(0), corners.get(1))
                .piece(key);

        assertThat(along.size(hearthcloth.measure.Ruler.MILLIMETRES).height().in(Unit.MILLIMETRE))
                .isBetween(first - 4, first);
    }

    @Test
    void all_with_a_question_are_confirmed_at_once_and_those_at_the_rim_left_out_at_once() {
        ReadPiece piece = pieces.get(0);
        Doubt cut = new Doubt(Doubt.Kind.CUT_OFF, Sentence.itself("It runs off."));
        Doubt faint = new Doubt(Doubt.Kind.FAINT, Sentence.itself("It is faint."));
        PhotoSorting sorting = PhotoSorting.of(
                List.of(
                        numbered(piece, 1),
                        numbered(piece, 2, cut),
                        numbered(piece, 3, faint),
                        numbered(piece, 4, cut)),
                List.of());

        PhotoSorting checked = sorting.allChecked(List.of("4"));
        assertThat(checked.pieces()).extracting(SortedPiece::isSure).containsExactly(true, true, true, false);
        PhotoSorting rimless = sorting.withoutRim(List.of());
        assertThat(rimless.pieces()).extracting(SortedPiece::dropped).containsExactly(false, true, false, true);
        assertThat(rimless.pieces().get(1).isAtRim()).isTrue();
    }

    private static ReadPiece numbered(ReadPiece piece, int number, Doubt... doubts) {
        return new ReadPiece(number, piece.outline(), piece.usable(), piece.look(), List.of(doubts));
    }

    @Test
    void a_cloth_of_four_corners_tells_its_diagonals_and_how_square_it_is_and_lies_level_in_its_picture()
            throws IOException {
        FinishedOutline outline = FinishedOutline.of(navy().outline(), scale).orElseThrow();

        double diagonal = Math.hypot(150, 90);
        for (MeasuredLength one : outline.diagonals()) {
            assertThat(Math.abs(one.length().in(Unit.MILLIMETRE) - diagonal))
                    .isLessThanOrEqualTo(one.giveOrTake().in(Unit.MILLIMETRE))
                    .isLessThan(1.5);
        }
        assertThat(outline.sides()).hasSize(4);
        assertThat(outline.offSquareDeg()).isLessThan(1);
        assertThat(outline.isSame()).isTrue();

        byte[] jpeg = StraightPicture.jpeg(Photograph.of(photograph), scale, navy().outline(), 600);
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(jpeg));
        assertThat(seen.getWidth()).isEqualTo(600);
        assertThat((double) seen.getHeight() / seen.getWidth()).isCloseTo(102 / 162.0, within(0.02));
        for (int[] inside :
                new int[][] {{40, 40}, {560, 40}, {40, seen.getHeight() - 40}, {560, seen.getHeight() - 40}}) {
            assertThat(new Colour(seen.getRGB(inside[0], inside[1]) & 0xffffff).red())
                    .isLessThan(90);
        }
        assertThat(new Colour(seen.getRGB(8, 8) & 0xffffff).red()).isGreaterThan(110);
    }

    @Test
    void a_piece_that_two_photographs_show_is_named_once_and_others_are_not() {
        PhotoSorting one = PhotoSorting.of(pieces, List.of());
        Reading.Read again = (Reading.Read) PhotoReader.read(
                Photographs.of(
                        List.of(
                                Known.rectangle(210, 60, 150, 90, 75, NAVY),
                                Known.rectangle(-200, -60, 80, 130, 30, WINE),
                                Known.rectangle(-230, 120, 95, 60, 10, WINE)),
                        740,
                        1800,
                        3),
                ReferenceSheet.A4,
                ReadingProgress.NONE);
        PhotoSorting two = PhotoSorting.of(again.pieces(), List.of());

        Map<String, String> twice = SeenTwice.of(one.pieces(), two.pieces());

        // Wine and yellow touch on the first and are measured together there; the second has no such thing.
        assertThat(twice).hasSize(1);
        twice.forEach((here, there) -> {
            assertThat(one.piece(here).piece()).isEqualTo(navy());
            assertThat(one.piece(here)
                            .look()
                            .colour()
                            .difference(two.piece(there).look().colour()))
                    .isLessThan(6);
        });
        assertThat(SeenTwice.of(one.pieces(), List.of())).isEmpty();
    }
}
