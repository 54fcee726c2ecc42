package hearthcloth.idea;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An idea page opened from its file in Chromium, at the size of a telephone, with the network off. */
final class OpenedPage implements AutoCloseable {

    private static final Path CHROMIUM = Path.of(System.getProperty("chromium", "/usr/bin/chromium"));

    /** The planner takes seconds, and on a machine with much other work minutes. */
    private static final int PATIENCE_MS = 240_000;

    private final Playwright playwright;
    private final Browser chromium;
    private final BrowserContext context;
    private final Page page;
    private final List<String> troubles = new ArrayList<>();

    OpenedPage(Path file, ColorScheme scheme) {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-sync")));
        context = chromium.newContext(new Browser.NewContextOptions()
                .setHasTouch(true)
                .setIsMobile(true)
                .setOffline(true)
                .setColorScheme(scheme)
                .setViewportSize(360, 740));
        context.setDefaultTimeout(PATIENCE_MS);
        page = context.newPage();
        page.onRequest(request -> {
            if (!request.url().matches("(?s)(file|data|blob):.*")) {
                troubles.add("asks for " + request.url());
            }
        });
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                troubles.add(message.text());
            }
        });
        page.onPageError(troubles::add);
        page.navigate(file.toUri().toString());
        page.locator("body[data-ready=yes]").waitFor();
    }

    Page page() {
        return page;
    }

    /** What the page did that it should not: asked a network, or stumbled. */
    List<String> troubles() {
        return List.copyOf(troubles);
    }

    /** What the page's own worker answers to a question, beside its form. */
    String answered(Map<String, Object> question, String field) {
        return (String) page.evaluate("""
                ([question, field]) => new Promise((done) => {
                  const heard = (event) => {
                    if (event.data[field] !== undefined || event.data.trouble) {
                      worker.removeEventListener('message', heard);
                      done(event.data[field] ?? event.data.trouble);
                    }
                  };
                  worker.addEventListener('message', heard);
                  worker.postMessage({guideline, ...question});
                })
                """, List.of(question, field));
    }

    /** WCAG 2.2 A and AA as far as axe can tell. */
    List<String> violations() {
        AxeRunOptions only = new AxeRunOptions();
        only.setResultTypes(List.of("violations"));
        return new AxeBuilder(page)
                        .options(only)
                        .setLegacyMode(true)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                        .analyze()
                        .getViolations()
                        .stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                + rule.getNodes().stream()
                                        .map(node -> String.valueOf(node.getHtml()))
                                        .limit(3)
                                        .toList())
                        .toList();
    }

    @Override
    public void close() {
        context.close();
        chromium.close();
        playwright.close();
    }
}
