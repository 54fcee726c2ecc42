package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.PlanningSentences;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What colours cost in joins over heaps of two hundred pieces, beside cloths of the same heap in any colours. */
class ColoursPriceTest {

    private static final Wish WISH = ChoiceTest.wish(Optional.of(Size.square(Length.inches(36))));
    private static final Pattern MORE = Pattern.compile("(One|\\d+) joins? more than the fewest");

    private static List<Plan> plans(Stash heap, Set<Scheme.Kind> kinds) {
        Idea idea = new Idea(layout -> true, List.of(), kinds, Optional.empty());
        return Planner.plans(heap, WISH, idea, 1, Budget.steps(12_000), told -> {});
    }

    private static int fewest(List<Plan> plans) {
        return plans.stream().mapToInt(plan -> plan.figures().joins()).min().orElseThrow();
    }

    /** The joins that a plan says its colours cost; 0 where it says nothing. */
    private static int said(Plan plan) {
        Matcher said = MORE.matcher(plan.story().goodAt().english());
        return !said.find() ? 0 : said.group(1).equals("One") ? 1 : Integer.parseInt(said.group(1));
    }

    /** Seeds of heaps of 195 scraps and five larger pieces. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void the_first_takes_no_more_joins_than_without_colour_and_every_other_says_what_its_colours_take(long seed) {
        Stash heap = Stashes.scraps(195, seed);
        int free = fewest(plans(heap, Set.of(Scheme.Kind.ALL)));
        List<Plan> four =
                ((PlanOutcome.Proposals) Planner.plan(heap, WISH, 1, Budget.steps(12_000), told -> {})).plans();
        assertThat(four.get(0).figures().joins()).isLessThanOrEqualTo(free);
        assertThat(said(four.get(0))).isZero();
        for (Plan plan : four) {
            boolean isColoured = !plan.story().title().english().startsWith("From the whole stash");
            int more = plan.figures().joins() - fewest(four);
            assertThat(said(plan)).as(plan.story().title().english()).isEqualTo(isColoured ? more : 0);
        }
        List<Plan> wished = plans(heap, Set.of(Scheme.Kind.SCATTERED));
        for (Plan plan : wished) {
            assertThat(plan.figures().joins() - said(plan)).isEqualTo(free);
        }
        System.out.printf(
                "seed %d: without colour %d joins; first %d; four %s; wished scattered %s, said to be more by %s%n",
                seed,
                free,
                four.get(0).figures().joins(),
                four.stream().map(plan -> plan.figures().joins()).toList(),
                wished.stream().map(plan -> plan.figures().joins()).toList(),
                wished.stream().map(ColoursPriceTest::said).toList());
    }

    @org.junit.jupiter.api.Test
    void the_price_is_a_sentence() {
        assertThat(PlanningSentences.colourPriceJoins(1).english())
                .isEqualTo("One join more than the fewest that were found, for its colours.");
    }
}
