package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.judge.PlanJudge;
import hearthcloth.measure.Ruler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCommandTest {

    private static final Path EXAMPLES = Path.of("examples");
    private static final String[] FILES = {"back.svg", "cut.svg", "front.svg", "guide.pdf", "plan.json"};

    @TempDir
    private Path folder = Path.of("");

    private Path out() {
        return folder.resolve("out");
    }

    private Typed plan(Object stash, String... wishes) {
        return Typed.words(words(stash.toString(), wishes));
    }

    private Typed planned(byte[] stash, String... wishes) {
        return Typed.withInput(stash, words("-", wishes));
    }

    private String[] words(String stash, String... wishes) {
        List<String> words = new ArrayList<>(List.of("plan", stash, "--out", out().toString()));
        words.addAll(List.of(wishes));
        return words.toArray(String[]::new);
    }

    private static Set<String> held(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return new TreeSet<>(
                    entries.map(entry -> String.valueOf(entry.getFileName())).toList());
        }
    }

    private JsonNode json(int proposal) throws IOException {
        return new ObjectMapper()
                .readTree(out().resolve(proposal + "/plan.json").toFile());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "two-lengths.csv | 30 in",
                "strips.csv | 24 in",
                "scraps.csv | 20 in",
                "metric.csv | 50 cm",
                "two-hundred.csv | 24 in"
            })
    void every_example_plans_into_a_folder_for_each_proposal(String example, String size) throws IOException {
        Typed typed = plan(EXAMPLES.resolve(example), "--size", size, "--proposals", "1", "--budget", "100ms")
                .plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(held(out())).containsExactly("1");
        for (String proposal : held(out())) {
            String file = Files.readString(out().resolve(proposal).resolve("plan.json"));
            long step = (example.startsWith("metric") ? Ruler.MILLIMETRES : Ruler.EIGHTHS)
                    .step()
                    .nm();
            assertThat(PlanJudge.faults(file, step, Set.of())).isEmpty();
            assertThat(held(out().resolve(proposal))).containsExactly(FILES);
            assertThat(typed.out()).contains(", in " + out() + "/" + proposal);
        }
        assertThat(typed.out()).contains("Joins: ", "fewest possible", "Cuts: ", "Lost: ", "Chosen for you: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scraps.csv | 36 x 30 in | --free | as they are",
                "metric.csv | 60 cm | --free | as they are",
                "scraps.csv | 26 in | --blocks=2 x 2 | log cabins",
                "scraps.csv | 45 in | --free --rounds=1 | among scraps"
            })
    void scraps_and_blocks_are_planned_cut_and_sewn_like_any_cloth(String example, String size, String how, String told)
            throws IOException {
        List<String> wishes = new ArrayList<>(List.of(how.split(" (?=--)")));
        wishes.addAll(List.of("--size", size, "--proposals", "1", "--budget", "100ms", "--least-piece", "3 cm"));
        Typed typed =
                plan(EXAMPLES.resolve(example), wishes.toArray(String[]::new)).plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        long step = (example.startsWith("metric") ? Ruler.MILLIMETRES : Ruler.EIGHTHS)
                .step()
                .nm();
        String file = Files.readString(out().resolve("1").resolve("plan.json"));
        assertThat(PlanJudge.faults(file, step, Set.of("Gull corduroy"))).isEmpty();
        assertThat(held(out().resolve("1"))).containsExactly(FILES);
        assertThat(typed.out()).contains("Patches: ", "Seams: ", told).doesNotContain("Joins: ");
        assertThat(json(1).path("patches").path(0).path("id").asText()).matches("[A-Z]+\\d+");
    }

    @Test
    void pictures_come_as_png_too_and_are_planned_over_again() throws IOException {
        for (int time = 0; time < 2; time++) {
            Typed typed = plan(
                    EXAMPLES.resolve("strips.csv"),
                    "--size",
                    "24 in",
                    "--proposals",
                    "1",
                    "--budget",
                    "100ms",
                    "--png");
            assertThat(typed.code()).as(typed.err()).isZero();
        }
        for (String picture : List.of("front.png", "back.png", "cut.png")) {
            byte[] bytes = Files.readAllBytes(out().resolve("1").resolve(picture));
            assertThat(bytes).startsWith(0x89, 'P', 'N', 'G');
        }
    }

    @Test
    void hearth_and_bars_as_cut_come_to_the_size_that_makers_know() throws IOException {
        // docs/sources.md#maker-sizes: hearth cut 18 in, two rounds of bars cut 6 in, about 38 in after a 1/4 + 1/4 in
        // hem
        Typed typed = plan(
                EXAMPLES.resolve("two-lengths.csv"),
                "--hearth",
                "18 in",
                "--bars",
                "6 in",
                "--rounds",
                "2",
                "--proposals",
                "1",
                "--budget",
                "100ms",
                "--seam",
                "1/4 + 1/2 in",
                "--hem",
                "1/4 + 1/4 in");
        assertThat(typed.out()).contains("38 in square");
        JsonNode finished = json(1).get("finished");
        assertThat(finished.get("width").asLong()).isEqualTo(38 * 25_400_000L);
        assertThat(finished.get("height").asLong()).isEqualTo(38 * 25_400_000L);
    }

    @Test
    void a_gift_is_answered_with_a_cloth_that_ties_it() throws IOException {
        Typed typed = plan(
                EXAMPLES.resolve("metric.csv"),
                "--gift",
                "box 20 x 15 x 6 cm",
                "--proposals",
                "1",
                "--budget",
                "100ms");
        // design: S >= √2 (l + h + t) = √2 (20 + 6 + 12) cm = 53.74 cm
        assertThat(typed.out()).contains("Gift: a box 20 × 15 × 6 cm, four-corner tie", "at least 53.8 cm");
        assertThat(json(1).get("finished").get("width").asLong()).isGreaterThanOrEqualTo(538_000_000L);
        assertThat(Files.readString(out().resolve("1/tied.svg"))).contains("From a corner", "of what shows");
    }

    @Test
    void the_same_seed_gives_the_same_files() throws IOException {
        String[] wishes = {
            "--hearth", "18 in", "--bars", "6 in", "--rounds", "1", "--proposals", "1", "--budget", "10s", "--seed", "7"
        };
        plan(EXAMPLES.resolve("two-lengths.csv"), wishes);
        String first = Files.readString(out().resolve("1/plan.json"));
        plan(EXAMPLES.resolve("two-lengths.csv"), wishes);
        assertThat(Files.readString(out().resolve("1/plan.json"))).isEqualTo(first);
    }

    @Test
    void what_cannot_be_made_says_what_is_short_and_the_nearest_that_can() {
        Typed typed = planned(
                        "fabric,width,length\nkelp,6 in,20 in\nfog,8 in,8 in".getBytes(StandardCharsets.UTF_8),
                        "--size",
                        "38 in",
                        "--budget",
                        "20s")
                .plain();
        assertThat(typed.code()).isEqualTo(1);
        assertThat(typed.out()).isEmpty();
        // 38 × 38 = 1444 sq in wished, 6 × 20 + 8 × 8 = 184 sq in there
        assertThat(typed.err())
                .contains("cannot be made", "1444 sq in", "184 sq in", "The nearest that can be made", "--size \"")
                .contains("/1, ready to cut and sew by");
        assertThat(out().resolve("1").resolve("plan.json")).exists();
        assertThat(out().resolve("1").resolve("guide.pdf")).exists();
        assertThat(out().resolve("2")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script></svg>&amp;\"'\n\t\\u0000 \\n %s ${x} ]]> 布 🪡 \u202eé",
                "=cmd|' /C calc'!A0"
            })
    void names_may_hold_anything_and_every_file_stays_whole(String name) throws Exception {
        String quoted = "\"" + name.replace("\"", "\"\"") + "\"";
        byte[] stash = ("fabric,width,length,faces\n" + quoted + ",44 in,1 yd,right\nfog,20 in,1 yd,same")
                .getBytes(StandardCharsets.UTF_8);
        Typed typed = planned(stash, "--size", "16 in", "--proposals", "1", "--budget", "100ms")
                .plain();
        assertThat(typed.code()).as(typed.err()).isZero();
        String plain = name.replaceAll("\\s+", " ").strip();
        List<String> fabrics = new ArrayList<>();
        json(1).get("stock").forEach(piece -> fabrics.add(piece.get("fabric").asText()));
        assertThat(fabrics).isSubsetOf(plain, "fog");
        for (String picture : List.of("front.svg", "back.svg", "cut.svg")) {
            Path file = out().resolve("1").resolve(picture);
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
            assertThat(Files.readString(file)).doesNotContain("<script");
        }
    }

    @Test
    void notes_and_results_go_separate_ways() {
        byte[] stash =
                "fabric,width,length,washed\nkelp,44 in,1 yd,yes\nfog,44 in,1 yd,no".getBytes(StandardCharsets.UTF_8);
        Typed typed = planned(stash, "--size", "16 in", "--proposals", "1", "--budget", "100ms");
        assertThat(typed.err()).contains("Note: Some pieces are washed").doesNotContain("Stash:", "planning:");
        assertThat(typed.out()).startsWith("Stash: 2 pieces of 2 fabrics, 2.44 sq yd.");
    }

    @Test
    void help_teaches_with_examples() {
        assertThat(Typed.words("plan", "--help").out())
                .contains("--hearth", "fabric,width,length", "finished", "It ends with:")
                .doesNotContain("@|");
        assertThat(Typed.words("help", "plan").out()).contains("--bars");
        assertThat(Typed.words("--help").out()).contains("plan", "size");
        assertThat(Typed.words("--help").out()).contains("examples/scraps.csv");
        assertThat(Typed.words("--help").code()).isZero();
    }
}
