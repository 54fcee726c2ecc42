package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreferredTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ko-KR,ko;q=0.9,en-US;q=0.8       | KOREAN   | KR  | A4
            ja                               | JAPANESE | JP  | A4
            fr-CA,fr;q=0.9                   | FRENCH   | CA  | LETTER
            fr;q=0.5, de-AT;q=0.8            | GERMAN   | AT  | A4
            es-MX                            | SPANISH  | MX  | LETTER
            es-419,es;q=0.9                  | SPANISH  | 419 | LETTER
            es                               | SPANISH  | ES  | A4
            en                               | ENGLISH  | US  | LETTER
            en,en-GB;q=0.9                   | ENGLISH  | GB  | A4
            nl-NL,pt;q=0.9,de;q=0.2          | GERMAN   | DE  | A4
            zh-Hant-TW,zh;q=0.9              | ENGLISH  | US  | LETTER
            ko-Kore-KR                       | KOREAN   | KR  | A4
            de;q=0,fr                        | FRENCH   | FR  | A4
            *                                | ENGLISH  | US  | LETTER
            de;q=high, ja;q=0.1              | JAPANESE | JP  | A4
            """)
    void the_first_language_of_ours_is_taken_with_its_place_and_the_paper_of_that_place(
            String header, Language language, String region, Paper paper) {
        assertThat(Preferred.of(header)).isEqualTo(new Preferred(language, region));
        assertThat(Paper.usedIn(region)).isEqualTo(paper);
    }

    @ParameterizedTest
    @CsvSource({
        "ko, KOREAN",
        "Korean, KOREAN",
        "한국어, KOREAN",
        "DE-at, GERMAN",
        " français , FRENCH",
        "ENGLISH, ENGLISH",
        "xx,",
        "'',"
    })
    void a_language_is_known_by_its_tag_and_by_its_names(String text, Language language) {
        assertThat(Language.named(text).orElse(null)).isEqualTo(language);
    }

    @Test
    void no_header_whatever_breaks_the_reading() {
        Random random = new Random(11);
        String letters = "deko-KR,;q=0.1*ü \t";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder header = new StringBuilder();
            for (int k = random.nextInt(30); k > 0; k--) {
                header.append(letters.charAt(random.nextInt(letters.length())));
            }
            assertThat(Preferred.of(header.toString()).language()).isNotNull();
        }
    }
}
