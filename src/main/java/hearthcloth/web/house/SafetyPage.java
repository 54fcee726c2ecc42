package hearthcloth.web.house;

import hearthcloth.store.SafetyCopies;
import hearthcloth.store.SafetyCopy;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Whole copies of her work: what there is, one more now, one put back. */
public final class SafetyPage {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("d MMMM uuuu, H:mm:ss", Locale.ENGLISH).withZone(ZoneId.systemDefault());

    /** One copy as it is listed. */
    public record Line(String name, String made, String why, String size) {}

    /**
     * The page.
     *
     * @param folder where the copies lie; empty in a studio, whose database is copied as a whole
     */
    @PageView.Template("copies.jte")
    public record View(PageFrame frame, List<Line> copies, String folder) implements PageView {}

    private final PageContext room;

    private SafetyPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(SafetyPage::new)
                .get("/copies", SafetyPage::show)
                .post("/copies", SafetyPage::make)
                .post("/copies/back", SafetyPage::back)
                .post("/anew", SafetyPage::anew);
    }

    private void show(Context context) {
        List<Line> lines = room.store().copies().map(SafetyCopies::all).orElse(List.of()).stream()
                .map(this::line)
                .toList();
        String folder =
                room.store().copies().map(copies -> copies.folder().toString()).orElse("");
        room.show(context, new View(room.frame(context, "Safety copies", ""), lines, folder));
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
