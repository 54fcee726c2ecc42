package hearthcloth.idea;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.idea.answer.PagePlanner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.words.Language;
import hearthcloth.words.teaching.TeachingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The idea page in a browser without a network, held to the program. Needs ideapage/build, which ./check runs. */
class IdeaPageTest {

    private static final String[] SIZES = {"open", "12 in", "14 to 18 in", "for box 8 x 6 x 3 in"};
    private static final String[] HEARTHS = {"open", "25 to 45 %", "largest square", "6 in"};
    private static final String[] BARS = {"open", "strips", "2 to 4 in"};
    private static final String[] FABRICS = {"rust linen", "oat linen", "slate check", "moss print", "white lawn"};

    private static Guideline idea(String fields) {
        return ((GuidelineFile.Reading.Read) GuidelineFile.read(
                        "{\"format\":\"hearthcloth-guideline\",\"version\":1,\"name\":\"Tea & <b>cloth</b>\"" + fields
                                + "}"))
                .guideline();
    }

    private static Path page(Path folder, Guideline guideline) throws IOException {
        Path file = folder.resolve("page.html");
        Files.writeString(file, IdeaPage.of(guideline, Stashes.scraps(20, 3)));
        assertThat(Files.size(file)).isLessThan(IdeaPage.MOST_BYTES);
        return file;
    }

    private static String heap(Random random) {
        StringBuilder lines = new StringBuilder();
        for (int i = 4 + random.nextInt(8); i > 0; i--) {
            lines.append(2 + random.nextInt(8))
                    .append(random.nextBoolean() ? " 1/2" : "")
                    .append(" x ")
                    .append(8 + random.nextInt(18))
                    .append(" in, ")
                    .append(1 + random.nextInt(4))
                    .append(" of them, ")
                    .append(FABRICS[random.nextInt(FABRICS.length)])
                    .append('\n');
        }
        return lines.toString();
    }

