package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The laws of measuring as you go: what is sewn stays, what is left suffices or is said not to, sizes come true. */
class RemainingPlanTest {

    private static final int SEWINGS = 1_000;

    private static final Stash STASH = Stashes.scraps(90, 3);
    private static final List<Plan> PLANS = Planned.plans(STASH, 30, 3);

    private static Stash left(Plan plan) {
        List<Piece> pieces = new ArrayList<>(STASH.pieces());
        plan.cuts().forEach(cut -> pieces.remove(cut.piece()));
        return new Stash(pieces);
    }

    /** Raw size of the work after the seam of each bar, as the steps of the cloth say. */
    private static List<Size> running(Plan plan) {
        return plan.cloth().steps().stream()
                .filter(step -> step.joinedBar().isEmpty())
                .map(Step::running)
                .toList();
    }

    private static RemainingPlan.Table table(Stash left, int next) {
        return new RemainingPlan.Table(left, next, Ruler.EIGHTHS);
    }

    private static RemainingPlan.Answer fit(Plan plan, int bars, Design after, Stash left) {
        return new RemainingPlan(plan, bars, Map.of()).fit(after, table(left, 5_000), Budget.steps(4_000));
    }

    private static RemainingPlan.Resewn made(RemainingPlan.Answer answer) {
        assertThat(answer).isInstanceOf(RemainingPlan.Answer.Made.class);
        return ((RemainingPlan.Answer.Made) answer).resewn();
    }

    @Test
    void a_bar_too_short_is_planned_again_only_from_fabric_that_is_there() {
        Length three = Length.inches(3);
        for (Plan plan : PLANS) {
            Design design = DesignEdits.settled(plan, Order.ROUND);
            for (Layout.Slot slot : design.layout().slots().subList(0, 2)) {
                String bar = slot.place().bar();
                int sewn = design.layout().slots().indexOf(slot);
                Length measured =
                        new RemainingPlan(plan, sewn, Map.of()).cutLength(bar).minus(three);
                RemainingPlan.Answer answer = new RemainingPlan(plan, sewn, Map.of(bar, measured))
                        .fit(design, table(left(plan), 5_000), Budget.steps(4_000));
                if (answer instanceof RemainingPlan.Answer.Made made) {
                    assertThat(left(plan).pieces())
                            .containsAll(made.resewn().cuts().stream()
                                    .map(PieceCut::piece)
                                    .filter(piece -> !made.resewn().come().contains(piece))
                                    .toList());
                    double freed = made.resewn().come().stream()
                            .filter(piece -> piece.row() >= 5_000 && piece.row() < 5_000 + parts(plan, bar))
                            .mapToDouble(Piece::areaMm2)
                            .sum();
                    assertThat(freed).as("bar " + bar).isLessThanOrEqualTo(area(plan, bar, three));
                }
            }
        }
    }

    /** How every piece of a plan is cut, patches and all. */
    private static List<CutTree> whole(Plan plan) {
        return plan.cuts().stream().map(PieceCut::tree).toList();
    }

    private static long parts(Plan plan, String bar) {
        return plan.sources().keySet().stream()
                .filter(patch -> patch.replaceFirst("\\..*", "").equals(bar))
                .count();
    }

    /** The area that was cut for a bar, less {@code missing} of its last part. */
    private static double area(Plan plan, String bar, Length missing) {
        double area = 0;
        Size last = Size.square(Length.ZERO);
        for (var source : plan.sources().entrySet()) {
            if (source.getKey().replaceFirst("\\..*", "").equals(bar)) {
                last = source.getValue().kept().at().size();
                area += last.areaMm2();
            }
        }
        return area - new Size(missing, last.width().min(last.height())).areaMm2() + 1e-6;
    }

    @Test
    void measured_as_planned_nothing_changes() {
        for (Plan plan : PLANS) {
            Design design = DesignEdits.settled(plan, Order.ROUND);
            List<Size> running = running(plan);
            for (int bars = 1; bars <= running.size(); bars++) {
                SewnCloth asSewn = SewnCloth.measured(design, bars, running.get(bars - 1));
                assertThat(asSewn.design()).isEqualTo(design);
                assertThat(raw(asSewn)).isEqualTo(running.get(bars - 1));
                assertThat(asSewn.towards(plan.cloth().finished())).contains(design);
                RemainingPlan.Resewn resewn = made(fit(plan, bars, design, left(plan)));
                assertThat(resewn.cuts()).isEmpty();
                assertThat(resewn.plan().cloth()).isEqualTo(plan.cloth());
                assertThat(made(fit(resewn.plan(), bars, design, left(plan))).plan())
                        .isEqualTo(resewn.plan());
                assertThat(whole(resewn.plan())).as("the whole story").isEqualTo(whole(plan));
                assertThat(resewn.come()).isEmpty();
            }
        }
    }

