package hearthcloth.draw.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.junit.jupiter.api.Test;

/** The table of widths against the font files it was made from. */
class LetterWidthsTest {

    @Test
    void the_table_has_every_letter_of_the_fonts_as_wide_as_they_say() throws IOException {
        for (Weight weight : Weight.values()) {
            TrueTypeFont font = FontFile.shared(Script.WESTERN, weight);
            CmapLookup letters = font.getUnicodeCmapLookup();
            assertThat(font.getUnitsPerEm()).isEqualTo(1000);
            for (int letter = ' '; letter <= Character.MAX_CODE_POINT; letter++) {
                int glyph = letters.getGlyphId(letter);
                int width = glyph == 0 ? -1 : font.getAdvanceWidth(glyph);
                if (LetterWidths.of(letter, weight) != width) {
                    assertThat(LetterWidths.of(letter, weight))
                            .as(weight + ", letter " + letter)
                            .isEqualTo(width);
                }
            }
        }
    }
}
