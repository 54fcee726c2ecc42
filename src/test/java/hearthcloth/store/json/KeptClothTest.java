package hearthcloth.store.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Order;
import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What is kept as text, and the words for what a database cannot do. */
class KeptClothTest {

    private static final Plan PLAN = Planned.plans(Stashes.scraps(60, 3), 24, 1).get(0);
    private static final Design DESIGN = DesignEdits.settled(PLAN, Order.ROUND);

    private record Spot(Length far, Colour colour, Point at, Lab lab) {}

    @Test
    void a_length_is_nanometres_a_colour_its_number_and_a_place_two_numbers() {
        Spot spot = new Spot(Length.mm(3), Colour.of(0x8a9a5b), new Point(1.5, -2), new Lab(50, 1, 2));
        String text = "{\"far\":3000000,\"colour\":\"#8a9a5b\",\"at\":[1.5,-2.0],\"lab\":[50.0,1.0,2.0]}";

        assertThat(Json.text(spot)).isEqualTo(text);
        assertThat(Json.read(text, Spot.class)).isEqualTo(spot);
        assertThat(Json.list("[" + text + "," + text + "]", Spot.class)).containsExactly(spot, spot);
        assertThat(Json.map("{\"b\":" + text + ",\"a\":" + text + "}", Spot.class)
                        .keySet())
                .containsExactly("b", "a");
        assertThat(Json.read(text.replace("}", ",\"newer\":[1]}"), Spot.class)).isEqualTo(spot);
        assertThat(Json.read(Json.tree(text), Spot.class)).isEqualTo(spot);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\u0007', textBlock = """
            {"far":3,"colour":"#8a9a5b","at":[1,2]}                       | lacks "lab"
            {"far":3,"colour":null,"at":[1,2],"lab":[1,2,3]}              | lacks "colour"
            {"far":1.5,"colour":"#8a9a5b","at":[1,2],"lab":[1,2,3]}       | lacks "far"
            {"far":3,"colour":"pink","at":{"x":1,"y":2},"lab":[1,2,3]}    | lacks "at"
            {"far":3                                                      | is not whole
            null                                                          | nothing is written
            {"far":3,"colour":"#8a9a5b","at":[1,2],"lab":[1,2,3]} more    | is not whole
            """)
    void what_is_missing_or_does_not_fit_is_named(String text, String said) {
        assertThatThrownBy(() -> Json.read(text, Spot.class))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(said);
    }

    @Test
    void a_design_and_a_plan_are_kept_whole() {
        assertThat(KeptDesign.of(DESIGN).design()).isEqualTo(DESIGN);
        assertThat(Json.read(Json.text(KeptDesign.of(DESIGN)), KeptDesign.class).design())
                .isEqualTo(DESIGN);
        assertThat(KeptPlan.of(PLAN).plan()).isEqualTo(PLAN);
        assertThat(Json.read(Json.text(KeptPlan.of(PLAN)), KeptPlan.class).plan())
                .isEqualTo(PLAN);
        assertThat(KeptPlan.of(PLAN).work()).startsWith("(").contains("hearth \"");
    }

    /** A piece of 10 × 8 cut at x = 4, its right part at y = 3: only the two lines and what becomes of each part are kept. */
    @Test
    void cuts_are_kept_as_their_lines_and_places_follow() {
        Rect whole = rect(0, 0, 10, 8);
        CutTree right = CutTree.parted(
                rect(4, 0, 6, 8),
                false,
                Length.cm(3),
                new CutTree.Kept(rect(4, 0, 6, 3), "1A", true),
                new CutTree.Left(rect(4, 3, 6, 5)));
        CutTree tree = CutTree.parted(whole, true, Length.cm(4), new CutTree.Left(rect(0, 0, 4, 8)), right);

        assertThat(Json.text(KeptPlan.Part.of(tree)))
                .isEqualTo(
                        "{\"upright\":true,\"at\":40000000,\"first\":{},\"second\":{\"upright\":false,\"at\":30000000,"
                                + "\"first\":{\"patch\":\"1A\",\"turned\":true},\"second\":{}}}");
        assertThat(KeptPlan.Part.of(tree).tree(whole)).isEqualTo(tree);
        for (String half : List.of("{\"at\":3}", "{\"patch\":\"1A\"}", "{\"upright\":true,\"at\":3,\"first\":{}}")) {
            assertThatThrownBy(() -> Json.read(half, KeptPlan.Part.class).tree(whole))
                    .as(half)
                    .hasMessage("a cut of a piece is only half told");
        }
    }

    private static Rect rect(long x, long y, long width, long height) {
        return Rect.at(Length.cm(x), Length.cm(y), new Size(Length.cm(width), Length.cm(height)));
    }

    @Test
    void a_cloth_is_known_by_its_form_and_a_step_without_a_time_is_refused() {
        Project document = Project.of(DESIGN, PLAN, Purpose.NOTHING);
        String kept = KeptCloth.text(document);
        assertThat(KeptCloth.read(kept)).isEqualTo(document);
        assertThatThrownBy(() -> KeptCloth.read(kept.replace("\"version\":1", "\"version\":2")))
                .hasMessage("this is no cloth of ours, or of a newer Hearthcloth");
        assertThatThrownBy(() -> KeptCloth.read(Json.text(Map.of("format", "hearthcloth-plan", "version", 1))))
                .hasMessage("this is no cloth of ours, or of a newer Hearthcloth");
        assertThatThrownBy(() -> new KeptCloth.StepDone("seam", "yesterday").done())
                .hasMessage("this is no cloth of ours: a step has no time");
    }

    /** The primary result codes of SQLite (docs/sources.md#database-codes); extended ones repeat them in the low byte. */
    @ParameterizedTest
    @CsvSource({
        "SQLITE_BUSY, Another program has been holding the file for too long.",
        "SQLITE_BUSY_SNAPSHOT, Another program has been holding the file for too long.",
        "SQLITE_READONLY, 'The file, or the folder it lies in, cannot be written.'",
        "SQLITE_IOERR_WRITE, The disk did not read or write as it should.",
        "SQLITE_CORRUPT, The file is damaged.",
        "SQLITE_FULL, The disk is full.",
        "SQLITE_CANTOPEN, The file cannot be opened or made in its folder.",
        "SQLITE_CONSTRAINT_PRIMARYKEY, Another window was quicker with something under the same number.",
        "SQLITE_NOTADB, The file was not written by Hearthcloth.",
        "SQLITE_MISUSE, The file does not do what it should.",
    })
    void faults_of_the_file_are_told_in_words(SQLiteErrorCode code, String words) {
        RuntimeException thrown = new IllegalStateException(new SQLiteException("its own words", code));
        assertThat(DatabaseTroubles.words(thrown).map(Sentence::english)).contains(words);
        assertThat(DatabaseTroubles.told(thrown, Sentence.itself("Nothing was changed.")))
                .hasMessage(words + " Nothing was changed.");
        assertThat(DatabaseTroubles.isDamage(thrown)).isEqualTo(code == SQLiteErrorCode.SQLITE_CORRUPT);
        assertThat(StoreException.isAway(thrown)).isFalse();
    }

    /** The classes of PostgreSQL's codes (docs/sources.md#database-codes). */
    @ParameterizedTest
    @CsvSource({
        "08006, The studio's database does not answer., true",
        "57P01, The studio's database does not answer., true",
        "28P01, The studio's database refuses this name or password., false",
        "23505, Another window was quicker with something under the same number., false",
        "55P03, Another workroom has been holding this work for too long., false",
        "3D000, There is no database of this name., false",
        "53100, The disk of the studio's database is full., false",
        "53300, The studio's database is busy., false",
        "25006, The studio's database may not be written under this name., false",
        "42501, The studio's database may not be written under this name., false",
        "42P01, The studio's database does not do what it should., false",
    })
    void faults_of_a_studios_database_are_told_in_words(String state, String words, boolean away) {
        Exception thrown = new Exception(new SQLException("its own words", state));
        assertThat(StoreException.behind(thrown).map(Sentence::english)).contains(words);
        assertThat(StoreException.isAway(thrown)).isEqualTo(away);
    }

    @Test
    void a_pool_without_connections_is_silence_and_a_file_that_is_gone_is_away() {
        assertThat(StoreException.isAway(new SQLTransientConnectionException("timeout")))
                .isTrue();
        Exception gone = new Exception(new FileGoneException(Path.of("kept", "work.db")));
        assertThat(StoreException.behind(gone).orElseThrow().english())
                .startsWith("Your work is not in its place any more: ")
                .contains("work.db was moved or deleted. Nothing was changed.");
        assertThat(StoreException.isAway(gone)).isTrue();
        assertThat(StoreException.isGone(gone)).isTrue();
        assertThat(StoreException.isGone(new SQLException("other"))).isFalse();
        assertThat(DatabaseTroubles.words(new IllegalStateException("no database")))
                .isEmpty();
        assertThat(DatabaseTroubles.told(new IllegalStateException("none"), Sentence.itself("Nothing was changed.")))
                .hasMessage("Nothing was changed.");
    }
}
