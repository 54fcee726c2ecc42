package hearthcloth.web.stash;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.store.StashBook;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.FormFields;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.stashing.StashingWords;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** "What have you got?": pieces said in a line, many lines or fields; on a table to scale; every change undone. */
public final class StashPage {

    /** A page of text, not a book: lines pasted at once. */
    private static final int MOST_LINES = 2_000;

    /** The page with fields to fill in and files to bring. */
    @PageView.Template("stash-ways.jte")
    public record Ways(PageFrame frame) implements PageView {}

    private final PageContext room;
    private final StashScreen screen;

    private StashPage(PageContext room) {
        this.room = room;
        this.screen = new StashScreen(room);
    }

    public static void add(PageRoutes routes) {
        routes.of(StashPage::new)
                .get("/stash", StashPage::show)
                .get(
                        "/stash/ways",
                        (page, context) -> page.room.show(
                                context,
                                new Ways(page.room.frame(context, page.words().titleWays(), "Stash"))))
                .get("/stash/heard", StashPage::hear)
                .post("/stash/line", StashPage::line)
                .post("/stash/fields", StashPage::fields)
                .post("/stash/chosen", StashPage::chosen)
                .post("/stash/look", StashPage::look)
                .post("/stash/undo", (page, context) -> page.turn(context, false))
                .post("/stash/redo", (page, context) -> page.turn(context, true));
        StashFiles.add(routes);
        PiecePage.add(routes);
        FabricPage.add(routes);
    }

    private StashingWords words() {
        return StashingWords.in(room.language());
    }

    private StashIntake intake() {
        return new StashIntake(book(), words());
    }

    private StashBook book() {
        return room.store().stash();
    }

    private void show(Context context) {
        StashView view = StashView.of(
                room.store(), StashAsked.of(context), room.settings().voice());
        if (PageContext.isPart(context) && "found".equals(context.header("HX-Target"))) {
            room.show(context, new StashScreen.Found(view, true));
        } else {
            screen.show(context, view, StashScreen.Draft.none(room.language()), PageContext.text(context, "said"));
        }
    }

    private void hear(Context context) {
        StashHeard heard = StashHeard.of(
                PageContext.text(context, "line"), room.store(), room.settings().voice(), false);
        room.show(context, heard);
    }

    /** One line or many: what is understood comes in as one change, the rest stays in the box with what is unclear. */
    private void line(Context context) {
        String text = Optional.ofNullable(context.formParam("line")).orElse("").strip();
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        if (lines.size() > MOST_LINES) {
            String many = words().lineMany(String.valueOf(lines.size()), String.valueOf(MOST_LINES));
            unclear(context, new StashScreen.Draft(text, StashHeard.nothing(room.language()), List.of(many)), "");
            return;
        }
        Taken taken = taken(lines);
        String said = taken.heard.isEmpty() ? "" : kept(label(taken.heard), taken.heard);
        if (taken.wrong.isEmpty() && !lines.isEmpty()) {
            answer(context, said, Optional.of(StashScreen.Draft.none(room.language())));
            return;
        }
        String rest = String.join("\n", taken.left);
        StashHeard about = StashHeard.of(
                rest.isEmpty() ? " " : rest, room.store(), room.settings().voice(), true);
        unclear(context, new StashScreen.Draft(rest, about, lines.size() > 1 ? taken.wrong : List.of()), said);
    }

    /** What was understood of her lines, those that were not, and what is unclear about each of these. */
    private record Taken(List<SpokenPieces> heard, List<String> left, List<String> wrong) {}

