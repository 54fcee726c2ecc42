package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the planner chooses where the wish is silent, on stashes whose answer is known by construction. */
public class ChoiceTest {

    private static final int CLOTHS = 8;

    public static Wish wish(Optional<Size> size) {
        return new Wish(
                new Wish.Target(size, false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 4, 1, Ruler.EIGHTHS));
    }

    static List<Plan> proposals(Stash stash, Wish wish) {
        PlanOutcome outcome = Planner.plan(stash, wish, 1, Budget.steps(12_000), progress -> {});
        assertThat(outcome).isInstanceOf(PlanOutcome.Proposals.class);
        return ((PlanOutcome.Proposals) outcome).plans();
    }

    /** Two of eight may be missed: the search is no proof, and what it misses is known to be there. */
    @ParameterizedTest
    @EnumSource(HiddenCloth.Widths.class)
    void a_cloth_cut_to_pieces_is_found_again_without_a_join_or_a_cut(HiddenCloth.Widths change) {
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < CLOTHS; i++) {
            HiddenCloth hidden = HiddenCloth.of(random, order(i), change);
            PlanFigures best = proposals(hidden.stash(), wish(Optional.of(hidden.finished())))
                    .get(0)
                    .figures();
            found += best.joins() == 0 && best.cuts() == 0 ? 1 : 0;
        }
        assertThat(found).isGreaterThanOrEqualTo(CLOTHS - 2);
    }

    /** To the whole inch, in which sizes are tried; one of eight may be missed. */
    @Test
    void without_a_size_the_cloth_is_as_large_as_one_that_is_known_to_be_there() {
        Random random = new Random(5);
        int found = 0;
        for (int i = 0; i < CLOTHS; i++) {
            HiddenCloth hidden = HiddenCloth.of(random, order(i), HiddenCloth.Widths.BY_ROUND);
            Plan largest = proposals(hidden.stash(), wish(Optional.empty())).get(0);
            Length inch = Length.inches(1);
            Length side = hidden.finished().width().roundedTo(inch, Rounding.DOWN);
            found += largest.cloth().finished().width().isLessThan(side) ? 0 : 1;
            Length hem = Making.inches().hem().allowance();
            assertThat(LargestCloth.limit(hidden.stash(), hem, hem))
                    .isGreaterThan(hidden.finished().width())
                    .isGreaterThan(largest.cloth().finished().width());
            assertThat(largest.story().chosen().get(0)).asString().contains("The size: the largest square found");
        }
        assertThat(found).isGreaterThanOrEqualTo(CLOTHS - 1);
    }

    /** The sentences are read again here, beside figures of the plans. */
    @Test
    void proposals_differ_and_what_is_said_of_each_is_so() {
        for (int seed = 1; seed <= 6; seed++) {
            List<Plan> plans = proposals(
                    Stashes.scraps(50 + 10 * seed, seed), wish(Optional.of(Size.square(Length.inches(20 + 2 * seed)))));
            assertThat(plans).hasSize(4);
            assertThat(plans.stream().map(plan -> plan.story().title()).distinct())
                    .hasSizeGreaterThanOrEqualTo(3);
            assertThat(plans.stream().map(plan -> plan.story().goodAt())).doesNotHaveDuplicates();
            for (Plan plan : plans) {
                isSo(
                        plan,
                        plans,
                        "the fewest joins",
                        Comparator.comparingDouble(one -> one.figures().joins()));
                isSo(
                        plan,
                        plans,
                        "the fewest cuts",
                        Comparator.comparingDouble(one -> one.figures().cuts()));
                isSo(
                        plan,
                        plans,
                        "the least fabric lost",
                        Comparator.comparingDouble(one -> one.figures().areas().lost()));
                isSo(
                        plan,
                        plans,
                        "uses up most pieces",
                        Comparator.comparingDouble(one -> -one.cuts().size()));
            }
        }
    }

    private static void isSo(Plan plan, List<Plan> plans, String said, Comparator<Plan> less) {
        if (plan.story().goodAt().english().contains(said)) {
            assertThat(plans.stream().filter(other -> !other.equals(plan)))
                    .as(said)
                    .allMatch(other -> less.compare(plan, other) < 0);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void fabric_that_is_said_to_be_enough_for_one_way_is_enough_for_it(long seed) {
        Stash stash = Stashes.scraps(40, seed);
        Wish wish = wish(Optional.of(Size.square(Length.inches(66))));
        PlanOutcome outcome = Planner.plan(stash, wish, 1, Budget.steps(20_000), progress -> {});
        assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
        assertThat(((PlanOutcome.CannotMake) outcome).proven()).isFalse();
        List<String> why = ((PlanOutcome.CannotMake) outcome)
                .why().stream().map(Sentence::english).toList();
        String last = why.get(why.size() - 1);
        assertThat(last).startsWith("It would work with this added: ");
        List<Piece> pieces = new ArrayList<>(stash.pieces());
        Matcher added =
                Pattern.compile("(?:(\\d+) of )?(\\w+), (\\S+) × (\\S+) in[;.]").matcher(last);
        while (added.find()) {
            Fabric fabric = stash.fabric(added.group(2)).orElseThrow();
            Size size = new Size(Length.parse(added.group(3) + " in"), Length.parse(added.group(4) + " in"));
            int count = added.group(1) == null ? 1 : Integer.parseInt(added.group(1));
            for (int i = 0; i < count; i++) {
                pieces.add(Stashes.piece(100 + pieces.size(), fabric, size));
            }
        }
        Draft draft = new Drafts(
                        wish,
                        new Supply(stash),
                        new LayoutCandidates(wish, stash, Idea.none()),
                        List.of(),
                        ColourGoal.of(wish.preferences().looks()),
                        Optional.empty())
                .of(wish.target().size(), 1)
                .get(0);
        assertThat(Fitting.fit(draft, new Supply(new Stash(pieces)), 150, 1, Budget.steps(20_000)))
                .as(last)
                .isPresent();
    }

    /** The first cloth is told while most is still untried, and what is told gets better each time. */
    @Test
    void the_first_proposal_comes_before_the_others_are_tried() {
        List<PlanProgress> told = new ArrayList<>();
        Wish wish = wish(Optional.of(Size.square(Length.inches(30))));
        Planner.plan(Stashes.scraps(80, 3), wish, 1, Budget.steps(12_000), progress -> {
            if (progress.best().isPresent()) {
                told.add(progress);
            }
        });
        assertThat(told).isNotEmpty();
        assertThat(told.get(0).tried() * 4).isLessThan(told.get(0).of());
        assertThat(told.stream()
                        .map(progress -> progress.best().orElseThrow().figures().joins()))
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static Order order(int i) {
        return i % 2 == 0 ? Order.ROUND : Order.PAIRS;
    }
}
