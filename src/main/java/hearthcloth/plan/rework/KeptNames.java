package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Keeps the names of patches when a plan is made again: where the parts of a bar are the same patches as before, only in
 * another order, they go back into the order they had, since slips with their names may be pinned to them.
 *
 * @param before the plan whose names are kept
 */
record KeptNames(Plan before) {

    /** The plan with every such bar as it was; unchanged where there is none. */
    Plan of(Plan plan) {
        Map<String, String> names = names(plan);
        if (names.isEmpty()) {
            return plan;
        }
        try {
            return named(plan, names).checked();
        } catch (IllegalStateException | IllegalArgumentException e) {
            // The bar is of another length now, so that its parts fit in the new order only.
            return plan;
        }
    }

    /** For each patch of such a bar its name before, by its name now. */
    private Map<String, String> names(Plan plan) {
        Map<String, String> places = new HashMap<>();
        before.sources().forEach((patch, source) -> places.put(place(source), patch));
        Map<String, Map<String, String>> bars = new LinkedHashMap<>();
        plan.sources().forEach((patch, source) -> {
            String was = places.getOrDefault(place(source), "");
            bars.computeIfAbsent(Miscut.bar(plan, patch), none -> new HashMap<>())
                    .put(patch, was);
        });
        Map<String, String> names = new HashMap<>();
        bars.forEach((bar, parts) -> {
            boolean same = parts.values().stream()
                    .allMatch(was -> !was.isEmpty() && Miscut.bar(before, was).equals(bar) && parts.containsKey(was));
            if (same && parts.entrySet().stream().anyMatch(one -> !one.getKey().equals(one.getValue()))) {
                names.putAll(parts);
            }
        });
        return names;
    }

    private static String place(Plan.Source source) {
        return CutTable.key(source.from().piece(), source.kept().at());
    }

    private Plan named(Plan plan, Map<String, String> names) {
        Layout layout = DesignEdits.settled(plan, Order.ROUND).layout();
        Map<String, List<Layout.Part>> now = parts(plan.cloth());
        Map<String, List<Layout.Part>> was = parts(before.cloth());
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            String bar = slot.place().bar();
            boolean isKept = names.keySet().stream()
                    .anyMatch(patch -> Miscut.bar(plan, patch).equals(bar));
            bars.add(Objects.requireNonNull((isKept ? was : now).get(bar)));
        }
        Patch hearth = plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .findFirst()
                .orElseThrow();
        Cloth cloth = new Cloth(
                layout.sewn(hearth.fabric(), hearth.showing(), bars),
                plan.cloth().making());
        List<PieceCut> cuts = plan.cuts().stream()
                .map(cut -> new PieceCut(cut.piece(), named(cut.tree(), names), cut.past()))
                .toList();
        return new Plan(plan.story(), cloth, plan.rules(), cuts, plan.bound());
    }

    private static Map<String, List<Layout.Part>> parts(Cloth cloth) {
        Map<String, List<Layout.Part>> parts = new HashMap<>();
        for (Patch patch : cloth.patches()) {
            if (patch.place() instanceof Place.Bar bar) {
                boolean upright = bar.side().isUpright();
                parts.computeIfAbsent(bar.bar(), none -> new ArrayList<>())
                        .add(new Layout.Part(
                                patch.fabric(),
                                patch.showing(),
                                upright ? patch.size().height() : patch.size().width()));
            }
        }
        return parts;
    }

    private static CutTree named(CutTree tree, Map<String, String> names) {
        if (tree instanceof CutTree.Parted cut) {
            return CutTree.parted(
                    cut.at(), cut.upright(), cut.line(), named(cut.first(), names), named(cut.second(), names));
        }
        return tree instanceof CutTree.Kept kept
                ? new CutTree.Kept(kept.at(), names.getOrDefault(kept.patch(), kept.patch()), kept.turned())
                : tree;
    }
}
