package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import com.microsoft.playwright.options.WaitForSelectorState;
import hearthcloth.geometry.Point;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.Store;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A missed piece is drawn in on a phone, by tapping and by keys; and nothing she opened shuts under her finger. */
class DrawingTest {

    private static final Path PICTURES = Path.of("target", "pictures");

    @TempDir
    Path folder;

    private Browser browser;
    private Page page;
    private String photograph = "";

    @BeforeEach
    void open() {
        photograph = BegunWork.photographRead(folder.resolve("work.db"), TestPhotographs.missed());
        browser = new Browser(folder);
        page = browser.touched(new Browser.Screen(390, 844), ColorScheme.LIGHT);
        page.navigate(photograph);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private void begin() {
        page.locator("#missed").tap();
        page.locator("#draw").waitFor();
    }

    private void told(String words) {
        page.locator(".draw .told:has-text(\"" + words + "\")").waitFor();
    }

    private void undoable(String what) {
        page.locator("#undo:has-text(\"" + what + "\")").waitFor();
    }

    /** Taps a place of the picture. */
    private void tap(Point at) {
        Point on = onScreen(at);
        page.touchscreen().tap(on.x(), on.y());
    }

    private Point onScreen(Point at) {
        List<?> found = (List<?>) page.evaluate(
                "([x, y]) => { const svg = document.querySelector('svg.drawing');"
                        + " const on = new DOMPoint(x, y).matrixTransform(svg.getScreenCTM()); return ['' + on.x, '' + on.y]; }",
                List.of(at.x(), at.y()));
        return new Point(Double.parseDouble("" + found.get(0)), Double.parseDouble("" + found.get(1)));
    }

    private FloorScale scale() {
        return Store.open(folder.resolve("work.db"), Clock.systemUTC())
                .photographs()
                .find(photograph.replaceFirst(".*/", ""))
                .flatMap(SavedPhoto::read)
                .orElseThrow()
                .scale()
                .scale();
    }

    private List<Point> corners() {
        FloorScale scale = scale();
        return TestPhotographs.FAINT.corners().stream()
                .map(at -> scale.inPicture(new Point(at.get(0) + 105, 148.5 - at.get(1))))
                .toList();
    }

    private void look(String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setCaret(ScreenshotCaret.INITIAL)
                .setPath(PICTURES.resolve("drawing-" + name + ".png")));
    }

    @Test
    void by_tapping_its_corners() {
        begin();
        Browser.assertFit(page, "drawing");
        look("1-begun");
        List<Point> corners = corners();
        tap(corners.get(0));
        told("1 corner; go on");
        button("Closer").tap();
        button("Closer").tap();
        tap(corners.get(1));
        told("2 corners");
        tap(new Point(corners.get(0).x() + 60, corners.get(0).y() + 60));
        told("3 corners; go on, or close it");
        button("Last corner back").tap();
        told("2 corners");
        tap(corners.get(2));
        told("3 corners");
        tap(corners.get(3));
        told("4 corners");
        look("2-drawn");
        for (Locator each : page.locator(".draw button, .draw a").all()) {
            assertThat(each.boundingBox().height).as(each.textContent()).isGreaterThanOrEqualTo(44);
        }
        tap(corners.get(0));
        undoable("draw in piece 5");

        page.locator("#close[data-piece='5']").waitFor();
        page.waitForURL(Pattern.compile(".*\\?piece=5"));
        PlaywrightAssertions.assertThat(page.locator("#close")).isFocused();
        // 11 × 22 cm, less what a first corner tapped from afar leaves open.
        PlaywrightAssertions.assertThat(page.locator("#close .big"))
                .hasText(
                        Pattern.compile("^(8\\.[5-9]|9|9\\.\\d|10|10\\.\\d) × (19\\.\\d|20|20\\.\\d|21|21\\.\\d) cm$"));
        PlaywrightAssertions.assertThat(page.locator("#close .corner")).hasCount(4);
        PlaywrightAssertions.assertThat(page.locator("#close")).containsText("Drawn in by you");
        look("3-measured");
        page.reload();
        page.locator("#close[data-piece='5']").waitFor();
        page.locator("#undo").tap();
        page.locator("#to-5").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
        browser.assertQuiet();
    }

