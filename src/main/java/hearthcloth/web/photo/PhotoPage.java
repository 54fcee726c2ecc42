package hearthcloth.web.photo;

import hearthcloth.draw.MeasuringSheetPage;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.StraightPicture;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.stash.BegunPhoto;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.photo.SortedPiece;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;

/** "From a photograph": sent, read beside the pages, looked at and put right, and taken into the stash. */
public final class PhotoPage {

    /** References of a known size, as {@link ReferenceSheet#parse} knows them. */
    private static final List<String> NAMED = List.of("a4", "letter", "card");

    /** The longer side of a straightened picture. */
    private static final int STRAIGHT_PIXELS = 1400;

    private final PageContext room;
    private final ReadingQueue readings;
    private final Semaphore keeping;

    /** @param keeping lets one upload at a time into memory */
    private PhotoPage(PageContext room, ReadingQueue readings, Semaphore keeping) {
        this.room = room;
        this.readings = readings;
        this.keeping = keeping;
    }

    public static void add(PageRoutes routes) {
        ReadingQueue readings = new ReadingQueue();
        routes.whenClosed(readings::close);
        Semaphore keeping = new Semaphore(1, true);
        routes.of(room -> new PhotoPage(room, readings, keeping))
                .get("/stash/photo", (page, context) -> page.ask(context, ""))
                .get("/stash/measuring-sheet.pdf", PhotoPage::measuringSheet)
                .post("/stash/photo", PhotoPage::send)
                .get("/stash/photo/{id}", PhotoPage::show)
                .get("/stash/photo/{id}/progress", PhotoPage::progress)
                .get("/stash/photo/{id}/picture", PhotoPage::picture)
                .get("/stash/photo/{id}/straight/{piece}", PhotoPage::straight)
                .post("/stash/photo/{id}/again", PhotoPage::again)
                .post("/stash/photo/{id}/corners", PhotoPage::corners)
                .post("/stash/photo/{id}/away", PhotoPage::away);
        PhotoChanges.add(routes);
        PhotoTaking.add(routes, readings);
    }

