package hearthcloth.web.house;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the drawer asks once: ruler, paper and language; at first as the browser says, then as it was chosen. */
class SettingsPageTest {

    private static String chosen(String page, String field) {
        return page.replaceAll("(?s).*<select name=\"" + field + "\">(.*?)</select>.*", "$1")
                .replaceAll("(?s).*<option value=\"(..)\" lang=\"..\" selected>.*", "$1");
    }

    private static boolean isChecked(String page, String value) {
        return page.matches("(?s).*<input type=\"radio\" name=\"(?:ruler|paper)\" value=\"" + value + "\" checked>.*");
    }

    @Test
    void a_browser_is_met_in_its_language_with_its_paper_and_measure_until_she_chooses(@TempDir Path folder) {
        try (Visit visit = new Visit(folder)) {
            String korean = visit.see("/settings", "Accept-Language", "ko-KR,ko;q=0.9,en;q=0.8")
                    .body();
            assertThat(chosen(korean, "language")).isEqualTo("ko");
            assertThat(isChecked(korean, "a4")).isTrue();
            assertThat(isChecked(korean, "MILLIMETRES")).isTrue();
            assertThat(korean).contains("<html lang=\"ko\">", "한국어", "쓰시는 자");

            String mexican = visit.see("/settings", "Accept-Language", "es-MX").body();
            assertThat(chosen(mexican, "language")).isEqualTo("es");
            assertThat(isChecked(mexican, "letter")).isTrue();

            String plain = visit.page("/settings");
            assertThat(chosen(plain, "language")).isEqualTo("en");
            assertThat(isChecked(plain, "EIGHTHS")).isTrue();
            assertThat(plain).contains("<html lang=\"en\">", "The ruler in your hand");

            visit.post("/settings", "ruler", "SIXTEENTHS", "paper", "letter", "language", "de");
        }
        try (Visit again = new Visit(folder)) {
            String page = again.see("/settings", "Accept-Language", "ja").body();
            assertThat(chosen(page, "language")).isEqualTo("de");
            assertThat(isChecked(page, "letter")).isTrue();
            assertThat(isChecked(page, "SIXTEENTHS")).isTrue();
            assertThat(again.see("/stash", "Accept-Language", "ja").body()).contains("data-language=\"de\"");
            again.post("/settings", "ruler", "SIXTEENTHS", "paper", "letter", "language", "xx");
            assertThat(chosen(again.page("/settings"), "language")).isEqualTo("de");
        }
    }

    @Test
    void the_language_of_a_page_is_the_one_its_words_are_in(@TempDir Path folder) {
        try (Visit visit = new Visit(folder)) {
            assertThat(visit.see("/stash", "Accept-Language", "ko").body())
                    .contains("<html lang=\"ko\">", "어떤 천이 있나요?")
                    .doesNotContain("What have you got");
            assertThat(visit.see("/gift?kind=box&a=30&b=20&c=10.5", "Accept-Language", "de")
                            .body())
                    .contains("<html lang=\"de\">", "Vier-Zipfel-Knoten", "cm im Quadrat")
                    .doesNotContain(" square");
        }
    }
}
