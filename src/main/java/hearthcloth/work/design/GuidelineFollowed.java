package hearthcloth.work.design;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.GuidelineFit;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.util.List;
import java.util.Optional;

/**
 * A teacher's cloth followed with her own fabric.
 *
 * @param name of the teacher's cloth
 * @param paper the word of the paper its guide is printed on
 */
public record GuidelineFollowed(Design design, String name, String paper) {

    /**
     * Her cloth after it; without a plan, and with what is lacking, where her fabric does not suffice.
     *
     * @param free what a new cloth may be planned from
     */
    public Project from(Stash free, Budget budget) {
        GuidelineFit.Followed followed = new GuidelineFit(design).followed(free, name, budget);
        Project none = new Project(
                followed.design(),
                Optional.empty(),
                List.of(),
                Project.Bench.CLEAR,
                Project.Life.begun(Purpose.NOTHING));
        return DesignSettled.answered(followed.design(), followed.answer(), none)
                .onPaper(paper);
    }
}
