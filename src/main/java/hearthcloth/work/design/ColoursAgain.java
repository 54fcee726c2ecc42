package hearthcloth.work.design;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The colours of a cloth planned once more; what is locked stays.
 *
 * @param stash what it may be planned from
 */
public record ColoursAgain(Project cloth, Stash stash) {

    /**
     * The design in other colours; empty where there are none that can be cut.
     *
     * @param turn with the next one comes the next best
     */
    public Optional<Design> other(DesignFit.Wished wished, int turn, Budget budget) {
        return new DesignFit(stash).again(cloth.design(), stays(), wished, turn, budget);
    }

    private DesignFit.Stays stays() {
        Set<String> locked = cloth.bench().locked();
        List<Layout.Slot> slots = cloth.design().layout().slots();
        Set<Integer> bars = new HashSet<>();
        for (int i = 0; i < slots.size(); i++) {
            if (locked.contains(slots.get(i).place().bar())) {
                bars.add(i);
            }
        }
        return new DesignFit.Stays(bars, locked.contains("hearth"));
    }
}
