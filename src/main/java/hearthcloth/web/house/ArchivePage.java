package hearthcloth.web.house;

import hearthcloth.store.archive.Archive;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.words.keeping.KeepingWords;
import hearthcloth.words.sentence.StoringSentences;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.util.concurrent.Semaphore;

/** Everything out and in again as one file. */
public final class ArchivePage {

    /** Unfolded, an archive takes a good part of the memory there is. */
    private static final Semaphore UNFOLDING = new Semaphore(1);

    private final PageContext room;

    private ArchivePage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(ArchivePage::new).get("/archive", ArchivePage::out).post("/archive", ArchivePage::in);
    }

    private void out(Context context) {
        context.contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"hearthcloth-archive.zip\"")
                .result(Archive.of(room.store()).bytes());
    }

    private void in(Context context) {
        UploadedFile file = context.uploadedFile("file");
        if (file == null || file.size() == 0) {
            throw new StoreException(StoringSentences.archive("CHOOSE"));
        }
        if (!UNFOLDING.tryAcquire()) {
            throw new HttpResponseException(
                    503, StoringSentences.archive("BUSY").in(room.settings().voice()));
        }
        try {
            unfold(context, file);
        } finally {
            UNFOLDING.release();
        }
    }

    private void unfold(Context context, UploadedFile file) {
        Archive archive;
        try {
            archive = Archive.read(file.content().readAllBytes());
        } catch (IOException e) {
            throw new StoreException(StoringSentences.archive("WHOLE"), e);
        } catch (OutOfMemoryError e) {
            throw new StoreException(StoringSentences.archive("MEMORY"), e);
        }
        int cloths = archive.into(
                room.store(),
                PageContext.field(context, "how").equals("instead"),
                room.settings().voice());
        PageContext.go(
                context,
                "/cloths",
                KeepingWords.in(room.language())
                        .archiveBrought(cloths, archive.pieces().size()));
    }
}