    @Test
    void what_is_sewn_keeps_its_fabrics_parts_and_joins_and_the_size_is_the_measured_one() {
        Random random = new Random(5);
        for (int i = 0; i < 40; i++) {
            Plan plan = PLANS.get(i % PLANS.size());
            List<Size> running = running(plan);
            int bars = 1 + random.nextInt(running.size());
            Size real = new Size(
                    running.get(bars - 1).width().plus(drift(random)),
                    running.get(bars - 1).height().plus(drift(random)));
            SewnCloth asSewn = SewnCloth.measured(DesignEdits.settled(plan, Order.ROUND), bars, real);
            assertThat(raw(asSewn)).isEqualTo(real);
            RemainingPlan.Resewn resewn = made(fit(plan, bars, asSewn.design(), left(plan)));
            assertThat(running(resewn.plan()).get(bars - 1)).isEqualTo(real);
            assertThat(sewn(resewn.plan(), bars)).isEqualTo(sewn(plan, bars));
            assertThat(resewn.plan().cloth().finished())
                    .isEqualTo(asSewn.design().layout().finished());
        }
    }

    /** The size of the work now, as the steps of the cloth say: with each bar in one piece, each step sews on a bar. */
    private static Size raw(SewnCloth sewn) {
        return sewn.design().whole().steps().get(sewn.bars() - 1).running();
    }

    private static Length drift(Random random) {
        return Length.inches(random.nextInt(9) - 4, 16);
    }

    /** Names and fabrics of what the first bars are sewn from, in order. */
    private static List<String> sewn(Plan plan, int bars) {
        Set<String> names = new HashSet<>(Set.of("hearth"));
        DesignEdits.settled(plan, Order.ROUND)
                .layout()
                .slots()
                .subList(0, bars)
                .forEach(slot -> names.add(slot.place().bar()));
        return plan.cloth().patches().stream()
                .filter(patch -> names.contains(name(patch)))
                .map(patch -> patch.place().id() + " " + patch.fabric() + " " + patch.showing())
                .sorted()
                .toList();
    }

    private static String name(Patch patch) {
        return patch.place() instanceof Place.Bar bar
                ? bar.bar()
                : patch.place().id();
    }

    @Test
    void the_size_can_be_kept_by_the_bars_to_come() {
        Plan plan = PLANS.get(0);
        List<Size> running = running(plan);
        Size real = new Size(
                running.get(1).width().minus(Length.inches(3, 8)),
                running.get(1).height().plus(Length.inches(1, 4)));
        SewnCloth asSewn = SewnCloth.measured(DesignEdits.settled(plan, Order.ROUND), 2, real);
        Design kept = asSewn.towards(plan.cloth().finished()).orElseThrow();
        assertThat(kept.layout().finished()).isEqualTo(plan.cloth().finished());
        assertThat(asSewn.design().layout().finished())
                .isNotEqualTo(plan.cloth().finished());
        RemainingPlan.Resewn resewn = made(fit(plan, 2, kept, left(plan)));
        assertThat(resewn.cuts()).isNotEmpty();
        assertThat(resewn.plan().cloth().finished()).isEqualTo(plan.cloth().finished());
    }

    @Test
    void a_round_more_goes_round_everything_and_a_measure_that_cannot_be_is_refused() {
        Plan plan = PLANS.get(0);
        Design design = DesignEdits.settled(plan, Order.ROUND);
        int bars = design.layout().courses().size();
        SewnCloth asSewn = SewnCloth.measured(design, bars, running(plan).get(bars - 1));
        Design more = asSewn.another(SewnCloth.narrowRound(design.making(), false));
        assertThat(more.layout().courses()).hasSize(bars + 4);
        Length wider =
                more.layout().finished().width().minus(plan.cloth().finished().width());
        // Two bars that show an inch each, and what the hem no longer takes of the old outer bars.
        Length hem = design.making()
                .hem()
                .allowance()
                .minus(design.making().seam().narrow())
                .times(2);
        assertThat(wider).isEqualTo(Length.inches(2).plus(hem));
        assertThatThrownBy(() -> SewnCloth.measured(design, bars, Size.square(Length.inches(1))))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("measure it again");
    }

