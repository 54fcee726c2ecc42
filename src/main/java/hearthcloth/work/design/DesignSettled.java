package hearthcloth.work.design;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/**
 * A cloth with another design: cut from the stash where that suffices, else with what is lacking.
 *
 * @param cloth as it was
 * @param name of the cloth
 * @param stash what it may be planned from
 */
public record DesignSettled(Project cloth, String name, Stash stash) {

    /** The cloth in this design; its bench and its life are as they were. */
    public Project in(Design design, Budget budget) {
        DesignFit.Answer answer = new DesignFit(stash).fit(design, Sentence.itself(name), budget);
        return answered(design, answer, cloth);
    }

    /** What an answer of the search makes of a cloth. */
    static Project answered(Design design, DesignFit.Answer answer, Project was) {
        return answer instanceof DesignFit.Answer.Made made
                ? new Project(bound(design, made.plan()), Optional.of(made.plan()), List.of(), was.bench(), was.life())
                : new Project(
                        design, Optional.empty(), ((DesignFit.Answer.Lacking) answer).why(), was.bench(), was.life());
    }

    /** Bars that might be of several fabrics keep those they are now cut from, so that the next change leaves them. */
    static Design bound(Design design, Plan plan) {
        return new Design(
                design.order(),
                design.layout(),
                DesignEdits.settled(plan, design.order()).scheme(),
                design.making(),
                design.rules());
    }
}
