package hearthcloth.web.house;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Optional;

/** Inches or centimetres, A4 or Letter, which language: asked once, changeable. */
public final class SettingsPage {

    /**
     * The page.
     *
     * @param back the page she came from
     * @param threads her threads, a line for each
     */
    @PageView.Template("settings.jte")
    public record View(PageFrame frame, String back, OwnHand hand, String threads) implements PageView {}

    private final PageContext room;

    private SettingsPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(SettingsPage::new)
                .get("/settings", SettingsPage::show)
                .post("/settings", SettingsPage::change)
                .post("/settings/hand", SettingsPage::hand)
                .post("/settings/threads", SettingsPage::threads);
    }

    private void show(Context context) {
        String back = PageContext.text(context, "back");
        room.show(
                context,
                new View(
                        room.frame(context, FramingWords.in(room.language()).drawerTitle(), "Drawer"),
                        own(back) ? back : "/gift",
                        OwnHand.of(room.store(), room.settings()),
                        Threads.of(room.store()).written()));
    }

    private void change(Context context) {
        Settings was = room.settings();
        Ruler ruler = Arrays.stream(Ruler.values())
                .filter(each -> each.name().equals(PageContext.field(context, "ruler")))
                .findFirst()
                .orElse(was.ruler());
        Language language =
                Language.tagged(PageContext.field(context, "language")).orElse(was.language());
        Paper paper = Paper.named(PageContext.field(context, "paper"))
                .orElse(was.asked() ? was.paper() : ruler.isMetric() ? Paper.A4 : Paper.LETTER);
        new Settings(ruler, paper, was.eats(), language, true).keep(room.store());
        String back = PageContext.field(context, "back");
        PageContext.go(context, own(back) ? back : "/gift", "");
    }

    /** Plans with what was learnt from her work, or as usual again. */
    private void hand(Context context) {
        Settings was = room.settings();
        FramingWords words = FramingWords.in(was.pages());
        boolean own = PageContext.field(context, "use").equals("own");
        Optional<Length> eats = own ? OwnHand.of(room.store(), was).hand().map(SewingHand::eats) : Optional.empty();
        new Settings(was.ruler(), was.paper(), eats, was.language(), was.asked()).keep(room.store());
        PageContext.go(context, "/settings", eats.isPresent() ? words.handIsOwn() : words.handIsUsual());
    }

    private void threads(Context context) {
        Threads threads = Threads.read(PageContext.field(context, "threads"), room.language());
        threads.keep(room.store(), threads.written());
        int count = threads.threads().size();
        PageContext.go(context, "/settings", FramingWords.in(room.language()).threadsKept(count));
    }

    /** Only addresses of the workroom itself are gone back to. */
    private static boolean own(String back) {
        return back.matches("/[a-z0-9][A-Za-z0-9/?&=%+._-]*");
    }
}
