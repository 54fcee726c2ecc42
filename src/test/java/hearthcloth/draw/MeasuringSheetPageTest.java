package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.words.Language;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The printed measuring sheet: of one true size on either paper, with its line exactly 20 cm long. */
final class MeasuringSheetPageTest {

    private static final double PIXELS_PER_MM = 10;

    private static BufferedImage rendered(Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(MeasuringSheetPage.pdf(paper, Language.ENGLISH))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFRenderer(document).renderImageWithDPI(0, (float) (25.4 * PIXELS_PER_MM));
        }
    }

    private static boolean isDark(BufferedImage page, double xMm, double yMm) {
        return (page.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 255) < 128;
    }

    @Test
    void the_dark_rim_is_190_by_254_mm_in_the_middle_of_either_paper() throws IOException {
        for (Paper paper : Paper.values()) {
            BufferedImage page = rendered(paper);
            double left = (paper.width() - 190) / 2;
            double top = (paper.height() - 254) / 2;
            for (double inside : new double[] {0.3, 2.7, 187.3, 189.7}) {
                assertThat(isDark(page, left + inside, top + 100)).isTrue();
            }
            for (double outside : new double[] {-0.3, 3.3, 186.7, 190.3}) {
                assertThat(isDark(page, left + outside, top + 100)).isFalse();
            }
            assertThat(isDark(page, left + 150, top + 0.3)).isTrue();
            assertThat(isDark(page, left + 150, top + 253.7)).isTrue();
            assertThat(isDark(page, left + 150, top - 0.3)).isFalse();
            assertThat(isDark(page, left + 150, top + 254.3)).isFalse();
        }
    }

    @Test
    void the_line_to_check_is_200_mm_from_end_stroke_to_end_stroke() throws IOException {
        BufferedImage page = rendered(Paper.A4);
        double x = 10 + 47;
        double top = 21.5 + 27;
        assertThat(isDark(page, x + 2, top)).isTrue();
        assertThat(isDark(page, x + 2, top + 200)).isTrue();
        assertThat(isDark(page, x, top + 100)).isTrue();
        assertThat(isDark(page, x, top - 0.5)).isFalse();
        assertThat(isDark(page, x, top + 200.5)).isFalse();
    }

    @Test
    void it_says_how_to_print_and_to_check_it() throws IOException {
        try (PDDocument document = Loader.loadPDF(MeasuringSheetPage.pdf(Paper.LETTER, Language.ENGLISH))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Measuring sheet")
                    .contains("100 %")
                    .contains("20 cm")
                    .contains("7 7/8 in");
        }
    }
}
