package hearthcloth.web.photo;

import hearthcloth.geometry.Point;
import hearthcloth.measure.MeasureException;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.stash.Fabric;
import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.FormFields;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.stash.StashFields;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.work.photo.OutlineEdits;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What she puts right on a photograph: each change is measured again, kept, and can be undone. */
final class PhotoChanges {

    private static final String CORNER = "-?\\d{1,6}(\\.\\d{1,6})?,-?\\d{1,6}(\\.\\d{1,6})?,\\d{1,3}(\\.\\d{1,6})?";
    private static final String CORNERS = CORNER + "( " + CORNER + "){0,99}";

    private final PageContext room;

    private PhotoChanges(PageContext room) {
        this.room = room;
    }

    static void add(PageRoutes routes) {
        routes.of(PhotoChanges::new)
                .post("/stash/photo/{id}/change", PhotoChanges::change)
                .post("/stash/photo/{id}/undo", (page, context) -> page.turn(context, false))
                .post("/stash/photo/{id}/redo", (page, context) -> page.turn(context, true));
    }

    /** A change and what it is called, for "Undo …". */
    private record Change(String label, PhotoSorting sorting, String at) {}

    private PicturingWords words() {
        return PicturingWords.in(room.language());
    }

    private PhotoBook book() {
        return room.store().photographs();
    }

    private SavedPhoto read(Context context) {
        SavedPhoto photo = PhotoAddress.asked(context, book(), words());
        String version = PageContext.field(context, "version");
        if (photo.read().isEmpty() || (!version.isEmpty() && !version.equals(String.valueOf(photo.version())))) {
            throw new StoreException(words().stale());
        }
        return photo;
    }

    private void change(Context context) {
        SavedPhoto photo = read(context);
        PhotoSorting was = photo.read().orElseThrow().sorting();
        String key = PageContext.field(context, "piece");
        if (!key.isEmpty() && PhotoSorting.isAmong(key, book().taken(photo.id()))) {
            throw new MeasureException(words().taken(key));
        }
        Change change = change(context, photo, was, key);
        if (!change.sorting().equals(was)) {
            book().save(photo, change.label(), change.sorting());
        }
        if (PageContext.field(context, "what").equals("fabric")) {
            answerTools(context, photo.id());
        } else {
            answer(context, photo.id(), change.at(), "");
        }
    }

    private Change change(Context context, SavedPhoto photo, PhotoSorting was, String key) {
        OutlineEdits hand = new OutlineEdits(photo.read().orElseThrow().scale().scale());
        String at = PageContext.field(context, "at");
        return switch (PageContext.field(context, "what")) {
            case "corner" ->
                new Change(
                        words().labelCorner(key), hand.corner(was, key, whole(context), spot(context, "x", "y")), key);
            case "more" -> new Change(words().labelMore(key), hand.cornerMore(was, key, whole(context)), key);
            case "less" -> new Change(words().labelLess(key), hand.cornerLess(was, key, whole(context)), key);
            case "draw" -> drawn(context, photo, was);
            case "split" -> split(context, photo, was, key);
            case "grain" ->
                new Change(
                        words().labelGrain(key),
                        hand.grain(was, key, spot(context, "x", "y"), spot(context, "x2", "y2")),
                        key);
            case "nograin" -> new Change(words().labelNoGrain(key), hand.noGrain(was, key), key);
            case "check-all" -> new Change(words().labelAllRight(), was.allChecked(book().taken(photo.id())), at);
            case "drop-rim" -> new Change(words().labelRim(), was.withoutRim(book().taken(photo.id())), at);
            case "drop" -> new Change(words().labelDrop(key), was.dropped(key, true), at);
            case "back" -> new Change(words().labelBring(key), was.dropped(key, false), at);
            case "check" -> new Change(words().labelRight(key), was.checked(key, true), at);
            case "uncheck" -> new Change(words().labelNotSure(key), was.checked(key, false), at);
            case "move" -> move(context, was, key);
            case "fabric" -> fabric(context, was);
            default -> throw new MeasureException(words().formKind());
        };
    }

    private Change split(Context context, SavedPhoto photo, PhotoSorting was, String key) {
        SavedPhoto.Read read = photo.read().orElseThrow();
        PhotoSorting now = new OutlineEdits(read.scale().scale())
                .split(
                        was,
                        key,
                        spot(context, "x", "y"),
                        spot(context, "x2", "y2"),
                        (whole, parts) -> looks(photo.id(), read.scale().pictureWidth(), whole, parts),
                        ReadingQueue.names(room.store()));
        return new Change(words().labelSplit(key), now, key + "a");
    }

    private List<PieceAppearance> looks(String id, int width, ReadPiece whole, List<ReadPiece> parts) {
        return book().screen(id)
                .map(jpeg -> Photograph.ofSmall(jpeg).looks(whole, parts, width))
                .orElse(parts.stream().map(part -> whole.look()).toList());
    }

