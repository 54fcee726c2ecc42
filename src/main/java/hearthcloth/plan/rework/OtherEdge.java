package hearthcloth.plan.rework;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A cloth with one bar on the opposite side of the work, where it was sewn by mistake. The bar that was meant for that side
 * changes places with it, so that no bar becomes longer or shorter and each keeps its name.
 */
public record OtherEdge(Design design, Plan plan) {

    /**
     * The cloth with the bar on its other side; empty where bars to come would no longer fit, or the bar that has its place
     * is sewn on already.
     *
     * @param sewn how many bars are sewn on
     */
    public static Optional<OtherEdge> of(Design design, Plan plan, String bar, int sewn) {
        List<Layout.Slot> slots = design.layout().slots();
        int at = slots.stream().map(slot -> slot.place().bar()).toList().indexOf(bar);
        List<Layout.Course> courses = new ArrayList<>(design.layout().courses());
        Layout.Course own = courses.get(at);
        int partner = -1;
        for (int i = at + 1; i < courses.size() && partner < 0; i++) {
            partner = courses.get(i).side() == own.side().opposite() ? i : -1;
        }
        if (partner < 0 || partner < sewn) {
            return Optional.empty();
        }
        Layout.Course other = courses.get(partner);
        courses.set(at, new Layout.Course(other.side(), own.width()));
        courses.set(partner, new Layout.Course(own.side(), other.width()));
        Layout layout = new Layout(design.layout().hearth(), courses);
        return isNamedAlike(layout.slots(), slots) ? fitting(design, plan, layout) : Optional.empty();
    }

    private static boolean isNamedAlike(List<Layout.Slot> now, List<Layout.Slot> was) {
        for (int i = 0; i < was.size(); i++) {
            boolean same = now.get(i).place().bar().equals(was.get(i).place().bar())
                    && now.get(i).length().equals(was.get(i).length());
            if (!same) {
                return false;
            }
        }
        return true;
    }

    private static Optional<OtherEdge> fitting(Design design, Plan plan, Layout layout) {
        Map<String, List<Layout.Part>> parts = new LinkedHashMap<>();
        Patch hearth = plan.cloth().patches().get(0);
        for (Patch patch : plan.cloth().patches()) {
            if (patch.place() instanceof Place.Bar bar) {
                boolean upright = bar.side().isUpright();
                parts.computeIfAbsent(bar.bar(), none -> new ArrayList<>())
                        .add(new Layout.Part(
                                patch.fabric(),
                                patch.showing(),
                                upright ? patch.size().height() : patch.size().width()));
            } else {
                hearth = patch;
            }
        }
        List<List<Layout.Part>> bars = layout.slots().stream()
                .map(slot -> Objects.requireNonNull(parts.get(slot.place().bar())))
                .toList();
        Cloth cloth = new Cloth(
                layout.sewn(hearth.fabric(), hearth.showing(), bars),
                plan.cloth().making());
        if (!cuts(cloth).equals(cuts(plan.cloth()))) {
            return Optional.empty();
        }
        Design now = new Design(design.order(), layout, design.scheme(), design.making(), design.rules());
        return Optional.of(
                new OtherEdge(now, new Plan(plan.story(), cloth, plan.rules(), plan.cuts(), plan.bound()).checked()));
    }

    private static Map<String, Size> cuts(Cloth cloth) {
        Map<String, Size> cuts = new LinkedHashMap<>();
        for (Laid laid : cloth.laid()) {
            cuts.put(laid.patch().place().id(), laid.cut());
        }
        return cuts;
    }

    /**
     * The same cloth with bar {@code name} turned to its other side, as it was sewn; unchanged where both sides look
     * alike.
     */
    public static Plan otherSideUp(Plan plan, String name) {
        Assembly work = plan.cloth().work().fold(new OtherSideUp(name));
        return new Plan(plan.story(), new Cloth(work, plan.cloth().making()), plan.rules(), plan.cuts(), plan.bound())
                .checked();
    }

    private record OtherSideUp(String name) implements Assembly.Fold<Assembly> {

        @Override
        public Assembly patch(Patch patch) {
            return patch.place() instanceof Place.Bar bar && bar.bar().equals(name)
                    ? new Patch(
                            patch.place(),
                            patch.fabric(),
                            patch.size(),
                            patch.showing().turnedOver())
                    : patch;
        }

        @Override
        public Assembly seam(Seam seam, Assembly first, Assembly second) {
            return Seam.of(seam.join(), seam.wraps(), first, second);
        }
    }
}
