package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** After a slip, what is cut already stays as it is and only the rest is planned again. */
class MiscutRecoveryTest {

    private static Set<String> ticks(Plan plan, int pieces, Random random) {
        Set<String> made = new HashSet<>();
        for (PieceCut cut : plan.cuts().subList(0, pieces)) {
            int all = cut.tree().cuts().size();
            int ticked = random.nextInt(3) == 0 ? random.nextInt(all + 1) : all;
            for (int i = 1; i <= ticked; i++) {
                made.add(cut.piece().id() + ":" + i);
            }
        }
        return made;
    }

    @Test
    void nothing_appears_and_only_the_spoiled_rest_is_lost() {
        Random random = new Random(4);
        Stash stash = Stashes.scraps(60, 3);
        Plan plan = Planned.plans(stash, 30, 1).get(0);
        double lost = 0;
        for (int i = 0; i < 30; i++) {
            Set<String> made = ticks(plan, random.nextInt(plan.cuts().size()), random);
            String wrong =
                    plan.cuts().get(random.nextInt(plan.cuts().size())).piece().id();
            MiscutRecovery slip = MiscutRecovery.of(plan, made, wrong, Optional.empty(), 1_000);

            double gone = slip.gone().stream().mapToDouble(Piece::areaMm2).sum();
            double come = slip.come().stream().mapToDouble(Piece::areaMm2).sum();
            assertThat(come).isLessThanOrEqualTo(gone + 1e-6);
            lost += gone - come;
            assertThat(slip.gone()).extracting(Piece::id).contains(wrong).doesNotHaveDuplicates();
            assertThat(slip.come()).extracting(Piece::id).doesNotHaveDuplicates();
            assertThat(slip.stash(stash).pieces())
                    .hasSize(stash.pieces().size()
                            - slip.gone().size()
                            + slip.come().size());
        }
        assertThat(lost).isPositive();
    }

    @Test
    void a_bar_that_is_wholly_cut_is_sewn_from_just_those_patches() {
        Random random = new Random(9);
        int made = 0;
        for (int seed = 1; seed <= 4; seed++) {
            Stash stash = Stashes.scraps(70, seed);
            Plan plan = Planned.plans(stash, 27, 1).get(0);
            Set<String> ticked = ticks(plan, plan.cuts().size() / 2, random);
            PieceCut last = plan.cuts().get(plan.cuts().size() - 1);
            MiscutRecovery slip = MiscutRecovery.of(
                    plan,
                    ticked,
                    last.piece().id(),
                    Optional.of(half(last.piece().size())),
                    1_000);
            Stash left = slip.stash(stash);

            DesignFit.Answer answer =
                    slip.fit(plan, DesignEdits.settled(plan, Order.ROUND), left, "again", Budget.steps(4_000));

            if (answer instanceof DesignFit.Answer.Made again) {
                made++;
                assertThat(left.pieces())
                        .containsAll(again.plan().cuts().stream()
                                .map(PieceCut::piece)
                                .toList());
                keeps(plan, again.plan(), slip.patches());
                told(plan, ticked, slip, again.plan());
            }
        }
        assertThat(made).as("slips that could be mended").isPositive();
    }

    /** Each bar whose patches are all cut has the same patches, none cut into again; none of them lies elsewhere. */
    private static void keeps(Plan before, Plan after, Map<String, List<Piece>> patches) {
        Map<String, Plan.Source> sources = after.sources();
        patches.forEach((bar, pieces) -> {
            List<String> ids = new ArrayList<>(pieces.stream().map(Piece::id).toList());
            long parts =
                    before.laid().keySet().stream().filter(id -> isOf(id, bar)).count();
            sources.forEach((patch, source) -> {
                if (ids.contains(source.from().piece().id())) {
                    assertThat(isOf(patch, bar))
                            .as(patch + " from a patch of " + bar)
                            .isTrue();
                }
            });
            if (parts == pieces.size()) {
                List<String> used = sources.entrySet().stream()
                        .filter(entry -> isOf(entry.getKey(), bar))
                        .map(entry -> entry.getValue().from().piece().id())
                        .toList();
                assertThat(used).as(bar).containsExactlyInAnyOrderElementsOf(ids);
                assertThat(after.cuts())
                        .filteredOn(cut -> ids.contains(cut.piece().id()))
                        .allSatisfy(cut -> assertThat(cut.tree()).isInstanceOf(CutTree.Kept.class));
            }
        });
    }

    /** Each piece that was cut is still there as it was cut, its patches by the same names, and nothing is there twice. */
    private static void told(Plan before, Set<String> ticked, MiscutRecovery slip, Plan found) {
        Plan whole = slip.story().told(found);
        List<Piece> come = slip.come(found);
        for (PieceCut cut : before.cuts()) {
            boolean isBegun = IntStream.rangeClosed(1, cut.tree().cuts().size())
                    .anyMatch(i -> ticked.contains(cut.piece().id() + ":" + i));
            assertThat(whole.cuts().stream()
                            .anyMatch(now -> now.past() && now.piece().equals(cut.piece())))
                    .as("piece " + cut.piece().id())
                    .isEqualTo(isBegun);
        }
        assertThat(whole.cuts())
                .filteredOn(cut -> !cut.past())
                .noneMatch(cut -> slip.gone().contains(cut.piece()));
        double used = found.cuts().stream()
                .flatMap(cut -> cut.tree().kept().stream())
                .mapToDouble(kept -> kept.at().size().areaMm2())
                .sum();
        double kept = whole.cuts().stream()
                .flatMap(cut -> cut.tree().kept().stream())
                .mapToDouble(one -> one.at().size().areaMm2())
                .sum();
        assertThat(kept).isEqualTo(used, within(1e-6 * used));
        assertThat(come).doesNotHaveDuplicates().allMatch(slip.come()::contains);
        assertThat(slip.come().size() - come.size()).isEqualTo((int) slip.usedAsTheyAre(found));

        MiscutRecovery anew = MiscutRecovery.of(whole, Set.of(), "", Optional.empty(), 2_000);
        double freed = anew.come().stream().mapToDouble(Piece::areaMm2).sum();
        double past = whole.cuts().stream()
                .filter(PieceCut::past)
                .flatMap(cut -> cut.tree().kept().stream())
                .mapToDouble(one -> one.at().size().areaMm2())
                .sum();
        assertThat(freed).as("planned anew, every patch is fabric again").isEqualTo(past, within(1e-6));
        assertThat(anew.gone()).isEmpty();
    }

    private static boolean isOf(String patch, String bar) {
        return patch.equals(bar) || patch.startsWith(bar + ".");
    }

    private static Size half(Size size) {
        return new Size(size.width(), new Length(size.height().nm() / 2));
    }
}
