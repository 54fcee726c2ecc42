package hearthcloth.web.cloth;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A changed design as a document: cut from the stash where that suffices, else with what is lacking. */
public final class DesignPlanning {

    /** A change is answered within this, whatever the search would still like to try. */
    private static final long ANSWER_WITHIN_MS = 80;

    private DesignPlanning() {}

    /** The cloth's document with another design, cut from the stash where that suffices. */
    static Project settled(SavedCloth saved, Design design, Stash stash, Ruler ruler) {
        Project was = saved.document();
        DesignFit.Answer answer =
                new DesignFit(stash).fit(design, Sentence.itself(saved.name()), TimeLimit.within(ANSWER_WITHIN_MS));
        return answer instanceof DesignFit.Answer.Made made
                ? new Project(bound(design, made.plan()), Optional.of(made.plan()), List.of(), was.bench(), was.life())
                : new Project(
                        design, Optional.empty(), ((DesignFit.Answer.Lacking) answer).why(), was.bench(), was.life());
    }

    /** Ticks of cuts that are no longer in the plan as they were: they would mark other cuts now. */
    static Set<String> staleTicks(Project was, Project now) {
        Set<PieceCut> same = new HashSet<>();
        now.plan().ifPresent(plan -> same.addAll(plan.cuts()));
        Set<String> kept = was.plan().stream()
                .flatMap(plan -> plan.cuts().stream())
                .filter(same::contains)
                .map(cut -> cut.piece().id())
                .collect(Collectors.toSet());
        return was.bench().ticked().stream()
                .filter(tick -> !kept.contains(tick.replaceFirst(":.*", "")))
                .collect(Collectors.toSet());
    }

    /** Bars that might be of several fabrics keep those they are now cut from, so that the next change leaves them. */
    public static Design bound(Design design, Plan plan) {
        return new Design(
                design.order(),
                design.layout(),
                DesignEdits.settled(plan, design.order()).scheme(),
                design.making(),
                design.rules());
    }
}
