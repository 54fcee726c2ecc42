package hearthcloth.web.stash;

import hearthcloth.measure.Ruler;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.Uploads;
import io.javalin.http.Context;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stash as a CSV file, in and out. */
final class StashFiles {

    private static final int MOST_MEGABYTES = 8;
    private static final int SHOWN_PROBLEMS = 30;

    private final PageContext room;

    private StashFiles(PageContext room) {
        this.room = room;
    }

    static void add(PageRoutes routes) {
        routes.of(StashFiles::new).get("/stash/stash.csv", StashFiles::write).post("/stash/file", StashFiles::read);
    }

    private void write(Context context) {
        Ruler ruler = room.settings().ruler();
        List<Piece> oneRow = new ArrayList<>();
        for (Piece piece : room.store().stash().whole().pieces()) {
            // Pieces of one row that are alike become one line with a count.
            oneRow.add(new Piece(piece.id(), piece.fabric(), piece.size(), piece.washed(), 1));
        }
        context.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"stash.csv\"")
                .result(StashFile.write(new Stash(oneRow), ruler, Map.of()));
    }

    private void read(Context context) {
        String text = text(Uploads.upload(room, context, "file", MOST_MEGABYTES << 20));
        StashFile.Reading reading =
                StashFile.read(text, Optional.of(room.settings().bare()));
        if (reading instanceof StashFile.Faulty faulty) {
            StashScreen.Draft draft = new StashScreen.Draft("", StashHeard.NOTHING, faulty.lines(SHOWN_PROBLEMS));
            new StashScreen(room)
                    .show(
                            context.status(422),
                            StashView.of(
                                    room.store(),
                                    new StashAsked("", "", "", 1),
                                    room.settings().ruler()),
                            draft,
                            "The file was not taken; nothing was changed.");
            return;
        }
        StashFile.Read read = (StashFile.Read) reading;
        String said = room.store().atOnce(() -> {
            StashIntake intake = new StashIntake(room.store().stash());
            Arrivals arrivals = intake.arrivals();
            arrivals.add(read.stash());
            return intake.keep("add " + StashView.pieces(arrivals.pieces().size()) + " from a file", arrivals);
        });
        List<String> more = new ArrayList<>(
                read.warnings().stream().limit(5).map(ErrorPages::upright).toList());
        if (!read.kept().isEmpty()) {
            more.add("Columns that are not about fabric were left out.");
        }
        PageContext.go(context, "/stash", said + (more.isEmpty() ? "" : " " + String.join(" ", more)));
    }

    private static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw Uploads.refused(
                    422, "This file is not text in UTF-8; save it from the spreadsheet as CSV (UTF-8).", e);
        }
    }
}
