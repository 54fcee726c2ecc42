package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports for programs say the same as the reports for people and as the plan files. */
class JsonReportTest {

    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void a_gift_is_answered_with_every_tie_of_the_table() throws IOException {
        Typed table = Typed.words("size", "--gift", "box 30 x 20 x 8 cm");
        JsonNode report = JSON.readTree(
                Typed.words("size", "--gift", "box 30 x 20 x 8 cm", "--json").out());
        assertThat(report.get("units").asText()).isEqualTo("nm");
        assertThat(report.get("ties")).isNotEmpty();
        for (JsonNode tie : report.get("ties")) {
            double cm = tie.get("square").asLong() / 1e7;
            String line = table.out()
                    .lines()
                    .filter(each -> each.strip().startsWith(tie.get("tie").asText()))
                    .findFirst()
                    .orElseThrow();
            // The table rounds up to a millimetre.
            double shown = Double.parseDouble(line.replaceFirst("^.*?  +(\\d+(\\.\\d)?) cm.*$", "$1"));
            assertThat(shown - cm).as(line).isBetween(0.0, 0.1);
            assertThat(tie.get("squareLeastTail").asLong())
                    .isLessThanOrEqualTo(tie.get("square").asLong());
        }
    }

    @Test
    void a_cloth_is_answered_with_what_it_ties() throws IOException {
        JsonNode takes = JSON.readTree(
                        Typed.words("size", "--cloth", "70 cm", "--json").out())
                .get("takes");
        assertThat(takes).hasSizeGreaterThan(5);
        String table = Typed.words("size", "--cloth", "70 cm").out();
        for (JsonNode take : takes) {
            if (take.has("largest")) {
                assertThat(table).contains(take.get("largest").asText());
            }
        }
    }

    @Test
    void each_planned_cloth_names_its_folder_and_agrees_with_its_plan_file(@TempDir Path folder) throws IOException {
        String out = folder.resolve("out").toString();
        Typed typed = plan("examples/strips.csv", out, "20 in");
        assertThat(typed.code()).isZero();
        JsonNode report = JSON.readTree(typed.out());
        assertThat(report.get("outcome").asText()).isEqualTo("planned");
        Map<String, JsonNode> files = new TreeMap<>();
        for (JsonNode proposal : report.get("proposals")) {
            String name = proposal.get("folder").asText();
            files.put(name, JSON.readTree(Files.readString(Path.of(name).resolve("plan.json"))));
            JsonNode figures = files.get(name).get("figures");
            assertThat(proposal.get("joins")).isEqualTo(figures.get("joins"));
            assertThat(proposal.get("cuts")).isEqualTo(figures.get("cuts"));
            assertThat(proposal.get("finished").get("width"))
                    .isEqualTo(files.get(name).get("finished").get("width"));
        }
        // However many the time sufficed for, each folder is told.
        try (Stream<Path> folders = Files.list(Path.of(out))) {
            assertThat(folders.map(Path::toString).filter(name -> name.matches(".*/\\d+")))
                    .isNotEmpty()
                    .containsExactlyInAnyOrderElementsOf(files.keySet());
        }
    }

    @Test
    void what_cannot_be_made_says_why_and_ends_with_one(@TempDir Path folder) throws IOException {
        Typed typed = plan("examples/strips.csv", folder.resolve("out").toString(), "4 m");
        assertThat(typed.code()).isEqualTo(1);
        JsonNode report = JSON.readTree(typed.out());
        assertThat(report.get("outcome").asText()).isIn("impossible", "none-found");
        assertThat(report.get("why")).isNotEmpty();
        assertThat(report.get("proposals")).isEmpty();
    }

    private static Typed plan(String stash, String out, String size) {
        return Typed.words(
                "plan", stash, "--size", size, "--proposals", "2", "--budget", "300ms", "--json", "--out", out);
    }
}
