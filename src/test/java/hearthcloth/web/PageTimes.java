package hearthcloth.web;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.web.make.CutPageTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Measures what a maker waits for at tablet size, in a Chromium slowed down to a quarter: from a press to the new picture
 * of a cloth, and from asking for the gallery to its first card and to all of them. No test, since it reads the clock: run
 * by hand, it prints a line for each.
 */
final class PageTimes {

    private static final Browser.Screen SIZE = new Browser.Screen(1024, 768);
    private static final int SLOWER = 4;
    private static final int EDITS = 60;

    /** Presses, waits for the next version of the cloth, and for the frame that shows it. */
    private static final String EDIT = """
            id => new Promise(done => {
              const before = document.getElementById("bench").dataset.version;
              const start = performance.now();
              document.getElementById(id).click();
              const look = () => {
                if (document.getElementById("bench").dataset.version === before) requestAnimationFrame(look);
                else requestAnimationFrame(() => done(performance.now() - start));
              };
              requestAnimationFrame(look);
            })
            """;

    /** Since the page was asked for: the first card with both its pictures, and the time when none is looked for any more. */
    private static final String CARDS = """
            () => new Promise(done => {
              let first = 0;
              const look = () => {
                const cards = document.querySelectorAll(".proposal:not(.looked) .tied svg").length;
                if (cards && !first) first = performance.now();
                if (cards >= 4) done(Math.round(first) + " ms to the first card, " + Math.round(performance.now()) + " ms to four");
                else if (performance.now() > 20000) done(Math.round(first) + " ms to the first card; " + cards + " after 20 s");
                else requestAnimationFrame(look);
              };
              look();
            })
            """;

    private PageTimes() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("times");
        try (Browser browser = new Browser(folder)) {
            Visit visit = browser.visit();
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/example");
            String cloth = CutPageTest.taken(visit);
            Page page = browser.window(SIZE, ColorScheme.LIGHT);
            slowed(page);
            page.navigate(cloth + (cloth.contains("?") ? "&" : "?") + "at=1A");
            page.locator("#more").waitFor();
            List<Double> times = new ArrayList<>();
            for (int i = 0; i < EDITS; i++) {
                times.add(((Number) page.evaluate(EDIT, i % 2 == 0 ? "more" : "less")).doubleValue());
            }
            List<Double> warm = new ArrayList<>(times.subList(EDITS / 10, EDITS));
            Collections.sort(warm);
            System.out.printf(
                    "a width changed: median %.0f ms, 95th percentile %.0f ms (%d presses, browser slowed %d times)%n",
                    warm.get(warm.size() / 2), warm.get((int) (warm.size() * 0.95)), warm.size(), SLOWER);
            for (String gift : List.of("box 11 x 9 x 4 in", "bottle 3 x 12 in", "books 9 x 6 x 1 in")) {
                visit.post("/gift", "gift", gift);
                Page fresh = browser.window(SIZE, ColorScheme.LIGHT);
                slowed(fresh);
                fresh.navigate("/cloth");
                System.out.println("gallery for a " + gift + ": " + fresh.evaluate(CARDS));
                fresh.context().close();
            }
        }
    }

    private static void slowed(Page page) {
        CDPSession session = page.context().newCDPSession(page);
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", SLOWER);
        session.send("Emulation.setCPUThrottlingRate", rate);
    }
}