    @Test
    void scraps_typed_on_a_telephone_become_a_cloth_that_can_be_printed(@TempDir Path folder) throws IOException {
        Path file = page(
                folder, idea(",\"size\":\"12 to 16 in\",\"words\":\"Begin <script>alert(1)</script> in the middle.\""));
        try (OpenedPage opened = new OpenedPage(file, ColorScheme.LIGHT)) {
            Page page = opened.page();
            assertThat(page.locator("h1")).hasText("Tea & <b>cloth</b>");
            assertThat(page.locator(".idea")).containsText("<script>alert(1)</script>");
            page.fill(
                    "#heap",
                    "6 x 9 in, rust linen\n5 x 20 in, 3 of them, oat linen\n4 x 22 in, 4 of them, slate check");
            page.click("#go");
            assertThat(page.locator(".cloth").first())
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(240_000));
            for (ColorScheme scheme : new ColorScheme[] {ColorScheme.DARK, ColorScheme.LIGHT}) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                assertThat(opened.violations()).as(scheme.name()).isEmpty();
                assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                        .isTrue();
            }
            printed(page);
            assertThat(opened.troubles()).isEmpty();
        }
    }

    /** What the button does before it prints; then the page as the browser prints it. */
    private static void printed(Page page) throws IOException {
        page.evaluate("() => { window.print = () => { document.body.dataset.printed = 'yes'; }; }");
        page.locator(".cloth button").first().click();
        page.locator("body[data-printed=yes]").waitFor();
        assertThat(page.locator(".printed details.guide figure").first()).isVisible();
        byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPrintBackground(true));
        String keep = System.getProperty("keep.pdf", "");
        if (!keep.isEmpty()) {
            Files.write(Path.of(keep), pdf);
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("rust linen", "hearth", "Before you cut");
            assertThat(text).doesNotContain("Plan my cloth");
        }
    }

    @Test
    void a_line_that_is_not_understood_is_named(@TempDir Path folder) throws IOException {
        try (OpenedPage opened = new OpenedPage(page(folder, idea("")), ColorScheme.LIGHT)) {
            opened.page().fill("#heap", "4 x 8 in, 12 of them, green print\nsome old curtain");
            opened.page().click("#go");
            assertThat(opened.page().locator("#said")).containsText("Line 2: ");
        }
    }

    /** Seeds 0 and 1; the long run goes on. */
    @Test
    void browser_and_program_give_the_same_plans(@TempDir Path folder) throws IOException {
        compare(folder, 0, 2);
    }

    /** With seed 109 a bar of 4 in and one of 3 1/2 in are worth the same but for the last bit of a colour. */
    @Test
    void browser_and_program_choose_alike_among_plans_that_are_all_but_equal(@TempDir Path folder) throws IOException {
        compare(folder, 109, 110);
    }

    /** Seeds 0 to 199, or those from {@code hearthcloth.from} to before {@code hearthcloth.to}, so that it can be gone on with. */
    @Test
    @Tag("long")
    void browser_and_program_give_the_same_200_plans(@TempDir Path folder) throws IOException {
        compare(folder, Integer.getInteger("hearthcloth.from", 0), Integer.getInteger("hearthcloth.to", 200));
    }

    @Test
    void a_reader_chooses_her_language_and_her_guide_is_in_it(@TempDir Path folder) throws IOException {
        try (OpenedPage opened = new OpenedPage(page(folder, idea("")), ColorScheme.LIGHT)) {
            Page page = opened.page();
            for (Language language : Language.values()) {
                page.selectOption("#language", language.tag());
                assertThat(page.locator("html")).hasAttribute("lang", language.tag());
                assertThat(page.locator("#go"))
                        .hasText(TeachingWords.in(language).minePlan());
                // the rules of the idea, and how it is made
                assertThat(page.locator("[data-in]:not([hidden])")).hasCount(2);
                assertThat(page.locator("[data-in='" + language.tag() + "']:not([hidden])"))
                        .hasCount(2);
                assertThat(page.locator("[data-in]:not([hidden])[lang='" + language.tag() + "']"))
                        .hasCount(2);
                assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                        .isTrue();
            }
            page.selectOption("#language", "ko");
            page.fill("#heap", "24 x 30 cm, 린넨\n10 x 50 cm, 6장, 무명");
            page.selectOption("#unit", "cm");
            page.click("#go");
            assertThat(page.locator(".cloth").first()).isVisible();
            page.locator(".cloth details.guide summary").first().click();
            assertThat(page.locator(".cloth details.guide figure").first()).containsText("솔기");
            assertThat(opened.violations()).isEmpty();
            assertThat(opened.troubles()).isEmpty();
        }
    }

    private static void compare(Path folder, int from, int to) throws IOException {
        List<String> unlike = new ArrayList<>();
        int made = 0;
        try (OpenedPage opened = new OpenedPage(page(folder, idea("")), ColorScheme.LIGHT)) {
            for (int seed = from; seed < to; seed++) {
                made += compare(opened, Asked.of(seed), unlike);
            }
            assertThat(opened.troubles()).isEmpty();
        }
        assertThat(unlike).isEmpty();
        assertThat(made).isGreaterThan((to - from) / 2);
    }

    /** What a seed asks. */
    private record Asked(int seed, String guideline, String heap, String unit, String language) {

        static Asked of(int seed) {
            Random random = new Random(seed);
            String guideline = GuidelineFile.write(idea(",\"size\":\"" + SIZES[random.nextInt(SIZES.length)]
                    + "\",\"hearth\":\"" + HEARTHS[random.nextInt(HEARTHS.length)] + "\",\"bars\":\""
                    + BARS[random.nextInt(BARS.length)] + "\""));
            String heap = IdeaPageTest.heap(random);
            String unit = random.nextBoolean() ? "in" : "cm";
            List<Language> languages = List.of(Language.values());
            return new Asked(
                    seed,
                    guideline,
                    heap,
                    unit,
                    languages.get(seed % languages.size()).tag());
        }

        PagePlanner.Question question() {
            return new PagePlanner.Question(heap, "", unit, language, 1);
        }

        Map<String, Object> typed() {
            return Map.of("guideline", guideline, "heap", heap, "favourite", "", "unit", unit, "language", language);
        }
    }

    /** How many cloths were looked at; where browser and program do not agree, the seed and what. */
    private static int compare(OpenedPage opened, Asked asked, List<String> unlike) throws IOException {
        ObjectMapper json = new ObjectMapper();
        PagePlanner program = new PagePlanner();
        JsonNode expected = json.readTree(program.plan(asked.guideline(), asked.question(), svg -> {}));
        JsonNode answer = json.readTree(opened.answered(asked.typed(), "answer"));
        note(unlike, asked, "why", expected.get("why"), answer.get("why"));
        int cloths = expected.get("cloths").size();
        note(unlike, asked, "cloths", cloths, answer.get("cloths").size());
        for (int i = 0; i < Math.min(cloths, answer.get("cloths").size()); i++) {
            JsonNode patches = expected.get("cloths").get(i).get("patches");
            note(
                    unlike,
                    asked,
                    "cut list " + i,
                    patches,
                    answer.get("cloths").get(i).get("patches"));
            String plan = opened.answered(Map.of("number", i, "file", true), "plan");
            note(unlike, asked, "plan " + i, program.planFile(i), plan);
        }
        return cloths;
    }

    private static void note(List<String> unlike, Asked asked, String what, Object program, Object browser) {
        String one = program.toString();
        String other = browser.toString();
        if (!one.equals(other)) {
            int from = Math.max(0, Arrays.mismatch(one.toCharArray(), other.toCharArray()) - 60);
            unlike.add("seed " + asked.seed() + ", " + what + ": " + from(one, from) + " but in the browser "
                    + from(other, from));
        }
    }

    private static String from(String text, int from) {
        return text.substring(Math.min(from, text.length()), Math.min(from + 120, text.length()));
    }
}
