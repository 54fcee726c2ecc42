package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a photograph of scraps on a phone to a cloth drawn in their own swatches. Leaves pictures of the way. */
class PhotoJourneyTest {

    private static final Path PICTURES = Path.of("target", "pictures");

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

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator link(String name) {
        return page.getByRole(
                AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** With its caret: hiding that leaves styles on the page, which the workroom's policy refuses when htmx copies them. */
    private void look(String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setCaret(ScreenshotCaret.INITIAL)
                .setPath(PICTURES.resolve("photo-" + name + ".png")));
    }

    private void undoable(String what) {
        page.locator("#undo:has-text(\"" + what + "\")").waitFor();
    }

    private Locator size() {
        return page.locator("#close .big");
    }

    @Test
    void from_a_photograph_to_a_cloth_in_its_own_swatches() {
        sent();
        touchingOnesAreParted();
        aCornerIsMoved();
        oneIsLeftOut();
        named();
        takenInAndBackAndInAgain();
        planned();
        browser.assertQuiet();
    }

    private void sent() {
        page.navigate("/stash");
        link("Photograph them").first().click();
        button("Read it").click();
        page.getByText("No picture was chosen").waitFor();
        page.locator(".pick input")
                .nth(1)
                .setInputFiles(new FilePayload("night.jpg", "image/jpeg", TestPhotographs.night()));
        page.getByText("It is very dark.").waitFor();
        page.getByText("No white sheet shows clearly.").waitFor();
        page.locator(".pick input")
                .nth(1)
                .setInputFiles(new FilePayload("scraps.jpg", "image/jpeg", TestPhotographs.few()));
        page.getByText("Chosen: scraps.jpg").waitFor();
        page.getByText("Nothing against it at first sight.").waitFor();
        look("1-chosen");
        button("Read it").click();
        page.locator("#sort").waitFor();
        PlaywrightAssertions.assertThat(page.locator(".whole .piece")).hasCount(5);
        look("2-read");
        Browser.assertFit(page, "the photograph read");
    }

    private void touchingOnesAreParted() {
        page.locator(".first a").first().click();
        link("Split in two").click();
        page.locator("#line").waitFor();
        page.locator("#end-1").press("ArrowLeft");
        look("3-split");
        button("Split it here").click();
        undoable("split piece");
        PlaywrightAssertions.assertThat(page.locator(".whole .piece")).hasCount(6);
        PlaywrightAssertions.assertThat(page.locator(".first")).hasCount(0);
    }

    private void aCornerIsMoved() {
        page.locator("#to-2").click();
        page.locator("#close[data-piece='2']").waitFor();
        String before = size().textContent();
        BoundingBox dot = page.locator("#corner-1 .dot").boundingBox();
        double x = dot.x + dot.width / 2;
        double y = dot.y + dot.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + 10, y + 14);
        page.mouse().move(x + 18, y + 30);
        page.mouse().up();
        undoable("corner of piece 2");
        look("4-corner");
        PlaywrightAssertions.assertThat(size()).not().hasText(before);
        PlaywrightAssertions.assertThat(page.locator("#close")).containsText("Measured by your outline");
        page.locator("#undo").click();
        undoable("split piece");
        PlaywrightAssertions.assertThat(size()).hasText(before);

        page.locator("#corner-3").focus();
        page.keyboard().press("Shift+ArrowUp");
        page.keyboard().press("Shift+ArrowUp");
        undoable("corner of piece 2");
        PlaywrightAssertions.assertThat(page.locator("#corner-3")).isFocused();
        PlaywrightAssertions.assertThat(size()).not().hasText(before);
        page.locator("#undo").click();
        undoable("split piece");
    }

    private void oneIsLeftOut() {
        page.locator("#to-1").click();
        page.locator("#close[data-piece='1']").waitFor();
        button("Leave piece 1 out of the stash").click();
        undoable("leave out piece 1");
        button("Bring piece 1 back").waitFor();
        PlaywrightAssertions.assertThat(page.locator("#accept")).hasText("Take 5 pieces in");
    }

    private void named() {
        Locator navy = page.locator(".fabric:has(form:has-text('Name, 2 pieces')) input[name=name]");
        navy.fill("Harbour");
        navy.press("Tab");
        undoable("name Harbour");
        look("5-named");
    }

    private void takenInAndBackAndInAgain() {
        String photograph = page.url();
        page.locator("#accept").click();
        page.getByText("Added 5 pieces, numbers 1–5").waitFor();
        page.waitForURL(Pattern.compile(".*/stash\\?.*"));
        PlaywrightAssertions.assertThat(page.locator(".table pattern image").first())
                .isAttached();
        look("6-stash");
        page.locator("#undo").click();
        page.getByText("Your table is empty").waitFor();
        page.navigate(photograph);
        PlaywrightAssertions.assertThat(page.locator("#accept")).hasText("Take 5 pieces in");
        page.locator("#accept").click();
        page.waitForURL(Pattern.compile(".*/stash\\?.*"));
        PlaywrightAssertions.assertThat(page.locator(".group:has-text('Harbour')"))
                .isVisible();
    }

    private void planned() {
        browser.visit().post("/gift", "size", "30");
        page.navigate("/stash");
        link("What can my heap make?").click();
        page.getByText("Take this one").first().click();
        page.locator("#bench").waitFor();
        page.waitForLoadState();
        List<Locator> tiles = page.locator("#bench pattern image").all();
        assertThat(tiles).isNotEmpty();
        for (Locator tile : tiles) {
            var swatch = page.request().get(tile.getAttribute("href"));
            assertThat(swatch.headers().get("content-type")).startsWith("image/jpeg");
        }
        look("7-cloth");
    }
}
