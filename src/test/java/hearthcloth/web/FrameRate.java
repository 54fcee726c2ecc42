package hearthcloth.web;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.web.gift.TiedAsked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Measures how often the tied gift is drawn a second while it is dragged, in Chromium's software renderer at tablet size,
 * and how much processor time a frame takes, which hardly depends on what else the machine does. No test, since it reads
 * the clock: run by hand, it prints a line for each gift. With a folder of older scripts ({@code turn.js},
 * {@code drape.js}) these are measured in turn with the present ones.
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

    /** Drags for five seconds, a move every frame, and counts the frames. */
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
                if (now - start < 5000) requestAnimationFrame(frame);
                else {
                  const size = canvas.width + " x " + canvas.height;
                  at("pointerup", box.left + 50);
                  done([frames, now - start, size]);
                }
              };
              requestAnimationFrame(frame);
            })
            """;

    /** How long a tick of {@code /proc/<pid>/stat} is on Linux. */
    private static final double TICK_MS = 10;

    private FrameRate() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("frames");
        try (Browser browser = new Browser(folder, Browser.TURNING)) {
            String tied = TurningTest.tied(browser.visit());
            Page page = browser.window(SIZE, ColorScheme.LIGHT);
            for (String gift : GIFTS) {
                String address = tied + "?gift=" + TiedAsked.encoded(gift);
                if (words.length > 0) {
                    Path older = Path.of(words[0]);
                    for (String script : List.of("turn.js", "drape.js")) {
                        page.route(
                                "**/own/" + script,
                                route -> route.fulfill(new Route.FulfillOptions()
                                        .setContentType("text/javascript")
                                        .setPath(older.resolve(script))));
                    }
                    measure(page, address, gift + ", older");
                    page.unroute("**/own/turn.js");
                    page.unroute("**/own/drape.js");
                }
                measure(page, address, gift);
            }
        }
        System.exit(0);
    }

    private static void measure(Page page, String address, String what) throws IOException {
        page.navigate(address);
        page.locator("#turning[data-shown]:not([hidden]) canvas[data-rest]").waitFor();
        double before = processorMs();
        List<?> drawn = (List<?>) page.evaluate(DRAG);
        double frames = ((Number) drawn.get(0)).doubleValue();
        double took = ((Number) drawn.get(1)).doubleValue();
        System.out.printf(
                "%s: %.1f frames a second, %.1f ms of the processor each, %s points at the end%n",
                what, frames * 1000 / took, (processorMs() - before) / frames, drawn.get(2));
    }

    /** What the browser's drawing processes have used. */
    private static double processorMs() throws IOException {
        double sum = 0;
        for (ProcessHandle one : ProcessHandle.current().descendants().toList()) {
            Path folder = Path.of("/proc", String.valueOf(one.pid()));
            if (Files.isReadable(folder.resolve("cmdline"))
                    && Files.readString(folder.resolve("cmdline")).matches("(?s).*type=(gpu-process|renderer).*")) {
                String stat = Files.readString(folder.resolve("stat"));
                String[] numbers = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
                sum += TICK_MS * (Long.parseLong(numbers[11]) + Long.parseLong(numbers[12]));
            }
        }
        return sum;
    }
}
