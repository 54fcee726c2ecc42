package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.SeamTask;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The printed guide, read back with PDFBox and looked at page by page. */
class GuideTest {

    @ParameterizedTest
    @EnumSource
    void pages_have_the_size_of_the_paper_and_carry_their_letters(Paper paper) throws IOException {
        try (PDDocument document = printed(Samples.small(), Ruler.EIGHTHS, paper)) {
            for (PDPage page : document.getPages()) {
                assertThat((double) page.getMediaBox().getWidth()).isCloseTo(paper.width() * 72 / 25.4, within(0.01));
                assertThat((double) page.getMediaBox().getHeight()).isCloseTo(paper.height() * 72 / 25.4, within(0.01));
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
        }
    }

    /** One inch is 72 points, two centimetres 56.69: by definition of the point of PDF (docs/sources.md#pdf-point). */
    @Test
    void the_check_square_is_true_to_scale() throws IOException {
        try (PDDocument document = printed(Samples.small(), Ruler.EIGHTHS, Paper.LETTER)) {
            assertThat(StrokedBoxes.of(document.getPage(0)))
                    .anySatisfy(box -> assertThat(box[2]).isCloseTo(72, within(0.01)))
                    .anyMatch(box -> Math.abs(box[2] - 72) < 0.01 && Math.abs(box[3] - 72) < 0.01);
        }
        try (PDDocument document = printed(Samples.small(), Ruler.MILLIMETRES, Paper.A4)) {
            double two = 20 * 72 / 25.4;
            assertThat(StrokedBoxes.of(document.getPage(0)))
                    .anyMatch(box -> Math.abs(box[2] - two) < 0.01 && Math.abs(box[3] - two) < 0.01);
        }
    }

    @Test
    void every_number_to_check_can_be_found_in_the_text() throws IOException {
        Plan plan = Samples.small();
        String text;
        try (PDDocument document = printed(plan, Ruler.EIGHTHS, Paper.A4)) {
            text = new PDFTextStripper()
                    .getText(document)
                    .replace('\u00a0', ' ')
                    .replaceAll("\\s+", " ");
        }
        assertThat(text).contains(Ruler.EIGHTHS.write(plan.cloth().finished(), Rounding.NEAREST));
        for (SeamTask seam : Guide.of(plan, Ruler.EIGHTHS).sewing().seams()) {
            assertThat(text).contains(seam.step().number() + ". " + seam.task().title());
            seam.task()
                    .check()
                    .ifPresent(check -> assertThat(text).contains(Ruler.EIGHTHS.write(check.size(), Rounding.NEAREST)));
        }
        plan.cloth().laid().forEach(laid -> assertThat(text).contains(Ruler.EIGHTHS.write(laid.cut(), Rounding.UP)));
        assertThat(text).contains("page 1 of ");
    }

    @Test
    void a_guide_of_sixty_steps_keeps_every_step_whole_and_every_word_on_its_page() {
        Plan plan = Samples.large(5, 3);
        Guide guide = Guide.of(plan, Ruler.MILLIMETRES);
        assertThat(guide.sewing().seams()).hasSizeGreaterThanOrEqualTo(60);
        List<Picture> pages = pages(plan, guide, Ruler.MILLIMETRES, Paper.LETTER);
        pages.forEach(Legible::check);
        for (SeamTask seam : guide.sewing().seams()) {
            String title = seam.step().number() + ". " + seam.task().title().split(" ", -1)[0];
            List<Integer> found = new ArrayList<>();
            for (int page = 0; page < pages.size(); page++) {
                if (LegibilityTest.texts(pages.get(page)).stream().anyMatch(text -> text.startsWith(title))) {
                    found.add(page);
                }
            }
            assertThat(found).as(title).hasSize(1);
        }
    }

    /** Guides of eight bars in one piece each, and of 16 bars in three parts each. */
    @ParameterizedTest
    @CsvSource({"2, 1, 10, 5", "4, 3, 28, 6"})
    void guides_have_few_pages_full_and_fewer_for_a_class(int rounds, int parts, int full, int forClass) {
        Plan plan = Samples.large(rounds, parts);
        Guide guide = Guide.of(plan, Ruler.EIGHTHS);
        for (Paper paper : Paper.values()) {
            PlanSheets folder = new PlanSheets(plan, Ruler.EIGHTHS, paper);
            assertThat(pages(plan, guide, Ruler.EIGHTHS, paper).size()).isLessThanOrEqualTo(full);
            assertThat(GuidePages.forClass(folder, guide).size()).isLessThanOrEqualTo(forClass);
        }
    }

    @ParameterizedTest
    @EnumSource
    void class_guide_and_slips_can_be_read_on_either_paper(Paper paper) {
        for (Plan plan : List.of(Samples.small(), Samples.large(3, 2))) {
            PlanSheets folder = new PlanSheets(plan, Ruler.MILLIMETRES, paper);
            List<Picture> pages = new ArrayList<>(GuidePages.forClass(folder, Guide.of(plan, Ruler.MILLIMETRES)));
            List<Picture> slips = GuidePages.slips(folder);
            pages.addAll(slips);
            pages.forEach(Legible::check);
            List<String> names = slips.stream()
                    .flatMap(page -> LegibilityTest.texts(page).stream())
                    .toList();
            plan.cloth()
                    .patches()
                    .forEach(patch -> assertThat(names).contains(patch.place().label()));
        }
    }

    @Test
    void body_text_is_eleven_points_at_least() {
        double least = 11 * 25.4 / 72 - 1e-9;
        Plan plan = Samples.small();
        for (Picture page : pages(plan, Guide.of(plan, Ruler.EIGHTHS), Ruler.EIGHTHS, Paper.A4)) {
            for (Mark.Words words : page.words()) {
                if (words.text().length() > 25) {
                    assertThat(words.type().size()).as(words.text()).isGreaterThanOrEqualTo(least);
                }
            }
        }
    }

    @Test
    void names_that_mean_harm_are_printed_as_they_are_or_left_blank() throws IOException {
        try (PDDocument document = printed(Samples.large(1, 1), Ruler.MILLIMETRES, Paper.A4)) {
            assertThat(document.getDocumentInformation().getTitle()).startsWith("<script>alert('x')</script> & \"Ω\"");
            assertThat(new PDFTextStripper().getText(document)).contains("<script>alert('x')</script>");
        }
    }

    @Test
    void the_same_plan_gives_the_same_bytes() {
        assertThat(bytes(Samples.small(), Ruler.EIGHTHS, Paper.A4))
                .isEqualTo(bytes(Samples.small(), Ruler.EIGHTHS, Paper.A4));
    }

    private static byte[] bytes(Plan plan, Ruler ruler, Paper paper) {
        List<Picture> pages = pages(plan, Guide.of(plan, ruler), ruler, paper);
        Bounds sheet = new Bounds(0, 0, paper.width(), paper.height());
        pages.forEach(page -> page.marks()
                .forEach(mark -> assertThat(sheet.contains(mark.bounds()))
                        .as("%s on %s", mark, page.title())
                        .isTrue()));
        return PdfWriter.write(plan.story().title().english(), "en", pages);
    }

    private static PDDocument printed(Plan plan, Ruler ruler, Paper paper) throws IOException {
        return Loader.loadPDF(bytes(plan, ruler, paper));
    }

    private static List<Picture> pages(Plan plan, Guide guide, Ruler ruler, Paper paper) {
        return GuidePages.of(new PlanSheets(plan, ruler, paper), guide, Optional.empty());
    }
}
