package hearthcloth.work;

import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.stashing.StashingWords;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The stash as it can be planned with: what is set aside is still hers and still seen, but nothing is planned from it, and
 * what another cloth counts on is left to that cloth. Immutable.
 *
 * @param stash every piece there is
 * @param aside ids of pieces kept for something else
 * @param promises which cloth counts on which piece
 */
public record StashAtHand(Stash stash, Set<String> aside, Promises promises) {

    public StashAtHand {
        aside = Set.copyOf(aside);
    }

    public boolean isAside(Piece piece) {
        return aside.contains(piece.id());
    }

    /**
     * What a new cloth may be planned from.
     *
     * @param also ids of cloths whose pieces may be taken all the same
     */
    public Stash free(Set<String> also) {
        return without(promises.cloths().stream()
                .filter(one -> !also.contains(one.cloth()))
                .flatMap(one -> one.pieces().stream())
                .collect(Collectors.toSet()));
    }

    /** What this cloth may be planned from again: what it counts on already stays open to it, shared or not. */
    public Stash freeFor(String cloth) {
        Set<Piece> taken = new HashSet<>();
        Set<Piece> own = new HashSet<>();
        promises.cloths().forEach(one -> (one.cloth().equals(cloth) ? own : taken).addAll(one.pieces()));
        taken.removeAll(own);
        return without(taken);
    }

    private Stash without(Set<Piece> taken) {
        return new Stash(stash.pieces().stream()
                .filter(piece -> !taken.contains(piece) && !isAside(piece))
                .toList());
    }

    /** The pieces the cloth counts on that were set aside since it was planned. */
    List<Piece> setAsideOf(String cloth) {
        return promises.cloths().stream()
                .filter(one -> one.cloth().equals(cloth))
                .flatMap(one -> one.pieces().stream())
                .filter(piece -> isAside(piece) && stash.pieces().contains(piece))
                .toList();
    }

    /**
     * What the maker should know before she cuts this cloth, one sentence each; empty where all is well. Whatever is
     * said here is asked of the same heap that planning takes its pieces from.
     */
    public List<String> warnings(String cloth, Language language) {
        return promises.warnings(cloth, stash, setAsideOf(cloth), DesigningWords.in(language));
    }

    /** True where the cloth can be cut as it is planned: every piece it counts on is there and not set aside. */
    public boolean canBeCut(String cloth) {
        return promises.missing(cloth, stash).isEmpty() && setAsideOf(cloth).isEmpty();
    }

    /**
     * What holds some of these pieces back from a new cloth, in words: {@code 2 set aside; 1 for Dawn}; empty where
     * nothing does.
     */
    public String held(List<Piece> pieces, Language language) {
        StashingWords words = StashingWords.in(language);
        boolean isAlone = pieces.size() == 1;
        List<String> said = new ArrayList<>();
        int set = (int) pieces.stream().filter(this::isAside).count();
        if (set > 0) {
            said.add(words.heldAside(isAlone ? 0 : set));
        }
        for (Promises.Counting one : promises.cloths()) {
            int counted = (int) pieces.stream().filter(one.pieces()::contains).count();
            if (counted > 0) {
                said.add(words.heldFor(one.name(), isAlone ? 0 : counted));
            }
        }
        return said.stream().reduce(words::heldMore).orElse("");
    }

    /** The other cloths that count on something a new cloth could use, for a choice of theirs. */
    public List<Promises.Counting> rivals() {
        Set<Piece> there = new HashSet<>(stash.pieces());
        return promises.cloths().stream()
                .filter(one -> one.pieces().stream().anyMatch(piece -> there.contains(piece) && !isAside(piece)))
                .toList();
    }
}