    @Test
    void by_keys_alone() {
        page.locator("#missed").focus();
        page.keyboard().press("Enter");
        page.locator("#draw").waitFor();
        PlaywrightAssertions.assertThat(page.locator("#drawing")).isFocused();
        page.keyboard().press("Tab");
        PlaywrightAssertions.assertThat(page.locator("#cross")).isFocused();
        keyed("Shift+ArrowLeft", 12);
        keyed("Shift+ArrowDown", 8);
        page.keyboard().press("Enter");
        told("1 corner");
        keyed("Shift+ArrowRight", 5);
        page.keyboard().press("Enter");
        keyed("Shift+ArrowDown", 3);
        page.keyboard().press("Enter");
        told("3 corners");
        page.keyboard().press("Backspace");
        told("2 corners");
        page.keyboard().press("Enter");
        told("3 corners");
        look("4-by-keys");
        page.keyboard().press("Tab");
        keyed("Shift+Tab", 1);
        page.locator("#measure").focus();
        page.keyboard().press("Enter");
        undoable("draw in piece 5");
        PlaywrightAssertions.assertThat(page.locator("#close")).containsText("placed roughly");
        browser.assertQuiet();
    }

    private void keyed(String key, int times) {
        for (int i = 0; i < times; i++) {
            page.keyboard().press(key);
        }
    }

    @Test
    void a_bad_shape_is_told_and_stays_to_be_mended() {
        begin();
        List<Point> corners = corners();
        List<Integer> crossing = List.of(0, 2, 1, 3);
        for (int i = 0; i < crossing.size(); i++) {
            tap(corners.get(crossing.get(i)));
            told(i + 1 + " corner");
        }
        look("5-before");
        button("Close it and measure").tap();
        page.locator("#said:has-text('sides cross')").waitFor();
        PlaywrightAssertions.assertThat(page.locator(".draw .spot")).hasCount(4);
        look("5-crossing");
        button("Last corner back").tap();
        told("3 corners");
        page.goBack();
        page.locator("#missed").waitFor();
    }

    @Test
    void folds_focus_and_place_stay_when_a_part_is_swapped() {
        page.locator("#to-2").tap();
        page.locator("#close[data-piece='2']").waitFor();
        page.locator("#fold-sides summary").tap();
        Locator fold = page.locator(".fabric details").first();
        String id = fold.getAttribute("id");
        fold.locator("summary").tap();
        Locator more = page.locator("#do-more-2-1");
        more.scrollIntoViewIfNeeded();
        double before = box(more).y;
        more.focus();
        page.keyboard().press("Enter");
        undoable("corner more on piece 2");

        PlaywrightAssertions.assertThat(page.locator("#fold-sides[open]")).isVisible();
        PlaywrightAssertions.assertThat(page.locator("#" + id + "[open]")).isVisible();
        PlaywrightAssertions.assertThat(page.locator("#do-more-2-1")).isFocused();
        page.waitForCondition(() -> Math.abs(box(page.locator("#do-more-2-1")).y - before) <= 2);
        page.locator("#do-drop-2").focus();
        page.keyboard().press("Enter");
        undoable("leave out piece 2");
        PlaywrightAssertions.assertThat(page.locator("#do-drop-2")).isFocused();
        PlaywrightAssertions.assertThat(page.locator("#fold-sides[open]")).isVisible();
        browser.assertQuiet();
    }

