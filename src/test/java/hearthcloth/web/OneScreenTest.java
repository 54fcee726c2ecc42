package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stays in view beside the machine: everything of a step is on the screen at once, and nothing scrolls. */
class OneScreenTest {

    private static final Path PICTURES = Path.of("target", "pictures");
    private static final List<Browser.Screen> SCREENS =
            List.of(new Browser.Screen(1024, 768), new Browser.Screen(768, 1024), new Browser.Screen(390, 844));

    /** What of these lies outside the window or behind something; empty where nothing does. */
    private static final String HIDDEN = """
            parts => {
              const out = [];
              for (const part of parts) {
                const all = [...document.querySelectorAll(part)].filter(e => e.getClientRects().length);
                if (!all.length) out.push("no " + part);
                for (const e of all) {
                  const at = e.getBoundingClientRect();
                  if (at.width < 8 || at.height < 8) out.push(part + " has no room");
                  if (at.top < -1 || at.left < -1 || at.bottom > innerHeight + 1 || at.right > innerWidth + 1) out.push(part + " outside: " + Math.round(at.bottom) + " of " + innerHeight);
                  const top = document.elementFromPoint((at.left + at.right) / 2, (at.top + at.bottom) / 2);
                  if (top && !e.contains(top) && !top.contains(e)) out.push(part + " behind " + top.outerHTML.slice(0, 60));
                }
              }
              const scrolls = e => e && e.scrollHeight > e.clientHeight + 1;
              if (scrolls(document.scrollingElement)) out.push("the page scrolls");
              if (scrolls(document.querySelector("main"))) out.push("main scrolls");
              return out.join("; ");
            }
            """;

    @TempDir
    Path folder;

    private Browser browser;
    private String cloth = "";

    @BeforeEach
    void open() {
        cloth = BegunWork.exampleTaken(folder);
        browser = new Browser(folder);
    }

    @AfterEach
    void close() {
        browser.assertQuiet();
        browser.close();
    }

    private static void assertInView(Page page, String what, List<String> parts) {
        assertThat(page.evaluate(HIDDEN, parts)).as(what).isEqualTo("");
    }

    private static void seenWhole(Page page, String what, boolean isLast) {
        List<String> lines = page.locator(".todo li").allInnerTexts();
        assertThat(lines).as(what).hasSizeBetween(1, 5);
        assertThat(lines).as(what).allMatch(line -> line.length() <= 75);
        boolean seam = page.locator(".look[data-kind='seam']").count() > 0;
        assertInView(page, what, List.of(isLast ? ".steps #back" : ".steps .main"));
        assertInView(
                page,
                what,
                seam
                        ? List.of(".look svg", ".todo li", ".check strong", ".whole svg", ".begin h2")
                        : List.of(".look svg", ".todo li", ".whole svg", ".begin h2"));
    }

    @Test
    void all_of_a_sewing_step_is_on_one_screen() {
        browser.visit().post(cloth.replace("/cloth/", "/cut/") + "/done");
        String sew = cloth.replace("/cloth/", "/sew/");
        Page page = browser.window(SCREENS.get(0), ColorScheme.LIGHT);
        page.navigate(sew);
        int steps = Integer.parseInt(
                page.locator(".begin .second").innerText().replaceFirst("(?s)^Step \\d+ of (\\d+).*", "$1"));
        for (int step = 0; step < steps; step++) {
            page.navigate(sew + "?step=" + step);
            for (Browser.Screen screen : SCREENS) {
                Browser.resized(page, screen);
                // Looked at ahead, the last step has nothing after it to go to.
                seenWhole(page, "step " + (step + 1) + " at " + screen, step == steps - 1);
                if (step == 7) {
                    page.screenshot(
                            new Page.ScreenshotOptions().setPath(PICTURES.resolve("sew-" + screen.width() + ".png")));
                }
            }
        }
        page.context().close();
        Page dark = browser.window(SCREENS.get(0), ColorScheme.DARK);
        dark.navigate(sew + "?step=7");
        Browser.assertFit(dark, "a step in a dark room");
        dark.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve("sew-dark.png")));
    }
}
