package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.fit.CutAnswer;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Fabric;
import hearthcloth.work.Worked;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link ExchangedColours}: what is kept up while parts are exchanged, against the same looked at anew and in the cloth. */
class ExchangedColoursTest {

    private static final ColourGoal READS = ColourGoal.flat(Contrast.READS);

    private static DraftTrial trial() {
        Design design = Worked.kept().design();
        int rounds = new DesignEdits(design).rounds();
        Draft draft = new Draft(new LayoutCandidate(design.order(), rounds, design.layout(), List.of()), design);
        return Fitting.fit(draft, new Supply(Worked.HEAP), 240, 1, Budget.steps(4_000))
                .orElseThrow();
    }

    private static ExchangedColours colours(CutAnswer answer, Exchanged state) {
        String hearth = answer.job()
                .piece(answer.found().partsOf(0).get(0).piece().id())
                .fabric()
                .name();
        return new ExchangedColours(answer.job(), state, hearth, READS);
    }

    @Test
    void as_the_parts_lie_first_it_is_what_the_cloth_itself_shows() {
        DraftTrial trial = trial();
        CutAnswer answer = trial.answer();
        List<Fabric> fabrics = answer.job().fabrics();
        double kept = colours(answer, new Exchanged(answer.job().job(), answer.found()))
                .amissMm();
        assertThat(kept)
                .isEqualTo(ColourFigures.of(trial.cloth(), fabrics).amissMm(), within(1e-6 * Math.max(1, kept)));
    }

    /** Seed 4: bars and parts change places at random. */
    @Test
    void after_any_exchange_it_is_the_same_as_looked_at_anew_and_an_exchange_taken_back_leaves_nothing() {
        CutAnswer answer = trial().answer();
        Exchanged state = new Exchanged(answer.job().job(), answer.found());
        ExchangedColours kept = colours(answer, state);
        double first = kept.amissMm();
        Random random = new Random(4);
        int moved = 0;
        for (int i = 0; i < 200; i++) {
            int one = random.nextInt(state.bars());
            int other = random.nextInt(state.bars());
            int part = random.nextInt(state.parts(one));
            int otherPart = random.nextInt(state.parts(other));
            state.swapParts(one, part, other, otherPart);
            if (state.stands()) {
                assertThat(kept.amissMm()).isEqualTo(colours(answer, state).amissMm(), within(1e-6));
                moved++;
            }
            state.swapParts(one, part, other, otherPart);
            assertThat(kept.amissMm()).isEqualTo(first, within(1e-6));
        }
        assertThat(moved).isPositive();
    }
}
