package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Pieces that are about to come into a stash. A fabric that is already there stays as it is, whatever the new pieces
 * say of it; where they say something else, a note says so. For one use. Throws {@link MeasureException} where the
 * stash would exceed {@link StashFile#MOST_PIECES}.
 */
public final class Arrivals {

    private final Map<String, Fabric> fabrics = new HashMap<>();
    private final Set<Colour> taken = new HashSet<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final Set<String> known = new LinkedHashSet<>();
    private final int there;
    private int next;

    /**
     * Prepares the arrival.
     *
     * @param next the first number that is free for a piece
     */
    public Arrivals(Stash stash, int next) {
        this.next = next;
        this.there = stash.pieces().size();
        stash.fabrics().forEach(this::know);
    }

    private void know(Fabric fabric) {
        fabrics.putIfAbsent(Names.key(fabric.name()), fabric);
        taken.add(fabric.colour());
    }

    /** The fabric that pieces of this line will have. */
    public Fabric fabric(SpokenPieces said) {
        Fabric there = fabrics.get(Names.key(said.name()));
        return there == null ? said.fabric(taken) : there;
    }

    /** Whether a fabric of this name is there and differs from what is said of it. */
    public boolean differs(SpokenPieces said) {
        Fabric there = fabrics.get(Names.key(said.name()));
        return there != null
                && !(said.colour().orElse(there.colour()).equals(there.colour())
                        && said.faces().orElse(there.faces()) == there.faces()
                        && said.nap().orElse(there.nap()) == there.nap());
    }

    public void add(SpokenPieces said) {
        if (differs(said)) {
            note(said.name());
        }
        Fabric fabric = fabric(said);
        know(fabric);
        for (int i = 0; i < said.count(); i++) {
            put(fabric, said.size(), said.washed());
        }
    }

    /** Adds all pieces of a file that was read, with numbers of this stash. */
    public void add(Stash file) {
        for (Piece piece : file.pieces()) {
            Fabric there = fabrics.get(Names.key(piece.fabric().name()));
            if (there != null && !there.equals(piece.fabric())) {
                note(there.name());
            }
            Fabric fabric = there == null ? piece.fabric() : there;
            know(fabric);
            put(fabric, piece.size(), piece.washed());
        }
    }

    private void put(Fabric fabric, Size size, Piece.Washed washed) {
        if (there + pieces.size() >= StashFile.MOST_PIECES) {
            throw new RefusedException(RefusingSentences.stashFull(Argument.number(StashFile.MOST_PIECES)));
        }
        pieces.add(new Piece(String.valueOf(next), fabric, size, washed, next));
        next++;
    }

    private void note(String fabric) {
        known.add(fabric);
    }

    public List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    /** Names of fabrics that were here already and are said to be otherwise; they stay as they are here. */
    public List<String> known() {
        return List.copyOf(known);
    }

    /** The same as sentences for the maker. */
    public List<Sentence> notes() {
        return known.stream()
                .map(fabric -> RefusingSentences.stashKnown(Argument.text(fabric)))
                .toList();
    }
}
