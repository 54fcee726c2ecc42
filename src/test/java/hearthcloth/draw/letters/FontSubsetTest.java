package hearthcloth.draw.letters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link FontSubset}: the letters asked for and no others, as wide as {@link Typeface} says. */
class FontSubsetTest {

    private static TrueTypeFont font(Script script, Weight weight, Set<Integer> letters) throws IOException {
        byte[] file = Base64.getDecoder().decode(FontSubset.base64(script, weight, letters));
        return new TTFParser().parse(new RandomAccessReadBuffer(file));
    }

    private static Set<Integer> letters(String text) {
        Set<Integer> letters = new TreeSet<>();
        text.codePoints().forEach(letters::add);
        return letters;
    }

    @ParameterizedTest
    @EnumSource(Weight.class)
    void letters_that_were_asked_for_are_there_and_as_wide_as_the_drawing_takes_them_for(Weight weight)
            throws IOException {
        String text = "Cut it 12½ in × 3⅛ – ok";
        try (TrueTypeFont font = font(Script.WESTERN, weight, letters(text))) {
            var map = font.getUnicodeCmapLookup();
            for (int letter : letters(text)) {
                int glyph = map.getGlyphId(letter);
                assertThat(glyph).as(Character.toString(letter)).isPositive();
                assertThat(font.getAdvanceWidth(glyph) / (double) font.getUnitsPerEm())
                        .as(Character.toString(letter))
                        .isCloseTo(Typeface.width(Character.toString(letter), 1, weight), within(0.002));
            }
            assertThat(map.getGlyphId('Q')).as("nobody asked for Q").isZero();
        }
    }

    @Test
    void a_letter_that_no_font_of_ours_has_is_left_out() throws IOException {
        try (TrueTypeFont font = font(Script.WESTERN, Weight.REGULAR, letters("a\uE000"))) {
            assertThat(font.getUnicodeCmapLookup().getGlyphId('a')).isPositive();
            assertThat(font.getUnicodeCmapLookup().getGlyphId(0xE000)).isZero();
        }
    }

    @Test
    void a_page_that_shows_bare_pictures_has_a_face_of_each_weight() {
        String faces = FontSubset.pageFaces();
        for (Weight weight : Weight.values()) {
            assertThat(faces).contains("font-weight:" + weight.number() + ";");
        }
        assertThat(faces.split("@font-face", -1)).hasSize(Weight.values().length + 1);
    }
}
