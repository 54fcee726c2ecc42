package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.judge.PlanJudge;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Every plan is judged twice: by the folds when it is made, and here by a plain reader of its plan file. */
class PlannerTest {

    private static Wish wish(Optional<Size> size, Wish.Shape shape, long seed) {
        return new Wish(
                new Wish.Target(size, false),
                shape,
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 4, seed, Ruler.EIGHTHS));
    }

    private static PlanOutcome plan(Stash stash, Wish wish) {
        return Planner.plan(stash, wish, 1, Budget.steps(4_000), progress -> {});
    }

    private static List<Plan> proposals(Stash stash, Wish wish) {
        PlanOutcome outcome = plan(stash, wish);
        assertThat(outcome).isInstanceOf(PlanOutcome.Proposals.class);
        return ((PlanOutcome.Proposals) outcome).plans();
    }

    private static void isSound(Plan plan, Stash stash) throws IOException {
        Set<String> napped = new HashSet<>();
        stash.fabrics().stream()
                .filter(fabric -> fabric.nap() == Fabric.Nap.LENGTHWISE)
                .forEach(fabric -> napped.add(fabric.name()));
        String json = new PlanFolder(plan, Ruler.EIGHTHS, Paper.A4).planFile();
        assertThat(PlanJudge.faults(json, Ruler.EIGHTHS.step().nm(), napped))
                .as(plan.story().title().english())
                .isEmpty();
        assertThat(Layers.most(plan.cloth())).isLessThan(16);
        assertThat(plan.bound().joins()).isLessThanOrEqualTo(plan.figures().joins());
        assertThat(plan.bound().touchedMm2())
                .isPositive()
                .isLessThanOrEqualTo(plan.figures().areas().touched() * (1 + 1e-12));
    }

    @Nested
    class What_is_proposed {

        @Test
        void from_two_lengths_has_the_size_that_was_asked() throws IOException {
            Size size = Size.square(Length.inches(77, 2));
            Stash stash = Stashes.yardage();
            List<Plan> plans = proposals(stash, wish(Optional.of(size), OpenShape.shape(), 1));
            assertThat(plans).hasSizeGreaterThanOrEqualTo(3);
            for (Plan plan : plans) {
                assertThat(plan.cloth().finished()).isEqualTo(size);
                isSound(plan, stash);
            }
        }

        @Test
        void from_random_scraps_can_be_cut_and_sewn() throws IOException {
            Random random = new Random(11);
            for (int round = 0; round < 8; round++) {
                Stash stash = Stashes.scraps(30 + random.nextInt(90), random.nextLong());
                Length side = Length.inches(20 + random.nextInt(20));
                Size size = new Size(side, random.nextBoolean() ? side : side.plus(Length.inches(5)));
                if (plan(stash, wish(Optional.of(size), OpenShape.shape(), round))
                        instanceof PlanOutcome.Proposals found) {
                    for (Plan plan : found.plans()) {
                        assertThat(plan.cloth().finished()).isEqualTo(size);
                        isSound(plan, stash);
                    }
                }
            }
        }

        @Test
        void keeps_to_the_hearth_bars_rounds_and_order_of_the_wish() throws IOException {
            Wish.Shape shape = new Wish.Shape(
                    Optional.of(new Wish.Cut<>(Size.square(Length.inches(14)), false)),
                    List.of(new Wish.Cut<>(Length.inches(5), false)),
                    Optional.of(2),
                    Optional.of(Order.ROUND));
            Stash stash = Stashes.yardage();
            List<Plan> plans = proposals(stash, wish(Optional.empty(), shape, 1));
            for (Plan plan : plans) {
                // 14 + 4 × 5 − 4 × 3/4 − 1 (hem): hearth and two rounds cut, less four seams and the hem
                assertThat(plan.cloth().finished()).isEqualTo(Size.square(Length.inches(30)));
                assertThat(plan.cloth().laid().stream()
                                .filter(laid -> laid.patch().place().id().equals("hearth"))
                                .map(laid -> laid.cut()))
                        .containsExactly(Size.square(Length.inches(14)));
                assertThat(plan.cloth().patches().size()).isGreaterThanOrEqualTo(9);
                isSound(plan, stash);
            }
        }

        @Test
        void differs_in_plan_of_colour_or_order() {
            List<Plan> plans = proposals(
                    Stashes.scraps(80, 3), wish(Optional.of(Size.square(Length.inches(30))), OpenShape.shape(), 1));
            assertThat(plans.stream().map(plan -> plan.story().title()).distinct())
                    .hasSize(plans.size());
        }

        @Test
        void is_the_same_for_the_same_seed() {
            Wish wish = wish(Optional.of(Size.square(Length.inches(30))), OpenShape.shape(), 5);
            assertThat(proposals(Stashes.scraps(60, 9), wish)).isEqualTo(proposals(Stashes.scraps(60, 9), wish));
        }

        @Test
        void comes_as_large_as_the_stash_goes_where_no_size_is_asked() throws IOException {
            Stash stash = Stashes.yardage();
            List<Plan> plans = proposals(stash, wish(Optional.empty(), OpenShape.shape(), 1));
            isSound(plans.get(0), stash);
            double used = plans.get(0).figures().areas().used();
            assertThat(used / stash.areaMm2()).isGreaterThan(0.6);
        }
    }

    @Nested
    class With_no_time_at_all {

        private PlanOutcome atOnce(Stash stash, Wish wish) {
            return Planner.plan(stash, wish, 1, Budget.steps(0), progress -> {});
        }

        @Test
        void a_cloth_of_any_size_is_found_from_any_heap() throws IOException {
            Random random = new Random(23);
            for (int round = 0; round < 6; round++) {
                Stash stash = Stashes.scraps(10 + random.nextInt(60), random.nextLong());
                PlanOutcome outcome = atOnce(stash, wish(Optional.empty(), OpenShape.shape(), round));
                assertThat(outcome).isInstanceOf(PlanOutcome.Proposals.class);
                isSound(((PlanOutcome.Proposals) outcome).plans().get(0), stash);
            }
        }

        @Test
        void a_wished_size_is_found_wherever_it_is_found_with_time() {
            Random random = new Random(29);
            for (int round = 0; round < 6; round++) {
                Stash stash = Stashes.scraps(20 + random.nextInt(60), random.nextLong());
                Wish wish = wish(Optional.of(Size.square(Length.inches(16 + 2 * round))), OpenShape.shape(), round);
                assertThat(atOnce(stash, wish).getClass())
                        .as("seed 29, round " + round)
                        .isEqualTo(plan(stash, wish).getClass());
            }
        }

        @Test
        void a_cloth_that_is_too_large_still_comes_with_the_nearest() {
            PlanOutcome outcome =
                    atOnce(Stashes.yardage(), wish(Optional.of(Size.square(Length.inches(60))), OpenShape.shape(), 1));
            assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
            assertThat(((PlanOutcome.CannotMake) outcome).nearest()).hasSize(1);
        }
    }

    @Nested
    class What_cannot_be_made {

        @Test
        void says_how_much_is_missing_and_offers_the_nearest() throws IOException {
            Stash stash = Stashes.yardage();
            PlanOutcome outcome = plan(stash, wish(Optional.of(Size.square(Length.inches(60))), OpenShape.shape(), 1));
            assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
            PlanOutcome.CannotMake cannot = (PlanOutcome.CannotMake) outcome;
            assertThat(cannot.proven()).isTrue();
            // 60 × 60 against 42 × 27 + 42 × 54 square inches
            assertThat(cannot.why().get(0))
                    .asString()
                    .contains("3600 sq in")
                    .contains("3402 sq in")
                    .contains("198 sq in");
            assertThat(cannot.nearest()).hasSize(1);
            isSound(cannot.nearest().get(0), stash);
        }

        @Test
        void names_the_sizes_that_hearth_and_bars_do_come_to() {
            Wish.Shape shape = new Wish.Shape(
                    Optional.of(new Wish.Cut<>(Size.square(Length.inches(14)), false)),
                    List.of(new Wish.Cut<>(Length.inches(5), false)),
                    Optional.of(1),
                    Optional.of(Order.ROUND));
            PlanOutcome outcome = plan(Stashes.yardage(), wish(Optional.of(Size.square(Length.inches(40))), shape, 1));
            assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
            assertThat(((PlanOutcome.CannotMake) outcome).why().get(0))
                    .asString()
                    .contains("30 × 30 in with 2 rounds");
        }

        @Test
        void an_unknown_fabric_is_named_beside_those_there_are() {
            Wish wish = new Wish(
                    Wish.Target.none(),
                    OpenShape.shape(),
                    Making.inches(),
                    PiecingRules.inches(),
                    new Wish.Preferences(List.of("Velvet"), 4, 1, Ruler.EIGHTHS));
            PlanOutcome outcome = plan(Stashes.yardage(), wish);
            assertThat(((PlanOutcome.CannotMake) outcome).why().get(0))
                    .asString()
                    .contains("Velvet")
                    .contains("Slate, Oat");
        }

        @Test
        void an_empty_stash_is_told_so() {
            PlanOutcome outcome = plan(new Stash(new ArrayList<>()), wish(Optional.empty(), OpenShape.shape(), 1));
            assertThat(outcome).isInstanceOf(PlanOutcome.CannotMake.class);
        }
    }
}
