package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link GiftWords}: each kind of gift with its measures, in each language. */
class GiftWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            box 30 x 20 x 8 cm;       30 × 20 × 8 cm
            bottle 8 x 30 cm;         30 cm
            two bottles 8 x 30 cm;    30 cm
            ball 22 cm;               22 cm
            books 21 x 15 x 2 cm;     21 × 15 × 2 cm
            roll 6 x 40 cm;           40 cm
            """)
    void a_gift_is_said_with_what_it_measures(String gift, String measure) {
        assertThat(GiftWords.of(Gift.parse(gift, null), Voice.english(Ruler.MILLIMETRES)))
                .contains(measure);
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void no_two_kinds_of_gift_are_said_alike(Language language) {
        Set<String> said = new HashSet<>();
        for (String gift : new String[] {
            "bottle 22 x 22", "two bottles 22 x 22", "ball 22", "roll 22 x 22", "box 22 x 22 x 22", "books 22 x 22 x 22"
        }) {
            assertThat(said.add(GiftWords.of(Gift.parse(gift, Unit.CENTIMETRE), Voice.of(language, Ruler.MILLIMETRES))))
                    .as(gift)
                    .isTrue();
        }
    }
}
