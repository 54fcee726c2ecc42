package hearthcloth.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tying.Tying;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Sizes in words and for programs, the one held against the other. */
class SizeReportTest {

    private static final Gift BOX = Gift.parse("box 30 x 20 x 8 cm", null);

    private static List<String> said(Ruler ruler, Consumer<SizeReport> asked) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        asked.accept(new SizeReport(new PrintStream(bytes, true, StandardCharsets.UTF_8), Voice.english(ruler)));
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private static JsonNode json(SizeJson report) throws IOException {
        return new JsonMapper().readTree(JsonText.of(report));
    }

    private record Small(String word, @Nullable String none, List<Integer> numbers) {}

    @Test
    void a_report_for_programs_leaves_out_what_is_not_there_and_half_a_letter() {
        assertThat(JsonText.of(new Small("a\ud800", null, List.of(1))).replace("\r", ""))
                .isEqualTo("{\n  \"word\" : \"a\ufffd\",\n  \"numbers\" : [ 1 ]\n}");
    }

    /** By hand: half the diagonal is 38 cm over the box, and 12 cm for knot and end: 50 √2 = 70.8 cm, rounded up. */
    @Test
    void for_a_gift_each_tie_is_told_with_the_square_it_needs() throws IOException {
        List<String> lines = said(Ruler.MILLIMETRES, report -> report.gift(BOX, null));
        JsonNode ties = json(SizeJson.forGift(BOX, null, Ruler.MILLIMETRES)).get("ties");

        assertThat(lines.get(0)).isEqualTo("Round a box 30 × 20 × 8 cm, the finished cloth is a square of at least:");
        assertThat(ties).hasSameSizeAs(Tie.suiting(BOX));
        for (JsonNode tie : ties) {
            String side =
                    Ruler.MILLIMETRES.write(new Length(tie.get("square").asLong()), hearthcloth.measure.Rounding.UP);
            assertThat(lines)
                    .anyMatch(line ->
                            line.startsWith("  " + tie.get("tie").asText()) && line.contains("  " + side + " "));
            assertThat(tie.get("squareLeastTail").asLong())
                    .isLessThanOrEqualTo(tie.get("square").asLong());
            assertThat(tie.get("squareMostTail").asLong())
                    .isGreaterThanOrEqualTo(tie.get("square").asLong());
            if (!tie.get("knotted").asBoolean()) {
                assertThat(tie.get("squareLeastTail")).isEqualTo(tie.get("squareMostTail"));
            }
        }
        assertThat(lines)
                .anyMatch(
                        line -> line.matches("  four-corner tie \\(yotsu-musubi\\) +70\\.8 cm +with 12 cm at each.*"));
        assertThat(lines).anyMatch(line -> line.startsWith("The next ready-made size up is "));
        assertThat(lines).anyMatch(line -> line.contains("small ")).anyMatch(line -> line.contains("fits  "));
        assertThat(json(SizeJson.forGift(BOX, Tie.FLAT, Ruler.MILLIMETRES)).get("ties"))
                .hasSize(1);
    }

    @Test
    void for_a_cloth_each_tie_is_told_with_the_largest_gift() throws IOException {
        Size cloth = Size.square(Length.cm(70));
        List<String> lines = said(Ruler.MILLIMETRES, report -> report.cloth(cloth, null));
        JsonNode report = json(SizeJson.forCloth(cloth, null, Ruler.MILLIMETRES));

        assertThat(lines.get(0))
                .isEqualTo(
                        "The largest gifts that a finished cloth 70 cm square ties, with 12 cm at each knotted corner for"
                                + " knot and end:");
        assertThat(report.get("ties")).isNull();
        for (JsonNode take : report.get("takes")) {
            assertThat(lines)
                    .anyMatch(line -> line.contains(take.get("largest").asText() + "  ("
                            + take.get("shape").asText()));
            Gift largest = Gift.parse(
                    take.get("largest")
                            .asText()
                            .replace("something ", "")
                            .replaceAll("a(cross|nd)|high|long|each", " ")
                            .replaceAll("(?<=cm) *, *", " x "),
                    null);
            assertThat(largest.leading().nm())
                    .isLessThanOrEqualTo(take.get("leading").asLong());
        }
        assertThat(said(Ruler.MILLIMETRES, one -> one.cloth(cloth, Tie.BOOKS))).hasSize(3);
    }

    /** A gift is at least a centimetre long; 3/8 in is less, so a cloth just large enough must not ask for that. */
    @Test
    void small_cloths_in_inches_are_told_too_and_say_where_they_take_nothing() throws IOException {
        for (int eighths = 24; eighths < 160; eighths++) {
            Size cloth = Size.square(Length.inches(eighths, 8));
            List<String> lines = said(Ruler.EIGHTHS, report -> report.cloth(cloth, null));
            for (JsonNode take :
                    json(SizeJson.forCloth(cloth, null, Ruler.EIGHTHS)).get("takes")) {
                String largest = take.has("largest") ? take.get("largest").asText() : "nothing; it is too small";
                assertThat(lines)
                        .anyMatch(line -> line.contains(
                                "  " + largest + "  (" + take.get("shape").asText() + ")"));
            }
        }
        assertThat(said(Ruler.EIGHTHS, report -> report.cloth(Size.square(Length.inches(3)), Tie.ROUND)))
                .last()
                .asString()
                .contains("nothing; it is too small");
    }

    @Test
    void how_a_tie_is_done_is_told_step_by_step_with_its_cautions() {
        List<String> lines = said(Ruler.MILLIMETRES, report -> report.steps(BOX, Tie.FOUR_CORNER));
        Tying tying =
                Tying.of(Tie.FOUR_CORNER, BOX, Voice.english(Ruler.MILLIMETRES).tying());
        for (int i = 0; i < tying.steps().size(); i++) {
            assertThat(lines)
                    .contains("  " + (i + 1) + "  " + tying.steps().get(i).words());
        }
        assertThat(lines).contains("The reef knot:", "  " + tying.knot().get(0));
        assertThat(lines)
                .containsAll(tying.cautions().stream()
                        .map(caution -> "Take care: " + caution)
                        .toList());
        assertThat(said(Ruler.MILLIMETRES, report -> report.steps(BOX, Tie.FLAT)))
                .doesNotContain("The reef knot:");
    }

    @Test
    void the_tail_is_that_of_the_ruler() {
        assertThat(GiftWish.tail(Ruler.MILLIMETRES)).isEqualTo(Tail.METRIC);
        assertThat(GiftWish.tail(Ruler.EIGHTHS)).isEqualTo(Tail.INCHES);
    }
}
