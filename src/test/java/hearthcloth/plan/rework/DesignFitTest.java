package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.judge.PlanJudge;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.words.sentence.Sentence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A proposal settled by hand: it stays what it was, changes are fitted to the stash, what is locked stays. */
class DesignFitTest {

    private static final Stash STASH = stash();

    private static Stash stash() {
        try {
            String text = Files.readString(Path.of("examples/scraps.csv"));
            return ((StashFile.Read) StashFile.read(text, Optional.of(Unit.INCH))).stash();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Plan proposal() {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(28))), false),
                new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.of(Order.ROUND)),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        PlanOutcome outcome = Planner.plan(STASH, wish, 1, Budget.steps(Long.MAX_VALUE), seen -> {});
        return ((PlanOutcome.Proposals) outcome).plans().get(0);
    }

    @Test
    void a_proposal_settled_is_the_same_cloth() throws IOException {
        Plan plan = proposal();
        Design design = DesignEdits.settled(plan, Order.ROUND);
        assertThat(design.layout().finished()).isEqualTo(plan.cloth().finished());
        DesignFit.Answer answer =
                new DesignFit(STASH).fit(design, Sentence.itself("same"), Budget.steps(Long.MAX_VALUE));
        Plan again = ((DesignFit.Answer.Made) answer).plan();
        assertThat(again.figures().joins()).isLessThanOrEqualTo(plan.figures().joins() + 1);
        String json = new PlanFolder(again, Ruler.EIGHTHS, Paper.LETTER).planFile();
        assertThat(PlanJudge.faults(json, Ruler.EIGHTHS.step().nm(), Set.of("Gull corduroy")))
                .isEmpty();
    }

    /** An inch design cut to millimetres, and seams that take no whole number of eighths. */
    @Test
    void allowances_that_lie_between_the_marks_of_the_ruler_are_planned_as_well() {
        Design design = DesignEdits.settled(proposal(), Order.ROUND);
        Making was = design.making();
        Margins marks = new Margins(was.margins().leeway(), was.margins().trim(), Ruler.MILLIMETRES.step());
        List<Making> makings = List.of(
                new Making(was.seam(), was.hem(), marks, was.fell()),
                was.withSeam(SeamKind.felled(Length.inches(1, 4), Length.inches(7, 16))),
                was.withSeam(SeamKind.felled(Length.inches(5, 16), Length.inches(3, 4))));
        int joined = 0;
        for (Making making : makings) {
            DesignFit.Answer answer = new DesignFit(STASH)
                    .fit(new DesignEdits(design).making(making), Sentence.itself("odd"), Budget.steps(4_000));
            if (answer instanceof DesignFit.Answer.Made made) {
                joined += made.plan().figures().joins();
                made.plan()
                        .cuts()
                        .forEach(cut -> cut.tree()
                                .kept()
                                .forEach(kept -> assertThat(Objects.requireNonNull(
                                                        made.plan().laid().get(kept.patch()))
                                                .cut())
                                        .isEqualTo(
                                                kept.turned()
                                                        ? kept.at().size().turned()
                                                        : kept.at().size())));
            }
        }
        assertThat(joined).as("joins, at which such seams count").isPositive();
    }

    @Test
    void what_the_stash_does_not_hold_is_told() {
        Design design = DesignEdits.settled(proposal(), Order.ROUND);
        Design huge = new DesignEdits(design).hearth(Size.square(Length.inches(60)));
        DesignFit.Answer answer = new DesignFit(STASH).fit(huge, Sentence.itself("huge"), Budget.steps(Long.MAX_VALUE));
        assertThat(answer)
                .isInstanceOfSatisfying(
                        DesignFit.Answer.Lacking.class,
                        lacking -> assertThat(lacking.why())
                                .isNotEmpty()
                                .allSatisfy(why -> assertThat(why.english()).isNotBlank()));
    }

    @Test
    void planning_the_colours_again_leaves_what_is_locked() {
        Design design = DesignEdits.settled(proposal(), Order.ROUND);
        DesignFit settling = new DesignFit(STASH);
        for (int turn = 0; turn < 4; turn++) {
            Design other = settling.again(
                            design,
                            new DesignFit.Stays(Set.of(0, 3), true),
                            new DesignFit.Wished(Optional.empty(), Contrast.READS),
                            turn,
                            Budget.steps(Long.MAX_VALUE))
                    .orElseThrow();
            assertThat(other.layout()).isEqualTo(design.layout());
            assertThat(other.scheme().hearth()).isEqualTo(design.scheme().hearth());
            assertThat(other.scheme().bars().get(0))
                    .isEqualTo(design.scheme().bars().get(0));
            assertThat(other.scheme().bars().get(3))
                    .isEqualTo(design.scheme().bars().get(3));
            assertThat(other.scheme().bars()).isNotEqualTo(design.scheme().bars());
        }
    }

    @Test
    void a_plan_of_colour_wished_for_the_same_layout_is_true_or_not_found() {
        Design design = DesignEdits.settled(proposal(), Order.ROUND);
        DesignFit settling = new DesignFit(STASH);
        int found = 0;
        for (Scheme.Kind kind : Scheme.WISHED) {
            Optional<Design> other = settling.again(
                    design,
                    new DesignFit.Stays(Set.of(), false),
                    new DesignFit.Wished(Optional.of(kind), Contrast.READS),
                    0,
                    Budget.steps(Long.MAX_VALUE));
            found += other.isPresent() ? 1 : 0;
            other.ifPresent(one -> {
                assertThat(one.layout()).isEqualTo(design.layout());
                DesignFit.Answer answer = settling.fit(one, Sentence.itself("coloured"), Budget.steps(Long.MAX_VALUE));
                Plan plan = ((DesignFit.Answer.Made) answer).plan();
                assertThat(SchemeRule.holds(kind, plan.cloth(), plan.fabrics()))
                        .as("%s", kind)
                        .isTrue();
            });
        }
        assertThat(found).isGreaterThan(1);
    }
}