    /** A piece the reader missed. */
    private Change drawn(Context context, SavedPhoto photo, PhotoSorting was) {
        FloorScale scale = photo.read().orElseThrow().scale().scale();
        Photograph seen = book().screen(photo.id())
                .map(Photograph::ofSmall)
                .orElseThrow(() -> new StoreException(words().goneElsewhere()));
        List<OutlineEdits.Placed> placed = placed(PageContext.field(context, "corners"));
        boolean find = !PageContext.field(context, "find").isEmpty();
        PhotoSorting now = new OutlineEdits(scale)
                .drawn(
                        was,
                        find ? found(seen, scale, placed.get(0).at()) : placed,
                        outline -> seen.look(
                                outline, scale, ShownSheet.parse(photo.sheet()).sheet()),
                        book().taken(photo.id()),
                        ReadingQueue.names(room.store()));
        String key = now.pieces().get(now.pieces().size() - 1).key();
        context.header("HX-Push-Url", PhotoAddress.address(photo.id()) + "?piece=" + key);
        return new Change(words().labelDraw(key), now, key);
    }

    /** The corners of the piece that shows round a place she tapped. */
    private List<OutlineEdits.Placed> found(Photograph seen, FloorScale scale, Point tap) {
        List<Point> corners = seen.shapeAt(tap, scale.pictureWidth());
        if (corners.isEmpty()) {
            throw new MeasureException(words().drawNoRim());
        }
        return corners.stream()
                .map(corner -> new Point(
                        Math.max(0, Math.min(scale.pictureWidth(), corner.x())),
                        Math.max(0, Math.min(scale.pictureHeight(), corner.y()))))
                .map(corner -> new OutlineEdits.Placed(corner, 1.5 * scale.pictureWidth() / seen.width()))
                .toList();
    }

    /** Corners as the page sends them: {@code x,y,off x,y,off}, in pixels of the picture. */
    private List<OutlineEdits.Placed> placed(String text) {
        if (!text.matches(CORNERS)) {
            throw new MeasureException(words().formCorners());
        }
        return Stream.of(text.split(" "))
                .map(corner -> corner.split(","))
                .map(of -> new OutlineEdits.Placed(
                        new Point(Double.parseDouble(of[0]), Double.parseDouble(of[1])), Double.parseDouble(of[2])))
                .toList();
    }

    private Change move(Context context, PhotoSorting was, String key) {
        String to = PageContext.field(context, "group");
        Optional<String> group = to.equals("new") ? Optional.empty() : Optional.of(to);
        return new Change(words().labelMove(key), was.moved(key, group, ReadingQueue.names(room.store())), key);
    }

    private Change fabric(Context context, PhotoSorting was) {
        PieceGroup group = was.group(PageContext.field(context, "group"));
        PieceGroup told = new PieceGroup(
                group.id(),
                StashFields.name(PageContext.field(context, "name"), room.language()),
                FormFields.choice(Fabric.Faces.class, PageContext.field(context, "faces"))
                        .orElse(group.faces()),
                FormFields.choice(Fabric.Nap.class, PageContext.field(context, "nap"))
                        .orElse(group.nap()),
                FormFields.choice(hearthcloth.stash.Piece.Washed.class, PageContext.field(context, "washed"))
                        .orElse(group.washed()));
        String label =
                told.name().equals(group.name()) ? words().labelFabric(told.name()) : words().labelName(told.name());
        return new Change(label, was.told(told), PageContext.field(context, "at"));
    }

    private int whole(Context context) {
        String text = PageContext.field(context, "i");
        if (!text.matches("\\d{1,3}")) {
            throw new MeasureException(words().formNumber());
        }
        return Integer.parseInt(text);
    }

    private Point spot(Context context, String x, String y) {
        return new Point(number(context, x), number(context, y));
    }

    private double number(Context context, String name) {
        String text = PageContext.field(context, name);
        if (!text.matches("-?\\d{1,6}(\\.\\d{1,6})?")) {
            throw new MeasureException(words().formPlace());
        }
        return Double.parseDouble(text);
    }

    private void turn(Context context, boolean again) {
        String id = context.pathParam("id");
        read(context);
        Optional<String> done = again ? book().redo(id) : book().undo(id);
        String said = done.map(label -> again ? words().redone(label) : words().undone(label))
                .orElseGet(() -> again ? words().redoNothing() : words().undoNothing());
        answer(context, id, PageContext.field(context, "at"), said);
    }

    private void answer(Context context, String id, String at, String said) {
        if (PageContext.isPart(context)) {
            room.show(context, new SortingView.Changed(sorting(id, at), said));
        } else {
            String there = at.matches("\\d+[a-z]*") ? "?piece=" + at : "";
            PageContext.go(context, PhotoAddress.address(id) + there, said);
        }
    }

    /** Only what tells of the change, so that nothing moves under her hand while she fills in the next field. */
    private void answerTools(Context context, String id) {
        if (PageContext.isPart(context)) {
            room.show(context, new SortingView.Tools(sorting(id, PageContext.field(context, "at")), true));
        } else {
            PageContext.go(context, PhotoAddress.address(id), words().kept());
        }
    }

    private SortingView sorting(String id, String at) {
        SavedPhoto photo = book().find(id).orElseThrow(() -> new StoreException(words().gone()));
        return new SortingView(PhotoView.of(room.store(), photo, room.settings().voice(), at, ""), room.asker());
    }
}
