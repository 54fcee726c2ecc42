package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedPhoto;
import hearthcloth.web.photo.PhotoView;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.SortedPiece;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A piece of nearly the ground's colour is missed by the reader and drawn in by hand. */
class DrawnPieceTest extends StashVisit {

    private static final byte[] MISSED = TestPhotographs.missed();

    private final String page;

    DrawnPieceTest(@TempDir Path folder) throws Exception {
        super(begun(folder));
        page = "/stash/photo/" + store.photographs().all().get(0).id();
    }

    private static Path begun(Path folder) {
        BegunWork.photographRead(file(folder), MISSED);
        return folder;
    }

    @BeforeEach
    void isRead() {
        assertThat(sorting().pieces()).hasSize(4);
    }

    private SavedPhoto.Read kept() {
        return store.photographs()
                .find(page.replaceFirst(".*/", ""))
                .flatMap(SavedPhoto::read)
                .orElseThrow();
    }

    private PhotoSorting sorting() {
        return kept().sorting();
    }

    private FloorScale scale() {
        return kept().scale().scale();
    }

    /** Where the missed piece's corners are in the picture; the drawing has y upwards and the sheet's middle at nought. */
    private List<Point> corners() {
        return TestPhotographs.FAINT.corners().stream()
                .map(at -> scale().inPicture(new Point(at.get(0) + 105, 148.5 - at.get(1))))
                .toList();
    }

    private HttpResponse<String> draw(List<Point> corners, double off) throws IOException, InterruptedException {
        String text = corners.stream()
                .map(at -> String.format(Locale.ROOT, "%.1f,%.1f,%.2f", at.x(), at.y(), off))
                .collect(Collectors.joining(" "));
        return post(page + "/change", "what", "draw", "corners", text);
    }

