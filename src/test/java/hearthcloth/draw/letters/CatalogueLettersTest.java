package hearthcloth.draw.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the catalogues say can be printed: no letter of theirs is shown as a box. */
class CatalogueLettersTest {

    @Test
    void the_fonts_have_every_letter_of_the_catalogues() throws IOException {
        List<Path> catalogues;
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "words"))) {
            catalogues = files.filter(file -> file.toString().endsWith(".properties"))
                    .toList();
        }
        assertThat(catalogues).hasSizeGreaterThanOrEqualTo(12);
        for (Path catalogue : catalogues) {
            for (String line : Files.readAllLines(catalogue)) {
                String said = line.strip().replace('\t', ' ');
                assertThat(FontFile.printable(said)).as(catalogue + ": " + line).isEqualTo(said);
            }
        }
    }
}
