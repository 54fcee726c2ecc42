package hearthcloth.gather;

import hearthcloth.measure.MeasureException;
import hearthcloth.photo.ByHand;
import hearthcloth.photo.Look;
import hearthcloth.photo.Piece;
import hearthcloth.photo.Scale;
import hearthcloth.photo.Spot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** What the maker's hand does to outlines; every change is measured again. Refuses, in words, what leaves no outline. */
public final class Hand {

    private static final String NO_OUTLINE = "that would leave no outline; a piece has three corners or more, none of"
            + " them on the other side of its rim. Nothing was changed";

    private final Scale scale;
    private final ByHand byHand;

    public Hand(Scale scale) {
        this.scale = scale;
        this.byHand = new ByHand(scale);
    }

    /** Puts corner {@code i} somewhere else, in pixels of the picture. */
    public Sorting corner(Sorting was, String key, int i, Spot to) {
        List<Spot> corners = corners(was, key, i);
        corners.set(i, inPicture(to));
        return outlined(was, key, corners);
    }

    /** A new corner in the middle of the side that begins at corner {@code i}. */
    public Sorting cornerMore(Sorting was, String key, int i) {
        List<Spot> corners = corners(was, key, i);
        Spot a = corners.get(i);
        Spot b = corners.get((i + 1) % corners.size());
        corners.add(i + 1, new Spot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2));
        return outlined(was, key, corners);
    }

    public Sorting cornerLess(Sorting was, String key, int i) {
        List<Spot> corners = corners(was, key, i);
        corners.remove(i);
        return outlined(was, key, corners);
    }

    private static List<Spot> corners(Sorting was, String key, int i) {
        List<Spot> corners = new ArrayList<>(was.piece(key).piece().outline().picture());
        if (i < 0 || i >= corners.size()) {
            throw new MeasureException("this piece has no such corner any more");
        }
        return corners;
    }

    private Spot inPicture(Spot spot) {
        return new Spot(
                Math.max(0, Math.min(scale.pictureWidth(), spot.x())),
                Math.max(0, Math.min(scale.pictureHeight(), spot.y())));
    }

    private Sorting outlined(Sorting was, String key, List<Spot> corners) {
        Sorted piece = was.piece(key);
        Piece now = byHand.outlined(piece.piece(), corners, Optional.empty())
                .orElseThrow(() -> new MeasureException(NO_OUTLINE));
        Optional<Grain> grain = piece.grain()
                .flatMap(old -> byHand.outlined(piece.piece(), corners, Optional.of(old.angleRad()))
                        .map(along -> new Grain(old.angleRad(), along.usable())));
        return was.with(piece.outlined(now, grain));
    }

    /**
     * Parts a piece in two along a line of the picture.
     *
     * @param looks how the parts look, given the whole
     * @param taken names of fabrics in the stash
     */
    public Sorting split(
            Sorting was,
            String key,
            Spot a,
            Spot b,
            BiFunction<Piece, List<Piece>, List<Look>> looks,
            Collection<String> taken) {
        Piece whole = was.piece(key).piece();
        List<Piece> parts = byHand.split(whole, a, b)
                .orElseThrow(() -> new MeasureException(
                        "the line does not part piece " + key + " in two; draw it right across. Nothing was changed"));
        List<Look> seen = looks.apply(whole, parts);
        List<Piece> dyed = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Piece part = parts.get(i);
            dyed.add(new Piece(part.number(), part.outline(), part.usable(), seen.get(i), List.of()));
        }
        return was.parted(key, dyed, taken);
    }

    /** Marks how the grain runs by a line of the picture; the usable rectangle lies along it from then on. */
    public Sorting grain(Sorting was, String key, Spot a, Spot b) {
        if (Math.hypot(b.x() - a.x(), b.y() - a.y()) < 1) {
            throw new MeasureException("the line is too short to tell a direction. Nothing was changed");
        }
        Sorted piece = was.piece(key);
        double angle = byHand.direction(a, b);
        Piece along = piece.byHand()
                ? byHand.outlined(piece.piece(), piece.piece().outline().picture(), Optional.of(angle))
                        .orElseThrow(() -> new MeasureException(NO_OUTLINE))
                : byHand.along(piece.piece(), Optional.of(angle));
        return was.with(piece.grained(Optional.of(new Grain(angle, along.usable()))));
    }

    public Sorting noGrain(Sorting was, String key) {
        return was.with(was.piece(key).grained(Optional.empty()));
    }
}
