package hearthcloth.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import org.junit.jupiter.api.Test;

/** {@link EmbeddedLetters}: a picture carries the letters it needs and no others. */
class EmbeddedLettersTest {

    private static final Type BODY = Type.of(4, hearthcloth.draw.letters.Weight.SEMIBOLD, Palette.INK);

    private static String faces(String... words) {
        Sketch sketch = new Sketch();
        for (String text : words) {
            sketch.words(text, new Point(5, 5), BODY);
        }
        return EmbeddedLetters.faces(sketch.finished("words", 100, 20));
    }

    @Test
    void a_picture_without_words_carries_none() {
        assertThat(faces()).isEmpty();
    }

    @Test
    void the_same_letters_in_another_order_or_twice_are_the_same_font() {
        assertThat(faces("bar 1A")).isEqualTo(faces("A1 rab", "bar")).contains("font-family:'hearthcloth';");
        assertThat(faces("bar 1A")).isNotEqualTo(faces("bar 1B"));
    }

    @Test
    void each_script_has_a_face_of_its_own() {
        assertThat(faces("bar 보자기 ふろしき"))
                .contains(
                        "font-family:'hearthcloth';", "font-family:'hearthcloth ko';", "font-family:'hearthcloth ja';");
        assertThat(faces("bar")).doesNotContain("hearthcloth ko");
    }
}
