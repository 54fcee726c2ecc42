package hearthcloth.work.deed;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Cuts were made, or were not.
 *
 * @param ticked the cuts that are made now: piece id, colon, number of the cut in its piece
 */
public record CutsMade(Project cloth, Set<String> ticked) {

    public CutsMade {
        ticked = Set.copyOf(ticked);
    }

    /** What is told; empty where nothing is new, as when another device was quicker. */
    public Optional<Deed> told() {
        Set<String> was = cloth.bench().ticked();
        Set<String> more = new TreeSet<>(ticked);
        more.removeAll(was);
        Set<String> fewer = new TreeSet<>(was);
        fewer.removeAll(ticked);
        if (more.isEmpty() && fewer.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(more.isEmpty() ? told(fewer, false) : told(more, true));
    }

    private static Deed told(Set<String> cuts, boolean made) {
        String first = cuts.iterator().next();
        int colon = first.indexOf(':');
        return Deed.of(
                MendingSentences.deedCut(
                        cuts.size(),
                        Argument.text(first.substring(colon + 1)),
                        made ? "yes" : "no",
                        Argument.text(first.substring(0, colon))),
                new BenchFact.Cut(List.copyOf(cuts), made));
    }
}
