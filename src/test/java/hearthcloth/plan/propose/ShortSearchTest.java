package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link ShortSearch}: what it finds is a true cloth as wished, and the same each time. */
class ShortSearchTest {

    private static Wish wish(int inches, String... fabrics) {
        return new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(fabrics), 1, 1, Ruler.EIGHTHS));
    }

    private static Optional<Plan> search(Stash stash, Wish wish, ShortSearch.Depth depth) {
        return ShortSearch.of(stash, wish, depth, Budget.steps(Long.MAX_VALUE));
    }

    @ParameterizedTest
    @EnumSource(ShortSearch.Depth.class)
    void a_cloth_is_found_as_wished_and_the_same_each_time(ShortSearch.Depth depth) {
        for (long seed = 1; seed <= 3; seed++) {
            Stash stash = Stashes.scraps(25, seed);
            Plan plan = search(stash, wish(14), depth).orElseThrow();
            PlanCheck.require(plan);
            assertThat(plan.cloth().finished()).isEqualTo(Size.square(Length.inches(14)));
            assertThat(stash.pieces())
                    .containsAll(plan.cuts().stream().map(cut -> cut.piece()).toList());
            assertThat(search(stash, wish(14), depth)).contains(plan);
        }
    }

    @Test
    void only_the_fabrics_that_are_named_are_used() {
        Plan plan = search(Stashes.scraps(40, 2), wish(12, "Slate", "Oat"), ShortSearch.Depth.SHORT)
                .orElseThrow();
        assertThat(plan.fabrics()).extracting(fabric -> fabric.name()).isSubsetOf("Slate", "Oat");
    }

    @Test
    void where_nothing_can_be_cut_nothing_is_found() {
        assertThat(search(new Stash(List.of()), wish(12), ShortSearch.Depth.PLAIN))
                .isEmpty();
        assertThat(search(Stashes.scraps(20, 2), wish(12, "Velvet"), ShortSearch.Depth.PLAIN))
                .as("a fabric that is not there")
                .isEmpty();
        assertThat(search(Stashes.scraps(3, 2), wish(100), ShortSearch.Depth.LONG))
                .isEmpty();
    }

    /** A budget that is spent ends the search at the first cloth, not before it. */
    @Test
    void a_spent_budget_still_gives_a_first_cloth() {
        Optional<Plan> plan =
                ShortSearch.of(Stashes.scraps(25, 1), wish(14), ShortSearch.Depth.LONG, Budget.until(() -> true));
        PlanCheck.require(plan.orElseThrow());
    }
}
