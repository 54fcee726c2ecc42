package hearthcloth.web.photo;

import hearthcloth.draw.MeasuringSheetPage;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.stash.BegunPhoto;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;

/** "From a photograph": sent, read beside the pages, looked at and put right, and taken into the stash. */
public final class PhotoPage {

    /** References of a known size, as {@link ReferenceSheet#parse} knows them. */
    private static final List<String> NAMED = List.of("a4", "letter", "card");

    /**
     * How far a reading is.
     *
     * @param share in hundredths
     * @param before how many are read before it
     */
    public record Going(String id, int share, String what, int before) {}

    private final PageContext room;
    private final ReadingQueue readings;
    private final Semaphore keeping = new Semaphore(1, true);

    public PhotoPage(PageContext room) {
        this.room = room;
        this.readings = new ReadingQueue();
    }

    public void add(RoutesConfig routes) {
        routes.get("/stash/photo", context -> ask(context, ""));
        routes.get("/stash/measuring-sheet.pdf", this::measuringSheet);
        routes.post("/stash/photo", this::send);
        routes.get("/stash/photo/{id}", this::show);
        routes.get("/stash/photo/{id}/progress", this::progress);
        routes.get("/stash/photo/{id}/picture", this::picture);
        routes.post("/stash/photo/{id}/again", this::again);
        routes.post("/stash/photo/{id}/away", this::away);
        new PhotoChanges(room).add(routes);
        new PhotoTaking(room, readings).add(routes);
    }

    /** The measuring sheet, for the paper she prints on or the one asked for. */
    private void measuringSheet(Context context) {
        Paper paper = Paper.named(PageContext.text(context, "paper"))
                .orElse(room.settings().paper());
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"measuring-sheet-" + paper.word() + ".pdf\"")
                .result(MeasuringSheetPage.pdf(paper));
    }

    private PhotoBook book() {
        return room.store().photographs();
    }

    private void ask(Context context, String wrong) {
        room.show(
                context,
                "photo-ask.jte",
                Map.of(
                        "frame",
                        room.frame(context, "From a photograph", "Stash"),
                        "begun",
                        BegunPhoto.all(book()),
                        "wrong",
                        wrong));
    }

    private void send(Context context) {
        try {
            String sheet = sheet(context);
            String id = UUID.randomUUID().toString().replace("-", "").substring(0, 16);
            kept(context, id, sheet);
            book().find(id).ifPresent(photo -> readings.of(room.store(), photo));
            PageContext.go(context, PhotoAddress.address(id), "");
        } catch (MeasureException e) {
            ask(context.status(422), ErrorPages.upright(String.valueOf(e.getMessage())));
        }
    }

    /** One upload at a time is in memory, however many arrive. */
    private void kept(Context context, String id, String sheet) {
        UploadedFile file = context.uploadedFiles("picture").stream()
                .filter(one -> one.size() > 0)
                .findFirst()
                .orElseThrow(() -> new MeasureException("no picture was chosen; choose one or take it now"));
        keeping.acquireUninterruptibly();
        try (InputStream in = file.content()) {
            byte[] bytes = in.readNBytes(Photograph.MOST_BYTES + 1);
            Optional<String> refusal = Photograph.refusal(bytes);
            if (refusal.isPresent()) {
                throw new MeasureException(refusal.get());
            }
            book().keep(id, sheet, bytes);
        } catch (IOException e) {
            throw new MeasureException("the picture did not arrive whole; send it again");
        } finally {
            keeping.release();
        }
    }

    /** The reference, in words that {@link ReferenceSheet#parse} reads whatever her unit is. */
    private String sheet(Context context) {
        String sheet = PageContext.field(context, "sheet");
        if (sheet.equals("sheet")) {
            return measuring(PageContext.field(context, "line"));
        }
        if (!sheet.equals("size")) {
            return NAMED.contains(sheet) ? sheet : NAMED.get(0);
        }
        String written = PageContext.field(context, "size");
        if (written.isEmpty()) {
            throw new MeasureException(
                    "how large the reference is was left blank; measure it and write its width by height");
        }
        String said = Measures.size(written, room.settings().bare()).toString();
        ReferenceSheet.parse(said);
        return said;
    }

    /** Our own sheet, with what its line measures where she laid a ruler to it. */
    private String measuring(String line) {
        if (line.isEmpty()) {
            return "sheet";
        }
        Length measured = Measures.length(line, room.settings().bare());
        ReferenceSheet.measuring(measured);
        return "sheet " + measured;
    }

    private void show(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book());
        if (photo.read().isPresent()) {
            PhotoView view = PhotoView.of(
                    room.store(),
                    photo,
                    room.settings().ruler(),
                    PageContext.text(context, "piece"),
                    PageContext.text(context, "do"));
            PageFrame frame = room.frame(context, "Is it read right?", "Stash");
            String template = PageContext.isPart(context) ? "part/photo-changed.jte" : "photo.jte";
            room.show(
                    context,
                    template,
                    PageContext.isPart(context)
                            ? Map.of("view", view, "token", room.token(), "said", "")
                            : Map.of("frame", frame, "view", view));
        } else if (photo.refused().isEmpty()) {
            room.show(
                    context,
                    "photo-going.jte",
                    Map.of("frame", room.frame(context, "Reading your photograph", "Stash"), "going", going(photo)));
        } else {
            room.show(
                    context,
                    "photo-refused.jte",
                    Map.of(
                            "frame",
                            room.frame(context, "Nothing could be read off it", "Stash"),
                            "id",
                            photo.id(),
                            "reason",
                            photo.refused()));
        }
    }

    private Going going(SavedPhoto photo) {
        ReadingQueue.Job job = readings.of(room.store(), photo);
        return new Going(photo.id(), (int) (100 * job.share()), job.what(), job.isBegun() ? 0 : readings.before(job));
    }

    private void progress(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book());
        if (photo.isWaiting()) {
            room.show(context, "part/photo-going.jte", Map.of("going", going(photo), "token", room.token()));
        } else {
            context.header("HX-Redirect", PhotoAddress.address(photo.id())).status(HttpStatus.NO_CONTENT);
        }
    }

    private void picture(Context context) {
        byte[] jpeg = book().screen(PhotoAddress.asked(context, book()).id())
                .orElseThrow(() -> new NotFoundResponse("This photograph is not read yet."));
        context.contentType("image/jpeg")
                .header("Cache-Control", "private, max-age=3600")
                .result(jpeg);
    }

    private void again(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book());
        book().again(photo.id(), sheet(context));
        PageContext.go(context, PhotoAddress.address(photo.id()), "");
    }

    private void away(Context context) {
        String id = context.pathParam("id");
        readings.stop(id);
        book().remove(id);
        PageContext.go(context, "/stash", "The photograph is deleted.");
    }
}