    @Test
    void the_wheel_comes_nearer_to_where_it_is_and_leaves_the_page_alone() {
        page = browser.window(Browser.Screen.DESK, ColorScheme.LIGHT);
        page.navigate(photograph + "?do=draw");
        Point corner = corners().get(0);
        Point on = onScreen(corner);
        double whole = across();
        page.mouse().move(on.x(), on.y());
        page.keyboard().down("Control");
        page.mouse().wheel(0, -100);
        page.keyboard().up("Control");
        nearer(whole * 0.9);
        double once = across();
        page.mouse().wheel(0, -100);
        nearer(once * 0.9);
        for (int i = 0; i < 20; i++) {
            page.mouse().wheel(0, -100);
        }
        page.locator("[data-draw=closer][disabled]").waitFor();
        look("6-by-wheel");
        // A wheel tells its place in whole pixels, and what that leaves open grows as it comes nearer: less than √2
        // times 2.
        assertThat(onScreen(corner).to(on)).isLessThan(2.9);
        page.mouse().click(on.x(), on.y());
        told("1 corner");
        assertThat(placed(0).to(corner)).isLessThan(4);

        for (int i = 0; i < 40; i++) {
            page.mouse().wheel(0, 100);
        }
        page.locator("[data-draw=farther][disabled]").waitFor();
        assertThat(across()).isEqualTo(whole);
        browser.assertQuiet();
    }

    @Test
    void two_fingers_come_nearer_whichever_way_they_part() {
        begin();
        double whole = across();
        for (boolean upright : new boolean[] {false, true}) {
            Point middle = onScreen(between(corners()));
            pinch(middle, 30, 90, upright);
            nearer(whole / 2);
            page.waitForCondition(() -> onScreen(between(corners())).to(middle) < 8);
            assertThat(page.evaluate("() => '' + window.visualViewport.scale")).isEqualTo("1");
            PlaywrightAssertions.assertThat(page.locator(".draw .spot")).hasCount(0);
            farthest();
        }
        assertThat(across()).isEqualTo(whole);
        browser.assertQuiet();
    }

    @Test
    void it_fits_the_narrowest_window_in_light_and_dark() {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            page = browser.touched(Browser.Screen.NARROW, scheme);
            page.navigate(photograph + "?do=draw");
            page.locator("svg.drawing").scrollIntoViewIfNeeded();
            Browser.assertFit(page, "nothing drawn " + scheme);
            corners().forEach(this::tap);
            told("4 corners");
            Browser.assertFit(page, "drawn " + scheme);
            look("7-narrow-" + scheme);
        }
        browser.assertQuiet();
    }

    /** Two fingers on the screen that part about a middle, each so far from it. */
    private void pinch(Point middle, int from, int to, boolean upright) {
        CDPSession session = page.context().newCDPSession(page);
        touch(session, "touchStart", middle, from, upright);
        for (int far = from; far <= to; far += 5) {
            touch(session, "touchMove", middle, far, upright);
        }
        touch(session, "touchEnd", middle, 0, upright);
        session.detach();
    }

    private static void touch(CDPSession session, String type, Point middle, int far, boolean upright) {
        JsonArray fingers = new JsonArray();
        for (int side = -1; side <= 1 && far > 0; side += 2) {
            JsonObject finger = new JsonObject();
            finger.addProperty("id", side + 1);
            finger.addProperty("x", middle.x() + (upright ? 0 : side * far));
            finger.addProperty("y", middle.y() + (upright ? side * far : 0));
            fingers.add(finger);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", fingers);
        session.send("Input.dispatchTouchEvent", event);
    }

    private static Point between(List<Point> corners) {
        return new Point(
                (corners.get(0).x() + corners.get(2).x()) / 2,
                (corners.get(0).y() + corners.get(2).y()) / 2);
    }

    /** How many pixels of the picture are seen from left to right. */
    private double across() {
        return Double.parseDouble(
                page.locator("svg.drawing").getAttribute("viewBox").split(" ", -1)[2]);
    }

    private void farthest() {
        for (int i = 0; i < 20 && button("Farther").isEnabled(); i++) {
            button("Farther").tap();
        }
        PlaywrightAssertions.assertThat(button("Farther")).isDisabled();
    }

    private void nearer(double across) {
        page.waitForFunction("most => document.querySelector('svg.drawing').viewBox.baseVal.width < most", across);
    }

    /** Where a corner is that was placed. */
    private Point placed(int i) {
        String[] of = page.locator("#draw input[name=corners]")
                .inputValue()
                .split(" ", -1)[i]
                .split(",", -1);
        return new Point(Double.parseDouble(of[0]), Double.parseDouble(of[1]));
    }

    private static BoundingBox box(Locator locator) {
        return locator.boundingBox();
    }
}
