package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.TestServer;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.web.cloth.ClothPage;
import hearthcloth.web.cloth.ClothsPage;
import hearthcloth.web.cloth.Example;
import hearthcloth.web.cloth.PicturesPage;
import hearthcloth.web.door.Openness;
import hearthcloth.web.gallery.GalleryPage;
import hearthcloth.web.gift.GiftPage;
import hearthcloth.web.home.HomePage;
import hearthcloth.web.house.ArchivePage;
import hearthcloth.web.house.ClosingPage;
import hearthcloth.web.house.DevicesPage;
import hearthcloth.web.house.EntrancePage;
import hearthcloth.web.house.GuidelinesPage;
import hearthcloth.web.house.HandOnPage;
import hearthcloth.web.house.PeoplePage;
import hearthcloth.web.house.SafetyPage;
import hearthcloth.web.house.SettingsPage;
import hearthcloth.web.house.StudioDesk;
import hearthcloth.web.kit.ConflictPage;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kits.KitsPage;
import hearthcloth.web.lesson.ClassPage;
import hearthcloth.web.lesson.Classroom;
import hearthcloth.web.make.CutPage;
import hearthcloth.web.make.SewPage;
import hearthcloth.web.photo.PhotoPage;
import hearthcloth.web.piecing.PiecingPage;
import hearthcloth.web.stash.StashPage;
import hearthcloth.web.tie.TiePage;
import hearthcloth.web.tie.TiedPage;
import io.javalin.Javalin;
import io.javalin.http.HandlerType;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every address that some page answers, read off the pages themselves: no two answer the same, every form asks for the
 * token, and an address of something that is not there is answered in words.
 */
class AddressesTest {

    @TempDir
    Path folder;

    private static Map<String, Consumer<PageRoutes>> pages() {
        Map<String, Consumer<PageRoutes>> pages = new LinkedHashMap<>();
        pages.put("home", HomePage::add);
        pages.put("gift", routes -> GiftPage.add(routes, (room, purpose) -> {}));
        pages.put("gallery", GalleryPage::add);
        pages.put("cloth", ClothPage::add);
        pages.put("tied", TiedPage::add);
        pages.put("tie", TiePage::add);
        pages.put("stash", StashPage::add);
        pages.put("photo", PhotoPage::add);
        pages.put("cut", CutPage::add);
        pages.put("sew", SewPage::add);
        pages.put("cloths", ClothsPage::add);
        pages.put("pictures", PicturesPage::add);
        pages.put("archive", ArchivePage::add);
        pages.put("handOn", HandOnPage::add);
        pages.put("kits", KitsPage::add);
        pages.put("piecing", PiecingPage::add);
        pages.put("class", routes -> ClassPage.add(routes, new Classroom(Clock.systemUTC()), Openness.HERE));
        pages.put("devices", routes -> DevicesPage.add(routes, Openness.HERE, Optional.empty()));
        pages.put("settings", SettingsPage::add);
        pages.put("safety", SafetyPage::add);
        pages.put("example", Example::add);
        pages.put("closing", routes -> ClosingPage.add(routes, () -> {}));
        pages.put("letters", routes -> LetterFiles.add(routes.routes()));
        return pages;
    }

    /** The addresses of one page, such as {@code GET /stash}. */
    private static List<String> addresses(Consumer<PageRoutes> page) {
        Javalin alone = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            page.accept(new PageRoutes(config.routes, context -> {
                throw new IllegalStateException("nobody asks");
            }));
        });
        List<String> addresses = new ArrayList<>();
        alone.unsafe
                .internalRouter
                .allHttpHandlers()
                .forEach(each -> addresses.add(each.endpoint.method.name() + " " + each.endpoint.path));
        return addresses;
    }

    @Test
    void no_two_pages_answer_the_same_address() {
        Map<String, String> whose = new TreeMap<>();
        pages().forEach((name, page) -> addresses(page)
                .forEach(address -> assertThat(whose.put(address, name))
                        .as(address + " of " + name)
                        .isNull()));
        assertThat(whose)
                .hasSizeGreaterThan(100)
                .containsEntry("GET /", "home")
                .containsEntry("POST /cut/{id}/tick", "cut");
    }

    /** Of one's own workroom; nothing is asked of it but what a page sends, and nothing but words comes back. */
    @Test
    void every_form_asks_for_the_token_and_what_is_not_there_is_said_in_words() {
        try (Visit visit = new Visit(folder)) {
            pages().values()
                    .forEach(page -> addresses(page).forEach(address -> {
                        String path = address.replaceFirst("^\\w+ ", "")
                                .replace("{id}", "nothing")
                                .replaceAll("\\{\\w+}", "x");
                        if (address.startsWith(HandlerType.POST.name())) {
                            HttpResponse<String> response = visit.posted(path, "0", new String[0]);
                            // there is nothing to join where a workroom is not shared, token or not
                            assertThat(response.statusCode())
                                    .as(address)
                                    .isIn(path.startsWith("/join") ? List.of(303, 404) : List.of(403));
                            assertThat(response.body()).as(address).doesNotContain("Exception", "\tat ");
                            assertThat(response.body().contains("Load it again"))
                                    .as(address)
                                    .isEqualTo(!path.startsWith("/join"));
                        } else {
                            HttpResponse<String> response = visit.see(path);
                            assertThat(response.statusCode()).as(address).isIn(200, 303, 404, 422);
                            assertThat(response.body()).as(address).doesNotContain("Exception", "\tat ");
                        }
                    }));
        }
    }

    /** In a studio, whose own pages are those of its door and its people; nobody has come in. */
    @Test
    void in_a_studio_every_page_but_the_entrance_leads_to_it() {
        Studio studio =
                Studio.open(StudioAddress.parse(TestServer.freshDatabase(), Optional.empty()), Clock.systemUTC());
        StudioDesk desk = new StudioDesk(studio, "00");
        List<String> own = new ArrayList<>();
        own.addAll(addresses(routes -> EntrancePage.add(routes, desk)));
        own.addAll(addresses(routes -> PeoplePage.add(routes, desk)));
        own.addAll(addresses(routes -> GuidelinesPage.add(routes, desk)));
        assertThat(own).contains("GET /enter", "GET /people", "GET /guidelines").doesNotHaveDuplicates();
        try (Workroom room = Workroom.open(studio, 0, Clock.systemUTC(), Openness.HERE);
                Visit visit = new Visit(room)) {
            pages().values().forEach(page -> own.addAll(addresses(page)));
            for (String address : own) {
                String path = address.replaceFirst("^\\w+ ", "").replaceAll("\\{\\w+}", "nothing");
                boolean isOpen = path.equals("/enter") || path.startsWith("/letters") || path.equals("/close");
                if (address.startsWith("GET") && !isOpen) {
                    HttpResponse<String> response = visit.see(path);
                    assertThat(response.statusCode()).as(address).isEqualTo(303);
                    assertThat(Visit.onward(response)).as(address).isEqualTo("/enter");
                }
            }
        }
        studio.close();
    }

    /** What has no address of its own: troubles and what two windows changed. */
    @Test
    void pages_that_answer_troubles_have_no_address() {
        assertThat(addresses(routes -> new ErrorPages(routes).add())).isEmpty();
        assertThat(addresses(routes -> new ConflictPage(routes).add())).isEmpty();
        assertThat(PageContext.class).isFinal();
    }
}
