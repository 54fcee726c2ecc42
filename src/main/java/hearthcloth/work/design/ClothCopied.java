package hearthcloth.work.design;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;

/**
 * A second cloth like one of hers. Nothing of it is cut or sewn; what is locked in the first is locked in it.
 *
 * @param cloth the first
 * @param purpose what the second is for
 * @param paper the word of the paper its guide is printed on
 */
public record ClothCopied(Project cloth, Purpose purpose, String paper) {

    /**
     * The same once more. What was cut for the first is not there for the second, which is then planned from what is free.
     *
     * @param free what a new cloth may be planned from
     */
    public Project like(Stash free, String name, Budget budget) {
        boolean isBegun =
                cloth.plan().stream().flatMap(plan -> plan.cuts().stream()).anyMatch(PieceCut::past);
        return isBegun ? in(cloth.design(), free, name, budget) : begun(cloth);
    }

    /** The same in another design. */
    public Project in(Design design, Stash stash, String name, Budget budget) {
        return begun(new DesignSettled(cloth, name, stash).in(design, budget));
    }

    private Project begun(Project like) {
        return new Project(
                        like.design(),
                        like.plan(),
                        like.lacking(),
                        Project.Bench.CLEAR.withLocked(cloth.bench().locked()),
                        Project.Life.begun(purpose))
                .onPaper(paper);
    }
}
