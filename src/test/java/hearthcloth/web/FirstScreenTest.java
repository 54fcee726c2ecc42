package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import hearthcloth.web.make.CutPageTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is to be seen at once is on one screen, pages are light, and a first cloth takes few inputs. */
class FirstScreenTest {

    private static final Browser.Screen LANDSCAPE = new Browser.Screen(1024, 768);
    private static final Browser.Screen PORTRAIT = new Browser.Screen(768, 1024);
    private static final Browser.Screen PHONE = new Browser.Screen(390, 844);

    private static final Browser.Screen DESK = new Browser.Screen(1440, 900);

    /** Without her photographs. */
    private static final int MOST_BYTES = 250_000;

    /** How far what a table holds passes what of it is seen. */
    private static final String PASSED =
            "() => { const t = document.querySelector('.table'); return t.scrollHeight - t.clientHeight; }";

    /** 44 pieces of 13 fabrics; invented. */
    private static final String FORTY_FOUR = """
        navy linen 5 x 22 in
        navy linen 13 x 17 in
        navy linen 10 x 10 in
        birds print 12 x 22 in, right side
        birds print 5 x 9 in, right side
        oat cotton 4 x 30 in
        oat cotton 4 x 26 in
        oat cotton 9 x 16 in
        madder red check 12 x 24 in
        madder red check 6 x 19 in
        madder red check 8 x 18 in
        madder red check 3 1/2 x 13 in
        dark green linen 4 1/2 x 30 in
        dark green linen 2 1/2 x 25 in
        dark green linen 11 x 22 in
        dark green linen 11 x 12 in
        blue stripe 6 x 28 in
        blue stripe 3 x 17 in
        12 rose dot 4 x 8 in, right side
        rose dot 5 x 17 in, right side
        ochre lantern print 3 1/2 x 24 in, right side
        ochre lantern print 8 x 9 in, right side
        ochre lantern print 8 x 14 in, right side
        plum posy 5 x 30 in, right side
        plum posy 7 x 10 in, right side
        ivory cotton 3 x 18 in
        ivory cotton 12 x 18 in
        tan twill 4 x 29 in, right side
        tan twill 8 x 17 in, right side
        grey corduroy 4 x 20 in, right side, nap
        grey corduroy 6 x 11 in, right side, nap
        grey corduroy 4 x 9 in, right side, nap
        teal poplin 9 x 13 in
        """;

    /** Twenty scraps; invented. */
    private static final String TWENTY = """
        8 navy linen 12 x 18 in
        4 oat cotton 6 x 30 in
        4 madder check 8 x 24 in
        4 rose dot 5 x 28 in
        """;

    @TempDir
    Path folder;

    /** Everything in a part is inside the window without scrolling. */
    private static void assertSeen(Page page, String part) {
        assertThat(page.locator(part).first())
                .isInViewport(
                        new com.microsoft.playwright.assertions.LocatorAssertions.IsInViewportOptions().setRatio(1));
    }

    @Test
    void a_stash_of_44_pieces_of_13_fabrics_lies_on_one_tablet_screen() {
        try (Browser browser = new Browser(folder)) {
            browser.visit().post("/stash/line", "line", FORTY_FOUR);
            for (Browser.Screen screen : List.of(LANDSCAPE, PORTRAIT)) {
                Page page = browser.window(screen, ColorScheme.LIGHT);
                page.navigate("/stash");
                assertThat(page.locator(".lot")).hasCount(33);
                assertThat(page.locator(".group")).hasCount(13);
                assertThat(page.evaluate(PASSED)).isEqualTo(0);
                assertSeen(page, ".say");
                page.locator(".lot input").nth(4).check();
                assertThat(page.locator(".choice .many")).hasText("1 chosen");
                assertSeen(page, ".choice");
                Browser.assertFit(page, "a stash with a piece chosen");
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
                Browser.assertFit(page, "a stash with a piece chosen, in the dark");
                page.context().close();
            }
            browser.assertQuiet();
        }
    }

    @Test
    void what_a_telephone_shows_first_is_whole() {
        try (Browser browser = new Browser(folder)) {
            browser.visit().post("/stash/line", "line", FORTY_FOUR);
            Page page = browser.window(PHONE, ColorScheme.LIGHT);
            page.navigate("/stash");
            assertSeen(page, ".say");
            assertSeen(page, ".key .go");
            page.navigate("/gift?kind=box&a=12&b=9&c=4");
            assertSeen(page, ".sized");
            browser.assertQuiet();
        }
    }

