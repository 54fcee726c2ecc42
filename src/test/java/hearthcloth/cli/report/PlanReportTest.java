package hearthcloth.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.Told;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Slack;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What planning found, in words ({@link PlanReport}, {@link GuidelineReport}) and for programs ({@link PlanJson}). */
class PlanReportTest {

    /** Twenty inches square, of two lengths of yardage. */
    private static final Plan PLAN = Planned.plans(Stashes.yardage(), 20, 1).get(0);

    private static final PlanFigures FIGURES = PLAN.figures();

    private static Plan plan(int above, double lostMm2) {
        Plan.Story story = Told.story("Two halves", "Good.", Told.all("One.", "Two."), Told.all("Wash\nit."));
        return new Plan(
                story, PLAN.cloth(), PLAN.rules(), PLAN.cuts(), new Bound(FIGURES.joins() - above, lostMm2, 64516));
    }

    private static List<String> said(Ruler ruler, Consumer<PlanReport> asked) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        asked.accept(new PlanReport(new PrintStream(bytes, true, StandardCharsets.UTF_8), Voice.english(ruler)));
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private static Stash stash(Length side, Length other) {
        Fabric fabric = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        return new Stash(
                List.of(Stashes.piece(2, fabric, Size.square(side)), Stashes.piece(3, fabric, new Size(side, other))));
    }

    private static GiftWish gift(String written) {
        return GiftWish.read(written, null, null).orElseThrow();
    }

    /** A square yard and a quarter; a square metre and a half. */
    @Test
    void a_stash_is_told_with_its_whole_area_in_large_measures() {
        Stash inches = stash(Length.inches(36), Length.inches(9));
        Stash metric = stash(Length.cm(100), Length.cm(50));
        assertThat(said(Ruler.EIGHTHS, report -> report.stash(inches)))
                .containsExactly("Stash: 2 pieces of 1 fabric, 1.25 sq yd.");
        assertThat(said(Ruler.MILLIMETRES, report -> report.stash(metric)))
                .containsExactly("Stash: 2 pieces of 1 fabric, 1.50 m².");
    }

    @Test
    void a_gift_is_told_in_its_own_sentence() {
        GiftWish box = gift("box 30 x 20 x 8 cm");
        assertThat(said(Ruler.MILLIMETRES, report -> report.gift(box, Slack.NONE)))
                .containsExactly("Gift: " + box.sentence(Voice.english(Ruler.MILLIMETRES)) + ".");
    }

    @Test
    void a_proposal_is_told_with_its_folder_its_figures_and_all_its_words() {
        String lost = Ruler.EIGHTHS.squares(FIGURES.areas().lost(), Rounding.NEAREST) + " sq in";
        String touched = Ruler.EIGHTHS.squares(FIGURES.areas().touched(), Rounding.NEAREST) + " sq in";
        String figures = "   Joins: " + FIGURES.joins() + ", %s. Cuts: " + FIGURES.cuts() + ". Lost: " + lost + " ("
                + FIGURES.areas().lostPercent() + " %% of the " + touched
                + " cut into; no plan for it cuts into less than 100 sq in%s).";
        assertThat(said(
                        Ruler.EIGHTHS,
                        report -> report.proposals(
                                new PlanOutcome.Proposals(List.of(plan(0, 0), plan(2, 1300))),
                                "out",
                                Optional.empty())))
                .containsExactly(
                        "",
                        "1  Two halves, 20 in square, in out/1",
                        "   Good.",
                        figures.formatted("the fewest possible", ""),
                        "   Chosen for you: One. Two.",
                        "   Take care: Wash it.",
                        "",
                        "2  Two halves, 20 in square, in out/2",
                        "   Good.",
                        // 1300 mm² are a little more than two square inches of 645.16 mm²
                        figures.formatted("at most 2 above the fewest possible", " or loses less than 2 sq in"),
                        "   Chosen for you: One. Two.",
                        "   Take care: Wash it.");
    }

    @Test
    void what_shows_of_a_tied_cloth_is_told_where_it_ties_the_gift() {
        PlanOutcome.Proposals one = new PlanOutcome.Proposals(List.of(PLAN));
        assertThat(said(Ruler.EIGHTHS, report -> report.proposals(one, "out", Optional.of(gift("box 5 x 4 x 2 in")))))
                .filteredOn(line -> line.startsWith("   Tied: "))
                .hasSize(1);
        assertThat(said(Ruler.EIGHTHS, report -> report.proposals(one, "out", Optional.of(gift("box 20 x 15 x 8 in")))))
                .noneMatch(line -> line.startsWith("   Tied: "));
    }

    @Test
    void a_shortage_is_told_with_why_and_the_nearest_cloth() {
        PlanOutcome.CannotMake cannot =
                new PlanOutcome.CannotMake(true, Told.all("Too little Slate."), List.of(plan(0, 0)));
        String fabrics =
                String.join(", ", PLAN.fabrics().stream().map(Fabric::name).toList());
        int joins = FIGURES.joins();
        String told = joins == 0 ? "no joins" : joins == 1 ? "1 join" : joins + " joins";
        assertThat(said(Ruler.EIGHTHS, report -> report.shortage(cannot, "out")))
                .containsExactly(
                        "This cloth cannot be made from this stash.",
                        "   Too little Slate.",
                        "   The nearest that can be made is 20 in square: Two halves, " + told + ". One. Two.",
                        "   It is in out/1, ready to cut and sew by: in " + fabrics + ".",
                        "   For more like it, ask with --size \"20 in\", leaving the rest to the stash.");
        assertThat(said(Ruler.MILLIMETRES, report -> report.shortage(cannot, "out")))
                .last()
                .asString()
                .contains("--size \"50.8 cm\"");
        assertThat(said(
                        Ruler.EIGHTHS,
                        report -> report.shortage(new PlanOutcome.CannotMake(false, List.of(), List.of()), "out")))
                .containsExactly("No way was found to make this cloth from this stash.");
    }

