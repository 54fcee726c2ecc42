package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import hearthcloth.TestServer;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.web.door.Openness;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A studio in a real browser: begun by a teacher, joined by a maker at a telephone, a cloth handed from one to the other. */
class StudioJourneyTest {

    private static void pressed(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    private static void entered(Page page, String name, String passphrase, String button) {
        page.navigate("/gift");
        assertThat(page.url()).endsWith("/enter");
        look(page, "the way in");
        page.getByLabel("Name").fill(name);
        page.getByLabel("Passphrase").fill(passphrase);
        pressed(page, button);
        page.waitForURL("**/");
    }

    @Test
    void a_class_begins_and_a_cloth_goes_round() {
        StudioAddress address = StudioAddress.parse(TestServer.freshDatabase(), Optional.empty());
        try (Studio studio = Studio.open(address, Clock.systemUTC());
                Browser browser = new Browser(new Visit(Workroom.open(studio, 0, Clock.systemUTC(), Openness.HERE)))) {
            Page ada = browser.window(Browser.Screen.DESK, ColorScheme.LIGHT);
            entered(ada, "Ada", "kelp and plum by lamplight", "Begin");
            pressed(ada, "example");
            ada.getByText("Nothing in it is yours").waitFor();
            ada.navigate("/people");
            ada.getByLabel("Name").fill("Mo");
            ada.getByLabel("First passphrase").fill("nine buttons in a jar");
            pressed(ada, "Bring in");
            ada.getByText("Mo can come in now").waitFor();
            look(ada, "people");
            ada.navigate("/guidelines");
            pressed(ada, "Hand it out");
            ada.getByText("handed to everybody").waitFor();
            look(ada, "guidelines");

            Page mo = browser.window(Browser.Screen.PHONE, ColorScheme.DARK);
            entered(mo, "Mo", "nine buttons in a jar", "Come in");
            mo.navigate("/stash");
            for (String line : new String[] {"6 plum linen 18 x 40 in", "6 straw linen 18 x 40 in"}) {
                mo.locator("#line").fill(line);
                mo.locator("#line").press("Enter");
                mo.getByText("Added 6 pieces").first().waitFor();
            }
            mo.navigate("/guidelines");
            look(mo, "guidelines at a telephone");
            pressed(mo, "Fit");
            mo.getByText("It fits your stash").waitFor();
            mo.navigate("/people");
            look(mo, "people at a telephone");
            pressed(mo, "Leave");
            mo.waitForURL("**/enter*");
            browser.assertQuiet();
        }
    }

    /** The rules of access for everyone, and a picture for the eye. */
    private static void look(Page page, String what) {
        Browser.assertFit(page, what);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "pictures", "studio-" + what.replace(' ', '-') + ".png")));
    }
}
