package hearthcloth.web;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.web.gift.TiedAsked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Measures how often the tied gift is drawn a second while it is dragged, in Chromium's software renderer at tablet size.
 * No test, since it reads the clock: run by hand, it prints a line for each gift.
 */
final class FrameRate {

    private static final Browser.Screen SIZE = new Browser.Screen(1024, 768);

    private static final List<String> GIFTS = List.of(
            "box 12 x 9 x 4 in",
            "bottle 3 x 9 in",
            "two bottles 2 x 6 in",
            "ball 6 in",
            "books 6 x 4 x 1/2 in",
            "roll 2 x 9 in");

    /** Drags for three seconds, a move every frame, and counts the frames. */
    private static final String DRAG = """
            () => new Promise(done => {
              const canvas = document.querySelector("#turning canvas");
              const box = canvas.getBoundingClientRect();
              const at = (type, x) => canvas.dispatchEvent(new PointerEvent(type,
                { pointerId: 1, clientX: x, clientY: box.top + box.height / 2, bubbles: true }));
              canvas.setPointerCapture = () => {};
              at("pointerdown", box.left + 50);
              const start = performance.now();
              let frames = 0;
              const frame = now => {
                at("pointermove", box.left + 50 + 4 * ++frames);
                if (now - start < 3000) requestAnimationFrame(frame);
                else { at("pointerup", box.left + 50); done(frames * 1000 / (now - start)); }
              };
              requestAnimationFrame(frame);
            })
            """;

    private FrameRate() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("frames");
        try (Browser browser = new Browser(folder, Browser.TURNING)) {
            String tied = TurningTest.tied(browser.visit());
            Page page = browser.window(SIZE, ColorScheme.LIGHT);
            for (String gift : GIFTS) {
                page.navigate(tied + "?gift=" + TiedAsked.encoded(gift));
                page.locator("#turning[data-shown]:not([hidden]) canvas").waitFor();
                Object size = page.evaluate("() => { const c = document.querySelector('#turning canvas');"
                        + " return c.width + ' x ' + c.height; }");
                double rate = ((Number) page.evaluate(DRAG)).doubleValue();
                System.out.printf("%s: %.1f frames a second, %s%n", gift, rate, size);
            }
        }
    }
}
