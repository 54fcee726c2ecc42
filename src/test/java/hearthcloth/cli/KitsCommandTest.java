package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.judge.KitsJudge;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitsCommandTest {

    private static final Path STASH = Path.of("examples", "two-hundred.csv");

    @TempDir
    private Path folder = Path.of("");

    private Typed kits(String... wishes) {
        List<String> words = new ArrayList<>(
                List.of("kits", STASH.toString(), "--out", folder.resolve("out").toString(), "--budget", "1s"));
        words.addAll(List.of(wishes));
        return Typed.words(words.toArray(String[]::new));
    }

    private String list(String text) throws IOException {
        return Files.writeString(folder.resolve("list.csv"), text, StandardCharsets.UTF_8)
                .toString();
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/kits.json").toFile());
    }

    private static Map<String, long[]> stash() throws IOException {
        StashFile.Read read = (StashFile.Read) StashFile.read(Files.readString(STASH), Optional.empty());
        Map<String, long[]> pieces = new HashMap<>();
        for (Piece piece : read.stash().pieces()) {
            pieces.put(
                    piece.id(),
                    new long[] {piece.size().width().nm(), piece.size().height().nm()});
        }
        return pieces;
    }

    private String printed() throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve("out/kits.pdf").toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private void isSound() throws IOException {
        assertThat(KitsJudge.faults(
                        folder.resolve("out"), stash(), Ruler.EIGHTHS.step().nm(), Set.of("Heath tweed")))
                .isEmpty();
        assertThat(SchemaCheck.faults(Path.of("docs", "kits.schema.json"), json()))
                .isEmpty();
    }

    @Test
    void a_class_gets_a_folder_each_and_everything_to_pack_bags_by() throws IOException {
        Typed typed = kits("--students", "4", "--size", "16 in").plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(typed.out()).contains("Student 4", "no joins", "kits.pdf");
        isSound();
        assertThat(json().get("cloths")).hasSize(4);
        assertThat(json().get("fairness").get("lacking").asInt()).isZero();
        assertThat(folder.resolve("out/4/guide.pdf")).exists();
        assertThat(printed())
                .contains("For the teacher", "Shopping list", "Bag slips", "Patch slips", "Bag 4, Student 4", "bag 4");
    }

    @Test
    void a_list_has_gifts_and_sizes_and_what_is_wished_for_all() throws IOException {
        String wishes = list(
                "name,size,gift,fabrics,free\nGran,,box 20 x 15 x 8 cm,\"Kelp linen, Foam cotton\",\nTam,16 in,,,yes\n");
        Typed typed = kits("--wishes", wishes, "--guide", "full").plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        isSound();
        JsonNode gran = json().get("cloths").get(0);
        assertThat(gran.get("name").asText()).isEqualTo("Gran");
        assertThat(gran.get("made").get("fabrics"))
                .allMatch(fabric -> Set.of("Kelp linen", "Foam cotton").contains(fabric.asText()));
        assertThat(folder.resolve("out/1/tied.svg")).exists();
        assertThat(folder.resolve("out/2/plan.json")).exists();
        assertThat(printed()).contains("For a box");
    }

    @Test
    void planning_again_into_the_same_folder_takes_the_place_of_what_was_there() throws IOException {
        kits("--students", "3", "--size", "12 in");
        Typed typed = kits("--students", "2", "--size", "12 in").plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(folder.resolve("out/3")).doesNotExist();
        isSound();
        Typed plan = Typed.words(
                "plan",
                STASH.toString(),
                "--size",
                "12 in",
                "--proposals",
                "1",
                "--budget",
                "1ms",
                "--out",
                folder.resolve("out").toString());
        assertThat(plan.code()).as(plan.err()).isZero();
        assertThat(folder.resolve("out/kits.json")).doesNotExist();
    }

    @Test
    void what_cannot_be_made_is_said_and_the_nearest_drawn_and_what_to_buy() throws IOException {
        String stash = Files.writeString(
                        folder.resolve("few.csv"),
                        "fabric,width,length\nOat,18 in,22 in\nKelp,9 in,20 in\nOat,6 in,24 in\n")
                .toString();
        Typed typed = Typed.words(
                        "kits",
                        stash,
                        "--students",
                        "3",
                        "--size",
                        "20 in",
                        "--budget",
                        "1s",
                        "--out",
                        folder.resolve("out").toString())
                .plain();
        assertThat(typed.code()).isEqualTo(1);
        assertThat(typed.out()).contains("Not as it was asked for.");
        assertThat(SchemaCheck.faults(Path.of("docs", "kits.schema.json"), json()))
                .isEmpty();
        assertThat(json().get("outcome").asText()).isEqualTo("some-lack");
        assertThat(json().get("shopping")).isNotEmpty();
        assertThat(printed()).contains("fat quarter", "Off a bolt 44 in wide");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name,size;Ann,16 i|line 2, size|write",
                "name,size;Ann,16 in;ann,16 in|line 3, name|tell them apart",
                "name,size;,16 in|line 2, name|a name is missing",
                "name,size;Ann,|line 2, size|how large is not said",
                "name,colour;Ann,red|line 1|no wish is called",
                "size;16 in|line 1|no column is called name",
                "name,gift;Ann,a whale|line 2, gift|",
                "name,size,free;Ann,16 in,perhaps|line 2, free|write yes or no",
                "name,size;Ann,16 in,more|line 2|stands under no column",
                "name,size,fabrics;Ann,16 in,Gold|line 2, fabrics|no fabric of the stash",
                "name,size;|names no cloth|"
            })
    void a_list_that_cannot_be_used_says_line_field_and_mend(String text, String where, String mend)
            throws IOException {
        Typed typed = kits("--wishes", list(text.replace(';', '\n')));
        typed.refused(where, mend == null ? "" : mend);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void how_many_or_which_is_asked_for_once() throws IOException {
        kits().refused("--wishes LIST.csv");
        kits("--students", "0", "--size", "16 in").refused("--students");
        kits("--students", "3").refused("--size");
        kits("--students", "3", "--wishes", list("name,size\nAnn,16 in\n")).refused("--students");
    }
}
