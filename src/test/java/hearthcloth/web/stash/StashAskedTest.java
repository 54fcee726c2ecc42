package hearthcloth.web.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.Store;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What she asks of her stash and says to it: {@link StashAsked}, {@link StashFields}, {@link StashHeard}, {@link StashIntake}. */
class StashAskedTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-01T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private static Piece piece(String id, String fabric, long widthCm, long heightCm) {
        Fabric of = new Fabric(fabric, Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
        return new Piece(id, of, new Size(Length.cm(widthCm), Length.cm(heightCm)), Piece.Washed.UNKNOWN, 1);
    }

    @Test
    void the_address_holds_all_that_is_asked_whatever_she_wrote() {
        StashAsked asked = new StashAsked("a&b", "oat? linen", "10 x 12", 1);
        URI address = URI.create(asked.page(3));
        assertThat(address.getPath()).isEqualTo("/stash");
        assertThat(address.getRawQuery()).isEqualTo("text=a%26b&fabric=oat%3F+linen&least=10+x+12&page=3");
        assertThat(asked.of("")).isEqualTo("/stash?text=a%26b&least=10+x+12");
        assertThat(new StashAsked("", "", "", 4).isAll()).isTrue();
        assertThat(new StashAsked("", "", "", 4).page(1)).isEqualTo("/stash");
    }

    @Test
    void a_piece_is_wanted_by_part_of_its_fabrics_name_by_its_number_and_by_what_it_holds_either_way() {
        Piece oat = piece("7", "Oat Linen", 10, 30);
        assertThat(new StashAsked("linen", "", "", 1).wants(oat, Optional.empty()))
                .isTrue();
        assertThat(new StashAsked("7", "", "", 1).wants(oat, Optional.empty())).isTrue();
        assertThat(new StashAsked("70", "", "", 1).wants(oat, Optional.empty())).isFalse();
        assertThat(new StashAsked("", "Oat", "", 1).wants(oat, Optional.empty()))
                .as("one fabric is that one, not another whose name begins so")
                .isFalse();
        StashAsked least = new StashAsked("", "", "25 x 9", 1);
        Optional<Size> size = least.leastSize(Unit.CENTIMETRE);
        assertThat(least.wants(oat, size)).isTrue();
        assertThat(least.wants(piece("8", "Oat Linen", 24, 30), size)).isTrue();
        assertThat(least.wants(piece("9", "Oat Linen", 24, 24), size)).isFalse();
    }

    @Test
    void a_fabrics_name_is_one_line_that_fits_a_label() {
        assertThat(StashFields.name("  oat \n\t linen\u0000 ", Language.ENGLISH))
                .isEqualTo("oat linen");
        assertThat(StashFields.name("é".repeat(80), Language.ENGLISH)).hasSize(80);
        assertThatThrownBy(() -> StashFields.name(" \n ", Language.ENGLISH)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> StashFields.name("x".repeat(81), Language.ENGLISH))
                .hasMessage("The name is too long for a label; 80 letters fit.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "20001"})
    void fields_keep_the_rules_of_a_line_that_is_typed(String count) {
        Size size = new Size(Length.cm(10), Length.cm(20));
        assertThat(StashFields.checked(size, "3").count()).isEqualTo(3);
        assertThat(StashFields.checked(size, "two dozen").count()).isEqualTo(24);
        assertThatThrownBy(() -> StashFields.checked(size, count)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> StashFields.checked(new Size(Length.ZERO, Length.cm(20))))
                .isInstanceOf(MeasureException.class);
    }

    @Test
    void what_was_understood_is_said_while_she_types() {
        try (Store store = Store.open(folder.resolve("work.db"), CLOCK)) {
            StashHeard one =
                    StashHeard.of("12 x 20 oat linen, 3 of them", store, Voice.english(Ruler.MILLIMETRES), false);
            assertThat(one.count()).isEqualTo("3 ×");
            assertThat(one.words()).isEqualTo("12 × 20 cm, oat linen");
            assertThat(one.drawn()).isPresent();
            assertThat(one.trouble()).isFalse();
            assertThat(StashHeard.of("", store, Voice.english(Ruler.MILLIMETRES), true))
                    .isEqualTo(StashHeard.nothing(Language.ENGLISH));
            StashHeard unclear = StashHeard.of("twelve", store, Voice.english(Ruler.MILLIMETRES), true);
            assertThat(unclear.trouble()).isTrue();
            assertThat(unclear.drawn()).isEmpty();
            StashHeard many = StashHeard.of(
                    "12 x 20 oat linen\n\n10 x 10 rust, 4 of them\n??", store, Voice.english(Ruler.MILLIMETRES), false);
            assertThat(many.words()).isEqualTo("5 pieces of 2 fabrics");
            assertThat(many.about()).startsWith("One line is unclear. “??”: ");
        }
    }

    @Test
    void what_arrives_is_one_change_and_is_told_by_its_numbers() {
        try (Store store = Store.open(folder.resolve("work.db"), CLOCK)) {
            StashIntake intake = new StashIntake(store.stash(), StashingWords.in(Language.ENGLISH));
            var arrivals = intake.arrivals();
            arrivals.add(StashFields.checked(new Size(Length.cm(10), Length.cm(20)), "3"));
            assertThat(intake.keep("add three", arrivals)).startsWith("Added 3 pieces, numbers 1–3.");
            assertThat(store.stash().whole().pieces()).hasSize(3);
            store.stash().undo();
            assertThat(store.stash().whole().pieces()).isEmpty();
        }
    }

    @Test
    void the_table_is_looked_at_as_she_left_it() {
        try (Store store = Store.open(folder.resolve("work.db"), CLOCK)) {
            assertThat(TableLook.of(store)).isEqualTo(new TableLook(0, false));
            store.set("stash.zoom", "-3");
            store.set("stash.greys", "yes");
            assertThat(TableLook.of(store)).isEqualTo(new TableLook(-3, true));
            store.set("stash.zoom", "nonsense");
            assertThat(TableLook.of(store).zoom()).isZero();
        }
    }

    /** The more lies on the table the farther it is looked at from, and each step nearer is one step nearer on every screen. */
    @Test
    void all_of_the_table_fits_each_screen_and_more_is_seen_from_farther_away() {
        int before = Integer.MAX_VALUE;
        for (int groups = 1; groups <= 40; groups += 3) {
            TableFit fit = TableFit.of(table(groups), 0, 0);
            assertThat(fit.desk()).isLessThanOrEqualTo(before);
            before = fit.desk();
            TableFit nearer = TableFit.of(table(groups), 2, 0);
            assertThat(nearer.landscape()).isEqualTo(Math.min(21, fit.landscape() + 2));
            assertThat(nearer.phone()).isEqualTo(Math.min(21, fit.phone() + 2));
            assertThat(TableFit.of(table(groups), -99, 0)).isEqualTo(new TableFit(0, 0, 0, 0));
        }
        assertThat(TableFit.of(List.of(), 0, 0).desk()).isEqualTo(16);
    }

    private static List<StashTable.Group> table(int groups) {
        StashTable.Shown shown = new StashTable.Shown(
                "1:1",
                "10 × 20",
                1,
                "1",
                "",
                new StashTable.Drawn(10, 20, "", "", 0),
                new StashTable.Laid(Optional.empty(), false, false));
        StashTable.Group group = new StashTable.Group(
                "oat", new StashTable.Said("", "", true), "", List.of(new StashTable.Column(List.of(shown, shown))));
        return java.util.Collections.nCopies(groups, group);
    }
}
