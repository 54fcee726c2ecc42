package hearthcloth.web.photo;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.SwatchBook.Swatch;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.stash.StashFields;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.work.photo.PiecesTaken;
import hearthcloth.work.photo.SortedPiece;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Takes what she accepts into the stash: pieces, and a swatch of each fabric, as one change that is undone at once. */
final class PhotoTaking {

    /** A swatch shows no more of the cloth than this, in millimetres; */
    private static final double MOST_MM = 150;
    /** and keeps this far from the rim of what is usable, as a share. */
    private static final double INSIDE = 0.92;

    private static final int LEAST_PIXELS = 96;
    private static final int MOST_PIXELS = 384;

    private final PageContext room;
    private final ReadingQueue readings;

    private PhotoTaking(PageContext room, ReadingQueue readings) {
        this.room = room;
        this.readings = readings;
    }

    static void add(PageRoutes routes, ReadingQueue readings) {
        routes.of(room -> new PhotoTaking(room, readings)).post("/stash/photo/{id}/accept", PhotoTaking::accept);
    }

    private PicturingWords words() {
        return PicturingWords.in(room.language());
    }

    private void accept(Context context) {
        Store store = room.store();
        SavedPhoto photo = PhotoAddress.asked(context, store.photographs(), words());
        String version = PageContext.field(context, "version");
        if (photo.read().isEmpty() || (!version.isEmpty() && !version.equals(String.valueOf(photo.version())))) {
            throw new StoreException(words().staleTaking());
        }
        Ruler ruler = room.settings().ruler();
        List<PiecesTaken.Coming> coming = taking(photo, store, ruler).ready();
        if (coming.isEmpty()) {
            throw new MeasureException(words().nothingToTake());
        }
        Map<String, Swatch> swatches = swatches(store, photo, coming);
        String said = store.atOnce(() -> taken(store, photo, coming, swatches, ruler));
        String left = left(photo, store, ruler);
        PageContext.go(
                context,
                left.isEmpty() ? "/stash" : PhotoAddress.address(photo.id()),
                room.settings().voice().sentences(List.of(said, left)));
    }

    private static PiecesTaken taking(SavedPhoto photo, Store store, Ruler ruler) {
        return new PiecesTaken(
                photo.read().orElseThrow().sorting(), store.photographs().taken(photo.id()), ruler);
    }

    /** Of each fabric a square of its largest piece, cut out of the photograph. */
    private Map<String, Swatch> swatches(Store store, SavedPhoto photo, List<PiecesTaken.Coming> coming) {
        FloorScale scale = photo.read().orElseThrow().scale().scale();
        return readings.alone(() -> {
            Map<String, Swatch> swatches = new HashMap<>();
            Photograph picture = store.photographs()
                    .file(photo.id())
                    .map(Photograph::of)
                    .orElseThrow(() -> new StoreException(words().goneElsewhere()));
            for (PiecesTaken.Coming one : coming) {
                swatches.put(one.group().id(), swatch(picture, scale, one));
            }
            return swatches;
        });
    }

    private static Swatch swatch(Photograph picture, FloorScale scale, PiecesTaken.Coming one) {
        SortedPiece best = one.best();
        double side = Math.min(
                MOST_MM, INSIDE * Math.min(best.usable().width(), best.usable().height()));
        double sharp = side * scale.pixelsPerMm(scale.inPicture(best.usable().middle()));
        int pixels = (int) Math.max(LEAST_PIXELS, Math.min(MOST_PIXELS, sharp));
        byte[] jpeg = picture.cutOut(scale, best.usable(), side, pixels, one.colour());
        return new Swatch(
                "image/jpeg", Base64.getEncoder().encodeToString(jpeg), new Length(Rounding.NEAREST.whole(side * 1e6)));
    }

    private String taken(
            Store store, SavedPhoto photo, List<PiecesTaken.Coming> coming, Map<String, Swatch> swatches, Ruler ruler) {
        long version =
                store.photographs().find(photo.id()).map(SavedPhoto::version).orElse(-1L);
        PiecesTaken taking = taking(photo, store, ruler);
        if (version != photo.version() || taking.isTwice(coming)) {
            throw new StoreException(words().staleTaking());
        }
        PiecesTaken.Arrived arrived =
                taking.arrived(coming, store.stash().whole(), store.stash().nextPiece(), this::named);
        List<StashEdit.Pictured> pictured = new ArrayList<>();
        Set<String> shown = new HashSet<>(store.swatches().across().keySet());
        for (int i = 0; i < coming.size(); i++) {
            String fabric = arrived.names().get(i);
            if (shown.add(fabric)) {
                pictured.add(new StashEdit.Pictured(
                        fabric,
                        Optional.empty(),
                        Optional.ofNullable(swatches.get(coming.get(i).group().id()))));
            }
        }
        List<Piece> come = arrived.pieces();
        store.stash()
                .edit(new StashEdit(
                        words().labelAdd(come.size()),
                        List.of(),
                        come,
                        pictured,
                        Optional.of(new StashEdit.FromPhoto(photo.id(), arrived.keys(), true))));
        List<String> said = new ArrayList<>();
        said.add(words().added(come.get(0).id(), come.get(come.size() - 1).id(), come.size()));
        arrived.notes().forEach(note -> said.add(note.in(room.settings().voice())));
        return room.settings().voice().sentences(said);
    }

    private String named(String name) {
        return StashFields.name(name, room.language());
    }

    /** What stays on the photograph, in words; empty where nothing does. */
    private String left(SavedPhoto photo, Store store, Ruler ruler) {
        List<String> left = taking(photo, store, ruler).left();
        if (left.isEmpty()) {
            return "";
        }
        return words().stays(left.size(), String.join(", ", left));
    }
}
