package hearthcloth.web.house;

import hearthcloth.web.kit.PageRoutes;
import hearthcloth.store.archive.Archive;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;

/** Everything out and in again as one file. */
public final class ArchivePage {

    private final PageContext room;

    private ArchivePage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(ArchivePage::new)
                .get("/archive", ArchivePage::out)
                .post("/archive", ArchivePage::in);
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
        Archive archive;
        try {
            archive = Archive.read(file.content().readAllBytes());
        } catch (IOException e) {
            throw new StoreException("The file did not arrive whole; try again.", e);
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
