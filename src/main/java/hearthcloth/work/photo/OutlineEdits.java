package hearthcloth.work.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Remeasurement;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The maker's changes of outlines by hand; after every change the piece is measured again. A change that leaves no
 * outline is refused with a sentence.
 */
public final class OutlineEdits {

    /** The most corners that one taps one after another. */
    public static final int MOST_DRAWN = 12;

    /** A piece that cannot be cut as wide as this is none, in millimetres (docs/sources.md#narrowest-piece). */
    private static final double LEAST_MM = 10;

    private final FloorScale scale;
    private final Remeasurement byHand;

    public OutlineEdits(FloorScale scale) {
        this.scale = scale;
        this.byHand = new Remeasurement(scale);
    }

    /** Moves corner {@code i} to another place, in pixels of the picture. */
    public PhotoSorting corner(PhotoSorting was, String key, int i, Point to) {
        List<Point> corners = corners(was, key, i);
        corners.set(i, inPicture(to));
        return outlined(was, key, corners, rim -> rim.moved(i));
    }

    /** Adds a corner in the middle of the side that begins at corner {@code i}. */
    public PhotoSorting cornerMore(PhotoSorting was, String key, int i) {
        List<Point> corners = corners(was, key, i);
        Point a = corners.get(i);
        Point b = corners.get((i + 1) % corners.size());
        corners.add(i + 1, new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2));
        return outlined(was, key, corners, rim -> rim.more(i));
    }

    public PhotoSorting cornerLess(PhotoSorting was, String key, int i) {
        List<Point> corners = corners(was, key, i);
        corners.remove(i);
        return outlined(was, key, corners, rim -> rim.less(i));
    }

    private static List<Point> corners(PhotoSorting was, String key, int i) {
        List<Point> corners = new ArrayList<>(was.piece(key).piece().outline().picture());
        if (i < 0 || i >= corners.size()) {
            throw new RefusedException(PhotographingSentences.outlineCorner());
        }
        return corners;
    }

    private Point inPicture(Point spot) {
        return new Point(
                Math.max(0, Math.min(scale.pictureWidth(), spot.x())),
                Math.max(0, Math.min(scale.pictureHeight(), spot.y())));
    }

    private PhotoSorting outlined(
            PhotoSorting was, String key, List<Point> corners, UnaryOperator<OutlineOrigin.Drawn> change) {
        SortedPiece piece = was.piece(key);
        OutlineOrigin rim =
                piece.rim() instanceof OutlineOrigin.Drawn drawn ? change.apply(drawn) : new OutlineOrigin.Moved();
        ReadPiece now = outlined(piece, corners, rim, Optional.empty())
                .orElseThrow(() -> new RefusedException(PhotographingSentences.outlineNone()));
        Optional<MarkedGrain> grain = piece.grain()
                .flatMap(old -> outlined(piece, corners, rim, Optional.of(old.angleRad()))
                        .map(along -> new MarkedGrain(old.angleRad(), along.usable())));
        ReadPiece judged = rim instanceof OutlineOrigin.Drawn drawn
                ? byHand.drawn(now.number(), corners, drawn.pixels(), now.look(), others(was, key))
                : now;
        return was.with(piece.outlined(judged, rim, grain));
    }

    private Optional<ReadPiece> outlined(
            SortedPiece piece, List<Point> corners, OutlineOrigin rim, Optional<Double> grain) {
        return byHand.outlined(piece.piece(), corners, rim.pixels(corners.size()), grain);
    }

    /** All pieces that are not left out, except {@code key}. */
    private static Map<String, ReadPiece> others(PhotoSorting was, String key) {
        Map<String, ReadPiece> others = new LinkedHashMap<>();
        was.pieces().stream()
                .filter(piece -> !piece.dropped() && !piece.key().equals(key))
                .forEach(piece -> others.put(piece.key(), piece.piece()));
        return others;
    }

    /**
     * A corner of a piece that is drawn in.
     *
     * @param pixels its uncertainty, one standard deviation in pixels of the picture
     */
    public record Placed(Point at, double pixels) {}

    /**
     * Adds a piece that was not read, by the corners she placed round it.
     *
     * @param look how the cloth inside an outline looks
     * @param taken keys of pieces in the stash
     * @param names of fabrics in the stash
     */
    public PhotoSorting drawn(
            PhotoSorting was,
            List<Placed> placed,
            Function<PieceOutline, PieceAppearance> look,
            Collection<String> taken,
            Collection<String> names) {
        List<Placed> corners = apart(placed);
        List<Point> spots = corners.stream().map(Placed::at).toList();
        fault(spots).ifPresent(fault -> {
            throw new RefusedException(said(fault));
        });
        List<Double> pixels = corners.stream()
                .map(corner -> Math.max(Remeasurement.PIXELS, corner.pixels()))
                .toList();
        PieceOutline outline = scale.byHand(spots);
        LargestRectangle.Box most = LargestRectangle.inside(outline.floor());
        if (Math.min(most.width(), most.height()) < LEAST_MM) {
            throw new RefusedException(said(Remeasurement.Fault.SMALL));
        }
        ReadPiece piece = byHand.drawn(was.next(taken), spots, pixels, look.apply(outline), others(was, ""));
        return was.with(piece, new OutlineOrigin.Drawn(pixels), names);
    }

    /** The corners without those that were tapped twice at one place. */
    private static List<Placed> apart(List<Placed> placed) {
        List<Placed> out = new ArrayList<>();
        for (Placed corner : placed) {
            if (out.isEmpty() || !isSame(out.get(out.size() - 1), corner)) {
                out.add(corner);
            }
        }
        if (out.size() > 1 && isSame(out.get(0), out.get(out.size() - 1))) {
            out.remove(out.size() - 1);
        }
        return out;
    }

    private static boolean isSame(Placed one, Placed other) {
        return one.at().to(other.at()) < 1;
    }

    private Optional<Remeasurement.Fault> fault(List<Point> spots) {
        if (spots.size() > MOST_DRAWN) {
            return Optional.of(Remeasurement.Fault.TOO_MANY);
        }
        if (!spots.stream().allMatch(spot -> inPicture(spot).equals(spot))) {
            return Optional.of(Remeasurement.Fault.OUTSIDE);
        }
        return byHand.fault(spots);
    }

    private static Sentence said(Remeasurement.Fault fault) {
        String named = fault == Remeasurement.Fault.TOO_FEW ? "FEW" : fault.name();
        return PhotographingSentences.outlineFault(named, Argument.number(MOST_DRAWN));
    }

    /**
     * Divides a piece in two along a line of the picture.
     *
     * @param looks how the parts look, given the whole
     * @param taken names of fabrics in the stash
     */
    public PhotoSorting split(
            PhotoSorting was,
            String key,
            Point a,
            Point b,
            BiFunction<ReadPiece, List<ReadPiece>, List<PieceAppearance>> looks,
            Collection<String> taken) {
        ReadPiece whole = was.piece(key).piece();
        List<ReadPiece> parts = byHand.split(whole, a, b)
                .orElseThrow(() -> new RefusedException(PhotographingSentences.outlineSplit(Argument.text(key))));
        List<PieceAppearance> seen = looks.apply(whole, parts);
        List<SortedPiece> dyed = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            dyed.add(part(was.piece(key), parts.get(i), (char) ('a' + i), seen.get(i)));
        }
        return was.parted(key, dyed, taken);
    }

    /** A part, measured no more surely than the whole was. */
    private SortedPiece part(SortedPiece whole, ReadPiece part, char letter, PieceAppearance look) {
        List<Point> corners = part.outline().picture();
        OutlineOrigin rim = whole.rim() instanceof OutlineOrigin.Drawn drawn
                ? drawn.part(corners.size())
                : new OutlineOrigin.Moved();
        ReadPiece now = byHand.outlined(part, corners, rim.pixels(corners.size()), Optional.empty())
                .orElse(part);
        ReadPiece dyed = new ReadPiece(part.number(), now.outline(), now.usable(), look, List.of());
        return new SortedPiece(
                whole.key() + letter, dyed, Optional.empty(), rim, whole.dropped(), false, whole.group());
    }

    /** Marks the direction of the grain by a line of the picture; from then on the usable rectangle lies along it. */
    public PhotoSorting grain(PhotoSorting was, String key, Point a, Point b) {
        if (Math.hypot(b.x() - a.x(), b.y() - a.y()) < 1) {
            throw new RefusedException(PhotographingSentences.outlineGrain());
        }
        SortedPiece piece = was.piece(key);
        double angle = byHand.direction(a, b);
        ReadPiece along = piece.byHand()
                ? outlined(piece, piece.piece().outline().picture(), piece.rim(), Optional.of(angle))
                        .orElseThrow(() -> new RefusedException(PhotographingSentences.outlineNone()))
                : byHand.along(piece.piece(), Optional.of(angle));
        return was.with(piece.grained(Optional.of(new MarkedGrain(angle, along.usable()))));
    }

    public PhotoSorting noGrain(PhotoSorting was, String key) {
        return was.with(was.piece(key).grained(Optional.empty()));
    }
}
