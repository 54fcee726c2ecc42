package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import hearthcloth.wrap.tying.Between;
import hearthcloth.wrap.tying.WhatShows;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fabric wished to the outside is seen there: told by the fold, not by the planner. */
class VisibleFabricSchemesTest {

    private static final Gift BOX = Gift.parse("box 8 x 6 x 3 in", null);

    private static List<Plan> plans(Stash stash, Optional<String> fabric, Tie tie, Placing placing) {
        Length side = tie.smallestSquare(BOX, Tail.INCHES.usual());
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Ruler.EIGHTHS.mark(side, Rounding.UP))), true),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(
                        List.of(),
                        4,
                        1,
                        Ruler.EIGHTHS,
                        new Wish.Looks(
                                fabric.map(name -> new Wish.Outside(name, BOX, tie, Tail.INCHES, placing)),
                                Optional.empty(),
                                Contrast.READS)));
        PlanOutcome outcome = Planner.plan(stash, wish, 1, Budget.steps(12_000), progress -> {});
        assertThat(outcome).isInstanceOf(PlanOutcome.Proposals.class);
        return ((PlanOutcome.Proposals) outcome).plans();
    }

    private static Between between(Cloth cloth, String fabric, Tie tie, Placing placing) {
        Fold fold = TiedFold.of(tie.fit(BOX, cloth.finished(), Tail.INCHES.usual(), placing));
        return WhatShows.of(cloth, Visible.of(fold)).between(fabric);
    }

    /** What shows of it however the spare corners lie. */
    private static double score(Cloth cloth, String fabric, Tie tie, Placing placing) {
        return between(cloth, fabric, tie, placing).least();
    }

    private static double best(List<Plan> plans, String fabric, Tie tie) {
        return plans.stream()
                .mapToDouble(plan -> score(plan.cloth(), fabric, tie, Placing.CENTRED))
                .max()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"Oat, FOUR_CORNER", "Kelp, FOUR_CORNER", "Rust, FLAT"})
    void the_first_proposal_shows_more_of_it_than_any_made_without_the_wish(String fabric, Tie tie) {
        Stash stash = Stashes.scraps(60, 11);
        List<Plan> plain = plans(stash, Optional.empty(), tie, Placing.CENTRED);
        List<Plan> wished = plans(stash, Optional.of(fabric), tie, Placing.CENTRED);
        double first = score(wished.get(0).cloth(), fabric, tie, Placing.CENTRED);
        assertThat(first).isGreaterThan(best(plain, fabric, tie) + 0.05);
        assertThat(first).isEqualTo(best(wished, fabric, tie));
        Between share = between(wished.get(0).cloth(), fabric, tie, Placing.CENTRED);
        long least = Math.round(100 * share.least());
        long most = Math.round(100 * share.most());
        assertThat(wished.get(0).story().goodAt())
                .asString()
                .endsWith(
                        least == most
                                ? fabric + ": " + least + " % of what shows once tied."
                                : fabric + " shows however you tie it: " + least + " % to " + most
                                        + " % of what shows once tied.");
    }

    /** The same wish, the same plans; and a fabric that is not there is said so. */
    @Test
    void the_wish_is_answered_the_same_way_twice_and_an_unknown_fabric_is_told() {
        Stash stash = Stashes.scraps(40, 5);
        List<Plan> once = plans(stash, Optional.of("Slate"), Tie.FOUR_CORNER, Placing.CENTRED);
        assertThat(plans(stash, Optional.of("Slate"), Tie.FOUR_CORNER, Placing.CENTRED))
                .isEqualTo(once);
        Wish wish = new Wish(
                Wish.Target.none(),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(
                        List.of(),
                        1,
                        1,
                        Ruler.EIGHTHS,
                        new Wish.Looks(
                                Optional.of(
                                        new Wish.Outside("Velvet", BOX, Tie.FOUR_CORNER, Tail.INCHES, Placing.CENTRED)),
                                Optional.empty(),
                                Contrast.READS)));
        PlanOutcome outcome = Planner.plan(stash, wish, 1, Budget.steps(100), progress -> {});
        assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
        assertThat(((PlanOutcome.CannotMake) outcome).why().get(0)).asString().contains("Velvet");
    }
}
