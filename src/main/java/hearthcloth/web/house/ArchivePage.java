package hearthcloth.web.house;

import hearthcloth.store.archive.Archive;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
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
            throw new StoreException("Choose an archive first.");
        }
        if (!UNFOLDING.tryAcquire()) {
            throw new HttpResponseException(
                    503,
                    "Another archive is being brought in just now. Nothing was changed; send yours when it is in.");
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
            throw new StoreException("The file did not arrive whole; try again.", e);
        } catch (OutOfMemoryError e) {
            throw new StoreException(
                    "This archive is too large for the memory of this machine. Nothing was changed.", e);
        }
        int cloths =
                archive.into(room.store(), PageContext.field(context, "how").equals("instead"));
        PageContext.go(
                context,
                "/cloths",
                "Brought in " + counted(archive.pieces().size(), "piece") + " and " + counted(cloths, "cloth")
                        + ". The stash's undo takes the pieces out again.");
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
