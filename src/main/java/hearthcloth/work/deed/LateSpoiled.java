package hearthcloth.work.deed;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/** Something went wrong with a cut that was asked for while sewing: what is still to cut is planned again. */
public final class LateSpoiled {

    private final Workbench bench;
    private final String wrong;
    private final LateMiscut slip;

    /**
     * Tells of it.
     *
     * @param wrong id of the piece that was spoiled; empty where a piece is gone for another reason
     * @param real the largest part left of it
     */
    public LateSpoiled(Workbench bench, String wrong, Optional<Size> real) {
        this.bench = bench;
        this.wrong = wrong;
        this.slip = LateMiscut.of(bench.plan(), bench.cloth().bench().ticked(), wrong, real, bench.next());
    }

    /** The change, or what is lacking for it. */
    public sealed interface Outcome {
        /** Planned again. */
        record Planned(Deed deed) implements Outcome {}

        /** Not enough fabric is left. */
        record Lacking(List<Sentence> why) implements Outcome {
            public Lacking {
                why = List.copyOf(why);
            }
        }
    }

    /** Plans what is still to cut again. */
    public Outcome planned(Budget budget) {
        Project was = bench.cloth();
        int bars = SewingSoFar.of(was, bench.ruler()).bars();
        RemainingPlan.Answer answer = slip.fit(bars, was.design(), bench.table(), budget);
        if (answer instanceof RemainingPlan.Answer.Made made) {
            Sentence label = wrong.isEmpty()
                    ? MendingSentences.deedAgain("late")
                    : MendingSentences.deedMistake(Argument.text(wrong));
            return new Outcome.Planned(new SewnOn(was.design(), made.resewn())
                    .of(label, was, Optional.empty(), new Deed.Pieces(slip.gone(), slip.come())));
        }
        return new Outcome.Lacking(((RemainingPlan.Answer.Lacking) answer).why());
    }
}
