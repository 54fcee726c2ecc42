package hearthcloth.work.deed;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/**
 * A cloth planned anew of which, after a mistake, patches are cut already: they are fabric like any other, those that are
 * used as they are stay in its story, and the others come into the stash.
 *
 * @param free what the cloth may be planned from besides
 * @param next the first number that is free for a new piece
 */
public record PlannedAgain(Project cloth, Stash free, int next) {

    private Optional<MiscutRecovery> cut() {
        return cloth.plan()
                .filter(plan -> cloth.life().stage() == Project.Stage.DESIGNED
                        && plan.cuts().stream().anyMatch(PieceCut::past))
                .map(plan -> MiscutRecovery.of(plan, next));
    }

    /** What the cloth may be planned from. */
    public Stash stash() {
        return cut().map(patches -> patches.stash(free)).orElse(free);
    }

    /**
     * Takes a cloth that was planned from {@link #stash}.
     *
     * @param label what was done
     */
    public Deed taken(String label, Project planned) {
        Sentence done = Sentence.itself(label);
        return cut().map(patches -> told(done, planned, patches))
                .orElseGet(() -> Deed.of(done, planned, Deed.Pieces.NONE));
    }

    private static Deed told(Sentence label, Project planned, MiscutRecovery patches) {
        List<Piece> come = planned.plan().map(patches::come).orElse(patches.come());
        Project now = new Project(
                planned.design(),
                planned.plan().map(patches.story()::told),
                planned.lacking(),
                planned.bench(),
                planned.life());
        return Deed.of(label, now, new Deed.Pieces(List.of(), come));
    }
}
