package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty workroom and a stash that is typed to a cloth that is cut, on a tablet. Leaves pictures of the way. */
class WholeJourneyTest {

    private static final Path PICTURES = Path.of("target", "pictures");

    @TempDir
    Path folder;

    private Browser browser;
    private Page page;

    @BeforeEach
    void open() {
        browser = new Browser(folder);
        page = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** A picture for the eye, and the rules of access for everyone. */
    private void look(String name) {
        Browser.assertFit(page, name);
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + ".png")));
    }

    private void say(String line, String seen) {
        Locator box = page.getByLabel("Say a piece");
        box.fill(line);
        box.press("Enter");
        page.locator(".group").getByText(seen).first().waitFor();
    }

    @Test
    void from_an_empty_workroom_to_a_cut_cloth_in_ten_inputs() {
        page.navigate("/gift");
        page.getByLabel("long").fill("12");
        page.getByLabel("wide").fill("9");
        page.getByLabel("high").fill("4");
        PlaywrightAssertions.assertThat(page.locator(".answer")).containsText("29¾ in square");
        look("1-gift");
        button("What can my heap make?").click();
        page.waitForURL("**/stash*");
        say("harbour linen 1 1/2 yd of 44 in, dark blue", "harbour linen");
        say("9 oat cotton 4 x 36 in, wheat", "oat cotton");
        say("3 madder 12 x 16 in, brown", "madder");
        look("2-stash");
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("What can my heap make?"))
                .click();
        page.getByText("Take this one").first().waitFor();
        page.locator(".progress").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
        look("3-gallery");
        page.getByText("Take this one").first().click();
        page.locator("#tap-1A").click();
        page.getByText("Bar 1A", new Page.GetByTextOptions().setExact(true)).waitFor();
        look("4-cloth");
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Cut this cloth"))
                .click();
        page.locator("#mat").waitFor();
        look("5-cut");
        cutEverything();
        page.getByText("back in the stash").waitFor();
        sewEverything();
        page.navigate("/cloths");
        look("8-cloths");
        printed();
        browser.assertQuiet();
    }

    /** Presses the one button after every cut; the page moves on by itself. */
    private void cutEverything() {
        for (int cut = 0; cut < 300; cut++) {
            String before = page.locator("#mat").getAttribute("data-ticked");
            button("Done").click();
            page.locator("#needle, #mat:not([data-ticked='" + before + "'])").waitFor();
            if (page.locator("#needle").count() > 0) {
                return;
            }
        }
        throw new AssertionError("three hundred cuts are made, and there are more");
    }

    /** Presses the one key after every step, as a foot would. */
    private void sewEverything() {
        page.locator("#needle").waitFor();
        page.waitForLoadState();
        for (int step = 0; page.locator("#done").count() > 0; step++) {
            if (step == 2) {
                look("6-sew");
                measured();
                continue;
            }
            page.keyboard().press(step % 2 == 0 ? "Space" : "Enter");
            page.locator("#needle[data-done='" + (step + 1) + "'], .fin").waitFor();
        }
        page.getByText("It is sewn, and it holds.").waitFor();
        look("7-finish");
    }

    /** The first bar came out a quarter narrower; she sews on, and the workroom reckons with it. */
    private void measured() {
        String planned = page.locator(".check strong").innerText();
        page.getByText("Mine differs").click();
        double width = Double.parseDouble(planned.split(" ", -1)[0].replaceAll("\\D", ""));
        page.getByLabel("Width").fill((int) width + " 1/4");
        button("See what follows").click();
        page.getByText("than planned").waitFor();
        look("6-ways");
        button("Sew on as it is").click();
        page.locator("#needle[data-done='3']").waitFor();
        page.waitForLoadState();
    }

    private void printed() {
        for (String paper : new String[] {"a4", "letter"}) {
            String address =
                    page.locator("a[href$='paper=" + paper + "']").first().getAttribute("href");
            var response = page.request().get(address);
            assertThat(response.status()).isEqualTo(200);
            assertThat(new String(response.body(), 0, 5, StandardCharsets.ISO_8859_1))
                    .isEqualTo("%PDF-");
        }
    }
}
