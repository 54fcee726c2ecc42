package hearthcloth.web;

import hearthcloth.draw.Paper;
import hearthcloth.measure.Ruler;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Map;

/** Inches or centimetres, A4 or Letter: asked once, changeable. */
final class SettingsPage {

    private final Room room;

    SettingsPage(Room room) {
        this.room = room;
    }

    void add(RoutesConfig routes) {
        routes.get("/settings", this::show);
        routes.post("/settings", this::change);
    }

    private void show(Context context) {
        String back = Room.text(context, "back");
        room.show(
                context,
                "settings.jte",
                Map.of("frame", room.frame(context, "How you measure", ""), "back", own(back) ? back : "/gift"));
    }

    private void change(Context context) {
        Settings was = room.settings();
        Ruler ruler = Arrays.stream(Ruler.values())
                .filter(each -> each.name().equals(Room.field(context, "ruler")))
                .findFirst()
                .orElse(was.ruler());
        Paper paper = Paper.named(Room.field(context, "paper"))
                .orElse(was.asked() ? was.paper() : ruler.isMetric() ? Paper.A4 : Paper.LETTER);
        new Settings(ruler, paper, true).keep(room.store());
        String back = Room.field(context, "back");
        Room.go(context, own(back) ? back : "/gift", "");
    }

    /** Only addresses of the workroom itself are gone back to. */
    private static boolean own(String back) {
        return back.matches("/[a-z0-9][A-Za-z0-9/?&=%+._-]*");
    }
}