    @Test
    void where_too_little_is_left_it_is_said() {
        Plan plan = PLANS.get(0);
        List<Size> running = running(plan);
        Size real = running.get(0);
        SewnCloth asSewn = SewnCloth.measured(
                DesignEdits.settled(plan, Order.ROUND),
                1,
                new Size(real.width().plus(Length.inches(3)), real.height().plus(Length.inches(3))));
        RemainingPlan.Answer answer = fit(plan, 1, asSewn.design(), new Stash(List.of()));
        assertThat(answer).isInstanceOf(RemainingPlan.Answer.Lacking.class);
        assertThat(((RemainingPlan.Answer.Lacking) answer).why()).isNotEmpty();
    }

    /**
     * Sews on paper, knowing only the cut sizes and how far each seam drifts, and measures after every bar. No bar may ever
     * be too short for its edge unless that was said, and the last size said is the size that comes out.
     */
    @Test
    void sewings_with_random_drift_end_at_the_size_that_was_said() {
        for (int i = 0; i < SEWINGS; i++) {
            sewing(new Random(1_000 + i), PLANS.get(i % PLANS.size()));
        }
    }

    private static void sewing(Random random, Plan first) {
        Plan plan = first;
        Design design = DesignEdits.settled(plan, Order.ROUND);
        Stash left = left(plan);
        Size wished = plan.cloth().finished();
        Map<String, Length> cut = cutLengths(plan, design, 0);
        Size real = Size.square(Length.ZERO);
        int next = 10_000;
        int bars = design.layout().courses().size();
        for (int sewn = 1; sewn <= bars; sewn++) {
            Size should = running(plan).get(sewn - 1);
            Layout.Slot slot = design.layout().slots().get(sewn - 1);
            boolean upright = slot.place().side().isUpright();
            Length edge = upright ? should.height() : should.width();
            assertThat(cut.get(slot.place().bar()))
                    .as("bar " + slot.place().bar())
                    .isGreaterThanOrEqualTo(edge);
            Length off = drift(random);
            real = upright
                    ? new Size(should.width().plus(off), should.height())
                    : new Size(should.width(), should.height().plus(off));
            SewnCloth asSewn = SewnCloth.measured(design, sewn, real);
            Design on = random.nextInt(4) == 0 ? asSewn.towards(wished).orElse(asSewn.design()) : asSewn.design();
            RemainingPlan.Answer answer =
                    new RemainingPlan(plan, sewn, Map.of()).fit(on, table(left, next), Budget.steps(2_000));
            if (answer instanceof RemainingPlan.Answer.Lacking lacking) {
                assertThat(lacking.why()).isNotEmpty();
                return;
            }
            RemainingPlan.Resewn resewn = ((RemainingPlan.Answer.Made) answer).resewn();
            List<Piece> pieces = new ArrayList<>(left.pieces());
            pieces.addAll(resewn.come());
            List<Piece> used = resewn.cuts().stream().map(PieceCut::piece).toList();
            assertThat(used).doesNotHaveDuplicates().allMatch(pieces::contains);
            pieces.removeAll(used);
            int free = next + resewn.come().size();
            for (PieceCut one : resewn.cuts()) {
                for (var offcut : one.tree().left()) {
                    if (CutTree.isReusable(offcut.size(), plan.rules().leastPiece())) {
                        pieces.add(one.piece().part(free++, offcut.size()));
                    }
                }
            }
            left = new Stash(pieces);
            next += 1_000;
            Map<String, Length> anew = cutLengths(resewn.plan(), on, sewn);
            Set<String> cutNow = new HashSet<>();
            resewn.cuts()
                    .forEach(one -> one.tree()
                            .kept()
                            .forEach(kept -> cutNow.add(kept.patch().replaceFirst("\\..*", ""))));
            cut.keySet().retainAll(anew.keySet());
            anew.forEach((bar, length) -> {
                if (cutNow.contains(bar)) {
                    cut.put(bar, length);
                }
            });
            plan = resewn.plan();
            design = on;
        }
        assertThat(running(plan).get(bars - 1)).isEqualTo(real);
    }

    /** What each bar not sewn yet is cut to, joined. */
    private static Map<String, Length> cutLengths(Plan plan, Design design, int sewn) {
        RemainingPlan resewing = new RemainingPlan(plan, sewn, Map.of());
        Map<String, Length> lengths = new HashMap<>();
        List<Layout.Slot> slots = design.layout().slots();
        slots.subList(sewn, slots.size())
                .forEach(slot -> lengths.put(
                        slot.place().bar(), resewing.cutLength(slot.place().bar())));
        return lengths;
    }
}