    /** The measuring sheet, for the paper she prints on or the one asked for. */
    private void measuringSheet(Context context) {
        Paper paper = Paper.named(PageContext.text(context, "paper"))
                .orElse(room.settings().paper());
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"measuring-sheet-" + paper.word() + ".pdf\"")
                .result(MeasuringSheetPage.pdf(paper, room.language()));
    }

    private PicturingWords words() {
        return PicturingWords.in(room.language());
    }

    private PhotoBook book() {
        return room.store().photographs();
    }

    private void ask(Context context, String wrong) {
        room.show(
                context,
                new PhotoScreens.Ask(
                        new BegunPhoto.Form(
                                room.frame(context, words().another(), "Stash"),
                                BegunPhoto.all(book(), room.language())),
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
            ask(
                    context.status(422),
                    ErrorPages.upright(Refusal.of(e).in(room.settings().voice())));
        }
    }

    /** One upload at a time is in memory, however many arrive. */
    private void kept(Context context, String id, String sheet) {
        UploadedFile file = context.uploadedFiles("picture").stream()
                .filter(one -> one.size() > 0)
                .findFirst()
                .orElseThrow(() -> new MeasureException(words().askNone()));
        keeping.acquireUninterruptibly();
        try (InputStream in = file.content()) {
            byte[] bytes = in.readNBytes(Photograph.MOST_BYTES + 1);
            Optional<Sentence> refusal = Photograph.refusal(bytes);
            if (refusal.isPresent()) {
                throw new RefusedException(refusal.get());
            }
            book().keep(id, sheet, bytes);
        } catch (IOException e) {
            throw new MeasureException(words().askNotWhole());
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
            throw new MeasureException(words().askNoSize());
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
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        if (photo.read().isPresent()) {
            PhotoView read = PhotoView.of(
                    room.store(),
                    photo,
                    room.settings().voice(),
                    PageContext.text(context, "piece"),
                    PageContext.text(context, "do"));
            SortingView sorting = new SortingView(read, room.asker());
            if (PageContext.isPart(context)) {
                room.show(context, new SortingView.Changed(sorting, ""));
            } else {
                room.show(context, new PhotoScreens.View(room.frame(context, words().sortTitle(), "Stash"), sorting));
            }
        } else if (photo.refused().isEmpty()) {
            room.show(
                    context,
                    new PhotoScreens.Waiting(room.frame(context, words().goingTitle(), "Stash"), going(photo)));
        } else {
            room.show(
                    context,
                    new PhotoScreens.Refused(
                            room.frame(context, words().refusedTitle(), "Stash"),
                            photo.id(),
                            ReadingQueue.told(photo.refused(), room.settings().voice()),
                            tapping(context, photo)));
        }
    }

    private PhotoScreens.Going going(SavedPhoto photo) {
        ReadingQueue.Job job = readings.of(room.store(), photo);
        int before = job.isBegun() ? 0 : readings.before(job);
        return new PhotoScreens.Going(
                photo.id(), (int) (100 * job.share()), words().goingDoing(job.what()), before, room.asker());
    }

    private void progress(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        if (photo.isWaiting()) {
            room.show(context, going(photo));
        } else {
            context.header("HX-Redirect", PhotoAddress.address(photo.id())).status(HttpStatus.NO_CONTENT);
        }
    }

    private void picture(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        byte[] jpeg = book().screen(photo.id())
                .or(() -> book().file(photo.id())
                        .filter(file -> !photo.refused().isEmpty())
                        .map(this::unread))
                .orElseThrow(() -> new NotFoundResponse(words().notRead()));
        context.contentType("image/jpeg")
                .header("Cache-Control", "private, max-age=3600")
                .result(jpeg);
    }

    /** A piece, or a finished cloth, as seen from straight above. */
    private void straight(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        SavedPhoto.Read read = photo.read().orElseThrow(() -> new NotFoundResponse(words().notRead()));
        SortedPiece piece = read.sorting()
                .find(context.pathParam("piece"))
                .orElseThrow(() -> new NotFoundResponse(words().noPiece()));
        byte[] screen = book().screen(photo.id()).orElseThrow(() -> new NotFoundResponse(words().notRead()));
        context.contentType("image/jpeg")
                .header("Cache-Control", "private, no-cache")
                .result(StraightPicture.jpeg(
                        Photograph.ofSmall(screen),
                        read.scale().scale(),
                        piece.piece().outline(),
                        STRAIGHT_PIXELS));
    }

    private TappedCorners.View tapping(Context context, SavedPhoto photo) {
        double proportion =
                book().file(photo.id()).flatMap(Photograph::proportion).orElse(1.0);
        return TappedCorners.of(PageContext.text(context, "corners")).view(photo, proportion, words());
    }

    /** The picture that could not be read, for the screen. */
    private byte[] unread(byte[] file) {
        try {
            return readings.alone(() -> Photograph.of(file).small(TappedCorners.SCREEN_PIXELS));
        } catch (IllegalArgumentException e) {
            throw new NotFoundResponse(words().notOpened());
        }
    }

    /** One more corner, or, once there are four, the reading by them. */
    private void corners(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        TappedCorners tapped = TappedCorners.of(context);
        if (!PageContext.field(context, "read").isEmpty() && tapped.isWhole()) {
            book().again(photo.id(), tapped.words(photo));
            PageContext.go(context, PhotoAddress.address(photo.id()), "");
        } else {
            PageContext.go(context, PhotoAddress.address(photo.id()) + tapped.query(), "");
        }
    }

    private void again(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        book().again(photo.id(), sheet(context));
        PageContext.go(context, PhotoAddress.address(photo.id()), "");
    }

    private void away(Context context) {
        String id = context.pathParam("id");
        readings.stop(id);
        book().remove(id);
        PageContext.go(context, "/stash", words().deleted());
    }
}
