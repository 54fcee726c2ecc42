package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.web.door.Openness;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole cloth sewn beside the machine on two devices: a tablet that was let in by a code (at 127.0.0.2, which like a
 * network's address is not the machine's own), and the machine itself. Measures come out wrong in several ways, and the
 * connection is cut in the middle.
 */
class SewingJourneyTest {

    private static final Path PICTURES = Path.of("target", "pictures");

    @TempDir
    Path folder;

    private Workroom workroom;
    private Visit visit;
    private Browser browser;
    private Page desk;
    private Page tablet;
    private String sew = "";

    @BeforeEach
    void open() {
        String cloth = BegunWork.exampleTaken(folder);
        workroom = Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR);
        visit = new Visit(workroom);
        browser = new Browser(visit);
        visit.post(cloth.replace("/cloth/", "/cut/") + "/done");
        sew = cloth.replace("/cloth/", "/sew/");
        desk = browser.window(Browser.Screen.DESK, ColorScheme.LIGHT);
        tablet = browser.window(Browser.Screen.TABLET, ColorScheme.LIGHT);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private Locator button(String name) {
        return tablet.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private void comeIn() {
        desk.navigate("/devices");
        Browser.assertFit(desk, "the page that lets devices in");
        String code = desk.locator("strong.big").innerText();
        String there = "http://127.0.0.2:" + workroom.port();
        tablet.navigate(there + "/sew");
        Browser.assertFit(tablet, "the door");
        tablet.getByLabel("Code on the other screen").fill(code);
        button("Come in").click();
        tablet.waitForURL("**/sew*");
        tablet.navigate(there + sew);
        desk.navigate(sew);
    }

    private static int done(Page page) {
        return Integer.parseInt(String.valueOf(page.locator("#needle").getAttribute("data-done")));
    }

    private static void reached(Page page, int step) {
        page.locator("#needle[data-done='" + step + "']").waitFor();
    }

    private boolean isSeam() {
        return tablet.locator(".look[data-kind='seam']").count() > 0;
    }

    private void press() {
        int before = done(tablet);
        tablet.locator("#done").click();
        // The last one leads to the photograph and the slip.
        tablet.locator("#needle[data-done='" + (before + 1) + "'], .fin").waitFor();
    }

    /** Opens what is said about a step that came out otherwise. */
    private void mine() {
        if (tablet.locator(".mine[open]").count() == 0) {
            tablet.getByText("Mine differs").click();
        }
    }

    private void measure(String width) {
        mine();
        tablet.getByLabel("Width", new Page.GetByLabelOptions().setExact(true)).fill(width);
        button("See what follows").click();
    }

    private void choose(String way) {
        button(way).waitFor();
        Browser.assertFit(tablet, "the ways on");
        button(way).click();
        tablet.waitForURL(url -> !url.contains("/measure"));
        if (tablet.url().contains("/cut/")) {
            Browser.assertFit(tablet, "what is to be cut while sewing");
            cutWhatIsAsked();
        }
        arrived();
    }

    /** Makes the cuts that were asked for, piece by piece; after the last the page goes on to the sewing by itself. */
    private void cutWhatIsAsked() {
        while (tablet.locator("#mat").count() > 0) {
            String ticked = String.valueOf(tablet.locator("#mat").getAttribute("data-ticked"));
            Locator all = tablet.locator("#all-cut");
            (all.count() > 0 ? all : tablet.locator("#done")).click();
            tablet.locator("#mat:not([data-ticked='" + ticked + "']), #needle")
                    .first()
                    .waitFor();
        }
    }

    /** The page of a step is there as a whole. */
    private void arrived() {
        tablet.locator("#needle").waitFor();
        tablet.waitForLoadState();
    }

    private int whole() {
        return Integer.parseInt(tablet.locator(".check strong").innerText().split("\\D", 2)[0]);
    }

    @Test
    void a_whole_cloth_is_sewn_on_two_devices_with_wrong_measures_and_nothing_is_lost() {
        comeIn();
        press();
        press();
        reached(desk, 2);
        int wrong = 0;
        String size = "";
        while (tablet.locator("#done").count() > 0) {
            if (isSeam() && wrong < 5) {
                mishap(wrong);
                wrong++;
                size = visit.page(sew.replace("/sew/", "/cloth/"))
                        .replaceFirst("(?s).*<dd class=\"big\">([^<]+)</dd>.*", "$1");
            } else {
                press();
            }
        }
        tablet.getByText("It is sewn, and it holds.").waitFor();
        desk.getByText("Sewn.").waitFor();
        assertThat(wrong).isEqualTo(5);
        assertThat(visit.page("/cloths")).contains("· sewn").contains(size);
    }

    private void mishap(int which) {
        switch (which) {
            case 0 -> narrower();
            case 1 -> tooShort();
            case 2 -> outOfSquareAndCutOff();
            case 3 -> keptSize();
            default -> otherSideUp();
        }
    }

    private void narrower() {
        int before = done(tablet);
        measure("tea");
        tablet.getByText("is not a").waitFor();
        arrived();
        Browser.assertFit(tablet, "a measure that is asked about where it was written");
        assertThat(tablet.getByLabel("Width", new Page.GetByLabelOptions().setExact(true))
                        .inputValue())
                .isEqualTo("tea");
        measure(whole() - 1 + " 3/4");
        tablet.getByText("than planned").waitFor();
        tablet.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve("8-ways.png")));
        choose("Sew on as it is");
        reached(tablet, before + 1);
        reached(desk, before + 1);
    }

    private void tooShort() {
        tablet.getByText("Something went wrong").click();
        tablet.getByLabel("is too short").fill("3");
        button("Show the ways on").click();
        Locator anew = tablet.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("^Make the bar anew")));
        anew.first().waitFor();
        choose(anew.first().getAttribute("aria-label"));
        while (!isSeam()) {
            press();
        }
        press();
    }

    /** Two measures of one side, and no connection when it is said the first time. */
    private void outOfSquareAndCutOff() {
        int before = done(tablet);
        tablet.context().setOffline(true);
        tablet.locator("#done").click();
        tablet.getByText("The workroom does not answer").waitFor();
        tablet.context().setOffline(false);
        assertThat(visit.page(sew)).contains("data-done=\"" + before + "\"");
        int width = whole();
        measure(width + " 1/8 and " + width + " 3/8");
        tablet.getByText("One end is").waitFor();
        arrived();
        // The page that answers has the address of this one, which is still there for a moment.
        tablet.locator("#needle").evaluate("needle => needle.dataset.asked = 'yes'");
        measure(width + " 1/8");
        button("Sew on as it is")
                .or(tablet.locator("#needle:not([data-asked])"))
                .first()
                .waitFor();
        tablet.waitForLoadState();
        if (button("Sew on as it is").count() > 0) {
            choose("Sew on as it is");
        }
        reached(tablet, before + 1);
    }

    private void keptSize() {
        int before = done(tablet);
        measure(whole() - 1 + " 1/2");
        tablet.getByText("than planned").waitFor();
        tablet.waitForLoadState();
        String keep = "Keep the size: cut the bars to come anew";
        choose(button(keep).count() > 0 ? keep : "Sew on as it is");
        reached(tablet, before + 1);
    }

    private void otherSideUp() {
        press();
        tablet.locator("#back").click();
        tablet.waitForURL(url -> url.contains("?step="));
        tablet.getByText("Something went wrong").click();
        tablet.getByText("is wrong side up").click();
        tablet.waitForURL(url -> !url.contains("?step="));
        tablet.waitForLoadState();
        if (button("Leave it as it is").count() > 0) {
            Browser.assertFit(tablet, "the other side up");
            button("Leave it as it is").click();
        }
        arrived();
    }
}
