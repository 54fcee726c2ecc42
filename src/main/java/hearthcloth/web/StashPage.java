package hearthcloth.web;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.store.StashBook;
import hearthcloth.store.StashEdit;
import hearthcloth.store.json.StoreException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;


/** "What have you got?": pieces said in a line, many lines or fields; shown to scale; every change undone. */
public final class StashPage {

    /** A page of text, not a book: lines pasted at once. */
    private static final int MOST_LINES = 2_000;

    /**
     * What stands in the boxes when the page is shown again: nothing she wrote is lost.
     *
     * @param line in the line box
     * @param lines in the box for many
     * @param wrong what is unclear about them, a sentence for each
     */
    public record Draft(String line, StashHeard heard, String lines, List<String> wrong) {
        static final Draft NONE = new Draft("", StashHeard.NOTHING, "", List.of());
    }

    private final Room room;

    StashPage(Room room) {
        this.room = room;
    }

    void add(RoutesConfig routes) {
        routes.get("/stash", this::show);
        routes.get("/stash/heard", this::hear);
        routes.post("/stash/line", this::line);
        routes.post("/stash/lines", this::lines);
        routes.post("/stash/fields", this::fields);
        routes.post("/stash/undo", context -> turn(context, false));
        routes.post("/stash/redo", context -> turn(context, true));
        new StashFiles(room, this).add(routes);
        new PiecePage(room).add(routes);
        new FabricPage(room).add(routes);
    }

    private StashBook book() {
        return room.store().stash();
    }

    private void show(Context context) {
        StashView view = StashView.of(
                room.store(), StashAsked.of(context), room.settings().ruler());
        if (Room.isPart(context) && "found".equals(context.header("HX-Target"))) {
            room.show(context, "part/stash-found.jte", Map.of("view", view, "oob", true));
        } else {
            page(context, view, Draft.NONE, Room.text(context, "said"));
        }
    }

    /** The whole page, with what she wrote still in its boxes. */
    void page(Context context, StashView view, Draft draft, String said) {
        Frame frame = room.frame(context, "What have you got?", "Stash").saying(said, "/stash");
        room.show(
                context,
                "stash.jte",
                Map.of(
                        "frame",
                        frame,
                        "view",
                        view,
                        "draft",
                        draft,
                        "begun",
                        PhotoPage.begun(room.store().photographs())));
    }

    private void hear(Context context) {
        StashHeard heard = StashHeard.of(
                Room.text(context, "line"), room.store(), room.settings().ruler(), false);
        room.show(context, "part/stash-heard.jte", Map.of("heard", heard));
    }

    private void line(Context context) {
        String line = Room.field(context, "line");
        SpokenLine said = SpokenPieces.hear(line, room.settings().bare());
        if (said instanceof SpokenPieces pieces) {
            answer(context, kept(pieces), true);
            return;
        }
        StashHeard heard = StashHeard.of(
                line.isEmpty() ? " " : line, room.store(), room.settings().ruler(), true);
        context.status(422);
        if (Room.isPart(context)) {
            context.header("HX-Retarget", "#heard").header("HX-Reswap", "innerHTML");
            room.show(context, "part/stash-heard.jte", Map.of("heard", heard));
        } else {
            page(context, whole(), new Draft(line, heard, "", List.of()), "");
        }
    }

    private void lines(Context context) {
        String text = Optional.ofNullable(context.formParam("lines")).orElse("");
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        if (lines.size() > MOST_LINES) {
            String many = "These are " + lines.size() + " lines; " + MOST_LINES
                    + " are taken at once. A CSV file takes more.";
            page(context.status(422), whole(), new Draft("", StashHeard.NOTHING, text, List.of(many)), "");
            return;
        }
        List<SpokenPieces> heard = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (String line : lines) {
            SpokenLine said = SpokenPieces.hear(line, room.settings().bare());
            if (said instanceof SpokenPieces pieces) {
                heard.add(pieces);
            } else if (said instanceof SpokenLine.Unclear unclear) {
                left.add(line);
                wrong.add("“" + line.strip() + "”: " + unclear.sentence() + ".");
            }
        }
        int come = heard.stream().mapToInt(SpokenPieces::count).sum();
        String said = come == 0 ? "" : kept("add " + StashView.pieces(come), heard);
        if (wrong.isEmpty()) {
            Room.go(context, "/stash", said.isEmpty() ? "There was nothing in the box." : said);
        } else {
            Draft draft = new Draft("", StashHeard.NOTHING, String.join("\n", left), wrong);
            page(context.status(422), whole(), draft, said);
        }
    }

    private void fields(Context context) {
        answer(context, kept(fromFields(context)), false);
    }

