package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From two photographs of one heap, each beside the measuring sheet, to a planned cloth, all on a phone. */
class HeapJourneyTest {

    @TempDir
    Path folder;

    private Browser browser;
    private Page page;

    @BeforeEach
    void open() {
        browser = new Browser(folder);
        browser.visit().post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
        page = browser.window(new Browser.Screen(390, 844), ColorScheme.LIGHT);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private void press(AriaRole role, String name) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    private void send(String name, byte[] jpeg) {
        page.navigate("/stash/photo");
        page.locator("label:has(input[value=sheet])").first().click();
        page.locator(".pick input").nth(1).setInputFiles(new FilePayload(name, "image/jpeg", jpeg));
        page.getByText("Chosen: " + name).waitFor();
        press(AriaRole.BUTTON, "Read it");
        page.locator("#sort").waitFor();
        assertThat(page.locator(".whole .piece")).hasCount(3);
        assertThat(page.locator(".whole polygon.reference")).hasCount(1);
        assertThat(page.locator(".first")).hasCount(0);
    }

    @Test
    void two_photographs_with_the_measuring_sheet_become_one_stash_and_a_planned_cloth() {
        send("first.jpg", TestPhotographs.firstOfHeap());
        page.locator("#accept").click();
        page.getByText("Added 3 pieces").waitFor();
        page.waitForURL(Pattern.compile(".*/stash\\?.*"));

        send("second.jpg", TestPhotographs.secondOfHeap());
        assertThat(page.locator("section:has(#twice) li")).hasCount(1);
        page.locator("section:has(#twice) li button").click();
        assertThat(page.locator("#twice")).hasCount(0);
        assertThat(page.locator("#accept")).hasText("Take 2 pieces in");
        Browser.assertFit(page, "the second photograph read");
        page.locator("#accept").click();
        page.getByText("Added 2 pieces").waitFor();
        page.waitForURL(Pattern.compile(".*/stash\\?.*"));

        browser.visit().post("/gift", "size", "30");
        page.navigate("/stash");
        press(AriaRole.LINK, "What can my heap make?");
        page.getByText("Take this one").first().click();
        page.locator("#bench").waitFor();
        assertThat(page.locator("#bench pattern image").first()).isAttached();
        browser.assertQuiet();
    }
}
