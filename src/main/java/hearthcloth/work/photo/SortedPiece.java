package hearthcloth.work.photo;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import java.util.Optional;

/**
 * A piece of the photograph as it is now.
 *
 * @param key its number, with a letter for each time it was divided: {@code 3}, {@code 3b}, {@code 3ba}
 * @param piece as read or, where its outline was changed, as measured again; without regard to the grain
 * @param rim who has placed its outline
 * @param checked whether she has confirmed a doubtful reading
 * @param group the fabric's id
 */
public record SortedPiece(
        String key,
        ReadPiece piece,
        Optional<MarkedGrain> grain,
        OutlineOrigin rim,
        boolean dropped,
        boolean checked,
        String group) {

    /** The rectangle that can be cut from it. */
    public LargestRectangle.Box usable() {
        return grain.map(MarkedGrain::usable).orElse(piece.usable());
    }

    public PieceAppearance look() {
        return piece.look();
    }

    /** Whether she has placed its outline. */
    public boolean byHand() {
        return !(rim instanceof OutlineOrigin.Read);
    }

    /** Whether it was not read at all and she drew it in. */
    public boolean isDrawn() {
        return rim instanceof OutlineOrigin.Drawn;
    }

    /**
     * Whether nothing is left open: no doubt, or she has checked it. Correcting an outline counts as checking it; one
     * that was drawn in has no other source.
     */
    public boolean isSure() {
        return !piece.isDoubted() || rim instanceof OutlineOrigin.Moved || checked;
    }

    /** Whether it runs off the picture. */
    public boolean isAtRim() {
        return piece.doubts().stream().anyMatch(doubt -> doubt.kind() == Doubt.Kind.CUT_OFF);
    }

    /**
     * The size that comes into the stash: width across, length along the grain or, where nobody marked it, along the
     * longer side; rounded down to the ruler's marks.
     */
    public Size size(Ruler ruler) {
        return grain.isPresent() ? sized(usable(), true, ruler) : size(usable(), ruler);
    }

    /** The same for a rectangle whose grain nobody marked. */
    public static Size size(LargestRectangle.Box box, Ruler ruler) {
        return sized(box, box.width() >= box.height(), ruler);
    }

    private static Size sized(LargestRectangle.Box box, boolean widthIsAlong, Ruler ruler) {
        Length along = ruler.mark(length(widthIsAlong ? box.width() : box.height()), Rounding.DOWN);
        Length across = ruler.mark(length(widthIsAlong ? box.height() : box.width()), Rounding.DOWN);
        return new Size(across, along);
    }

    private static Length length(double millimetres) {
        return new Length(Rounding.DOWN.whole(millimetres * 1e6));
    }

    /** Whether both are, at least in part, the same cloth, because one was divided from the other. */
    static boolean isSameCloth(String one, String other) {
        String longer = one.length() >= other.length() ? one : other;
        String shorter = one.length() >= other.length() ? other : one;
        return longer.startsWith(shorter) && longer.substring(shorter.length()).matches("[a-z]*");
    }

    SortedPiece outlined(ReadPiece now, OutlineOrigin by, Optional<MarkedGrain> along) {
        return new SortedPiece(key, now, along, by, dropped, checked, group);
    }

    SortedPiece grained(Optional<MarkedGrain> along) {
        return new SortedPiece(key, piece, along, rim, dropped, checked, group);
    }

    SortedPiece dropped(boolean now) {
        return new SortedPiece(key, piece, grain, rim, now, checked, group);
    }

    SortedPiece checked(boolean now) {
        return new SortedPiece(key, piece, grain, rim, dropped, now, group);
    }

    SortedPiece in(String now) {
        return new SortedPiece(key, piece, grain, rim, dropped, checked, now);
    }
}
