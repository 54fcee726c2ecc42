package hearthcloth.work.photo;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What comes into the stash where she accepts what a photograph shows: all of which nothing is in doubt, fabric by fabric.
 *
 * @param taken keys of its pieces that are in the stash already
 * @param ruler she measures with; pieces come in with sides on its marks
 */
public record PiecesTaken(PhotoSorting sorting, Set<String> taken, Ruler ruler) {

    public PiecesTaken {
        taken = Set.copyOf(taken);
    }

    /** A fabric with the pieces of it that come, the largest first; there is at least one. */
    public record Coming(PieceGroup group, List<SortedPiece> pieces) {
        public Coming {
            pieces = List.copyOf(pieces);
        }

        /** The colour of the fabric: that of its largest piece. */
        public Colour colour() {
            return pieces.get(0).look().colour().toColour();
        }

        /** The piece that shows most of the fabric, to cut its picture from. */
        public SortedPiece best() {
            return pieces.stream()
                    .max(Comparator.comparingDouble(piece ->
                            Math.min(piece.usable().width(), piece.usable().height())))
                    .orElseThrow();
        }
    }

    /**
     * What came.
     *
     * @param keys of the pieces on the photograph
     * @param names what each fabric is called in the stash, in the order of what was coming
     * @param notes for the maker, in sentences
     */
    public record Arrived(List<Piece> pieces, List<String> keys, List<String> names, List<Sentence> notes) {
        public Arrived {
            pieces = List.copyOf(pieces);
            keys = List.copyOf(keys);
            names = List.copyOf(names);
            notes = List.copyOf(notes);
        }
    }

    /** What can come in. */
    public List<Coming> ready() {
        List<Coming> coming = new ArrayList<>();
        for (PieceGroup group : sorting.groups()) {
            List<SortedPiece> pieces = sorting.of(group).stream()
                    .filter(piece -> PieceState.of(piece, taken, ruler) == PieceState.READY)
                    .sorted(Comparator.comparingDouble(
                            (SortedPiece piece) -> -piece.size(ruler).areaMm2()))
                    .toList();
            if (!pieces.isEmpty()) {
                coming.add(new Coming(group, pieces));
            }
        }
        return coming;
    }

    /** Keys of the pieces that stay behind because of a doubt that she has not looked at. */
    public List<String> left() {
        return sorting.pieces().stream()
                .filter(piece -> PieceState.of(piece, taken, ruler) == PieceState.LOOK)
                .map(SortedPiece::key)
                .toList();
    }

    /** Whether one of these is in the stash already, taken by another device. */
    public boolean isTwice(List<Coming> coming) {
        return coming.stream()
                .flatMap(one -> one.pieces().stream())
                .anyMatch(piece -> PhotoSorting.isAmong(piece.key(), taken));
    }

    /**
     * The pieces as they come in.
     *
     * @param next the first number that is free for a new piece
     * @param named a fabric's name as it is written in the stash
     */
    public Arrived arrived(List<Coming> coming, Stash stash, int next, UnaryOperator<String> named) {
        Arrivals arrivals = new Arrivals(stash, next);
        List<String> keys = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Coming one : coming) {
            int before = arrivals.pieces().size();
            arrivals.add(new Stash(
                    one.pieces().stream().map(piece -> piece(one, piece, named)).toList()));
            one.pieces().forEach(piece -> keys.add(piece.key()));
            names.add(arrivals.pieces().get(before).fabric().name());
        }
        return new Arrived(arrivals.pieces(), keys, names, arrivals.notes());
    }

    private Piece piece(Coming one, SortedPiece piece, UnaryOperator<String> named) {
        PieceGroup group = one.group();
        Fabric fabric = new Fabric(named.apply(group.name()), one.colour(), group.faces(), group.nap());
        return new Piece("0", fabric, piece.size(ruler), group.washed(), 0);
    }
}
