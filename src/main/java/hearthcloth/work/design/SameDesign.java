package hearthcloth.work.design;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.work.Project;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The same design planned once more from what is there now: to the marks of the ruler she uses now where nothing is cut yet
 * and the fabric suffices for that, else to its own.
 *
 * @param now the ruler she uses now
 * @param paper the word of the paper she uses now
 */
public record SameDesign(DesignSettled settled, Ruler now, String paper) {

    /**
     * The cloth, planned again.
     *
     * @param budgets ends each search
     */
    public Project again(Supplier<Budget> budgets) {
        Optional<Design> other = new OwnRuler(settled.cloth(), now).toNewMarks();
        if (other.isPresent()) {
            Project marked = settled.in(other.get(), budgets.get());
            if (marked.plan().isPresent()) {
                return marked.onPaper(paper);
            }
        }
        return settled.in(settled.cloth().design(), budgets.get());
    }
}
