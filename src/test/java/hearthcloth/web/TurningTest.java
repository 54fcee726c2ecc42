package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tied gift in a real browser: turned by drag, keys and buttons; still where it cannot be turned. */
class TurningTest {

    private static final Path PICTURES = Path.of("target", "pictures");

    @TempDir
    Path folder;

    /** The example's cloth. */
    static String tied(Visit visit) {
        visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
        visit.post("/example");
        Matcher cloth = Pattern.compile("/cloth/(ex[\\w-]+)").matcher(visit.page("/cloth"));
        assertThat(cloth.find()).isTrue();
        return "/tied/" + cloth.group(1);
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** A window in which the flat pieces stay, so that what is compared is drawn from one thing. */
    private static Page flat(Page page) {
        page.route(
                Pattern.compile("/tied/.*/drape"), route -> route.fulfill(new Route.FulfillOptions().setStatus(204)));
        return page;
    }

    private static void shown(Page page) {
        page.locator("#turning[data-shown]:not([hidden]) canvas").waitFor();
    }

    /** What the canvas shows once it has been drawn anew and rests; without its rim, where the focus and its buttons are. */
    private static byte[] seen(Page page) {
        page.evaluate("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
        page.locator("#turning canvas[data-rest]").waitFor();
        page.locator("#turning canvas").scrollIntoViewIfNeeded();
        var box = page.locator("#turning canvas").boundingBox();
        return page.screenshot(new Page.ScreenshotOptions()
                // hiding the caret would put a style into the page
                .setCaret(ScreenshotCaret.INITIAL)
                .setClip(box.x + 10, box.y + 10, box.width - 20, box.height - 70));
    }

    @Test
    void it_turns_under_the_finger_by_keys_and_by_buttons() {
        try (Browser browser = new Browser(folder, Browser.TURNING)) {
            // Drawn in software, a small canvas is drawn soonest.
            Page page = flat(browser.window(Browser.Screen.PHONE, ColorScheme.LIGHT));
            page.navigate(tied(browser.visit()));
            shown(page);
            byte[] first = seen(page);
            var box = page.locator("#turning canvas").boundingBox();
            page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
            page.mouse().down();
            page.mouse().move(box.x + box.width / 2 + 90, box.y + box.height / 2 - 30);
            page.mouse().up();
            byte[] dragged = seen(page);
            assertThat(dragged).isNotEqualTo(first);
            page.locator("#turning canvas").focus();
            page.keyboard().press("ArrowLeft");
            byte[] keyed = seen(page);
            assertThat(keyed).isNotEqualTo(dragged);
            page.keyboard().press("ArrowRight");
            assertThat(seen(page)).isNotEqualTo(keyed);
            page.keyboard().press("Home");
            assertThat(seen(page)).isEqualTo(first);
            button(page, "Tip away").click();
            assertThat(seen(page)).isNotEqualTo(first);
            PlaywrightAssertions.assertThat(page.locator("[data-said]")).hasText("tipped away");
            page.locator("#from-corner").click();
            assertThat(seen(page)).isEqualTo(first);
            page.locator("#from-above").click();
            assertThat(seen(page)).isNotEqualTo(first);
            PlaywrightAssertions.assertThat(page.locator("#from-above")).hasAttribute("aria-current", "true");
            page.setViewportSize(Browser.Screen.TABLET.width(), Browser.Screen.TABLET.height());
            seen(page);
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(PICTURES.resolve("7-tied.png"))
                    .setFullPage(true));
            browser.assertQuiet();
        }
    }

    @Test
    void what_is_chosen_is_shown_at_once() {
        try (Browser browser = new Browser(folder, Browser.TURNING)) {
            Page page = flat(browser.window(Browser.Screen.PHONE, ColorScheme.DARK));
            page.navigate(tied(browser.visit()));
            shown(page);
            byte[] first = seen(page);
            page.locator("#quarter-1").click();
            page.locator("#turning[data-shown*='turn=1']").waitFor();
            page.waitForURL(Pattern.compile(".*turn=1.*"));
            assertThat(seen(page)).isNotEqualTo(first);
            page.getByLabel("Its size").fill("bottle 3 x 9 in");
            page.keyboard().press("Enter");
            page.locator("#turning[data-shown*='bottle']").waitFor();
            page.locator("#tied", new Page.LocatorOptions().setHasText("one-bottle wrap"))
                    .waitFor();
            Browser.assertFit(page, "a bottle tied, in the dark");
            page.getByLabel("Its size").fill("box 30 x 30 x 30 in");
            page.keyboard().press("Enter");
            page.getByText("is large enough").waitFor();
            PlaywrightAssertions.assertThat(page.locator("#turning")).hasCount(0);
            browser.assertQuiet();
        }
    }

    /** Draping takes a while; the flat pieces stand until it is done and their view stays. */
    @Test
    @Tag("long")
    void the_cloth_comes_to_rest_in_place_of_its_flat_pieces() {
        try (Browser browser = new Browser(folder, Browser.TURNING)) {
            Page page = browser.window(Browser.Screen.PHONE, ColorScheme.LIGHT);
            page.navigate(tied(browser.visit()));
            shown(page);
            byte[] flat = seen(page);
            page.locator("#turning[data-draped]").waitFor(new Locator.WaitForOptions().setTimeout(300_000));
            assertThat(seen(page)).isNotEqualTo(flat);
            browser.assertQuiet();
        }
    }

    /** Where the browser draws no WebGL the still pictures stand alone, and nothing is missed. */
    @Test
    void the_pages_fit_and_stand_still_without_webgl() {
        try (Browser browser = new Browser(folder, Browser.STILL)) {
            String tied = tied(browser.visit());
            looked(browser, tied, Browser.Screen.PHONE, ColorScheme.LIGHT);
            looked(browser, tied, Browser.Screen.DESK, ColorScheme.DARK);
            browser.assertQuiet();
        }
    }

    private static void looked(Browser browser, String tied, Browser.Screen screen, ColorScheme scheme) {
        Page page = browser.window(screen, scheme);
        page.navigate(tied);
        page.locator(".tied-large").waitFor();
        PlaywrightAssertions.assertThat(page.locator("#turning")).isHidden();
        page.getByText("Patch by patch").click();
        Browser.assertFit(page, "tied, " + screen + scheme);
        page.navigate("/tie/one-bottle-wrap");
        Browser.assertFit(page, "a tie, " + screen + scheme);
        page.context().close();
    }
}
