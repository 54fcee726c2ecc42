package hearthcloth.plan.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is planned keeps the least piece; what is cut and sewn may have been trimmed with the work since. */
class PlanCheckTest {

    private static final Plan PLAN = Planned.plans(Stashes.scraps(60, 3), 27, 3).stream()
            .filter(plan -> plan.figures().joins() > 0)
            .findFirst()
            .orElseThrow();

    private static Plan held(List<PieceCut> cuts) {
        PiecingRules none = new PiecingRules(
                Length.inches(100), PLAN.rules().clearance(), PLAN.rules().mostJoins());
        return new Plan(PLAN.story(), PLAN.cloth(), none, cuts, PLAN.bound());
    }

    @Test
    void a_part_under_the_least_piece_is_refused_while_it_is_planned_and_taken_once_it_is_cut() {
        assertThat(PLAN.checked()).isEqualTo(PLAN);
        assertThatThrownBy(() -> held(PLAN.cuts()).checked()).hasMessageContaining("under the least piece");
        Plan cut = held(PLAN.cuts().stream().map(one -> one.asCut(one.tree())).toList());
        assertThat(cut.checked()).isEqualTo(cut);
    }
}
