package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Picture;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import hearthcloth.wrap.tying.Tying;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A guide for a gift holds its pages, nothing off the sheet, every word readable; without one nothing changes. */
class TiedGuideTest {

    private static final Plan PLAN = Samples.large(2, 1);

    private static Wrapped wrapped(Tie tie, String gift) {
        return new Wrapped(
                Gift.parse(gift, null), tie, new Tail(Length.cm(6), Length.cm(6), Length.cm(6)), Placing.CENTRED);
    }

    @ParameterizedTest
    @CsvSource({
        "FOUR_CORNER, box 11 x 8 x 4 cm",
        "EDGE_ALONG_EDGE, box 9 x 7 x 4 cm",
        "ERRAND, box 11 x 8 x 4 cm",
        "FLAT, box 12 x 9 x 2 cm",
        "TWO_KNOT, box 18 x 4 x 4 cm",
        "ONE_BOTTLE, bottle 4 x 12 cm",
        "TWO_BOTTLES, two bottles 3 x 8 cm",
        "ROUND, ball 8 cm",
        "BOOKS, books 6 x 4 x 1 cm",
        "ROLL, roll 2 x 8 cm"
    })
    void pages_of_every_tie_fit_and_can_be_read(Tie tie, String gift) {
        for (Paper paper : List.of(gift.length() % 2 == 0 ? Paper.A4 : Paper.LETTER)) {
            PlanSheets proposal = new PlanSheets(PLAN, Ruler.MILLIMETRES, paper, Optional.of(wrapped(tie, gift)));
            assertThat(proposal.tied())
                    .as("%s ties %s", PLAN.cloth().finished(), gift)
                    .isPresent();
            List<Picture> pages = GuidePages.of(proposal, Guide.of(PLAN, Ruler.MILLIMETRES), proposal.tied());
            String all = String.join(
                    "\n",
                    pages.stream()
                            .flatMap(page -> LegibilityTest.texts(page).stream())
                            .toList());
            assertThat(all).contains("The gift, tied", "What shows", "How sure the size is", "Tying it", "From above");
            assertThat(all.contains("The knot")).isEqualTo(tie.isKnotted());
            Bounds sheet = new Bounds(0, 0, paper.width(), paper.height());
            for (Picture page : pages) {
                assertThat(page.marks()).allMatch(mark -> sheet.contains(mark.bounds()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"FOUR_CORNER, box 11 x 8 x 4 cm", "ONE_BOTTLE, bottle 4 x 12 cm"})
    void a_gift_adds_its_sheet_to_the_folder(Tie tie, String gift, @TempDir Path folder) throws IOException {
        PlanFolder proposal = new PlanFolder(PLAN, Ruler.MILLIMETRES, Paper.A4, Optional.of(wrapped(tie, gift)));
        proposal.write(folder, GuideLength.FULL);
        proposal.writePngs(folder);
        assertThat(Files.readString(folder.resolve("tied.svg")))
                .contains("From a corner")
                .contains("tied");
        assertThat(Files.size(folder.resolve("tied.svg"))).isLessThan(1_500_000);
        assertThat(Files.readAllBytes(folder.resolve("tied.png"))).startsWith(0x89, 'P', 'N', 'G');
        assertThat(Files.readString(folder.resolve("tied.svg"))).isEqualTo(again(proposal, folder));
    }

    private static String again(PlanFolder proposal, Path folder) throws IOException {
        proposal.write(folder, GuideLength.FULL);
        return Files.readString(folder.resolve("tied.svg"));
    }

    @ParameterizedTest
    @CsvSource({"FOUR_CORNER, box 40 x 30 x 20 cm"})
    void a_cloth_too_small_is_said_to_be_so(Tie tie, String gift) {
        PlanSheets proposal = new PlanSheets(PLAN, Ruler.MILLIMETRES, Paper.A4, Optional.of(wrapped(tie, gift)));
        assertThat(proposal.tied()).isEmpty();
        List<Picture> pages = GuidePages.of(proposal, Guide.of(PLAN, Ruler.MILLIMETRES), proposal.tied());
        String all = String.join(
                " ",
                pages.stream()
                        .flatMap(page -> LegibilityTest.texts(page).stream())
                        .toList());
        assertThat(all).contains("is large enough").doesNotContain("Tying it");
    }

    /** As far as its words are translated; the letters are embedded, and all lines keep to the page. */
    @Test
    void the_tie_is_told_in_another_language_on_paper() throws IOException {
        Wrapped box = wrapped(Tie.FOUR_CORNER, "box 11 x 8 x 4 cm");
        for (Language language : Language.values()) {
            Voice voice = Voice.of(language, Ruler.MILLIMETRES);
            PlanFolder folder = new PlanFolder(PLAN, voice, Paper.A4, Optional.of(box));
            byte[] pdf = folder.guide(GuideLength.CLASS);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language.tag());
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
                for (Tying.Step step :
                        Tying.of(box.tie(), box.gift(), voice.tying()).steps()) {
                    assertThat(text)
                            .as(language.ownName())
                            .contains(step.words().replaceAll("\\s+", ""));
                }
            }
        }
    }
}
