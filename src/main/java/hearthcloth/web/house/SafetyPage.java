package hearthcloth.web.house;

import hearthcloth.store.SafetyCopies;
import hearthcloth.store.SafetyCopy;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.entering.EnteringWords;
import io.javalin.http.Context;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;

/** Whole copies of her work: what there is, one more now, one put back. */
public final class SafetyPage {

    /** One copy as it is listed. */
    public record Line(String name, String made, String why, String size) {}

    /**
     * The page.
     *
     * @param folder where the copies lie; empty in a studio, whose database is copied as a whole
     */
    @PageView.Template("copies.jte")
    public record View(PageFrame frame, List<Line> copies, String folder) implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }
    }

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

    private EnteringWords words() {
        return EnteringWords.in(room.language());
    }

    private void show(Context context) {
        List<Line> lines = room.store().copies().map(SafetyCopies::all).orElse(List.of()).stream()
                .map(this::line)
                .toList();
        String folder =
                room.store().copies().map(copies -> copies.folder().toString()).orElse("");
        room.show(context, new View(room.frame(context, words().copiesTitle(), ""), lines, folder));
    }

    private Line line(SafetyCopy copy) {
        return new Line(
                copy.name(), time(copy), words().copiesReason(copy.reason().name()), size(copy.bytes()));
    }

    /** When it was made, as far as that is known. */
    private String time(SafetyCopy copy) {
        LocalDateTime at = LocalDateTime.ofInstant(copy.made(), ZoneId.systemDefault());
        String made = words().copiesTime(
                        String.valueOf(at.getDayOfMonth()),
                        "m" + at.getMonthValue(),
                        String.format(Locale.ROOT, "%d:%02d:%02d", at.getHour(), at.getMinute(), at.getSecond()),
                        String.valueOf(at.getYear()));
        return copy.isAhead(room.store().now()) ? words().copiesWrongClock(made) : made;
    }

    /** Rounded up, so that nothing seems to be nothing. */
    private static String size(long bytes) {
        long kilobytes = (bytes + 999) / 1_000;
        return kilobytes < 10_000 ? kilobytes + " kB" : (kilobytes + 999) / 1_000 + " MB";
    }

    private SafetyCopies copies() {
        return room.store().copies().orElseThrow(() -> new StoreException(words().copiesKeeper()));
    }

    private void make(Context context) {
        SafetyCopy made = copies().make(SafetyCopy.Reason.ASKED);
        PageContext.go(context, "/copies", words().copiesIsMade(size(made.bytes())));
    }

    /** Her file was moved or deleted while she works on it. */
    private void anew(Context context) {
        room.store().writeAnew();
        PageContext.go(context, "/gift", words().copiesAnew());
    }

    private void back(Context context) {
        SafetyCopy copy = copies().restore(PageContext.field(context, "copy"));
        PageContext.go(context, "/copies", words().copiesIsBack(time(copy)));
    }
}
