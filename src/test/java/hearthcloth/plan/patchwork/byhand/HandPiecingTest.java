package hearthcloth.plan.patchwork.byhand;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.MarkedHeap;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HandPiecingTest {

    private static final LaidOut EMPTY = new LaidOut(List.of(), Set.of());

    private static final Size SIZE = Size.square(Length.inches(28));

    private static HandPiecing table(long seed) {
        PiecingRules rules = new PiecingRules(Length.inches(5, 4), Length.inches(1), 4);
        Wish.Preferences preferences = new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS);
        Wish wish = new Wish(
                new Wish.Target(Optional.of(SIZE), false), OpenShape.shape(), Making.inches(), rules, preferences);
        Stash stash = Stashes.scraps(40, seed);
        return new HandPiecing(new HandHeap(MarkedHeap.of(stash.pieces(), stash.fabrics(), wish), SIZE));
    }

    /** Three by chance put together two by two, each next to what fits best. */
    private static LaidOut begun(HandPiecing table, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        LaidOut laid = EMPTY;
        for (int i = 0; i < 3; i++) {
            List<ScrapFit> next = new Fits(table.heap(), laid)
                    .next(chance.nextInt(table.heap().size()), 3);
            if (!next.isEmpty()) {
                laid = new Fits(table.heap(), laid).joined(next.get(0));
            }
        }
        return laid;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void what_fits_next_trims_what_it_says_and_lies_in_order(long seed) {
        HandPiecing table = table(seed);
        List<ScrapFit> next = new Fits(table.heap(), EMPTY).next(4, 8);
        assertThat(next)
                .isNotEmpty()
                .isSortedAccordingTo(
                        (a, b) -> Double.compare(a.trim().share(), b.trim().share()));
        for (ScrapFit fit : next) {
            ScrapPatch one = table.heap().natural(fit.first(), false);
            ScrapPatch other = table.heap().natural(fit.second(), fit.turned());
            long edge = fit.beside() ? one.height() : one.width();
            long meets = fit.beside() ? other.height() : other.width();
            assertThat(fit.trim().marks()).isEqualTo(Math.abs(edge - meets));
            assertThat(fit.trim().offSecond()).isEqualTo(meets > edge);
            LaidOut joined = new Fits(table.heap(), EMPTY).joined(fit);
            Pieced cut = table.heap().trimmed(joined.parts().get(0)).orElseThrow();
            assertThat(HandTree.width(cut)).isPositive();
            assertThat(HandTree.height(cut)).isPositive();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_rest_is_filled_round_what_was_put_together_and_that_stays_together(long seed) {
        HandPiecing table = table(seed);
        LaidOut begun = begun(table, seed);
        LaidOut whole = new Filling(table.heap(), begun)
                .filled(begun.scraps(), Budget.steps(40_000), 1)
                .orElseThrow();
        assertThat(table.heap().isWhole(whole)).isTrue();
        for (Pieced part : begun.parts()) {
            Set<Integer> scraps = HandTree.scraps(part);
            assertThat(HandTree.within(whole.parts().get(0), scraps))
                    .as("part of %s", scraps)
                    .hasSize(1)
                    .allSatisfy(kept -> assertThat(HandTree.scraps(kept)).isEqualTo(scraps));
        }
        Plan plan = table.plan(whole);
        assertThat(plan.cloth().finished()).isEqualTo(SIZE);
        assertThat(table.laidOut(plan).orElseThrow().parts()).isEqualTo(whole.parts());
    }

    @Test
    void filled_anew_what_is_locked_is_in_the_cloth_again() {
        HandPiecing table = table(2);
        LaidOut whole = new Filling(table.heap(), EMPTY)
                .filled(Set.of(), Budget.steps(30_000), 1)
                .orElseThrow();
        List<Integer> scraps = List.copyOf(whole.scraps());
        LaidOut locked = whole.lockTurned(scraps.get(0)).lockTurned(scraps.get(3));
        LaidOut anew = new Filling(table.heap(), locked)
                .filled(locked.locked(), Budget.steps(40_000), 5)
                .orElseThrow();
        assertThat(anew.scraps()).contains(scraps.get(0), scraps.get(3));
        assertThat(anew.locked()).isEqualTo(locked.locked());
        assertThat(anew.lockTurned(scraps.get(0)).locked()).containsExactly(scraps.get(3));
    }

    @Test
    void scraps_change_places_only_where_each_is_large_enough() {
        HandPiecing table = table(2);
        LaidOut whole = new Filling(table.heap(), EMPTY)
                .filled(Set.of(), Budget.steps(30_000), 1)
                .orElseThrow();
        int swapped = 0;
        for (int scrap : whole.scraps()) {
            for (Swap swap : new Swaps(table.heap(), whole).of(scrap, 100)) {
                LaidOut after = new Swaps(table.heap(), whole).swapped(swap);
                assertThat(table.heap().isWhole(after)).isTrue();
                for (ScrapPatch patch : after.parts().get(0).patches().toList()) {
                    ScrapPatch all = table.heap().natural(patch.scrap(), patch.turned());
                    assertThat(all.width()).isGreaterThanOrEqualTo(patch.width());
                    assertThat(all.height()).isGreaterThanOrEqualTo(patch.height());
                }
                swapped++;
            }
        }
        assertThat(swapped).isPositive();
    }

    @Test
    void a_part_is_turned_as_a_sewn_part_is_and_taken_apart_again() {
        HandPiecing table = table(2);
        Pieced tree = new Joint(
                true,
                new ScrapPatch(0, false, 3, 7),
                new Joint(false, new ScrapPatch(1, false, 5, 4), new ScrapPatch(2, false, 5, 3)));
        Pieced turned = HandTree.quarterTurned(tree);
        assertThat(turned)
                .isEqualTo(new Joint(
                        false,
                        new ScrapPatch(0, true, 7, 3),
                        new Joint(true, new ScrapPatch(2, true, 3, 5), new ScrapPatch(1, true, 4, 5))));
        assertThat(HandTree.quarterTurned(HandTree.quarterTurned(HandTree.quarterTurned(turned))))
                .isEqualTo(tree);
        LaidOut laid = table.brought(table.brought(EMPTY, 5), 9);
        LaidOut both = new Fits(table.heap(), laid)
                .joined(new Fits(table.heap(), laid).ways(5, 9).get(0));
        assertThat(both.parts()).hasSize(1);
        assertThat(table.apart(both, 9).parts()).hasSize(2);
        assertThat(table.apart(table.apart(both, 9), 9).scraps()).containsExactly(5);
    }
}
