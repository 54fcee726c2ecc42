package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** {@link KeptNames}: the parts of every joined bar are turned end for end, and come back as they were. */
class KeptNamesTest {

    /** The parts of each bar, in order. */
    private static Map<String, List<Patch>> bars(Plan plan) {
        Map<String, List<Patch>> bars = new LinkedHashMap<>();
        for (Patch patch : plan.cloth().patches()) {
            if (patch.place() instanceof Place.Bar bar) {
                bars.computeIfAbsent(bar.bar(), none -> new ArrayList<>()).add(patch);
            }
        }
        bars.values()
                .forEach(parts -> parts.sort(
                        java.util.Comparator.comparing(patch -> patch.place().id())));
        return bars;
    }

    /** The same cloth from the same cuts with the parts of each joined bar in the opposite order, under their new names. */
    private static Plan turned(Plan plan) {
        Map<String, String> names = new HashMap<>();
        Map<String, List<Patch>> bars = bars(plan);
        bars.values().forEach(parts -> {
            for (int i = 0; i < parts.size(); i++) {
                names.put(
                        parts.get(i).place().id(),
                        parts.get(parts.size() - 1 - i).place().id());
            }
        });
        Layout layout = DesignEdits.settled(plan, Order.ROUND).layout();
        List<List<Layout.Part>> parts = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            List<Layout.Part> bar = new ArrayList<>();
            for (Patch patch : bars.getOrDefault(slot.place().bar(), List.of())) {
                boolean upright = slot.place().side().isUpright();
                bar.add(new Layout.Part(
                        patch.fabric(),
                        patch.showing(),
                        upright ? patch.size().height() : patch.size().width()));
            }
            Collections.reverse(bar);
            parts.add(bar);
        }
        Patch hearth = plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .findFirst()
                .orElseThrow();
        Cloth cloth = new Cloth(
                layout.sewn(hearth.fabric(), hearth.showing(), parts),
                plan.cloth().making());
        List<PieceCut> cuts = plan.cuts().stream()
                .map(cut -> new PieceCut(cut.piece(), named(cut.tree(), names), cut.past()))
                .toList();
        return new Plan(plan.story(), cloth, plan.rules(), cuts, plan.bound());
    }

    private static CutTree named(CutTree tree, Map<String, String> names) {
        if (tree instanceof CutTree.Parted cut) {
            CutTree first = named(cut.first(), names);
            return CutTree.parted(cut.at(), cut.upright(), cut.line(), first, named(cut.second(), names));
        }
        return tree instanceof CutTree.Kept kept
                ? new CutTree.Kept(kept.at(), names.getOrDefault(kept.patch(), kept.patch()), kept.turned())
                : tree;
    }

    /** Seeds 1 to 8, cloths of 30 in from scraps of at most 24 in, so that many bars are joined. */
    @Test
    void the_parts_of_a_bar_go_back_into_the_order_they_had() {
        int moved = 0;
        for (long seed = 1; seed <= 8; seed++) {
            Plan plan = Planned.plans(Stashes.scraps(60, seed), 30, 1).get(0);
            Plan turned = turned(plan);
            Plan back = new KeptNames(plan).of(turned);
            assertThat(back).as("seed " + seed).isEqualTo(plan);
            moved += turned.equals(plan) ? 0 : 1;
        }
        assertThat(moved).as("cloths with a joined bar").isGreaterThan(4);
    }

    @Test
    void a_plan_that_is_the_same_or_wholly_another_is_left_alone() {
        Plan plan = Planned.plans(Stashes.scraps(60, 1), 30, 1).get(0);
        Plan other = Planned.plans(Stashes.scraps(60, 2), 30, 1).get(0);
        assertThat(new KeptNames(plan).of(plan)).isSameAs(plan);
        assertThat(new KeptNames(plan).of(other)).isSameAs(other);
    }
}
