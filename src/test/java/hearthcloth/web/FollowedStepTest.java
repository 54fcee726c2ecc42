package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

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

/** A page that follows the other device at the same cloth; both answers come only when the test lets them. */
class FollowedStepTest {

    @TempDir
    Path folder;

    private final Deque<Route> followed = new ArrayDeque<>();
    private final Deque<Route> done = new ArrayDeque<>();
    private Browser browser;
    private Page page;
    private String sew = "";

    @BeforeEach
    void open() {
        String cloth = BegunWork.exampleTaken(folder);
        browser = new Browser(folder);
        Visit visit = browser.visit();
        visit.post(cloth.replace("/cloth/", "/cut/") + "/done");
        sew = cloth.replace("/cloth/", "/sew/");
        page = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
        page.navigate(sew);
        page.route(Pattern.compile(".*[?]known=.*"), followed::add);
        page.route(Pattern.compile(".*/done$"), done::add);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private void asked(Deque<Route> routes) {
        page.waitForCondition(() -> !routes.isEmpty());
    }

    private void answered(Deque<Route> routes, String address) {
        page.waitForResponse(Pattern.compile(address), () -> routes.remove().resume())
                .finished();
    }

    private void pressedElsewhere(int step) {
        browser.visit().post(sew + "/done", "step", String.valueOf(step));
    }

    @Test
    void what_it_sees_of_the_other_device_never_comes_between_a_step_and_its_answer() {
        asked(followed);
        pressedElsewhere(0);
        page.locator("#done").click();
        asked(done);
        answered(followed, ".*[?]known=.*");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "0");
        answered(done, ".*/done$");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "1");
        browser.assertQuiet();
        asked(followed);
        pressedElsewhere(1);
        answered(followed, ".*[?]known=.*");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "2");
        browser.assertQuiet();
    }

    @Test
    void what_comes_after_its_place_was_drawn_anew_is_left_aside() {
        asked(followed);
        page.locator("#done").click();
        asked(done);
        answered(done, ".*/done$");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "1");
        answered(followed, ".*[?]known=.*");
        page.locator("#done").click();
        asked(done);
        answered(done, ".*/done$");
        assertThat(page.locator("#needle")).hasAttribute("data-done", "2");
        browser.assertQuiet();
    }
}
