package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.store.archive.Archive;
import hearthcloth.store.journal.ClothFact;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.KeptPhoto;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Project;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * What is kept stays readable: texts that an earlier Hearthcloth wrote (in {@code store/kept}, made for this test) are
 * read and written again byte for byte, and one that lacks a field is refused by a sentence that names it.
 */
class KeptFormsTest {

    private static byte[] bytes(String name) {
        try (InputStream in = KeptFormsTest.class.getResourceAsStream("/hearthcloth/store/kept/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException e) {
            throw new AssertionError(name, e);
        }
    }

    private static String kept(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    @Test
    void every_text_is_written_as_it_was() {
        Map<String, UnaryOperator<String>> again = Map.of(
                "cloth-planned.json", text -> KeptCloth.text(KeptCloth.read(text)),
                "cloth-lacking.json", text -> KeptCloth.text(KeptCloth.read(text)),
                "photo-scale.json", text -> KeptPhoto.text(KeptPhoto.scale(text)),
                "photo-sorting.json", text -> KeptPhoto.text(KeptPhoto.sorting(text)),
                "stash-photograph.json", text -> StashEdit.read("take in", text).text(),
                "stash-plain.json", text -> StashEdit.read("cut", text).text(),
                "edit.json", text -> DocumentEdit.read(text).text(),
                "work-cut.json", KeptFormsTest::work,
                "work-sewn.json", KeptFormsTest::work,
                "work-unpicked.json", KeptFormsTest::work);

        again.forEach((name, written) ->
                assertThat(written.apply(kept(name))).as(name).isEqualTo(kept(name)));
    }

    private static String work(String text) {
        return ((ClothFact.Worked) ClothFact.read(text)).text();
    }

    @Test
    void an_archive_is_written_as_it_was_and_those_of_every_earlier_version_are_read() {
        byte[] today = bytes("archive-3.zip");
        Archive archive = Archive.read(today);
        assertThat(archive.bytes()).isEqualTo(today);
        assertThat(archive.aside()).hasSize(1);
        assertThat(archive.cloths())
                .extracting(cloth -> cloth.document().life().stage())
                .contains(Project.Stage.RECUT);

        Archive second = Archive.read(bytes("archive-2.zip"));
        assertThat(second.pieces()).isEqualTo(archive.pieces());
        assertThat(second.aside()).isEqualTo(archive.aside());
        assertThat(second.cloths())
                .extracting(Archive.Kept::id)
                .isEqualTo(archive.cloths().stream().map(Archive.Kept::id).toList());

        Archive first = Archive.read(bytes("archive-1.zip"));
        assertThat(first).isEqualTo(new Archive(second.pieces(), Set.of(), second.swatches(), second.cloths()));
    }

    @Test
    void a_record_of_a_change_with_both_whole_documents_is_read() {
        assertThat(DocumentEdit.read("{\"before\":\"one two\",\"after\":\"one three\"}"))
                .isEqualTo(new DocumentEdit(5, "wo", "hree"));
    }

    @Test
    void the_earliest_cloths_have_no_steps_and_no_measures() {
        String early = kept("cloth-lacking.json").replaceAll("\"sewn\":.*?(?=\"life\")", "");

        assertThat(early).doesNotContain("measures");
        assertThat(KeptCloth.read(early).bench().sewn()).isZero();
        assertThat(KeptCloth.read(early).bench().measures()).isEmpty();
    }

    @Test
    void what_a_newer_program_adds_does_not_hinder() {
        String more = kept("cloth-planned.json").replaceFirst("\"lacking\"", "\"more\":{\"a\":[1]},\"lacking\"");

        assertThat(KeptCloth.read(more)).isEqualTo(KeptCloth.read(kept("cloth-planned.json")));
    }

    @Test
    void a_field_that_is_missing_is_named() {
        String cloth = kept("cloth-planned.json");

        refused(cloth.replaceFirst("\"hearth\":", "\"earth\":"), "design.hearth");
        refused(cloth.replaceFirst("\"washed\":\"\\w+\",", ""), "plan.cuts[0].washed");
        refused(cloth.replaceFirst("\"washed\":\"\\w+\"", "\"washed\":null"), "plan.cuts[0].washed");
        refused(cloth.replaceFirst("\"washed\":\"\\w+\"", "\"washed\":\"PERHAPS\""), "plan.cuts[0].washed");
        refused(cloth.replaceFirst("\"mostJoins\":\\d+", "\"mostJoins\":1.5"), "design.rules.mostJoins");
        refused(cloth.replaceFirst("\"narrow\":\\d+", "\"narrow\":\"little\""), "design.making.seam.narrow");
        assertThatThrownBy(() -> StashEdit.read("cut", "{\"gone\":[]}"))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("\"cut\"")
                .cause()
                .hasMessageContaining("come");
        assertThatThrownBy(() -> KeptPhoto.scale("{\"width\":1}"))
                .isInstanceOf(StoreException.class)
                .cause()
                .hasMessageContaining("height");
    }

    private static void refused(String cloth, String field) {
        assertThatThrownBy(() -> KeptCloth.read(cloth))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"" + field + "\"");
    }
}
