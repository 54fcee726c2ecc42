package hearthcloth.plan.propose;

import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.ScatteredBars;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.palette.Accent;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The plans of colour that choose one fabric for each bar before anything is cut: scattered evenly, one bright scrap. */
public final class ChosenBars {

    private final Supply supply;
    private final ColourGoal goal;

    /** From this heap, to this end. */
    public ChosenBars(Supply supply, ColourGoal goal) {
        this.supply = supply;
        this.goal = goal;
    }

    /** Whether any of these plans of colour is asked for. */
    static boolean areAsked(Predicate<Scheme.Kind> kinds) {
        return kinds.test(Scheme.Kind.SCATTERED) || kinds.test(Scheme.Kind.ACCENT);
    }

    /**
     * The same design in these plans of colour, each under a name that is true where no bar need be joined otherwise.
     *
     * @param design in which any fabric but the hearth's may lie in any bar
     */
    public List<Design> of(Design design, Predicate<Scheme.Kind> kinds) {
        List<Scheme> found = new ArrayList<>();
        List<Fabric> rest = design.scheme().bars().get(0);
        if (kinds.test(Scheme.Kind.SCATTERED)) {
            ScatteredBars.of(design, supply, rest, goal).ifPresent(found::add);
        }
        if (kinds.test(Scheme.Kind.ACCENT)) {
            Accent.of(design.layout(), rest)
                    .flatMap(bars -> ScatteredBars.of(design, supply, Scheme.Kind.ACCENT, bars, goal))
                    .ifPresent(found::add);
        }
        return found.stream()
                .map(scheme -> new Design(design.order(), design.layout(), scheme, design.making(), design.rules()))
                .filter(one -> SchemeRule.holds(one.scheme().kind(), one.whole(), one.fabrics()))
                .toList();
    }

    /** The same design with a second plan of colour in it, under names that are both true; empty where that cannot be. */
    Optional<Design> mixed(Design design, Scheme.Kind with) {
        List<List<Fabric>> allowed = design.scheme().bars();
        return (with == Scheme.Kind.ACCENT ? Accent.within(design.layout(), allowed) : Optional.of(allowed))
                .flatMap(
                        bars -> ScatteredBars.of(design, supply, design.scheme().kind(), bars, goal))
                .map(scheme -> new Design(design.order(), design.layout(), scheme, design.making(), design.rules()))
                .filter(one -> SchemeRule.holds(one.scheme().kind(), one.whole(), one.fabrics())
                        && SchemeRule.holds(with, one.whole(), one.fabrics()));
    }
}
