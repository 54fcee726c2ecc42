package hearthcloth.work.deed;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.stash.Stash;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Worked;
import hearthcloth.work.deed.WorkMeasured.Way;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What follows from sewing: {@link SewingSoFar}, {@link WorkMeasured}, {@link BarTooShort}, {@link SewnOn}, {@link SewnWrongly},
 * {@link LateSpoiled}.
 */
class SewingTest {

    private static final Instant NOW = Instant.parse("2026-05-04T10:00:00Z");

    private static final SewingSoFar SEWING = SewingSoFar.of(Worked.cut(), Ruler.EIGHTHS);

    /** The step that sews on the first bar. */
    private static final int FIRST = first();

    private static int first() {
        int step = 0;
        while (SewingSoFar.bar(SEWING.steps().get(step)).isEmpty()) {
            step++;
        }
        return step;
    }

    private static Project sewn(int steps) {
        Project.Bench bench = Worked.cut().bench();
        return Worked.cut()
                .with(new Project.Bench(bench.locked(), bench.ticked(), steps, bench.measures(), bench.done()));
    }

    private static SewingSoFar after(int steps) {
        return new SewingSoFar(sewn(steps), SEWING.steps());
    }

    @Test
    void steps_are_done_in_order_and_the_last_one_ends_the_cloth() {
        assertThat(SEWING.done(1, NOW)).as("not the next").isEmpty();
        Deed first = SEWING.done(0, NOW).orElseThrow();
        BenchFact.Sewn fact = (BenchFact.Sewn) first.fact().orElseThrow();
        assertThat(fact.step()).isZero();
        assertThat(fact.last()).isFalse();
        assertThat(fact.done().orElseThrow().at()).isEqualTo(NOW);

        int last = SEWING.steps().size() - 1;
        BenchFact.Sewn end = (BenchFact.Sewn)
                after(last).done(last, NOW).orElseThrow().fact().orElseThrow();
        assertThat(end.last()).isTrue();
        assertThat(after(last + 1).done(last + 1, NOW)).as("nothing is left").isEmpty();
    }

    @Test
    void a_seam_is_called_by_its_bar_and_bars_count_as_they_are_sewn_on() {
        String bar = SewingSoFar.bar(SEWING.steps().get(FIRST)).orElseThrow();
        assertThat(bar).isEqualTo("1A");
        assertThat(after(FIRST).done(FIRST, NOW).orElseThrow().label().english())
                .isEqualTo("sewed 1A on");
        assertThat(after(FIRST).bars()).isZero();
        assertThat(after(FIRST + 1).bars()).isEqualTo(1);
        assertThat(SEWING.bars(SEWING.steps().size()))
                .isEqualTo(Worked.cut().design().layout().slots().size());
        assertThat(SEWING.seam(FIRST).bar()).isEqualTo("1A");
        assertThat(SEWING.seam(FIRST).kind()).isEqualTo("seam");
        assertThat(SEWING.seam(FIRST).up()).isNotEmpty();
    }

    @Test
    void seams_are_counted_alike_wherever_they_are_told() {
        int all = Worked.PLAN.cloth().steps().size();
        for (int done = 0; done <= SEWING.steps().size(); done++) {
            assertThat(hearthcloth.sew.machine.AtTheMachine.seams(done, all))
                    .isEqualTo((int) SEWING.steps().subList(0, done).stream()
                            .filter(step -> step.seam().isPresent())
                            .count());
        }
    }

    @Test
    void unpicking_opens_the_last_seams_first_and_tells_how_many_more() {
        int to = SEWING.steps().size();
        Deed all = after(to).unpicked(FIRST).orElseThrow();
        BenchFact.Unpicked fact = (BenchFact.Unpicked) all.fact().orElseThrow();
        assertThat(fact.from()).isEqualTo(FIRST);
        assertThat(fact.to()).isEqualTo(to);
        assertThat(fact.bars()).hasSize(SEWING.bars(to)).endsWith("1A");
        assertThat(all.label().english()).startsWith("unpicked: ").endsWith(" and " + (to - FIRST - 1) + " more");
        assertThat(after(FIRST + 1).unpicked(FIRST).orElseThrow().label().english())
                .doesNotContain("more");
        assertThat(after(FIRST).unpicked(FIRST)).as("not done yet").isEmpty();
    }