    private static JsonNode json(PlanJson report) throws IOException {
        return new JsonMapper().readTree(JsonText.of(report));
    }

    @Test
    void for_programs_each_proposal_has_its_folder_and_its_figures() throws IOException {
        JsonNode planned = json(PlanJson.planned(
                Stashes.yardage(),
                Optional.empty(),
                Voice.english(Ruler.EIGHTHS),
                List.of(plan(0, 5), plan(1, 7)),
                "out"));
        assertThat(planned.get("outcome").asText()).isEqualTo("planned");
        assertThat(planned.get("units").asText()).isEqualTo("nm");
        assertThat(planned.has("gift")).isFalse();
        assertThat(planned.get("stash").get("pieces").asInt()).isEqualTo(2);
        assertThat(planned.get("stash").get("fabrics").asInt()).isEqualTo(2);
        assertThat(planned.get("why")).isEmpty();
        assertThat(planned.get("nearest")).isEmpty();
        JsonNode second = planned.get("proposals").get(1);
        assertThat(second.get("folder").asText()).isEqualTo("out/2");
        assertThat(second.get("finished").get("width").asLong()).isEqualTo(508_000_000L);
        assertThat(second.get("joins").asInt()).isEqualTo(FIGURES.joins());
        assertThat(second.get("fewestJoins").asInt()).isEqualTo(FIGURES.joins() - 1);
        assertThat(second.get("cuts").asInt()).isEqualTo(FIGURES.cuts());
        assertThat(second.get("lostMm2").asDouble()).isEqualTo(FIGURES.areas().lost());
        assertThat(second.get("touchedMm2").asDouble())
                .isEqualTo(FIGURES.areas().touched());
        assertThat(second.get("leastTouchedMm2").asDouble()).isEqualTo(64516);
        assertThat(second.get("chosen").get(1).asText()).isEqualTo("Two.");
        assertThat(second.get("cautions").get(0).asText()).isEqualTo("Wash\nit.");
    }

    @Test
    void for_programs_a_shortage_is_impossible_only_where_a_bound_proves_it() throws IOException {
        GiftWish box = gift("box 30 x 20 x 8 cm");
        for (boolean proven : new boolean[] {true, false}) {
            JsonNode shortage = json(PlanJson.shortage(
                    Stashes.yardage(),
                    Optional.of(box),
                    Voice.english(Ruler.MILLIMETRES),
                    new PlanOutcome.CannotMake(proven, Told.all("Too little."), List.of(PLAN)),
                    "out"));
            assertThat(shortage.get("outcome").asText()).isEqualTo(proven ? "impossible" : "none-found");
            assertThat(shortage.get("gift").asText()).isEqualTo(box.sentence(Voice.english(Ruler.MILLIMETRES)));
            assertThat(shortage.get("why").get(0).asText()).isEqualTo("Too little.");
            assertThat(shortage.get("proposals")).isEmpty();
            assertThat(shortage.get("nearest").get(0).get("folder").asText()).isEqualTo("out/1");
        }
    }

    private static Guideline idea() throws IOException {
        String text = Files.readString(Path.of("examples", "idea.json"));
        return ((GuidelineFile.Reading.Read) GuidelineFile.read(text)).guideline();
    }

    private static List<String> bent(Fitted fitted) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Shell shell = new Shell(
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        new GuidelineReport(shell, idea(), Voice.english(Ruler.EIGHTHS)).bent(fitted, "out");
        assertThat(out.size()).isZero();
        return err.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void what_a_cloth_bends_of_a_guideline_is_told_for_each_and_for_programs_of_the_first() throws IOException {
        Bend bars = new Bend(Bend.Rule.BARS, Sentence.itself("the bars are wider."));
        Fitted fitted = new Fitted(
                List.of(
                        new Fitted.Nearest(plan(0, 0), List.of(bars), false),
                        new Fitted.Nearest(plan(0, 0), List.of(), false),
                        new Fitted.Nearest(plan(0, 0), List.of(bars), true)),
                Told.all("Too little Oat."));
        String head = "  Two halves, 20 in square, in out/";
        assertThat(bent(fitted).stream().map(line -> line.replace("20 × 20 in", "20 in square")))
                .containsExactly(
                        "No cloth that keeps every rule of \"Ring by ring, from what there is\" was found in this stash.",
                        "   Too little Oat.",
                        "1" + head + "1, ready to cut and sew by.",
                        "   Bent: the bars are wider.",
                        "2" + head + "2, ready to cut and sew by.",
                        "   Bent: nothing; it keeps every rule.",
                        "3" + head + "3, ready to cut and sew by.",
                        "   Bent: These pieces give no hearth with bars round it; the scraps are laid together as they"
                                + " are.");
        assertThat(bent(new Fitted(List.of(), List.of()))).containsExactly("No cloth can be made from this stash.");

        PlanOutcome.CannotMake outcome = new GuidelineReport(
                        new Shell(InputStream.nullInputStream(), System.out, System.err),
                        idea(),
                        Voice.english(Ruler.EIGHTHS))
                .outcome(fitted);
        assertThat(outcome.proven()).isFalse();
        assertThat(outcome.why()).map(Sentence::english).containsExactly("Too little Oat.", "the bars are wider.");
        assertThat(outcome.nearest()).hasSize(3);
    }
}
