package hearthcloth.work.deed;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A piece was cut wrong before all is cut: the stash is put right as it lies on the table, and the rest is planned again. */
public final class PieceSpoiled {

    private final Workbench bench;
    private final String wrong;
    private final MiscutRecovery slip;

    /**
     * Tells of it.
     *
     * @param wrong id of the piece
     * @param real the largest part left of what was still to be cut of it; empty where nothing is left
     */
    public PieceSpoiled(Workbench bench, String wrong, Optional<Size> real) {
        this.bench = bench;
        this.wrong = wrong;
        this.slip = MiscutRecovery.of(bench.plan(), bench.cloth().bench().ticked(), wrong, real, bench.next());
    }

    /**
     * What came of it.
     *
     * @param plan how the rest is cut now; empty where the fabric does not suffice
     * @param cut patches that were cut before
     * @param used how many of these the plan uses as they are
     */
    public record Outcome(Deed deed, Optional<Plan> plan, int cut, int used) {}

    /**
     * Plans the rest again.
     *
     * @param name of the cloth
     * @param budget ends the search
     */
    public Outcome planned(String name, Budget budget) {
        Project was = bench.cloth();
        DesignFit.Answer answer = slip.fit(bench.plan(), was.design(), slip.stash(bench.stash()), name, budget);
        Optional<Plan> plan =
                answer instanceof DesignFit.Answer.Made made ? Optional.of(made.plan()) : Optional.empty();
        List<Piece> come = plan.map(slip::come).orElse(slip.come());
        Project now = new Project(
                was.design(),
                plan.map(slip.story()::told),
                answer instanceof DesignFit.Answer.Lacking lacking ? lacking.why() : List.of(),
                was.bench().withTicked(Set.of()),
                was.life());
        int cut = slip.patches().values().stream().mapToInt(List::size).sum();
        int used = plan.map(found -> Math.toIntExact(slip.usedAsTheyAre(found))).orElse(0);
        return new Outcome(
                Deed.of(MendingSentences.deedMistake(Argument.text(wrong)), now, new Deed.Pieces(slip.gone(), come)),
                plan,
                cut,
                used);
    }
}