    @Test
    void gift_drawing_ties_and_answer_are_on_one_tablet_screen() {
        try (Browser browser = new Browser(folder)) {
            Page page = browser.window(LANDSCAPE, ColorScheme.LIGHT);
            page.navigate("/gift?kind=box&a=12&b=9&c=4");
            for (String part : List.of(".shapes", ".sized", ".tiecards", ".answer")) {
                assertSeen(page, part);
            }
            Page upright = browser.window(PORTRAIT, ColorScheme.LIGHT);
            upright.navigate("/gift?kind=box&a=12&b=9&c=4");
            for (String part : List.of(".shapes", ".sized", ".answer")) {
                assertSeen(upright, part);
            }
            browser.assertQuiet();
        }
    }

    @Test
    void pages_with_sixty_pieces_are_light() {
        try (Visit visit = new Visit(folder)) {
            visit.post("/example");
            String id = CutPageTest.taken(visit).replaceFirst(".*/cloth/(\\w+).*", "$1");
            for (String path : List.of(
                    "/",
                    "/gift?kind=box&a=12&b=9&c=4",
                    "/stash",
                    "/cloth",
                    "/cloth/" + id,
                    "/cloth/" + id + "?look=back",
                    "/cloth/" + id + "?look=tied",
                    "/cut/" + id,
                    "/sew/" + id,
                    "/tied/" + id,
                    "/made/" + id,
                    "/cloths",
                    "/settings")) {
                assertThat(visit.page(path).getBytes(StandardCharsets.UTF_8).length)
                        .as(path)
                        .isLessThan(MOST_BYTES);
            }
        }
    }

    /** How far things on the page have moved by themselves, as browsers count it. */
    private static final String SHIFTED = """
            () => new Promise(done => {
              let sum = 0;
              const count = entry => { sum += entry.value; };
              new PerformanceObserver(list => list.getEntries().forEach(count))
                .observe({ type: "layout-shift", buffered: true });
              requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(sum), 0)));
            })
            """;

    /** A hundredth is a line of text that moves by a dot or two; common sense, no source. */
    private static final double STILL = 0.02;

    @Test
    void nothing_moves_by_itself_on_any_page_at_any_size() {
        String id = BegunWork.exampleTaken(folder).replaceFirst(".*/cloth/(\\w+).*", "$1");
        try (Browser browser = new Browser(folder)) {
            for (Browser.Screen screen : List.of(LANDSCAPE, PORTRAIT, PHONE, DESK)) {
                Page page = browser.window(screen, ColorScheme.LIGHT);
                for (String path : List.of(
                        "/",
                        "/gift?kind=box&a=12&b=9&c=4",
                        "/stash",
                        "/cloth/" + id,
                        "/cloth/" + id + "?look=tied",
                        "/cut/" + id,
                        "/sew/" + id,
                        "/made/" + id,
                        "/cloths",
                        "/settings")) {
                    page.navigate(path);
                    page.waitForLoadState(LoadState.NETWORKIDLE);
                    assertThat(((Number) page.evaluate(SHIFTED)).doubleValue())
                            .as(path + " at " + screen)
                            .isLessThan(STILL);
                }
                page.context().close();
            }
        }
    }

    @Test
    void from_twenty_scraps_and_a_bottle_to_a_first_cloth_in_eight_inputs() {
        try (Browser browser = new Browser(folder)) {
            Page page = browser.window(LANDSCAPE, ColorScheme.LIGHT);
            page.navigate("/");
            int inputs = 0;
            page.getByRole(
                            AriaRole.LINK,
                            new Page.GetByRoleOptions().setName("Bottle").setExact(true))
                    .click();
            inputs++;
            page.getByLabel("across").fill("3");
            inputs++;
            page.getByLabel("high").fill("12");
            inputs++;
            assertThat(page.locator(".answer")).containsText("square");
            page.getByText("What can my heap make?").click();
            inputs++;
            Locator line = page.locator("#line");
            line.fill(TWENTY);
            inputs++;
            line.press("Enter");
            inputs++;
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("What can my heap make?"))
                    .click();
            inputs++;
            page.getByText("Take this one").first().click();
            inputs++;
            page.waitForURL(Pattern.compile(".*/cloth/\\w{12}.*"));
            assertThat(inputs).isLessThanOrEqualTo(8);
            browser.assertQuiet();
        }
    }
}
