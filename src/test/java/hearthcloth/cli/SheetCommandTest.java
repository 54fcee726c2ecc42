package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetCommandTest {

    @Test
    void the_sheet_is_written_for_the_paper_asked_for(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("sheet.pdf");
        Typed typed = Typed.words("sheet", "--paper", "letter", "--out", file.toString()).plain();
        assertThat(typed.err()).isEmpty();
        assertThat(typed.code()).isZero();
        assertThat(typed.out()).contains("100 %", "20 cm");
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(611.9f, 612.1f);
        }
    }

    @Test
    void another_paper_is_refused_with_what_there_is(@TempDir Path folder) {
        Path file = folder.resolve("sheet.pdf");
        Typed typed = Typed.words("sheet", "--paper", "a3", "--out", file.toString()).plain();
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("a4 or letter");
        assertThat(file).doesNotExist();
    }
}
