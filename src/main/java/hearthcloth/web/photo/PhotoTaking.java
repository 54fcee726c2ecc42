package hearthcloth.web.photo;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.SwatchBook.Swatch;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.stash.StashFields;
import hearthcloth.words.Language;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.SortedPiece;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
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

    /** A fabric with the pieces of it that come, largest first. */
    private record Coming(PieceGroup group, List<SortedPiece> pieces) {

        Colour colour() {
            return pieces.get(0).look().colour().toColour();
        }

        Fabric fabric(Language language) {
            return new Fabric(StashFields.name(group.name(), language), colour(), group.faces(), group.nap());
        }
    }

    private void accept(Context context) {
        Store store = room.store();
        SavedPhoto photo = PhotoAddress.asked(context, store.photographs(), words());
        String version = PageContext.field(context, "version");
        if (photo.read().isEmpty() || (!version.isEmpty() && !version.equals(String.valueOf(photo.version())))) {
            throw new StoreException(words().staleTaking());
        }
        Ruler ruler = room.settings().ruler();
        List<Coming> coming = coming(photo, store, ruler);
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

    private static List<Coming> coming(SavedPhoto photo, Store store, Ruler ruler) {
        Set<String> taken = store.photographs().taken(photo.id());
        PhotoSorting sorting = photo.read().orElseThrow().sorting();
        List<Coming> coming = new ArrayList<>();
        for (PieceGroup group : sorting.groups()) {
            List<SortedPiece> pieces = sorting.of(group).stream()
                    .filter(piece -> PhotoView.state(piece, taken, ruler) == PhotoView.State.READY)
                    .sorted(Comparator.comparingDouble(
                            (SortedPiece piece) -> -piece.size(ruler).areaMm2()))
                    .toList();
            if (!pieces.isEmpty()) {
                coming.add(new Coming(group, pieces));
            }
        }
        return coming;
    }

    /** Of each fabric a square of its largest piece, cut out of the photograph. */
    private Map<String, Swatch> swatches(Store store, SavedPhoto photo, List<Coming> coming) {
        FloorScale scale = photo.read().orElseThrow().scale().scale();
        return readings.alone(() -> {
            Map<String, Swatch> swatches = new HashMap<>();
            Photograph picture = store.photographs()
                    .file(photo.id())
                    .map(Photograph::of)
                    .orElseThrow(() -> new StoreException(words().goneElsewhere()));
            for (Coming one : coming) {
                swatches.put(one.group().id(), swatch(picture, scale, one));
            }
            return swatches;
        });
    }

    private static Swatch swatch(Photograph picture, FloorScale scale, Coming one) {
        SortedPiece best = one.pieces().stream()
                .max(Comparator.comparingDouble(
                        piece -> Math.min(piece.usable().width(), piece.usable().height())))
                .orElseThrow();
        double side = Math.min(
                MOST_MM, INSIDE * Math.min(best.usable().width(), best.usable().height()));
        double sharp = side * scale.pixelsPerMm(scale.inPicture(best.usable().middle()));
        int pixels = (int) Math.max(LEAST_PIXELS, Math.min(MOST_PIXELS, sharp));
        byte[] jpeg = picture.cutOut(scale, best.usable(), side, pixels, one.colour());
        return new Swatch(
                "image/jpeg", Base64.getEncoder().encodeToString(jpeg), new Length(Rounding.NEAREST.whole(side * 1e6)));
    }

    private String taken(
            Store store, SavedPhoto photo, List<Coming> coming, Map<String, Swatch> swatches, Ruler ruler) {
        long version =
                store.photographs().find(photo.id()).map(SavedPhoto::version).orElse(-1L);
        Set<String> there = store.photographs().taken(photo.id());
        boolean twice = coming.stream()
                .flatMap(one -> one.pieces().stream())
                .anyMatch(piece -> PhotoSorting.isAmong(piece.key(), there));
        if (version != photo.version() || twice) {
            throw new StoreException(words().staleTaking());
        }
        Arrivals arrivals = new Arrivals(store.stash().whole(), store.stash().nextPiece());
        List<StashEdit.Pictured> pictured = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        Set<String> shown = new HashSet<>(store.swatches().across().keySet());
        for (Coming one : coming) {
            int before = arrivals.pieces().size();
            arrivals.add(new Stash(one.pieces().stream()
                    .map(piece -> piece(one, piece.size(ruler)))
                    .toList()));
            one.pieces().forEach(piece -> keys.add(piece.key()));
            String fabric = arrivals.pieces().get(before).fabric().name();
            if (shown.add(fabric)) {
                pictured.add(new StashEdit.Pictured(
                        fabric,
                        Optional.empty(),
                        Optional.ofNullable(swatches.get(one.group().id()))));
            }
        }
        List<Piece> come = arrivals.pieces();
        store.stash()
                .edit(new StashEdit(
                        words().labelAdd(come.size()),
                        List.of(),
                        come,
                        pictured,
                        Optional.of(new StashEdit.FromPhoto(photo.id(), keys, true))));
        List<String> said = new ArrayList<>();
        said.add(words().added(come.get(0).id(), come.get(come.size() - 1).id(), come.size()));
        arrivals.notes().forEach(note -> said.add(note.in(room.settings().voice())));
        return room.settings().voice().sentences(said);
    }

    private Piece piece(Coming one, Size size) {
        return new Piece("0", one.fabric(room.language()), size, one.group().washed(), 0);
    }

    /** What stays on the photograph, in words; empty where nothing does. */
    private String left(SavedPhoto photo, Store store, Ruler ruler) {
        Set<String> taken = store.photographs().taken(photo.id());
        List<String> left = photo.read().orElseThrow().sorting().pieces().stream()
                .filter(piece -> PhotoView.state(piece, taken, ruler) == PhotoView.State.LOOK)
                .map(SortedPiece::key)
                .toList();
        if (left.isEmpty()) {
            return "";
        }
        return words().stays(left.size(), String.join(", ", left));
    }
}
