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
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
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
        StashingWords words = StashingWords.in(room.language());
        StashFile.Reading reading =
                StashFile.read(text, Optional.of(room.settings().bare()));
        if (reading instanceof StashFile.Faulty faulty) {
            refuse(context, faulty, words);
            return;
        }
        StashFile.Read read = (StashFile.Read) reading;
        String said = room.store().atOnce(() -> {
            StashIntake intake = new StashIntake(room.store().stash(), words);
            Arrivals arrivals = intake.arrivals();
            arrivals.add(read.stash());
            return intake.keep(words.deedAddFile(words.pieces(arrivals.pieces().size())), arrivals);
        });
        List<String> more = new ArrayList<>(read.warnings().stream()
                .limit(5)
                .map(one -> ErrorPages.upright(one.in(room.settings().voice())))
                .toList());
        if (!read.kept().isEmpty()) {
            more.add(words.fileColumns());
        }
        PageContext.go(context, "/stash", said + (more.isEmpty() ? "" : " " + String.join(" ", more)));
    }

    private void refuse(Context context, StashFile.Faulty faulty, StashingWords words) {
        Voice voice = room.settings().voice();
        StashScreen.Draft draft =
                new StashScreen.Draft("", StashHeard.nothing(room.language()), faulty.lines(SHOWN_PROBLEMS, voice));
        StashView whole = StashView.of(room.store(), new StashAsked("", "", "", 1), voice);
        new StashScreen(room).show(context.status(422), whole, draft, words.fileRefused());
    }

    private String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw Uploads.refused(422, StashingWords.in(room.language()).fileEncoding(), e);
        }
    }
}
