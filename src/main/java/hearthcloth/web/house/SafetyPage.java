package hearthcloth.web.house;

import hearthcloth.store.SafetyCopies;
import hearthcloth.store.SafetyCopy;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Whole copies of her work: what there is, one more now, one put back. */
public final class SafetyPage {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("d MMMM uuuu, H:mm:ss", Locale.ENGLISH).withZone(ZoneId.systemDefault());

    /** One copy as it is listed. */
    public record Line(String name, String made, String why, String size) {}

    private final PageContext room;

    public SafetyPage(PageContext room) {
        this.room = room;
    }

    public void add(RoutesConfig routes) {
        routes.get("/copies", this::show);
        routes.post("/copies", this::make);
        routes.post("/copies/back", this::back);
        routes.post("/anew", this::anew);
    }

    private void show(Context context) {
        List<Line> lines = room.store().copies().map(SafetyCopies::all).orElse(List.of()).stream()
                .map(this::line)
                .toList();
        String folder =
                room.store().copies().map(copies -> copies.folder().toString()).orElse("");
        room.show(
                context,
                "copies.jte",
                Map.of("frame", room.frame(context, "Safety copies", ""), "copies", lines, "folder", folder));
    }

    private Line line(SafetyCopy copy) {
        return new Line(copy.name(), time(copy), copy.reason().words(), size(copy.bytes()));
    }

    /** When it was made, as far as that is known. */
    private String time(SafetyCopy copy) {
        return TIME.format(copy.made())
                + (copy.isAhead(room.store().now()) ? ", by a clock that was wrong then or is wrong now" : "");
    }

    /** Rounded up, so that nothing seems to be nothing. */
    private static String size(long bytes) {
        long kilobytes = (bytes + 999) / 1_000;
        return kilobytes < 10_000 ? kilobytes + " kB" : (kilobytes + 999) / 1_000 + " MB";
    }

    private SafetyCopies copies() {
        return room.store()
                .copies()
                .orElseThrow(() -> new StoreException("In a studio the whole database is copied by whoever keeps it."));
    }

    private void make(Context context) {
        SafetyCopy made = copies().make(SafetyCopy.Reason.ASKED);
        PageContext.go(context, "/copies", "Copied: " + size(made.bytes()) + ".");
    }

    /** Her file was moved or deleted while she works on it. */
    private void anew(Context context) {
        room.store().writeAnew();
        PageContext.go(context, "/gift", "Your work is in its place again, as it was at your last change.");
    }

    private void back(Context context) {
        SafetyCopy copy = copies().restore(PageContext.field(context, "copy"));
        PageContext.go(
                context,
                "/copies",
                "Your work is as it was on " + time(copy) + ". What you had before is the newest copy in this list.");
    }
}