    /** What the work measures after the first seam where it comes out this much larger. */
    private static WorkMeasured measured(Length more) {
        Size should = SEWING.steps().get(FIRST).task().check().orElseThrow().size();
        boolean upright =
                Worked.cut().design().layout().slots().get(0).place().side().isUpright();
        Size real = upright
                ? new Size(should.width().plus(more), should.height())
                : new Size(should.width(), should.height().plus(more));
        return new WorkMeasured(
                Worked.benchAfterCutting(sewn(FIRST)),
                after(FIRST),
                FIRST,
                new WorkMeasured.Taken(real, List.of(real.width()), List.of(real.height())));
    }

    private static Length larger(Design design) {
        Size now = design.layout().finished();
        Size was = Worked.PLAN.cloth().finished();
        return now.width().minus(was.width()).plus(now.height().minus(was.height()));
    }

    @Test
    void work_that_is_as_planned_is_noted_and_changes_nothing() {
        WorkMeasured same = measured(Length.inches(1, 32));
        assertThat(same.isAsPlanned()).isTrue();
        Deed noted = same.noted(NOW);
        assertThat(noted.edited()).isEmpty();
        assertThat(noted.label().english()).startsWith("sewed 1A on, ");
        BenchFact.Sewn fact = (BenchFact.Sewn) noted.fact().orElseThrow();
        assertThat(fact.at()).isEqualTo(NOW.toString());
        assertThat(fact.measure().orElseThrow().real())
                .isEqualTo(fact.measure().orElseThrow().planned().plus(Length.inches(1, 32)));
        assertThat(measured(Length.inches(1, 4)).isAsPlanned()).isFalse();
    }

    @Test
    void work_that_is_smaller_may_stay_so_or_be_made_up_for_or_get_a_round_more() {
        WorkMeasured small = measured(Length.ZERO.minus(Length.inches(1, 4)));
        assertThat(small.ways()).containsOnlyKeys(Way.ACCEPT, Way.KEEP, Way.ROUND);
        assertThat(larger(design(small, Way.ACCEPT))).isEqualTo(Length.ZERO.minus(Length.inches(1, 4)));
        assertThat(larger(design(small, Way.KEEP))).isEqualTo(Length.ZERO);
        assertThat(larger(design(small, Way.ROUND)).isPositive()).isTrue();

        WorkMeasured large = measured(Length.inches(1, 4));
        assertThat(large.ways()).containsOnlyKeys(Way.ACCEPT, Way.KEEP);
        assertThat(larger(design(large, Way.ACCEPT))).isEqualTo(Length.inches(1, 4));
        assertThat(larger(design(large, Way.KEEP))).isEqualTo(Length.ZERO);
        assertThat(Way.KEEP.key()).isEqualTo("keep");
    }

    private static Design design(WorkMeasured work, Way way) {
        return Objects.requireNonNull(work.ways().get(way));
    }

    @Test
    void the_way_taken_books_the_seam_and_waits_for_what_is_to_cut() {
        WorkMeasured small = measured(Length.ZERO.minus(Length.inches(1, 4)));
        for (Way way : List.of(Way.ACCEPT, Way.KEEP)) {
            Design design = design(small, way);
            RemainingPlan.Answer answer = small.fit(design, Worked.steps());
            if (answer instanceof RemainingPlan.Answer.Made made) {
                Deed taken = small.taken(design, made.resewn(), NOW);
                Project now = taken.edited().orElseThrow();
                assertThat(now.design()).isEqualTo(design);
                assertThat(now.life().stage()).isEqualTo(made.resewn().cuts().isEmpty() ? Stage.CUT : Stage.RECUT);
                assertThat(now.plan().orElseThrow().cloth().finished())
                        .isEqualTo(design.layout().finished());
                assertThat(taken.fact().orElseThrow()).isInstanceOf(BenchFact.Sewn.class);
                assertThat(taken.pieces().come()).isEqualTo(made.resewn().come());
            } else {
                assertThat(way).as("as it is, it always goes on").isNotEqualTo(Way.ACCEPT);
            }
        }
    }

