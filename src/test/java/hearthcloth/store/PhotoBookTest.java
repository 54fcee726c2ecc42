package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.TestServer;
import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.photo.MarkedGrain;
import hearthcloth.work.photo.OutlineOrigin;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.SortedPiece;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs in her file and in a studio: nothing of them is lost, every change is undone, the stash goes along. */
class PhotoBookTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);

    private final Path file;
    private final Store store;

    PhotoBookTest(@TempDir Path folder) {
        file = folder.resolve("workroom.db");
        store = Store.open(file, CLOCK);
    }

    private static KeptScale scale(Random random) {
        List<Point> four = List.of(spot(random), spot(random), spot(random), spot(random));
        return new KeptScale(
                4000,
                3000,
                210,
                297,
                four,
                random.nextDouble(),
                List.of(new KeptScale.View(spot(random), 2500, 0.0123456789, 0.02, four)));
    }

    private static Point spot(Random random) {
        return new Point(4000 * random.nextDouble(), 3000 * random.nextDouble());
    }

    private static PhotoSorting sorting(Random random, int pieces) {
        List<SortedPiece> all = new ArrayList<>();
        for (int i = 1; i <= pieces; i++) {
            List<Point> three = List.of(spot(random), spot(random), spot(random));
            MeasuredLength side =
                    new MeasuredLength(new Length(random.nextInt(1 << 30)), new Length(random.nextInt(1 << 20)));
            LargestRectangle.Box box = new LargestRectangle.Box(
                    spot(random), 100 * random.nextDouble(), 100 * random.nextDouble(), random.nextDouble());
            PieceAppearance look = new PieceAppearance(
                    Colour.of(random.nextInt(1 << 24)).lab(),
                    Colour.of(random.nextInt(1 << 24)).lab(),
                    Colour.of(random.nextInt(1 << 24)).lab(),
                    random.nextBoolean() ? PieceAppearance.Pattern.PLAIN : PieceAppearance.Pattern.FIGURED,
                    random.nextDouble());
            List<Doubt> doubts = random.nextBoolean()
                    ? List.of()
                    : List.of(new Doubt(Doubt.Kind.FRAYED, Sentence.itself("Its \"edges\" <are> frayed.")));
            all.add(new SortedPiece(
                    i + (random.nextBoolean() ? "" : "ab"),
                    new hearthcloth.photo.ReadPiece(
                            i, new PieceOutline(three, three, List.of(side, side, side)), box, look, doubts),
                    random.nextBoolean() ? Optional.empty() : Optional.of(new MarkedGrain(random.nextDouble(), box)),
                    rim(random),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    "f1"));
        }
        return new PhotoSorting(
                all,
                List.of(new PieceGroup("f1", "oat & <wheat>", Fabric.Faces.RIGHT, Fabric.Nap.ANY, Piece.Washed.NO)));
    }

    private static OutlineOrigin rim(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> new OutlineOrigin.Read();
            case 1 -> new OutlineOrigin.Moved();
            default -> new OutlineOrigin.Drawn(List.of(2.0, 10 * random.nextDouble(), 1.0 / 3));
        };
    }

    private static byte[] bytes(Random random, int count) {
        byte[] bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }

    private static void isKeptWhole(Store in, Store again) {
        Random random = new Random(5);
        byte[] picture = bytes(random, 300_000);
        byte[] screen = bytes(random, 20_000);
        SavedPhoto.Read read = new SavedPhoto.Read(scale(random), sorting(random, 9));
        in.photographs().keep("one", "a4", picture);
        assertThat(again.photographs().find("one"))
                .hasValueSatisfying(photo -> assertThat(photo.isWaiting()).isTrue());
        in.photographs().read("one", read, screen);

        SavedPhoto there = again.photographs().find("one").orElseThrow();
        assertThat(there.read()).contains(read);
        assertThat(again.photographs().file("one").orElseThrow()).isEqualTo(picture);
        assertThat(again.photographs().screen("one").orElseThrow()).isEqualTo(screen);
        assertThat(again.photographs().all()).containsExactly(there);
        PhotoSorting other = sorting(random, 4);
        again.photographs().save(there, "something else", other);
        assertThat(in.photographs().undo("one")).contains("something else");
        assertThat(in.photographs().find("one").flatMap(SavedPhoto::read)).contains(read);
        assertThat(in.photographs().redo("one")).contains("something else");
        in.photographs().remove("one");
        assertThat(again.photographs().all()).isEmpty();
        assertThat(again.photographs().undoable("one")).isEmpty();
    }

    @Test
    void what_was_read_is_there_exactly_for_another_opening_of_the_file() {
        isKeptWhole(store, Store.open(file, CLOCK));
    }

    @Test
    void and_in_a_studio_each_has_photographs_of_her_own() {
        String address = TestServer.freshDatabase();
        StudioAddress studio = StudioAddress.parse(address, Optional.empty());
        try (Studio one = Studio.open(studio, CLOCK);
                Studio other = Studio.open(studio, CLOCK)) {
            Person ada = one.people().begin("Ada", "kelp and plum by lamplight");
            isKeptWhole(one.of(ada), other.of(ada));
        }
    }

    @Test
    void any_run_of_changes_is_taken_back_and_done_again_exactly() {
        Random random = new Random(6);
        PhotoBook book = store.photographs();
        book.keep("one", "a4", bytes(random, 10));
        book.read("one", new SavedPhoto.Read(scale(random), sorting(random, 5)), bytes(random, 10));
        List<PhotoSorting> states = new ArrayList<>();
        states.add(now(book));
        for (int i = 0; i < 12; i++) {
            book.save(book.find("one").orElseThrow(), "change " + i, sorting(random, 1 + random.nextInt(5)));
            states.add(now(book));
        }
        for (int i = 11; i >= 0; i--) {
            assertThat(book.undo("one")).contains("change " + i);
            assertThat(now(book)).isEqualTo(states.get(i));
        }
        assertThat(book.undo("one")).isEmpty();
        for (int i = 0; i < 12; i++) {
            assertThat(book.redo("one")).contains("change " + i);
            assertThat(now(book)).isEqualTo(states.get(i + 1));
        }
    }

    private static PhotoSorting now(PhotoBook book) {
        return book.find("one").flatMap(SavedPhoto::read).orElseThrow().sorting();
    }

    /** As it was written before a piece could be drawn in: nothing but {@code byHand} told whose an outline is. */
    private static final String BEFORE_DRAWN = """
            {"pieces":[
             {"key":"1","byHand":false,"dropped":false,"checked":true,"group":"f1","piece":{"number":1,
              "floor":[[0.0,0.0],[200.5,0.0],[200.5,100.25]],"picture":[[10.0,20.0],[410.0,20.0],[410.0,220.5]],
              "sides":[{"length":200500000,"off":1500000},{"length":100250000,"off":1500000},{"length":224164000,"off":1500000}],
              "usable":{"width":100.0,"height":50.0,"angle":0.25,"middle":[150.0,30.0]},
              "look":{"pattern":"FIGURED","contrast":0.5,"colour":[50.0,1.0,2.0],"one":[60.0,3.0,4.0],"two":[40.0,5.0,6.0]},
              "doubts":[{"kind":"FRAYED","sentence":"Its edges are frayed."}]}},
             {"key":"2a","byHand":true,"dropped":true,"checked":false,"group":"f1","grain":1.5,
              "along":{"width":90.0,"height":40.0,"angle":1.5,"middle":[150.0,30.0]},"piece":{"number":2,
              "floor":[[0.0,0.0],[200.5,0.0],[200.5,100.25]],"picture":[[10.0,20.0],[410.0,20.0],[410.0,220.5]],
              "sides":[{"length":200500000,"off":1500000},{"length":100250000,"off":1500000},{"length":224164000,"off":1500000}],
              "usable":{"width":100.0,"height":50.0,"angle":0.25,"middle":[150.0,30.0]},
              "look":{"pattern":"PLAIN","contrast":0.5,"colour":[50.0,1.0,2.0],"one":[60.0,3.0,4.0],"two":[40.0,5.0,6.0]},
              "doubts":[]}}],
             "groups":[{"id":"f1","name":"oat","faces":"SAME","nap":"ANY","washed":"YES"}]}
            """;

    @Test
    void a_reading_kept_before_pieces_could_be_drawn_in_opens_as_it_was_and_goes_on() {
        Random random = new Random(8);
        store.photographs().keep("one", "a4", bytes(random, 10));
        store.photographs().read("one", new SavedPhoto.Read(scale(random), sorting(random, 2)), bytes(random, 10));
        Jdbi.create("jdbc:sqlite:" + file)
                .useHandle(handle -> handle.createUpdate("update photograph set document = ?")
                        .bind(0, BEFORE_DRAWN)
                        .execute());

        PhotoBook book = Store.open(file, CLOCK).photographs();
        PhotoSorting old = now(book);
        assertThat(old.pieces()).extracting(SortedPiece::key).containsExactly("1", "2a");
        assertThat(old.pieces())
                .extracting(SortedPiece::rim)
                .containsExactly(new OutlineOrigin.Read(), new OutlineOrigin.Moved());
        assertThat(old.piece("1").isSure()).isTrue();
        assertThat(old.piece("1").piece().doubts())
                .containsExactly(new Doubt(Doubt.Kind.FRAYED, Sentence.itself("Its edges are frayed.")));
        assertThat(old.piece("1").piece().outline().sides().get(1).length()).isEqualTo(new Length(100_250_000));
        assertThat(old.piece("1").piece().outline().picture().get(2)).isEqualTo(new Point(410, 220.5));
        assertThat(old.piece("2a").dropped()).isTrue();
        assertThat(old.piece("2a").grain())
                .hasValueSatisfying(grain -> assertThat(grain.angleRad()).isEqualTo(1.5));
        assertThat(old.groups())
                .containsExactly(new PieceGroup("f1", "oat", Fabric.Faces.SAME, Fabric.Nap.ANY, Piece.Washed.YES));

        book.save(book.find("one").orElseThrow(), "bring back piece 2a", old.dropped("2a", false));
        book.undo("one");
        assertThat(now(book)).isEqualTo(old);
    }

    @Test
    void a_change_of_a_state_that_was_overtaken_changes_nothing() {
        Random random = new Random(7);
        PhotoBook book = store.photographs();
        book.keep("one", "a4", bytes(random, 10));
        book.read("one", new SavedPhoto.Read(scale(random), sorting(random, 2)), bytes(random, 10));
        SavedPhoto seen = book.find("one").orElseThrow();
        book.save(seen, "first", sorting(random, 3));
        PhotoSorting first = now(book);

        assertThatThrownBy(() -> book.save(seen, "second", sorting(random, 3)))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("another window");
        assertThat(now(book)).isEqualTo(first);
    }

    @Test
    void pieces_their_swatch_and_their_mark_come_and_go_as_one() {
        store.photographs().keep("one", "a4", new byte[10]);
        Piece piece = new Piece("1", OAT, Size.square(Length.cm(10)), Piece.Washed.YES, 1);
        SwatchBook.Swatch swatch = new SwatchBook.Swatch("image/jpeg", "AAAA", Length.cm(7));
        store.stash()
                .edit(new StashEdit(
                        "add 1 piece from a photograph",
                        List.of(),
                        List.of(piece),
                        List.of(new StashEdit.Pictured("Oat", Optional.empty(), Optional.of(swatch))),
                        Optional.of(new StashEdit.FromPhoto("one", List.of("3a"), true))));
        for (int i = 0; i < 2; i++) {
            assertThat(store.stash().whole().pieces()).containsExactly(piece);
            assertThat(store.swatches().find("Oat")).contains(swatch);
            assertThat(store.photographs().taken("one")).containsExactly("3a");

            assertThat(Store.open(file, CLOCK).stash().undo()).contains("add 1 piece from a photograph");
            assertThat(store.stash().isEmpty()).isTrue();
            assertThat(store.swatches().find("Oat")).isEmpty();
            assertThat(store.photographs().taken("one")).isEmpty();
            store.stash().redo();
        }
    }

    @Test
    void a_picture_she_gave_the_fabric_since_stays_when_the_pieces_go() {
        SwatchBook.Swatch cut = new SwatchBook.Swatch("image/jpeg", "AAAA", Length.cm(7));
        SwatchBook.Swatch hers = new SwatchBook.Swatch("image/png", "BBBB", Length.cm(3));
        store.stash()
                .edit(new StashEdit(
                        "add",
                        List.of(),
                        List.of(new Piece("1", OAT, Size.square(Length.cm(10)), Piece.Washed.YES, 1)),
                        List.of(new StashEdit.Pictured("Oat", Optional.empty(), Optional.of(cut))),
                        Optional.empty()));
        store.swatches().keep("Oat", hers);
        store.stash().undo();

        assertThat(store.swatches().find("Oat")).contains(hers);
    }

    @Test
    void photographs_that_are_done_with_make_room_and_others_do_not() {
        int much = (int) (PhotoBook.MOST_BYTES / 3);
        PhotoBook book = store.photographs();
        book.keep("a", "a4", new byte[much]);
        book.keep("b", "a4", new byte[much]);
        book.refuse("a", "No A4 was found.");
        book.keep("c", "a4", new byte[much]);
        book.keep("d", "a4", new byte[much]);

        assertThat(book.all()).extracting(SavedPhoto::id).containsExactlyInAnyOrder("b", "c", "d");
        assertThatThrownBy(() -> book.keep("e", "a4", new byte[much]))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("put one away");
        assertThat(book.all()).hasSize(3);
    }
}
