package hearthcloth.web;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import hearthcloth.RunningWorkroom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Measures what a maker waits for at tablet size, in a Chromium slowed down to a quarter: from a press to the new picture
 * of a cloth, and from asking for the gallery to its first card and to all of them. No test, since it reads the clock: run
 * by hand, it prints a line for each. The workroom runs in a Java of its own, as she starts it.
 */
final class PageTimes {

    private static final Browser.Screen SIZE = new Browser.Screen(1024, 768);
    private static final int SLOWER = 4;
    private static final int EDITS = 60;

    /**
     * Presses, waits for the next version of the cloth, and until the frame that shows it is painted. Tells milliseconds: in
     * all, of those until the answer was there whole, and of those in the workroom alone; and how many bytes came.
     */
    private static final String EDIT = """
            id => new Promise(done => {
              const version = () => document.querySelector("#bench [name=version]").value;
              const before = version();
              performance.clearResourceTimings();
              const start = performance.now();
              document.getElementById(id).click();
              const shown = () => {
                const end = performance.now();
                const asked = performance.getEntriesByType("resource").find(one => one.name.endsWith("/change"));
                done([end - start, asked.responseEnd - start, asked.responseStart - asked.requestStart, asked.encodedBodySize]);
              };
              const look = () => {
                if (version() === before) requestAnimationFrame(look);
                else setTimeout(shown, 0);
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
        try (RunningWorkroom room =
                RunningWorkroom.opened("--data", folder.resolve("work.db").toString(), "--new")) {
            String address = "http://localhost:" + room.port();
            String token = room.token("/gift");
            room.post("/settings", token, "ruler", "EIGHTHS", "paper", "letter");
            room.post("/example", token);
            Page page = slowed(Browser.apart(address, SIZE));
            page.navigate(taken(page) + "?at=1A");
            page.locator("#more").waitFor();
            List<List<Double>> times = new ArrayList<>();
            for (int i = 0; i < EDITS; i++) {
                times.add(edited(page, i % 2 == 0 ? "more" : "less"));
            }
            times.subList(0, EDITS / 6).clear();
            told(times);
            for (String gift : List.of("box 11 x 9 x 4 in", "bottle 3 x 12 in", "box 8 x 6 x 3 in")) {
                for (int slower : List.of(1, SLOWER)) {
                    room.post("/gift", token, "gift", slower == 1 ? gift : gift.replace(" in", ".5 in"));
                    Page fresh = Browser.apart(address, SIZE);
                    slowed(fresh, slower);
                    fresh.navigate("/cloth");
                    System.out.printf(
                            "gallery for a %s, browser slowed %d times: %s%n", gift, slower, fresh.evaluate(CARDS));
                    fresh.context().close();
                }
            }
        }
        System.exit(0);
    }

    /** The first proposal for the gift that comes with the example, taken: its address. */
    private static String taken(Page page) {
        page.navigate("/cloth");
        page.evaluate(CARDS);
        page.locator(".proposal button").first().click();
        page.locator("#bench").waitFor();
        return page.url().replaceFirst("[?].*", "");
    }

    private static void told(List<List<Double>> times) {
        List<String> parts = List.of("in all", "until the answer is there", "in the workroom", "bytes");
        for (int part = 0; part < parts.size(); part++) {
            int at = part;
            List<Double> sorted =
                    times.stream().map(one -> one.get(at)).sorted().toList();
            System.out.printf(
                    "a width changed, %s: median %.0f, 95th percentile %.0f (%d presses, browser slowed %d times)%n",
                    parts.get(part),
                    sorted.get(sorted.size() / 2),
                    sorted.get((int) (sorted.size() * 0.95)),
                    sorted.size(),
                    SLOWER);
        }
    }

    private static List<Double> edited(Page page, String button) {
        return ((List<?>) page.evaluate(EDIT, button))
                .stream().map(number -> ((Number) number).doubleValue()).toList();
    }

    private static Page slowed(Page page) {
        return slowed(page, SLOWER);
    }

    private static Page slowed(Page page, int times) {
        CDPSession session = page.context().newCDPSession(page);
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", times);
        session.send("Emulation.setCPUThrottlingRate", rate);
        return page;
    }
}
