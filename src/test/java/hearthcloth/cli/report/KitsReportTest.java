package hearthcloth.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.together.Asked;
import hearthcloth.plan.together.PlanningTogether;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.Stash;
import hearthcloth.words.speech.Voice;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is said of cloths planned together, to people ({@link KitsReport}) and to programs ({@link KitsJson}). */
class KitsReportTest {

    private static final Stash HEAP = Stashes.scraps(26, 3);

    private static Asked square(String name, int inches) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        return new Asked(name, wish, Optional.empty());
    }

    private static Together together(Asked... asked) {
        return PlanningTogether.plan(
                HEAP, List.of(asked), new PlanningTogether.Effort(1, 3, Budget.until(() -> true)), told -> {});
    }

    private static String said(Together together) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new KitsReport(new PrintStream(bytes, true, StandardCharsets.UTF_8), Voice.english(Ruler.EIGHTHS))
                .say(together, "out");
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void each_cloth_has_a_line_with_its_size_its_joins_and_its_folder() {
        String said = said(together(square("Ada", 12), square("Bea\u0007", 13)));
        assertThat(said).containsPattern("Ada: [^\n]*12 × 12 in, hearth of \\w+, [^\n]*join[^\n]*, in out/1\\.");
        assertThat(said)
                .containsPattern("Bea ?: [^\n]*13 × 13 in, [^\n]*, in out/2\\.")
                .doesNotContain("\u0007");
        assertThat(said).contains("Most joins: ", "out/kits.pdf").doesNotContain("Not as it was asked for");
    }

    @Test
    void who_lacks_something_hears_what() {
        String said = said(together(square("Ada", 12), square("Bea", 150)));
        assertThat(said).containsPattern("Bea: [^\n]*Not as it was asked for\\.\n   \\S+");
    }

    /** Read back by another reader of JSON: every piece is in one cloth, and what is handed on is a leftover. */
    @Test
    void programs_are_told_who_has_what() throws IOException {
        Together together = together(square("Ada", 12), square("Bea", 13), square("Cleo", 150));
        JsonNode json = new ObjectMapper()
                .readTree(JsonText.of(KitsJson.of(HEAP, together, List.of("12 in", "13 in", "150 in"))));
        assertThat(json.get("format").asText()).isEqualTo("hearthcloth-kits");
        assertThat(json.get("outcome").asText()).isEqualTo("some-lack");
        assertThat(json.get("stash").get("pieces").asInt())
                .isEqualTo(HEAP.pieces().size());
        assertThat(json.get("cloths")).hasSize(3);
        assertThat(json.get("cloths").get(1).get("made").get("width").asLong())
                .isEqualTo(Length.inches(13).nm());
        assertThat(json.get("cloths").get(2).get("asWished").asBoolean()).isFalse();
        assertThat(json.get("cloths").get(2).get("why")).isNotEmpty();
        assertThat(json.get("shopping")).hasSize(together.shopping().size());
        Set<String> seen = new HashSet<>();
        Set<String> known = new HashSet<>();
        HEAP.pieces().forEach(piece -> known.add(piece.id()));
        json.get("leftovers").forEach(left -> known.add(left.get("id").asText()));
        for (JsonNode cloth : json.get("cloths")) {
            if (cloth.has("made")) {
                for (JsonNode piece : cloth.get("made").get("pieces")) {
                    assertThat(seen.add(piece.asText())).as(piece.asText()).isTrue();
                    assertThat(known).contains(piece.asText());
                }
            }
        }
    }
}