    private Taken taken(List<String> lines) {
        Taken taken = new Taken(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (String line : lines) {
            SpokenLine said = SpokenPieces.hear(line, room.settings().bare());
            if (said instanceof SpokenPieces pieces) {
                taken.heard.add(pieces);
            } else if (said instanceof SpokenLine.Unclear unclear) {
                taken.left.add(line);
                taken.wrong.add(words().lineUnclear(
                                line.strip(), unclear.said().in(room.settings().voice())));
            }
        }
        return taken;
    }

    private String label(List<SpokenPieces> heard) {
        int come = heard.stream().mapToInt(SpokenPieces::count).sum();
        StashingWords words = words();
        return words.deedAdd(heard.size() == 1 ? words.piecesOf(heard.get(0).name(), come) : words.pieces(come));
    }

    private void unclear(Context context, StashScreen.Draft draft, String said) {
        context.status(422);
        if (PageContext.isPart(context)) {
            screen.showChanged(context, said, Optional.of(draft));
        } else {
            screen.show(context, screen.whole(), draft, said);
        }
    }

    /** What she does with the pieces she chose on the table. */
    private void chosen(Context context) {
        ChosenPieces chosen = new ChosenPieces(room, context);
        if (chosen.isEmpty()) {
            answer(context, words().chosenNothing(), Optional.empty());
            return;
        }
        switch (PageContext.field(context, "do")) {
            case "keep" -> answer(context, chosen.keep(true), Optional.empty());
            case "back" -> answer(context, chosen.keep(false), Optional.empty());
            case "use" -> answer(context, chosen.useUp(), Optional.empty());
            case "first" -> {
                chosen.useFirst();
                PageContext.go(context, "/cloth", "");
            }
            default -> PageContext.go(context, chosen.page(), "");
        }
    }

    private void look(Context context) {
        TableLook.keep(context, room.store());
        answer(context, "", Optional.empty());
    }

    private void fields(Context context) {
        SpokenPieces fromFields = fromFields(context);
        answer(context, kept(label(List.of(fromFields)), List.of(fromFields)), Optional.empty());
    }

    /** Numbered and kept as one change, so that two devices that add at once get numbers of their own. */
    private String kept(String label, List<SpokenPieces> heard) {
        return room.store().atOnce(() -> {
            Arrivals arrivals = intake().arrivals();
            heard.forEach(arrivals::add);
            return intake().keep(label, arrivals);
        });
    }

    private SpokenPieces fromFields(Context context) {
        String name = PageContext.field(context, "fabric");
        String count = PageContext.field(context, "count");
        String colour = PageContext.field(context, "colour");
        if (!count.matches("\\d{0,6}")) {
            throw new MeasureException(words().wrongCount(count));
        }
        SpokenPieces heard = StashFields.checked(
                new Size(
                        Measures.length(
                                PageContext.field(context, "width"),
                                room.settings().bare()),
                        Measures.length(
                                PageContext.field(context, "length"),
                                room.settings().bare())),
                count.isEmpty() ? "1" : count);
        return new SpokenPieces(
                StashFields.name(name, room.language()),
                heard.size(),
                heard.count(),
                colour.isEmpty() ? Optional.empty() : Optional.of(FormFields.colour(colour, room.language())),
                FormFields.choice(Fabric.Faces.class, PageContext.field(context, "faces")),
                FormFields.choice(Fabric.Nap.class, PageContext.field(context, "nap")),
                FormFields.choice(Piece.Washed.class, PageContext.field(context, "washed"))
                        .orElse(Piece.Washed.UNKNOWN));
    }

    private void turn(Context context, boolean again) {
        Optional<String> now = again ? book().redoable() : book().undoable();
        String seen = PageContext.field(context, "label");
        if (!now.orElse("").equals(seen)) {
            throw new StoreException(now.map(words()::staleLast).orElseGet(words()::staleNothing));
        }
        Optional<String> done = again ? book().redo() : book().undo();
        answer(
                context,
                done.map(label -> again ? words().redone(label) : words().undone(label))
                        .orElseGet(() -> again ? words().redoNothing() : words().undoNothing()),
                Optional.empty());
    }

    private void answer(Context context, String said, Optional<StashScreen.Draft> line) {
        if (PageContext.isPart(context)) {
            screen.showChanged(context, said, line);
        } else {
            PageContext.go(context, "/stash", said);
        }
    }
}
