package hearthcloth.web.house;

import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.store.SafetyCopies;
import hearthcloth.store.SafetyCopy;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import io.javalin.http.Context;
import java.time.Instant;
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
                .post("/copies/back", SafetyPage::back);
    }

    private void show(Context context) {
        List<Line> lines = room.store().copies().map(SafetyCopies::all).orElse(List.of()).stream()
                .map(SafetyPage::line)
                .toList();
        String folder =
                room.store().copies().map(copies -> copies.folder().toString()).orElse("");
        room.show(context, new View(room.frame(context, "Safety copies", ""), lines, folder));
    }

    private static Line line(SafetyCopy copy) {
        return new Line(copy.name(), time(copy.made()), copy.reason().words(), size(copy.bytes()));
    }

    private static String time(Instant moment) {
        return TIME.format(moment);
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

    private void back(Context context) {
        SafetyCopy copy = copies().restore(PageContext.field(context, "copy"));
        PageContext.go(
                context,
                "/copies",
                "Your work is as it was on " + time(copy.made())
                        + ". What you had before is the newest copy in this list.");
    }
}