    private SortedPiece drawn() {
        return sorting().piece("5");
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    @Test
    void it_is_measured_as_by_hand_and_comes_in_with_the_others() throws Exception {
        HttpResponse<String> answer = draw(corners(), 1);

        assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("?piece=5");
        SortedPiece drawn = drawn();
        double[] real = {220, 110, 220, 110};
        for (int i = 0; i < 4; i++) {
            MeasuredLength side = drawn.piece().outline().sides().get(i);
            assertThat(mm(side.length())).isBetween(real[i] - mm(side.giveOrTake()), real[i] + mm(side.giveOrTake()));
            assertThat(mm(side.giveOrTake())).isBetween(1.0, 6.0);
        }
        LargestRectangle.Box usable = drawn.usable();
        assertThat(Math.max(usable.width(), usable.height())).isBetween(212.0, 220.0);
        assertThat(Math.min(usable.width(), usable.height())).isBetween(103.0, 110.0);
        assertThat(drawn.look().colour().difference(Colour.of(0xa0937f).lab())).isLessThan(8);
        assertThat(drawn.isSure()).isTrue();
        assertThat(get(page + "?piece=5").body()).contains("Drawn in by you");

        post(page + "/accept");
        List<Piece> pieces = store.stash().whole().pieces();
        assertThat(pieces).hasSize(5);
        assertThat(pieces)
                .anyMatch(piece ->
                        mm(piece.size().height()) >= 212 && mm(piece.size().width()) <= 110);
    }

    @Test
    void its_colour_is_told_as_the_reader_tells_it_and_it_joins_the_fabric_it_is_like() throws Exception {
        SortedPiece orange = sorting().pieces().stream()
                .filter(piece -> piece.look()
                                .colour()
                                .difference(Colour.of(TestPhotographs.ORANGE).lab())
                        < 12)
                .findFirst()
                .orElseThrow();
        post(page + "/change", "what", "drop", "piece", orange.key());
        draw(orange.piece().outline().picture(), 1);

        assertThat(drawn().look().colour().difference(orange.look().colour())).isLessThan(3);
        assertThat(drawn().look().pattern()).isEqualTo(orange.look().pattern());
        assertThat(drawn().group()).isEqualTo(orange.group());
        assertThat(drawn().isSure()).isTrue();
    }

    @Test
    void over_another_piece_or_roughly_placed_it_is_doubted_until_that_is_mended() throws Exception {
        draw(sorting().piece("2").piece().outline().picture(), 1);
        assertThat(drawn().isSure()).isFalse();
        assertThat(get(page).body()).contains("It lies over piece 2", "Take 4 pieces in");
        post(page + "/undo");

        draw(corners(), 9);
        assertThat(drawn().isSure()).isFalse();
        assertThat(get(page).body()).contains("placed roughly");
        Length before = PhotoView.off(drawn());
        for (int i = 0; i < 4; i++) {
            Point at = corners().get(i);
            post(page + "/change", "what", "corner", "piece", "5", "i", "" + i, "x", text(at.x()), "y", text(at.y()));
        }
        assertThat(drawn().isSure()).isTrue();
        assertThat(drawn().isDrawn()).isTrue();
        assertThat(PhotoView.off(drawn())).isLessThan(before);
    }

    private static String text(double pixels) {
        return String.format(Locale.ROOT, "%.1f", pixels);
    }

    @Test
    void at_the_edge_of_the_picture_it_is_doubted() throws Exception {
        double low = scale().pictureHeight();
        draw(
                List.of(new Point(100, low - 120), new Point(400, low - 120), new Point(400, low), new Point(100, low)),
                1);
        assertThat(get(page).body()).contains("reaches the picture&#39;s edge".replace("&#39;", "'"));
    }

    @Test
    void it_is_taken_back_done_again_changed_and_kept() throws Exception {
        draw(corners(), 1);
        PhotoSorting with = sorting();
        post(page + "/undo");
        assertThat(sorting().pieces()).hasSize(4);
        post(page + "/redo");
        assertThat(sorting()).isEqualTo(with);
        post(page + "/change", "what", "more", "piece", "5", "i", "1");
        assertThat(drawn().piece().outline().picture()).hasSize(5);
        post(page + "/change", "what", "less", "piece", "5", "i", "2");
        List<Point> now = drawn().piece().outline().picture();
        assertThat(now).hasSize(4);
        post(
                page + "/change",
                "what",
                "grain",
                "piece",
                "5",
                "x",
                text(now.get(0).x()),
                "y",
                text(now.get(0).y()),
                "x2",
                text(now.get(1).x()),
                "y2",
                text(now.get(1).y()));
        assertThat(drawn().grain()).isPresent();
        Point top = between(now.get(0), now.get(1));
        Point low = between(now.get(2), now.get(3));
        post(
                page + "/change",
                "what",
                "split",
                "piece",
                "5",
                "x",
                text(top.x()),
                "y",
                text(top.y()),
                "x2",
                text(low.x()),
                "y2",
                text(low.y()));
        assertThat(sorting().pieces()).extracting(SortedPiece::key).contains("5a", "5b");
        assertThat(sorting().piece("5a").isDrawn()).isTrue();
        draw(corners(), 1);
        assertThat(sorting().piece("6").isSure()).isFalse();
    }

    private static Point between(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    @Test
    void a_number_that_is_in_the_stash_is_not_given_again() throws Exception {
        draw(corners(), 1);
        post(page + "/accept");
        post(page + "/undo");
        draw(corners(), 1);
        assertThat(sorting().pieces())
                .extracting(SortedPiece::key)
                .contains("6")
                .doesNotContain("5");
    }

    @Test
    void what_is_no_piece_is_refused_in_a_sentence() throws Exception {
        List<Point> good = corners();
        isRefused(List.of(good.get(0), good.get(2), good.get(1), good.get(3)), "sides cross");
        isRefused(good.subList(0, 2), "three corners");
        isRefused(List.of(good.get(0), good.get(0), good.get(1), good.get(1)), "three corners");
        isRefused(List.of(new Point(-5, 10), new Point(300, 10), new Point(300, 300)), "outside the picture");
        isRefused(List.of(new Point(500, 500), new Point(505, 500), new Point(505, 505)), "1 cm by 1 cm");
        isRefused(
                List.of(new Point(500, 500), new Point(900, 500), new Point(900, 504), new Point(500, 504)),
                "1 cm by 1");
        isRefused(round(13), "12 corners");
        for (String text :
                List.of("", "1,1", "1,1,1;", "NaN,1,1 2,2,2 3,3,3", "1,1,-1 5,5,1 9,1,1", "1,1,1 ".repeat(500))) {
            HttpResponse<String> answer = post(page + "/change", "what", "draw", "corners", text);
            assertThat(answer.statusCode()).as(text).isEqualTo(422);
            assertThat(answer.body()).contains("lacks the corners");
        }
        assertThat(sorting().pieces()).hasSize(4);
        draw(round(12), 1);
        assertThat(sorting().pieces()).hasSize(5);
    }

    private void isRefused(List<Point> corners, String words) throws IOException, InterruptedException {
        HttpResponse<String> answer = draw(corners, 1);
        assertThat(answer.statusCode()).as(words).isEqualTo(422);
        assertThat(answer.body()).contains(words, "Nothing was added").doesNotContain("Exception");
    }

    private List<Point> round(int corners) {
        Point middle = between(corners().get(0), corners().get(2));
        return java.util.stream.IntStream.range(0, corners)
                .mapToDouble(i -> 2 * Math.PI * i / corners)
                .mapToObj(turn -> new Point(middle.x() + 80 * Math.cos(turn), middle.y() + 80 * Math.sin(turn)))
                .toList();
    }
}
