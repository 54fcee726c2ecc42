package hearthcloth.guideline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A guideline fitted to heaps: the nearest cloth always comes, and what it bends is said. */
class GuidelinePlannerTest {

    private static Guideline idea(String fields) {
        return ((GuidelineFile.Reading.Read) GuidelineFile.read(
                        "{\"format\":\"hearthcloth-guideline\",\"version\":1,\"name\":\"Idea\"" + fields + "}"))
                .guideline();
    }

    private static final Guideline CLASS = idea(
            ",\"size\":\"14 to 18 in\",\"hearth\":\"30 to 45 %\",\"rounds\":\"2 to 3\",\"order\":\"round\",\"bars\":\"2 to 4 in\"");

    /** {@code count} scraps of three to six fabrics, 1 to 10 in wide and 2 to 20 in long. */
    static Stash heap(int count, long seed) {
        Random random = new Random(seed);
        int kinds = 3 + random.nextInt(4);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Fabric fabric = Stashes.fabric(random.nextInt(kinds), Fabric.Faces.SAME, Fabric.Nap.ANY);
            Size size = new Size(Length.inches(8 + random.nextInt(73), 8), Length.inches(16 + random.nextInt(145), 8));
            pieces.add(Stashes.piece(i + 2, fabric, size));
        }
        return new Stash(pieces);
    }

    private static Fitted fit(Guideline guideline, Stash stash) {
        return GuidelinePlanner.fit(
                guideline, stash, new Ask(Optional.empty(), 2, 1), 1, Budget.steps(2_000), seen -> {});
    }

    @Test
    void a_heap_that_can_keeps_every_rule() {
        Fitted fitted = fit(CLASS, Stashes.scraps(20, 3));
        assertThat(fitted.cloths().get(0).bends()).isEmpty();
        assertThat(fitted.why()).isEmpty();
        Plan plan = fitted.cloths().get(0).plan();
        assertThat(plan.cloth().finished().width()).isBetween(Length.inches(14), Length.inches(18));
        PlanCheck.require(plan);
    }

    @Test
    void a_small_heap_gets_the_nearest_and_hears_what_was_bent_and_why() {
        Fitted fitted = fit(idea(",\"size\":\"30 in\",\"rounds\":\"4\""), heap(8, 5));
        assertThat(fitted.cloths()).isNotEmpty();
        assertThat(fitted.cloths().get(0).keepsAll()).isFalse();
        assertThat(fitted.cloths().get(0).isScraps()
                        || !fitted.cloths().get(0).bends().isEmpty())
                .isTrue();
        assertThat(fitted.why()).isNotEmpty();
    }

    @Test
    void the_favourite_lies_in_the_middle() {
        Guideline guideline = idea(",\"size\":\"16 in\",\"middle\":\"favourite\"");
        Ask ask = new Ask(Optional.of("Rust"), 1, 1);
        Fitted fitted = GuidelinePlanner.fit(guideline, Stashes.scraps(20, 3), ask, 1, Budget.steps(500), seen -> {});
        Plan plan = fitted.cloths().get(0).plan();
        assertThat(plan.cloth().patches().stream()
                        .filter(patch -> patch.place().id().equals("hearth"))
                        .map(patch -> patch.fabric()))
                .containsExactly("Rust");
    }

    /** Seeds 0 to 99. What "can make any" means is asked of the planner with every rule open. */
    @Test
    @Tag("long")
    void each_of_a_hundred_heaps_of_8_to_60_pieces_gets_a_cloth() {
        Guideline open = idea("");
        int kept = 0;
        for (int seed = 0; seed < 100; seed++) {
            Stash stash = heap(8 + seed * 52 / 99, seed);
            Fitted fitted = fit(CLASS, stash);
            RuleWish any = new RuleWish(open, stash, new Ask(Optional.empty(), 1, 1), java.util.Set.of());
            boolean can =
                    Planner.plan(stash, any.wish(), 1, Budget.steps(0), seen -> {}) instanceof PlanOutcome.Proposals;
            assertThat(fitted.cloths())
                    .as("seed " + seed + ", " + stash.pieces().size() + " pieces")
                    .isNotEmpty();
            assertThat(can && fitted.cloths().get(0).isScraps())
                    .as("seed " + seed)
                    .isFalse();
            fitted.cloths().forEach(cloth -> PlanCheck.require(cloth.plan()));
            kept += fitted.cloths().get(0).keepsAll() ? 1 : 0;
        }
        System.out.printf(java.util.Locale.ROOT, "100 heaps: a cloth for each, %d keep every rule.%n", kept);
        assertThat(kept).isGreaterThan(30);
    }
}
