package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A quick estimate of a draft before it is searched: whether it could be made at all, and about how many joins it will
 * take. It only sorts drafts and is never shown.
 */
public final class DraftScore {

    private static final double TIGHT =
            ProposalParameters.standard().drafting().estimate().tight();

    private final Supply supply;
    private final Making making;

    public DraftScore(Supply supply, Making making) {
        this.supply = supply;
        this.making = making;
    }

    /**
     * The estimate of a draft; less is better.
     *
     * @param joins estimated number of joins
     * @param tightness how likely the fabric is to run out, expressed in joins
     */
    public record Judged(double joins, double tightness) {}

    /** Empty where the draft cannot be made. */
    public Optional<Judged> judged(Draft draft) {
        Size hearth = Layout.hearthEdges(draft.design().layout().courses(), making)
                .around(draft.shape().layout().hearth());
        if (draft.scheme().hearth().stream().noneMatch(fabric -> supply.holds(fabric, hearth))) {
            return Optional.empty();
        }
        Map<List<Fabric>, Double> wanted = new LinkedHashMap<>();
        wanted.merge(draft.scheme().hearth(), hearth.areaMm2(), Double::sum);
        double joins = 0;
        List<Layout.Slot> slots = draft.shape().layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            Layout.Slot slot = slots.get(i);
            List<Fabric> fabrics = draft.scheme().bars().get(i);
            Length width = width(slot);
            Length length = length(slot);
            Length longest = supply.longest(fabrics, width);
            Length gain = longest.minus(making.seam().loss());
            if (!gain.isPositive()) {
                return Optional.empty();
            }
            double parts = Math.ceil((double) length.minus(making.seam().loss()).nm() / gain.nm());
            joins += Math.max(0, parts - 1);
            wanted.merge(fabrics, new Size(width, length).areaMm2(), Double::sum);
        }
        double tightness = tightness(wanted);
        return tightness < Double.POSITIVE_INFINITY ? Optional.of(new Judged(joins, tightness)) : Optional.empty();
    }

    /** The area of all its patches as cut, with each bar in one piece, in square millimetres. */
    double areaMm2(LayoutCandidate shape) {
        Layout layout = shape.layout();
        double area = Layout.hearthEdges(layout.courses(), making)
                .around(layout.hearth())
                .areaMm2();
        for (Layout.Slot slot : layout.slots()) {
            area += new Size(width(slot), length(slot)).areaMm2();
        }
        return area;
    }

    private Length width(Layout.Slot slot) {
        return slot.width().plus(making.seam().loss()).plus(making.trim());
    }

    private Length length(Layout.Slot slot) {
        return slot.length().plus(making.seam().narrow().times(2)).plus(making.leeway());
    }

    /** The cost, in joins, of fabrics that are nearly used up, which makes joins and failures likely; it grows fast. */
    private double tightness(Map<List<Fabric>, Double> wanted) {
        double cost = 0;
        for (Map.Entry<List<Fabric>, Double> entry : wanted.entrySet()) {
            double share = entry.getValue() / supply.area(entry.getKey());
            if (share > 1) {
                return Double.POSITIVE_INFINITY;
            }
            cost += TIGHT * share * share * share * share;
        }
        return cost;
    }
}