    /** Seed 5: at most seams the work comes out up to a quarter of an inch off, between the ruler's marks as well. */
    @Test
    void the_size_that_is_kept_at_each_seam_is_the_same_to_half_a_mark_at_the_end() {
        Random random = new Random(5);
        Length half = Length.inches(1, 16);
        int kept = 0;
        for (int run = 0; run < 200; run++) {
            Design design = Worked.cut().design();
            Size wanted = design.layout().finished();
            for (int bars = 1; bars <= design.layout().slots().size(); bars++) {
                Size raw = new SewnCloth(design, bars).raw();
                Length off = Length.inches(random.nextInt(9) - 4, 16);
                boolean upright =
                        design.layout().slots().get(bars - 1).place().side().isUpright();
                Size real = upright
                        ? new Size(raw.width().plus(off), raw.height())
                        : new Size(raw.width(), raw.height().plus(off));
                Optional<Design> keep =
                        SewnCloth.measured(design, bars, real).towards(new SewnCloth(design, bars - 1).meant());
                if (keep.isEmpty()) {
                    break;
                }
                design = keep.get();
                kept++;
                Size now = design.layout().finished();
                assertThat(now.width().minus(wanted.width())).isBetween(Length.ZERO.minus(half), half);
                assertThat(now.height().minus(wanted.height())).isBetween(Length.ZERO.minus(half), half);
            }
        }
        assertThat(kept).isGreaterThan(500);
    }

    private static BarTooShort tooShort(int bars, Length by) {
        String bar = Worked.cut().design().layout().slots().get(bars).place().bar();
        Length cut = new RemainingPlan(Worked.PLAN, bars, java.util.Map.of()).cutLength(bar);
        return new BarTooShort(Worked.benchAfterCutting(sewn(FIRST)), bars, bar, cut.minus(by));
    }

    @Test
    void a_bar_that_is_too_short_is_cut_anew_or_joined_and_what_is_cut_waits_in_the_stash() {
        BarTooShort slip = tooShort(0, Length.inches(2));
        List<ShortBar.Way> ways = slip.ways(Worked.steps());
        assertThat(ways).isNotEmpty();
        for (ShortBar.Way way : ways) {
            Deed taken = slip.taken(way);
            assertThat(taken.label().english()).startsWith("bar 1A too short: ");
            assertThat(taken.label().english().charAt("bar 1A too short: ".length()))
                    .isLowerCase();
            Project now = taken.edited().orElseThrow();
            assertThat(now.plan()).contains(way.resewn().plan());
            assertThat(now.life().stage()).isEqualTo(way.resewn().cuts().isEmpty() ? Stage.CUT : Stage.RECUT);
            assertThat(taken.pieces().gone()).isEmpty();
            Stash table = Worked.after(Worked.benchAfterCutting(Worked.cut()).stash(), taken.pieces());
            assertThat(way.resewn().cuts()).extracting(PieceCut::piece).allMatch(table.pieces()::contains);
        }
        assertThat(slip.planned()).isEqualTo(new RemainingPlan(Worked.PLAN, 0, java.util.Map.of()).cutLength("1A"));
    }

    /** Whatever was sewn beyond the bar is opened, to where just its earlier bars are on; nothing is opened for another way. */
    @Test
    void a_bar_made_anew_opens_what_was_sewn_since_and_any_other_way_opens_nothing() {
        int opened = 0;
        int kept = 0;
        int all = SEWING.steps().size();
        for (int bars = 0; bars < 3; bars++) {
            String bar =
                    Worked.cut().design().layout().slots().get(bars).place().bar();
            Length cut = new RemainingPlan(Worked.PLAN, bars, java.util.Map.of()).cutLength(bar);
            BarTooShort slip =
                    new BarTooShort(Worked.benchAfterCutting(sewn(all)), bars, bar, cut.minus(Length.inches(2)));
            for (ShortBar.Way way : slip.ways(Worked.steps())) {
                Optional<BenchFact> fact = slip.taken(way).fact();
                if (way.kind() != ShortBar.Kind.ANEW && way.kind() != ShortBar.Kind.PIECED) {
                    assertThat(fact).as("%s", way.kind()).isEmpty();
                    kept++;
                    continue;
                }
                BenchFact.Unpicked unpicked = (BenchFact.Unpicked) fact.orElseThrow();
                assertThat(unpicked.to()).isEqualTo(all);
                assertThat(unpicked.bars()).containsExactly(bar);
                List<AtTheMachine> steps = SewingSoFar.steps(way.resewn().plan(), Ruler.EIGHTHS);
                List<AtTheMachine.Kind> before = steps.subList(0, unpicked.from()).stream()
                        .map(AtTheMachine::kind)
                        .toList();
                assertThat(before.stream().filter(kind -> kind == AtTheMachine.Kind.SEAM))
                        .hasSize(bars);
                assertThat(steps.get(unpicked.from()).kind()).isIn(AtTheMachine.Kind.SEAM, AtTheMachine.Kind.JOIN);
                assertThat(before.subList(before.lastIndexOf(AtTheMachine.Kind.SEAM) + 1, before.size()))
                        .doesNotContain(bars == 0 ? AtTheMachine.Kind.SEAM : AtTheMachine.Kind.JOIN);
                opened++;
            }
        }
        assertThat(opened).isPositive();
        assertThat(kept).isPositive();
    }

