package hearthcloth.work.deed;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A cloth planned anew of which something is cut already: what the cuts made of each piece is fabric like any other, patches
 * that are used as they are stay in its story, and the rest comes into the stash. So no tick ever stands at a cut that was
 * not made, and no piece counts as whole that is not.
 *
 * @param free what the cloth may be planned from besides
 * @param there every piece of the stash: a cut was made only of a piece that has not gone since
 * @param next the first number that is free for a new piece
 */
public record PlannedAgain(Project cloth, Stash free, Stash there, int next) {

    private Optional<MiscutRecovery> cut() {
        return cloth.plan()
                .filter(plan -> cloth.life().stage() == Project.Stage.DESIGNED
                        && (!cloth.bench().ticked().isEmpty()
                                || plan.cuts().stream().anyMatch(PieceCut::past)))
                .map(plan -> MiscutRecovery.of(plan, made(plan), "", Optional.empty(), next));
    }

    private Set<String> made(Plan plan) {
        Set<Piece> now = new HashSet<>(there.pieces());
        Set<String> ids = plan.cuts().stream()
                .map(PieceCut::piece)
                .filter(now::contains)
                .map(Piece::id)
                .collect(Collectors.toSet());
        return cloth.bench().ticked().stream()
                .filter(tick -> ids.contains(tick.replaceFirst(":.*", "")))
                .collect(Collectors.toSet());
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
                planned.bench().withTicked(Set.of()),
                planned.life());
        return Deed.of(label, now, new Deed.Pieces(patches.gone(), come));
    }
}
