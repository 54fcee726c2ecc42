package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Debian's Chromium on a workroom of its own. A page that asks anything of the internet, or that logs an error, fails the
 * test that shows it.
 */
final class Browser implements AutoCloseable {

    /** As seen on a phone, a tablet and a desk. */
    record Screen(int width, int height) {
        /** What a desk's window of 1280 leaves at 400 %: WCAG 2.2, 1.4.10. */
        static final Screen NARROW = new Screen(320, 640);

        /** A desk's window of 1440 at 200 %: WCAG 2.2, 1.4.4. */
        static final Screen ZOOMED = new Screen(720, 450);

        static final Screen PHONE = new Screen(360, 740);
        static final Screen TABLET = new Screen(820, 1180);
        static final Screen DESK = new Screen(1440, 900);
        static final Screen WALL = new Screen(2560, 1300);
    }

    /** Whatever is waited for comes in a second or not at all; on a machine with much other work, in minutes. */
    private static final int PATIENCE_MS = 180_000;

    private static final Path CHROMIUM = Path.of(System.getProperty("chromium", "/usr/bin/chromium"));
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** What sticks out to the right of the window; empty where nothing does. */
    private static final String TOO_WIDE = """
            () => document.documentElement.scrollWidth <= window.innerWidth ? "" : [...document.querySelectorAll("body *")]
              .filter(e => e.getBoundingClientRect().right > window.innerWidth)
              .map(e => e.outerHTML.slice(0, 120)).slice(0, 6).join(" | ") || "something"
            """;

    /** One Chromium for each set of switches serves all tests of this machine's process; each window shares nothing. */
    private static final Map<List<String>, com.microsoft.playwright.Browser> RUNNING = new HashMap<>();

    private final com.microsoft.playwright.Browser chromium;
    private final List<BrowserContext> windows = new ArrayList<>();
    private final Visit visit;
    private final List<String> troubles = new ArrayList<>();

    /** Draws WebGL in software, as on a machine without a graphics card. */
    static final String[] TURNING = {"--enable-unsafe-swiftshader", "--use-angle=swiftshader"};

    /** Draws no WebGL at all. */
    static final String STILL = "--disable-3d-apis";

    /** With {@code more} switches. */
    Browser(Path folder, String... more) {
        this(new Visit(folder), more);
    }

    Browser(Visit visit, String... more) {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        this.visit = visit;
        this.chromium = RUNNING.computeIfAbsent(List.of(more), Browser::started);
    }

    private static com.microsoft.playwright.Browser started(List<String> more) {
        return Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(Stream.concat(QUIET.stream(), more.stream()).toList()));
    }

    /** A window on a workroom that runs in a Java of its own; nothing is watched in it. */
    static Page apart(String address, Screen screen) {
        Page page = RUNNING.computeIfAbsent(List.of(), Browser::started)
                .newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                        .setBaseURL(address)
                        .setViewportSize(screen.width(), screen.height())
                        .setReducedMotion(ReducedMotion.REDUCE))
                .newPage();
        page.setDefaultTimeout(PATIENCE_MS);
        return page;
    }

    Visit visit() {
        return visit;
    }

    /** A new window, sharing nothing with the others. */
    Page window(Screen screen, ColorScheme scheme) {
        return window(screen, scheme, false);
    }

    /** The same on a screen that is touched. */
    Page touched(Screen screen, ColorScheme scheme) {
        return window(screen, scheme, true);
    }

    private Page window(Screen screen, ColorScheme scheme, boolean touch) {
        BrowserContext context = chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                .setHasTouch(touch)
                .setIsMobile(touch)
                .setBaseURL(visit.address())
                .setViewportSize(screen.width(), screen.height())
                .setColorScheme(scheme)
                .setReducedMotion(ReducedMotion.REDUCE));
        windows.add(context);
        context.onClose(windows::remove);
        context.setDefaultTimeout(PATIENCE_MS);
        Page page = context.newPage();
        page.onRequest(request -> {
            if (!request.url().startsWith(visit.address())
                    && !request.url().startsWith(visit.nearAddress())
                    && !request.url().startsWith("data:")
                    && !request.url().startsWith("blob:")) {
                troubles.add("asks the internet for " + request.url());
            }
        });
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")
                    && !message.text().contains("status of 4")
                    && !message.text().contains("Error Code 4")) {
                troubles.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(troubles::add);
        return page;
    }

    /** No page so far has asked the internet for anything or stumbled over its script or policy. */
    void assertQuiet() {
        assertThat(troubles).isEmpty();
    }

    /** WCAG 2.2 A and AA as far as axe can tell, and nothing wider than the window. */
    static void assertFit(Page page, String what) {
        // Our pages hold no other pages, so axe may run in the page itself: a second window for each look takes half
        // the time.
        // A page is hidden until its letters are there, and of what is hidden axe finds nothing amiss.
        page.waitForFunction("() => { const title = document.querySelector('h1');"
                + " return title && getComputedStyle(title).visibility === 'visible'; }");
        AxeRunOptions only = new AxeRunOptions();
        // What passed is not described, element by element.
        only.setResultTypes(List.of("violations"));
        var results = new AxeBuilder(page)
                .options(only)
                .setLegacyMode(true)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                .analyze();
        assertThat(results.getViolations().stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                + rule.getNodes().stream()
                                        .map(node -> String.valueOf(node.getHtml()))
                                        .limit(3)
                                        .toList())
                        .toList())
                .as(what)
                .isEmpty();
        assertNothingSticksOut(page, what);
    }

    /** Gives a page another window and waits until it has been drawn there. */
    static void resized(Page page, Screen screen) {
        page.setViewportSize(screen.width(), screen.height());
        page.waitForFunction("width => window.innerWidth === width", screen.width());
        page.evaluate("() => document.fonts.ready.then(() =>"
                + " new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done))))");
    }

    static void assertNothingSticksOut(Page page, String what) {
        assertThat(page.evaluate(TOO_WIDE))
                .as(what + " is wider than the window")
                .isEqualTo("");
    }

    @Override
    public void close() {
        List.copyOf(windows).forEach(BrowserContext::close);
        visit.close();
    }
}