    @Test
    void a_cut_gone_wrong_while_sewing_is_planned_again_from_what_is_there() {
        BarTooShort slip = tooShort(0, Length.inches(2));
        ShortBar.Way anew = slip.ways(Worked.steps()).stream()
                .filter(way -> !way.resewn().cuts().isEmpty())
                .findFirst()
                .orElseThrow();
        Deed taken = slip.taken(anew);
        Project recut = taken.edited().orElseThrow();
        Stash table = Worked.after(Worked.benchAfterCutting(Worked.cut()).stash(), taken.pieces());
        String wrong = anew.resewn().cuts().get(0).piece().id();
        LateSpoiled spoiled =
                new LateSpoiled(new Workbench(recut, table, 2_000, Ruler.EIGHTHS), wrong, Optional.empty());
        LateMiscut late = LateMiscut.of(recut.plan().orElseThrow(), java.util.Set.of(), wrong, Optional.empty(), 2_000);
        assertThat(late.gone()).extracting(piece -> piece.id()).containsExactly(wrong);
        assertThat(late.come()).isEmpty();
        assertThat(late.before().cuts()).allMatch(PieceCut::past);

        LateSpoiled.Outcome outcome = spoiled.planned(Worked.steps());
        if (outcome instanceof LateSpoiled.Outcome.Planned planned) {
            assertThat(planned.deed().label().english()).isEqualTo("a mistake in piece " + wrong);
            assertThat(planned.deed().pieces().gone()).isEqualTo(late.gone());
            assertThat(planned.deed()
                            .edited()
                            .orElseThrow()
                            .plan()
                            .orElseThrow()
                            .cuts())
                    .noneMatch(cut -> !cut.past() && cut.piece().id().equals(wrong));
        } else {
            assertThat(((LateSpoiled.Outcome.Lacking) outcome).why()).isNotEmpty();
        }
    }

    @Test
    void a_bar_the_other_side_up_is_left_so_in_the_plan() {
        SewnWrongly face = new SewnWrongly(after(FIRST + 1), "1A", SewnWrongly.Wrong.FACE);
        Deed left = face.left().orElseThrow();
        assertThat(left.label().english()).isEqualTo("bar 1A left the other side up");
        assertThat(left.edited().orElseThrow().design()).isEqualTo(Worked.cut().design());
        boolean changed = !left.edited().orElseThrow().plan().equals(Optional.of(Worked.PLAN));
        assertThat(changed).as("a fabric alike on both sides changes nothing").isEqualTo(!face.isAlike());
        assertThat(new SewnWrongly(after(FIRST + 1), "1A", SewnWrongly.Wrong.EDGE).isAlike())
                .isFalse();
        assertThat(SewnWrongly.Wrong.named("edge")).isEqualTo(SewnWrongly.Wrong.EDGE);
        assertThat(SewnWrongly.Wrong.named("face")).isEqualTo(SewnWrongly.Wrong.FACE);
    }

    @Test
    void a_bar_on_the_other_side_of_the_work_is_left_there_only_where_the_rest_fits() {
        int sewn = after(FIRST + 1).bars();
        Optional<Deed> left = new SewnWrongly(after(FIRST + 1), "1A", SewnWrongly.Wrong.EDGE).left();
        assertThat(sewn).isEqualTo(1);
        left.ifPresent(deed -> {
            assertThat(deed.label().english()).isEqualTo("bar 1A left on the other side of the work");
            assertThat(deed.edited().orElseThrow().plan().orElseThrow().cloth().finished())
                    .isEqualTo(Worked.PLAN.cloth().finished());
        });
    }
}
