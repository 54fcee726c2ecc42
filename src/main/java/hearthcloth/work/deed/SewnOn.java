package hearthcloth.work.deed;

import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.RemainingPlan.Resewn;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rest of a cloth that is sewn in part, planned again. What it cuts anew stays in the stash until those cuts are made;
 * sewing waits for them.
 */
record SewnOn(Design design, Resewn resewn) {

    /**
     * Goes on so.
     *
     * @param fact what happened on the bench with it
     * @param before pieces that went and came before it was planned
     */
    Deed of(Sentence label, Project was, Optional<BenchFact> fact, Deed.Pieces before) {
        List<Piece> come = new ArrayList<>(before.come());
        come.addAll(resewn.come());
        Project now = Deed.planned(was, design, resewn.plan())
                .with(was.life().at(resewn.cuts().isEmpty() ? Stage.CUT : Stage.RECUT));
        return new Deed(label, fact, Optional.of(now), new Deed.Pieces(before.gone(), come));
    }
}
