package hearthcloth.web.gallery;

import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * In which order proposals stand: those with the plan of colour she likes before the others, then those that use most of
 * what she wants used first, then, where she wishes it, those with the fewest seams. What is equal stays as it was found.
 *
 * @param first ids of the pieces she wants used first
 */
record ProposalOrder(Optional<Scheme.Kind> kind, Optional<Scheme.Kind> with, Set<String> first, boolean isQuick) {

    /** With one plan of colour or none. */
    ProposalOrder(Optional<Scheme.Kind> kind, Set<String> first, boolean isQuick) {
        this(kind, Optional.empty(), first, isQuick);
    }

    ProposalOrder {
        first = Set.copyOf(first);
    }

    /** Whether anything is wished of the order at all; then more is looked at than is shown. */
    boolean isOpen() {
        return kind.isEmpty() && first.isEmpty() && !isQuick;
    }

    /** The plans, those of {@code alone} among them. */
    List<Plan> sorted(List<Plan> alone, List<Plan> found) {
        Set<Plan> all = new LinkedHashSet<>(alone);
        all.addAll(found);
        List<Plan> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing((Plan plan) -> !isLiked(plan))
                .thenComparing(plan -> -usedFirst(plan))
                .thenComparing(plan -> isQuick ? seams(plan) : 0));
        return sorted;
    }

    boolean isLiked(Plan plan) {
        return Stream.concat(kind.stream(), with.stream())
                .allMatch(one -> !plan.cloth().isFree() && SchemeRule.holds(one, plan.cloth(), plan.fabrics()));
    }

    /** How many of the pieces she wants used first it cuts into. */
    int usedFirst(Plan plan) {
        return (int) plan.cuts().stream()
                .map(PieceCut::piece)
                .filter(piece -> first.contains(piece.id()))
                .count();
    }

    static int seams(Plan plan) {
        return plan.cloth().steps().size();
    }
}
