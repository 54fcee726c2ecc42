package hearthcloth.draw.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.junit.jupiter.api.Test;

/** The Korean and Japanese letters that ship, against the national standards that Java's charsets are made from. */
class ScriptTest {

    private static final Charset JAPAN = Charset.forName("EUC-JP");

    @Test
    void every_common_syllable_of_korean_has_a_letter_as_wide_as_measured() throws IOException {
        CharsetEncoder korea = Charset.forName("EUC-KR").newEncoder();
        int syllables = 0;
        for (char letter = 0xac00; letter <= 0xd7a3; letter++) {
            if (korea.canEncode(letter)) {
                syllables++;
                isSet(letter, Script.KOREAN, 920);
            }
        }
        assertThat(syllables).isEqualTo(2350);
    }

    @Test
    void all_kana_and_the_kanji_of_the_first_level_have_a_letter_as_wide_as_measured() throws IOException {
        int kanji = 0;
        for (int row = 0xa4; row <= 0xcf; row++) {
            for (int cell = 0xa1; cell <= 0xfe && (row < 0xa6 || row >= 0xb0); cell++) {
                String letter = new String(new byte[] {(byte) row, (byte) cell}, JAPAN);
                if (letter.codePointAt(0) != 0xfffd) {
                    kanji += row >= 0xb0 ? 1 : 0;
                    isSet(letter.codePointAt(0), Script.JAPANESE, 1000);
                }
            }
        }
        assertThat(kanji).isEqualTo(2965);
    }

    private static void isSet(int letter, Script script, int width) throws IOException {
        String text = Character.toString(letter);
        assertThat(Script.of(letter)).as(text).isEqualTo(script);
        assertThat(FontFile.has(letter)).as(text).isTrue();
        for (Weight weight : Weight.values()) {
            TrueTypeFont font = FontFile.shared(script, weight);
            int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
            if (glyph == 0 || font.getAdvanceWidth(glyph) != width) {
                assertThat(font.getAdvanceWidth(glyph)).as(text + weight).isEqualTo(width);
            }
        }
        assertThat(Typeface.width(text, 1, Weight.BOLD)).as(text).isEqualTo(width / 1000.0);
    }

    @Test
    void a_letter_that_no_font_has_is_shown_as_a_box_and_runs_join_up_to_the_line() {
        assertThat(FontFile.printable("실 🧵 糸 ☃ 鱻")).isEqualTo("실 □ 糸 □ □");
        String line = "Leinen 리넨 30 × 40 cm、麻";
        assertThat(Run.of(line).stream().map(Run::text)).containsExactly("Leinen ", "리넨", " 30 × 40 cm", "、麻");
        assertThat(Run.of(line).stream().map(Run::script))
                .containsExactly(Script.WESTERN, Script.KOREAN, Script.WESTERN, Script.JAPANESE);
        assertThat(Run.of("")).isEmpty();
        assertThat(Run.isWestern("Nähen, coutil, ñ")).isTrue();
    }

    @Test
    void the_licence_lies_beside_the_fonts() throws IOException {
        try (var in = FontFile.class.getResourceAsStream("OFL-Noto.txt")) {
            assertThat(in).isNotNull();
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .contains("SIL OPEN FONT LICENSE Version 1.1");
        }
    }
}
