package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Steps read aloud and lines dictated. The Chromium of tests has neither voices nor ears, which is one of the two cases; the
 * other is a browser that is given the two interfaces of the Web Speech API, which write down what they are asked.
 */
class ReadingAloudTest {

    private static final String VOICES = """
            window.saidAloud = [];
            Object.defineProperty(window, "speechSynthesis", { value: {
              speaking: false,
              getVoices: () => [{ lang: "ko-KR", localService: true }, { lang: "en-US", localService: false }, { lang: "en_GB", localService: true }],
              speak: said => window.saidAloud.push(said.lang + ": " + said.text),
              cancel: () => {},
              addEventListener: () => {}
            } });
            window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
            """;

    private static final String EARS = """
            window.SpeechRecognition = class extends EventTarget {
              static async available(how) { window.listensIn = how.langs[0]; return how.processLocally ? "available" : "unavailable"; }
              start() { window.ear = this; }
              stop() { this.dispatchEvent(new Event("end")); }
            };
            window.hear = words => window.ear.dispatchEvent(Object.assign(new Event("result"), { results: [[{ transcript: words }]] }));
            """;

    @TempDir
    Path folder;

    private Browser browser;
    private Page page;
    private String sew = "";

    @BeforeEach
    void open() {
        String cloth = BegunWork.exampleTaken(folder);
        browser = new Browser(folder);
        Visit visit = browser.visit();
        visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter", "language", "ko");
        visit.post(cloth.replace("/cloth/", "/cut/") + "/done");
        sew = cloth.replace("/cloth/", "/sew/");
        page = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    @Test
    void without_voices_or_ears_neither_is_offered() {
        page.navigate(sew);
        assertThat(page.locator("#needle h2")).isVisible();
        assertThat(page.locator("[data-speak]")).isHidden();
        page.navigate("/stash");
        assertThat(page.locator("#speak")).isHidden();
        browser.assertQuiet();
    }

    @Test
    void a_step_is_read_in_its_own_language_and_so_is_the_next_when_space_is_pressed_or_next_is_said() {
        page.addInitScript(VOICES);
        page.addInitScript(EARS);
        page.navigate(sew);
        page.locator("[data-speak]").click();
        assertThat(page.locator("[data-speak]")).hasAttribute("aria-pressed", "true");
        page.waitForCondition(() -> read(1, "ko-KR: "));

        page.locator("#main").focus();
        page.keyboard().press("Space");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "1");
        page.waitForCondition(() -> read(2, "ko-KR: "));

        page.waitForCondition(() -> (boolean) page.evaluate("() => !!window.ear"));
        page.evaluate("() => window.hear('다음이요')");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "2");
        page.waitForCondition(() -> read(3, "ko-KR: "));

        page.locator("[data-speak]").click();
        assertThat(page.locator("[data-speak]")).hasAttribute("aria-pressed", "false");
        browser.assertQuiet();
    }

    private boolean read(int count, String start) {
        return (boolean) page.evaluate(
                "([count, start]) => window.saidAloud.length === count && window.saidAloud.every(said => said.startsWith(start))",
                java.util.List.of(count, start));
    }

    @Test
    void the_line_of_the_stash_is_listened_to_in_her_own_language() {
        page.addInitScript(EARS);
        page.navigate("/stash");
        page.locator("#speak").click();
        page.waitForCondition(() -> (boolean) page.evaluate("() => !!window.ear && window.listensIn === 'ko-KR'"));
        page.evaluate("() => window.hear('파란 리넨 30 곱하기 40 센티 두 장')");
        assertThat(page.locator("#line")).hasValue("파란 리넨 30 곱하기 40 센티 두 장");
        browser.assertQuiet();
    }
}
