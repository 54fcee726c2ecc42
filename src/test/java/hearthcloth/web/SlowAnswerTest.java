package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever she presses while an answer is under way is done in its turn; answers here come only when the test lets them. */
class SlowAnswerTest {

    @TempDir
    Path folder;

    private final Deque<Route> asked = new ArrayDeque<>();
    private Browser browser;
    private Page page;
    private String photograph = "";

    @BeforeEach
    void open() {
        photograph = BegunWork.photographRead(folder.resolve("work.db"), TestPhotographs.missed());
        browser = new Browser(folder);
        page = browser.window(Browser.Screen.DESK, ColorScheme.LIGHT);
        page.navigate(photograph);
        page.locator("#sort").waitFor();
        page.locator("#to-2").click();
        page.locator("#close[data-piece='2']").waitFor();
        page.locator("#fold-sides summary").click();
        page.route(Pattern.compile(".*/(change|undo)$"), asked::add);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    /** Lets the first answer come that has been asked for and not come yet. */
    private void answer() {
        page.waitForCondition(() -> !asked.isEmpty());
        asked.remove().resume();
    }

    private Locator undo() {
        return page.locator("#undo");
    }

    @Test
    void what_is_pressed_meanwhile_waits_its_turn_and_the_page_says_so() {
        page.locator("#do-more-2-1").click();
        page.locator("#do-drop-2").click();
        assertThat(page.locator("#waiting")).hasText("Keeping it; one more waits.");
        answer();
        assertThat(undo()).containsText("corner more on piece 2");
        answer();
        assertThat(undo()).containsText("leave out piece 2");
        assertThat(page.locator("#do-drop-2")).hasText("Bring it back");
        assertThat(page.locator("#do-drop-2")).isFocused();
        assertThat(page.locator("#waiting")).hasText("");
        browser.assertQuiet();
    }

    @Test
    void a_corner_led_by_keys_meanwhile_stays_led_and_is_kept() {
        page.locator("#do-more-2-1").click();
        page.locator("#corner-1").focus();
        page.keyboard().press("Shift+ArrowUp");
        page.keyboard().press("Shift+ArrowUp");
        answer();
        assertThat(page.locator("#close .corner")).hasCount(5);
        assertThat(page.locator("#corner-1")).isFocused();
        answer();
        assertThat(undo()).containsText("corner of piece 2");
        assertThat(page.locator("#corner-1")).isFocused();
        browser.assertQuiet();
    }

    @Test
    void an_answer_that_comes_under_a_finger_waits_until_it_is_lifted() {
        page.locator("#do-more-2-1").click();
        page.locator("#do-drop-2").hover();
        page.mouse().down();
        page.waitForResponse(Pattern.compile(".*/change$"), this::answer).finished();
        assertThat(page.locator("#close .corner")).hasCount(4);
        page.mouse().up();
        answer();
        assertThat(undo()).containsText("leave out piece 2");
        assertThat(page.locator("#close .corner")).hasCount(5);
        browser.assertQuiet();
    }

    @Test
    void a_link_that_leads_away_waits_until_all_is_kept() {
        page.locator("#do-more-2-1").click();
        page.locator("#do-drop-2").click();
        page.locator(".back a").click();
        answer();
        answer();
        page.waitForURL(Pattern.compile(".*/stash$"));
        page.unrouteAll();
        page.navigate(photograph);
        assertThat(undo()).containsText("leave out piece 2");
        browser.assertQuiet();
    }
}
