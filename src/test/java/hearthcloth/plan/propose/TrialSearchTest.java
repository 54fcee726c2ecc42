package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link TrialSearch}: what is tried is told, what is found is a true cloth of the size, and the best comes first. */
class TrialSearchTest {

    private static final Size SIZE = Size.square(Length.inches(16));

    private final List<PlanProgress> told = new ArrayList<>();

    private TrialSearch search(Budget budget) {
        return search(budget, ProposalParameters.Effort.standard());
    }

    private TrialSearch search(Budget budget, ProposalParameters.Effort parameters) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(SIZE), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 2, 1, Ruler.EIGHTHS));
        return new TrialSearch(
                Stashes.scraps(25, 6), wish, List.of(), new SearchWork(1, budget, told::add, parameters), Idea.none());
    }

    @Test
    void one_is_made_at_once_and_handed_out() {
        Optional<DraftTrial> made = search(Budget.steps(0)).made(Optional.of(SIZE), false);
        PlanCheck.require(ProposalSelection.plan(made.orElseThrow()));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).best().orElseThrow().cloth().finished()).isEqualTo(SIZE);
    }

    @Test
    void no_more_drafts_are_searched_than_the_parameters_say() {
        ProposalParameters.Effort none = new ProposalParameters.Effort(96, 0, 3, 60, 150);
        assertThat(search(Budget.steps(0), none).made(Optional.of(SIZE), false)).isEmpty();
        assertThat(told).isEmpty();
    }

    @Test
    void a_spent_budget_counts_only_once_a_cloth_was_found() {
        assertThat(search(Budget.until(() -> true)).made(Optional.of(SIZE), true))
                .isEmpty();
        assertThat(search(Budget.until(() -> true)).made(Optional.of(SIZE), false))
                .isPresent();
    }

    @Test
    void all_that_promise_anything_are_tried_in_turn() {
        TrialSearch search = search(Budget.steps(Long.MAX_VALUE));
        List<DraftTrial> trials = search.tryAt(Optional.of(SIZE), 12);
        assertThat(trials).isNotEmpty();
        trials.forEach(trial -> {
            PlanCheck.require(ProposalSelection.plan(trial));
            assertThat(ProposalSelection.plan(trial).cloth().finished()).isEqualTo(SIZE);
        });
        for (int i = 0; i < told.size(); i++) {
            assertThat(told.get(i).tried())
                    .isEqualTo(i + 1)
                    .isLessThanOrEqualTo(told.get(i).of());
        }
        assertThat(told.get(told.size() - 1).tried()).isEqualTo(told.get(0).of());
    }

    /** Searched longer, the best of the first round is at least as good as it was. */
    @Test
    void longer_search_never_leaves_the_best_worse() {
        TrialSearch search = search(Budget.steps(Long.MAX_VALUE));
        List<DraftTrial> trials = search.tryAt(Optional.of(SIZE), 12);
        int fewest =
                trials.stream().mapToInt(trial -> trial.figures().joins()).min().orElseThrow();
        int again = search.improved(trials).stream()
                .mapToInt(trial -> trial.figures().joins())
                .min()
                .orElseThrow();
        assertThat(again).isLessThanOrEqualTo(fewest);
    }
}
