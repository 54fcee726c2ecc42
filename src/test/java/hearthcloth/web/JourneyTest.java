package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A maker's way through the workroom in a real browser: from the example to a cloth of her own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JourneyTest {

    @TempDir
    static Path folder;

    private Browser browser;
    private String taken = "";

    @BeforeAll
    void open() {
        browser = new Browser(folder);
        Page page = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
        page.navigate("/");
        Browser.assertFit(page, "the first page");
        page.navigate("/stash");
        button(page, "Play with the example").click();
        button(page, "Put the example away").waitFor();
        page.context().close();
    }

    @AfterAll
    void close() {
        browser.close();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** Opens the first proposal for the wish as it stands. */
    private Page cloth(Browser.Screen screen, ColorScheme scheme) {
        Page page = browser.window(screen, scheme);
        page.navigate("/cloth");
        page.getByText("Take this one").first().click();
        page.locator("#bench").waitFor();
        page.waitForLoadState();
        taken = page.url().replaceFirst(".*/cloth/(\\w+).*", "$1");
        return page;
    }

    /** A kept cloth counts on its pieces, and one heap has not enough for a cloth of every test. */
    @AfterEach
    void gives_its_pieces_back() {
        if (!taken.isEmpty()) {
            org.assertj.core.api.Assertions.assertThat(
                            browser.visit().post("/cloths/" + taken + "/remove").statusCode())
                    .isEqualTo(303);
            taken = "";
        }
    }

    @Test
    void the_ties_of_a_box_appear_while_it_is_typed() {
        Page page = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
        page.navigate("/gift");
        page.getByLabel("long").fill("12");
        page.getByLabel("wide").fill("9");
        page.getByLabel("high").fill("4");
        assertThat(page.locator("#ties")).containsText("29¾ in");
        Browser.assertFit(page, "gift with ties");
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Errand wrap"))
                .click();
        assertThat(page.locator(".answer")).containsText("errand wrap");
        page.getByLabel("high").fill("5");
        assertThat(page.locator(".answer")).containsText("errand wrap");
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("Bottle").setExact(true))
                .click();
        page.getByLabel("across").waitFor();
        page.getByText("I know the cloth, not the gift").click();
        page.getByLabel("Its size, in").fill("38");
        page.locator("#holds table").waitFor();
        Browser.assertFit(page, "gift with a cloth she owns");
        browser.assertQuiet();
    }

    @Test
    void a_bar_is_tapped_given_a_fabric_pulled_wider_undone_and_locked() {
        Page page = cloth(Browser.Screen.TABLET, ColorScheme.LIGHT);
        Browser.assertFit(page, "a cloth");
        page.locator("#tap-1A").click();
        page.getByText("Bar 1A", new Page.GetByTextOptions().setExact(true)).waitFor();
        Browser.assertFit(page, "a cloth with a bar chosen");
        String size = page.locator(".strip .big").textContent();
        String width = page.locator("#bar-width").inputValue();
        var grip = page.locator(".handle circle").first().boundingBox();
        page.mouse().move(grip.x + grip.width / 2, grip.y + grip.height / 2);
        page.mouse().down();
        page.mouse().move(grip.x + grip.width / 2 + 30, grip.y + grip.height / 2);
        page.mouse().up();
        assertThat(page.locator(".strip .big")).not().hasText(size);
        assertThat(page.locator("#bar-width")).not().hasValue(width);
        assertThat(page.locator(".panel .verdict")).containsText("Size ");
        button(page, "Undo").click();
        assertThat(page.locator(".strip .big")).hasText(size);
        button(page, "Lock as it is").click();
        button(page, "Locked; press to unlock").waitFor();
        browser.assertQuiet();
    }

    @Test
    void a_change_draws_anew_only_what_it_changes() {
        Page page = cloth(Browser.Screen.TABLET, ColorScheme.LIGHT);
        page.locator("#tap-1A").click();
        page.getByText("Bar 1A", new Page.GetByTextOptions().setExact(true)).waitFor();
        page.evaluate("() => { document.querySelectorAll('.panel details').forEach(one => one.open = true);"
                + " window.before = ['svg.cloth', '.choices svg', '.panel details', '#more', '.tiles']"
                + ".map(one => document.querySelector(one)); }");
        String width = page.locator("#bar-width").inputValue();
        page.locator("#more").click();
        assertThat(page.locator("#bar-width")).not().hasValue(width);
        assertThat(page.locator("#more")).isFocused();
        org.assertj.core.api.Assertions.assertThat(page.evaluate("() => window.before.every(one => one.isConnected)"
                        + " && [...document.querySelectorAll('.panel details')].every(one => one.open)"))
                .isEqualTo(true);
        // What was not sent again is of the version that came all the same.
        page.locator("#fell").selectOption("front");
        assertThat(page.locator("#bench")).hasAttribute("data-version", "3");
        assertThat(page.locator("#fell")).hasValue("front");
        browser.assertQuiet();
    }

    @Test
    void everything_can_be_done_with_the_keyboard_alone() {
        Page page = cloth(Browser.Screen.DESK, ColorScheme.DARK);
        page.locator("#tap-1B").focus();
        page.keyboard().press("Enter");
        page.getByText("Bar 1B", new Page.GetByTextOptions().setExact(true)).waitFor();
        page.locator("#round-1").focus();
        page.keyboard().press("Control+a");
        page.keyboard().type("4 1/8");
        page.keyboard().press("Tab");
        assertThat(page.locator("#round-1")).hasValue("4⅛");
        assertThat(page.locator("body *:focus")).isAttached();
        Browser.assertFit(page, "a cloth in the dark");
        browser.assertQuiet();
    }

    @Test
    void keys_of_one_letter_change_the_view_take_back_and_can_be_turned_off() {
        Page page = cloth(Browser.Screen.DESK, ColorScheme.LIGHT);
        String address = page.url();
        page.locator("h1").click();
        page.keyboard().press("2");
        assertThat(page.locator("#look-back[aria-current]")).isVisible();
        page.keyboard().press("3");
        assertThat(page.locator("#look-tied[aria-current]")).isVisible();
        page.keyboard().press("1");
        assertThat(page.locator("#look-flat[aria-current]")).isVisible();
        String size = page.locator(".strip .big").innerText();
        page.locator("#rounds").fill("1");
        page.locator("#rounds").press("Tab");
        assertThat(page.locator(".strip .big")).not().hasText(size);
        page.locator("h1").click();
        page.keyboard().press("u");
        assertThat(page.locator(".strip .big")).hasText(size);

        page.navigate("/settings");
        page.getByLabel("Keys of one letter or sign work on this device").uncheck();
        page.navigate(address);
        page.locator("h1").click();
        page.keyboard().press("2");
        page.locator("#tap-1A").click();
        page.getByText("Bar 1A", new Page.GetByTextOptions().setExact(true)).waitFor();
        assertThat(page.locator("#look-flat[aria-current]")).isVisible();
        browser.assertQuiet();
    }

    @Test
    void two_windows_never_overwrite_each_other() {
        Page one = cloth(Browser.Screen.TABLET, ColorScheme.LIGHT);
        Page two = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
        two.navigate(one.url());
        one.locator("#rounds").fill("1");
        one.locator("#rounds").press("Tab");
        one.locator("#round-2").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
        two.locator("#hearth-width").fill("5");
        two.locator("#hearth-width").press("Tab");
        two.getByText("in another window").waitFor();
        two.waitForURL("**/cloths/compare*");
        Browser.assertFit(two, "both designs");
        two.navigate(one.url());
        assertThat(two.locator("#round-1")).isVisible();
        assertThat(two.locator("#round-2")).hasCount(0);
        browser.assertQuiet();
    }
}
