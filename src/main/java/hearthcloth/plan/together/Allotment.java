package hearthcloth.plan.together;

import hearthcloth.cloth.Rect;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which cloths are planned from a heap so far, in the order they are cut, and what is left for the others. A cloth can only
 * be added where everything it is cut from is still there, so that no piece stands in two plans unless what one leaves of it
 * is the other's. Immutable.
 */
final class Allotment {

    private final Stash heap;
    private final OffcutRule offcuts;
    private final Map<Integer, Made> made;
    private final Map<String, Piece> whole;
    private final Map<String, Leftover> leftovers;

    private Allotment(
            Stash heap,
            OffcutRule offcuts,
            Map<Integer, Made> made,
            Map<String, Piece> whole,
            Map<String, Leftover> leftovers) {
        this.heap = heap;
        this.offcuts = offcuts;
        this.made = made;
        this.whole = whole;
        this.leftovers = leftovers;
    }

    static Allotment of(Stash heap, OffcutRule offcuts) {
        Map<String, Piece> whole = new LinkedHashMap<>();
        heap.pieces().forEach(piece -> whole.put(piece.id(), piece));
        return new Allotment(heap, offcuts, Map.of(), whole, Map.of());
    }

    Stash heap() {
        return heap;
    }

    /** What is planned, in the order it is cut, by the cloth's number. */
    Map<Integer, Made> made() {
        return made;
    }

    Optional<Made> made(int cloth) {
        return Optional.ofNullable(made.get(cloth));
    }

    /** Pieces of the heap that nobody has cut into. */
    List<Piece> untouched() {
        return List.copyOf(whole.values());
    }

    /** The same, and what the planned cloths leave of theirs. */
    List<Piece> free() {
        List<Piece> free = new ArrayList<>(whole.values());
        leftovers.values().forEach(left -> free.add(left.part()));
        return List.copyOf(free);
    }

    /**
     * With one cloth more, cut after the others.
     *
     * @throws IllegalStateException where something it is cut from is no longer there
     */
    Allotment with(int cloth, Made plan) {
        return added(cloth, plan)
                .orElseThrow(() -> new IllegalStateException("cloth " + cloth + " is cut from what is gone"));
    }

    private Optional<Allotment> added(int cloth, Made plan) {
        Map<String, Piece> pieces = new LinkedHashMap<>(whole);
        Map<String, Leftover> left = new LinkedHashMap<>(leftovers);
        for (PieceCut cut : plan.plan().cuts()) {
            Piece piece = cut.piece();
            Leftover taken = left.remove(piece.id());
            Piece there = taken == null ? pieces.remove(piece.id()) : taken.part();
            if (!piece.equals(there)) {
                return Optional.empty();
            }
            leave(cloth, plan, cut, left);
        }
        Map<Integer, Made> all = new LinkedHashMap<>(made);
        all.put(cloth, plan);
        return Optional.of(new Allotment(heap, offcuts, all, pieces, left));
    }

    /** What is left of a piece becomes pieces of their own, numbered after it and the cloth. */
    private void leave(int cloth, Made plan, PieceCut cut, Map<String, Leftover> left) {
        if (offcuts == OffcutRule.KEPT) {
            return;
        }
        int number = 0;
        for (Rect rest : cut.tree().left()) {
            if (CutTree.isReusable(rest.size(), plan.plan().rules().leastPiece())) {
                Piece of = cut.piece();
                String id = of.id() + "/" + (cloth + 1) + "." + ++number;
                Piece part = new Piece(id, of.fabric(), rest.size(), of.washed(), of.row());
                left.put(id, new Leftover(part, of, cloth, rest));
            }
        }
    }

    /** With more pieces in the heap. */
    Allotment restocked(List<Piece> more) {
        List<Piece> pieces = new ArrayList<>(heap.pieces());
        pieces.addAll(more);
        Map<String, Piece> untouched = new LinkedHashMap<>(whole);
        more.forEach(piece -> untouched.put(piece.id(), piece));
        return new Allotment(new Stash(pieces), offcuts, made, untouched, leftovers);
    }

    /** Without some cloths, and without those that are cut from what these leave. */
    Allotment without(Set<Integer> some) {
        Allotment kept = of(heap, offcuts);
        for (Map.Entry<Integer, Made> one : made.entrySet()) {
            if (!some.contains(one.getKey())) {
                kept = kept.added(one.getKey(), one.getValue()).orElse(kept);
            }
        }
        return kept;
    }

    /** The leftovers that other cloths are cut from, in the order they come about. */
    List<Leftover> handedOn() {
        Map<String, Leftover> known = new LinkedHashMap<>();
        List<Leftover> handed = new ArrayList<>();
        for (Map.Entry<Integer, Made> one : made.entrySet()) {
            for (PieceCut cut : one.getValue().plan().cuts()) {
                Leftover taken = known.get(cut.piece().id());
                if (taken != null) {
                    handed.add(taken);
                }
                leave(one.getKey(), one.getValue(), cut, known);
            }
        }
        return List.copyOf(handed);
    }
}
