package hearthcloth.web.photo;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.Store;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.PieceState;
import hearthcloth.work.photo.SortedPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A photograph with what was read off it, as the page shows it.
 *
 * @param width of the picture in pixels, which all places are in
 * @param sheets the outline of each reference
 * @param chosen the piece she looks at closely
 * @param drawing whether she is drawing in a piece that was missed
 * @param fabrics of the stash, to be chosen from by name
 * @param ready how many can be taken in
 * @param twice pieces that another photograph may show too
 */
public record PhotoView(
        String id,
        long version,
        int width,
        int height,
        List<String> sheets,
        List<Shown> pieces,
        List<Fabric> groups,
        Optional<PhotoChosen> chosen,
        boolean drawing,
        List<String> fabrics,
        int ready,
        String undo,
        String redo,
        List<TwiceShown> twice) {

    /**
     * A piece, on the picture and in the list.
     *
     * @param points of its outline, for SVG
     * @param box of its usable rectangle
     * @param x where its number stands
     * @param room how wide the usable rectangle is in the picture, for its size to be written in it
     * @param size of what is usable
     * @param off how far off its sides may be
     * @param state in words, beside its number; empty where it is ready
     * @param atRim whether it runs off the picture
     */
    public record Shown(
            String key,
            PieceState standing,
            String points,
            String box,
            String x,
            String y,
            String room,
            String size,
            String off,
            String state,
            List<String> doubts,
            boolean atRim) {

        /** What marks it beside its number, so that nothing is told by colour alone. */
        public String sign() {
            return switch (standing) {
                case READY -> "";
                case LOOK -> " ?";
                case SMALL -> " –";
                case DROPPED -> " ×";
                case IN -> " ✓";
            };
        }

        public String look() {
            return standing.name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A fabric and its pieces.
     *
     * @param about faces, nap and washing in words
     * @param known whether the stash has a fabric of this name, which these pieces join
     */
    public record Fabric(
            PieceGroup group, String colour, String about, String count, boolean known, List<Shown> pieces) {}

    static PhotoView of(Store store, SavedPhoto photo, Voice voice, String at, String doing) {
        Ruler ruler = voice.ruler();
        PhotoBook book = store.photographs();
        SavedPhoto.Read read = photo.read().orElseThrow();
        PhotoSorting sorting = read.sorting();
        FloorScale scale = read.scale().scale();
        Set<String> taken = book.taken(photo.id());
        List<String> names = ReadingQueue.names(store);
        List<Shown> shown = sorting.pieces().stream()
                .map(piece -> shown(piece, scale, taken, voice))
                .toList();
        return new PhotoView(
                photo.id(),
                photo.version(),
                scale.pictureWidth(),
                scale.pictureHeight(),
                scale.sheetsInPicture().stream().map(PhotoView::points).toList(),
                shown,
                groups(sorting, shown, names, PicturingWords.in(voice.language())),
                sorting.find(at)
                        .map(piece -> PhotoChosen.of(piece, scale, voice, PieceState.of(piece, taken, ruler), doing)),
                doing.equals("draw"),
                names,
                (int) shown.stream()
                        .filter(one -> one.standing() == PieceState.READY)
                        .count(),
                book.undoable(photo.id()).orElse(""),
                book.redoable(photo.id()).orElse(""),
                TwiceShown.of(book, photo));
    }

    private static Shown shown(SortedPiece piece, FloorScale scale, Set<String> taken, Voice voice) {
        Ruler ruler = voice.ruler();
        PieceState state = PieceState.of(piece, taken, ruler);
        List<Point> box =
                piece.usable().corners().stream().map(scale::inPicture).toList();
        Point middle = scale.inPicture(piece.usable().middle());
        double left = box.stream().mapToDouble(Point::x).min().orElse(0);
        double right = box.stream().mapToDouble(Point::x).max().orElse(0);
        return new Shown(
                piece.key(),
                state,
                points(piece.piece().outline().picture()),
                points(box),
                number(middle.x()),
                number(middle.y()),
                number(right - left),
                voice.write(piece.size(ruler), Rounding.DOWN),
                "± " + voice.write(off(piece), Rounding.UP),
                PicturingWords.in(voice.language()).state(state.name()),
                state == PieceState.LOOK ? said(piece, voice) : List.of(),
                piece.isAtRim());
    }

    /** What is doubtful about a piece, in sentences. */
    static List<String> said(SortedPiece piece, Voice voice) {
        return piece.piece().doubts().stream()
                .map(doubt -> doubt.sentence().in(voice))
                .toList();
    }

    /** The side that is told least surely. */
    public static Length off(SortedPiece piece) {
        return piece.piece().outline().sides().stream()
                .map(MeasuredLength::giveOrTake)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static List<Fabric> groups(
            PhotoSorting sorting, List<Shown> shown, List<String> names, PicturingWords words) {
        List<Fabric> groups = new ArrayList<>();
        for (PieceGroup group : sorting.groups()) {
            List<SortedPiece> own = sorting.of(group);
            List<String> keys = own.stream().map(SortedPiece::key).toList();
            String colour = own.stream()
                    .max(Comparator.comparingDouble(piece -> piece.usable().area()))
                    .map(piece -> piece.look().colour().toColour().hex())
                    .orElse("#888888");
            groups.add(new Fabric(
                    group,
                    colour,
                    about(group, words),
                    words.pieces(
                            (int) own.stream().filter(piece -> !piece.dropped()).count()),
                    names.stream().anyMatch(group.name()::equalsIgnoreCase),
                    shown.stream().filter(one -> keys.contains(one.key())).toList()));
        }
        return groups;
    }

    private static String about(PieceGroup group, PicturingWords words) {
        return words.fabricAbout(
                group.faces() == hearthcloth.stash.Fabric.Faces.RIGHT ? "right" : "same",
                group.nap() == hearthcloth.stash.Fabric.Nap.LENGTHWISE ? "yes" : "no",
                group.washed().name());
    }

    /** Pieces with a doubt she has not looked at. */
    public List<Shown> doubtful() {
        return pieces.stream()
                .filter(piece -> piece.standing() == PieceState.LOOK)
                .toList();
    }

    /** How many of those run off the picture. */
    public long atRim() {
        return doubtful().stream().filter(piece -> piece.atRim()).count();
    }

    /** The key of the piece she looks at; empty where none. */
    public String at() {
        return chosen.map(one -> one.piece().key()).orElse("");
    }

    static String points(List<Point> spots) {
        StringBuilder out = new StringBuilder();
        for (Point spot : spots) {
            out.append(number(spot.x())).append(',').append(number(spot.y())).append(' ');
        }
        return out.toString().strip();
    }

    static String number(double pixels) {
        return String.format(Locale.ROOT, "%.1f", pixels);
    }
}