    /** Numbered and kept as one change, so that two devices that add at once get numbers of their own. */
    private String kept(String label, List<SpokenPieces> heard) {
        return room.store().atOnce(() -> {
            Arrivals arrivals = arrivals();
            heard.forEach(arrivals::add);
            return keep(label, arrivals);
        });
    }

    private String kept(SpokenPieces pieces) {
        return kept("add " + pieces.count() + " of " + pieces.name(), List.of(pieces));
    }

    private SpokenPieces fromFields(Context context) {
        String name = Room.field(context, "fabric");
        String count = Room.field(context, "count");
        String colour = Room.field(context, "colour");
        if (!count.matches("\\d{0,6}")) {
            throw new MeasureException(
                    "\"" + count + "\" is no number of pieces; write a whole number, or leave it blank for one");
        }
        SpokenPieces heard = checked(
                new Size(
                        Measures.length(
                                Room.field(context, "width"), room.settings().bare()),
                        Measures.length(
                                Room.field(context, "length"), room.settings().bare())),
                count.isEmpty() ? "1" : count);
        return new SpokenPieces(
                FabricPage.name(name),
                heard.size(),
                heard.count(),
                colour.isEmpty() ? Optional.empty() : Optional.of(colour(colour)),
                choice(Fabric.Faces.class, Room.field(context, "faces")),
                choice(Fabric.Nap.class, Room.field(context, "nap")),
                choice(Piece.Washed.class, Room.field(context, "washed")).orElse(Piece.Washed.UNKNOWN));
    }

    static void checked(Size size) {
        checked(size, "1");
    }

    /** Said as a line, so that fields keep the same rules as lines. */
    private static SpokenPieces checked(Size size, String count) {
        SpokenLine said = SpokenPieces.hear(size + ", " + count + " of them, cloth", Unit.MILLIMETRE);
        if (said instanceof SpokenLine.Unclear unclear) {
            throw new MeasureException(unclear.sentence());
        }
        return (SpokenPieces) said;
    }

    /** A colour she wrote: as a number, a CSS name or in everyday words. */
    static Colour colour(String written) {
        try {
            return Colour.parse(written);
        } catch (ColourException e) {
            return Colour.named(written)
                    .orElseThrow(() -> new MeasureException("\"" + written
                            + "\" is no colour we know; write one such as sage green or #8a9a5b, or leave it blank"));
        }
    }

    /** The choice of a select box; empty where none, or one that is not offered, was sent. */
    static <E extends Enum<E>> Optional<E> choice(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.name().equals(word.toUpperCase(Locale.ROOT)))
                .findFirst();
    }

    Arrivals arrivals() {
        return new Arrivals(book().whole(), book().nextPiece());
    }

    /** Keeps what arrived as one change; what to say of it. */
    String keep(String label, Arrivals arrivals) {
        book().edit(new StashEdit(label, List.of(), arrivals.pieces()));
        List<Piece> come = arrivals.pieces();
        String numbers = come.size() == 1
                ? "number " + come.get(0).id()
                : "numbers " + come.get(0).id() + "–"
                        + come.get(come.size() - 1).id();
        String said = "Added " + StashView.pieces(come.size()) + ", " + numbers + ".";
        return said + (arrivals.notes().isEmpty() ? "" : " " + String.join(" ", arrivals.notes()));
    }

    private StashView whole() {
        return StashView.of(
                room.store(), new StashAsked("", "", "", 1), room.settings().ruler());
    }

    private void turn(Context context, boolean again) {
        Optional<String> now = again ? book().redoable() : book().undoable();
        String seen = Room.field(context, "label");
        if (!now.orElse("").equals(seen)) {
            throw new StoreException("The stash has meanwhile been changed in another window: "
                    + now.map(label -> "the last change now is “" + label + "”").orElse("nothing is left to take back")
                    + ". Nothing was changed; look again.");
        }
        Optional<String> done = again ? book().redo() : book().undo();
        answer(
                context,
                done.map(label -> (again ? "Done again: " : "Taken back: ") + label + ".")
                        .orElse(again ? "There is nothing to do again." : "There is nothing to take back."),
                false);
    }

    private void answer(Context context, String said, boolean clear) {
        if (Room.isPart(context)) {
            room.show(
                    context,
                    "part/stash-changed.jte",
                    Map.of(
                            "view",
                            whole(),
                            "token",
                            room.token(),
                            "said",
                            said,
                            "clear",
                            clear,
                            "metric",
                            room.settings().ruler().isMetric(),
                            "example",
                            room.store().setting(Example.SETTING).isPresent()));
        } else {
            Room.go(context, "/stash", said);
        }
    }
}
