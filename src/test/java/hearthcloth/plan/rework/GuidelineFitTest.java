package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A design followed with another stash keeps its sizes and takes only fabric that is there. */
class GuidelineFitTest {

    private static Design design(int seed) {
        Plan plan = Planned.plans(Stashes.scraps(60, seed), 24, 1).get(0);
        return DesignEdits.settled(plan, Order.ROUND);
    }

    private static Set<Fabric> fabrics(Design design) {
        Set<Fabric> fabrics = new HashSet<>(design.scheme().hearth());
        design.scheme().bars().forEach(fabrics::addAll);
        return fabrics;
    }

    @Test
    void sizes_and_making_up_stay_and_the_fabric_is_hers() {
        int made = 0;
        for (int seed = 0; seed < 5; seed++) {
            Design design = design(seed);
            Stash hers = Stashes.scraps(90, 100 + seed);
            GuidelineFit.Followed followed = new GuidelineFit(design).followed(hers, "After Ada", Budget.steps(20_000));
            assertThat(followed.design().layout()).isEqualTo(design.layout());
            assertThat(followed.design().making()).isEqualTo(design.making());
            assertThat(followed.design().rules()).isEqualTo(design.rules());
            assertThat(hers.fabrics()).containsAll(fabrics(followed.design()));
            if (followed.answer() instanceof DesignFit.Answer.Made answer) {
                made++;
                assertThat(answer.plan().cloth().finished())
                        .isEqualTo(DesignFit.unfitted(design).finished());
                answer.plan().cuts().forEach(cut -> assertThat(hers.pieces()).contains(cut.piece()));
            } else {
                assertThat(((DesignFit.Answer.Lacking) followed.answer()).why()).isNotEmpty();
            }
        }
        assertThat(made).isPositive();
    }

    @Test
    void followed_with_the_very_stash_it_came_from_it_keeps_its_fabrics() {
        Stash own = Stashes.scraps(60, 3);
        Design design = design(3);
        GuidelineFit.Followed followed = new GuidelineFit(design).followed(own, "Again", Budget.steps(20_000));
        assertThat(followed.design().scheme().bars()).isEqualTo(design.scheme().bars());
        assertThat(followed.design().scheme().hearth())
                .isEqualTo(design.scheme().hearth());
        assertThat(followed.answer()).isInstanceOf(DesignFit.Answer.Made.class);
    }

    @Test
    void one_piece_of_one_fabric_is_told_to_be_too_little() {
        Stash little = new Stash(List.of(Stashes.scraps(60, 9).pieces().get(0)));
        GuidelineFit.Followed followed = new GuidelineFit(design(1)).followed(little, "Little", Budget.steps(20_000));
        assertThat(followed.answer()).isInstanceOf(DesignFit.Answer.Lacking.class);
        assertThat(fabrics(followed.design())).hasSize(1);
    }
}
