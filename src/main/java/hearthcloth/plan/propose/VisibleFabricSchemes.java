package hearthcloth.plan.propose;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tying.Between;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts a chosen fabric where it can be seen on the tied gift. Of a draft it makes others in which the fabric lies in
 * the bars that show most for their size, as far as there is fabric, and in no hidden bar before a visible one.
 */
final class VisibleFabricSchemes {

    private static final ProposalParameters.Outside OUTSIDE =
            ProposalParameters.standard().drafting().outside();

    private static final String HEARTH = new Place.Hearth().id();

    private final ColourGoal goal;
    private final Fabric fabric;
    private final Supply supply;
    private final Map<Layout, Map<String, Double>> looks = new LinkedHashMap<>();

    VisibleFabricSchemes(ColourGoal goal, Fabric fabric, Supply supply) {
        this.goal = goal;
        this.fabric = fabric;
        this.supply = supply;
    }

    /**
     * Orders trials with most of the fabric in sight first; within a twentieth of what is seen, by the usual order of
     * goods.
     */
    Comparator<DraftTrial> order() {
        IdentityHashMap<DraftTrial, Long> steps = new IdentityHashMap<>();
        return Comparator.comparingLong((DraftTrial trial) ->
                        -steps.computeIfAbsent(trial, one -> Math.round(score(one.cloth()) / OUTSIDE.step())))
                .thenComparing(DraftTrial.BEST);
    }

    /**
     * The share, from 0 to 1, of what is seen that is of the fabric, however the spare corners lie; 0 where the cloth does
     * not tie the gift.
     */
    double score(Cloth cloth) {
        return between(cloth).least();
    }

    /** Between what that share lies. */
    Between between(Cloth cloth) {
        Size size = cloth.finished();
        return Between.of(share(cloth, goal.tied(size)), share(cloth, goal.falling(size)));
    }

    private double share(Cloth cloth, Optional<Visible> visible) {
        double all = 0;
        double own = 0;
        for (Laid laid : visible.isEmpty() ? List.<Laid>of() : cloth.laid()) {
            double seen = visible.get().seen(laid.at());
            all += seen;
            own += laid.patch().fabric().equals(fabric.name()) ? seen : 0;
        }
        return all == 0 ? 0 : own / all;
    }

    /** How much of the fabric is seen, as a sentence for the maker. */
    Sentence sentence(Cloth cloth) {
        Between share = between(cloth);
        Argument name = Argument.text(fabric.name());
        Argument least = Argument.percent(Math.round(100 * share.least()));
        Argument most = Argument.percent(Math.round(100 * share.most()));
        if (share.isOne()) {
            return PlanningSentences.colourOutside(name, most);
        }
        return share.isAlways()
                ? PlanningSentences.colourOutsideAlways(name, least, most)
                : PlanningSentences.colourOutsideRange(name, least, most);
    }

    /** The draft with the fabric brought to the outside, in one or two ways; none where nothing can be changed. */
    List<Draft> brought(Draft draft) {
        Size size = draft.shape().finished();
        Optional<Visible> tucked = goal.tied(size);
        Optional<Visible> falling = goal.falling(size);
        if (tucked.isEmpty() || falling.isEmpty()) {
            return List.of();
        }
        Map<String, Double> seen = looks.computeIfAbsent(
                draft.shape().layout(), layout -> seen(draft.design().whole(), tucked.get(), falling.get()));
        Set<Draft> drafts = new LinkedHashSet<>();
        for (double share : OUTSIDE.shares()) {
            Scheme scheme = brought(draft, seen, share * supply.area(fabric));
            if (!scheme.equals(draft.scheme()) && scheme.bars().stream().noneMatch(List::isEmpty)) {
                Design was = draft.design();
                drafts.add(new Draft(
                        draft.shape(), new Design(was.order(), was.layout(), scheme, was.making(), was.rules())));
            }
        }
        return List.copyOf(drafts);
    }

    /** Square millimetres seen of each patch of a cloth whose bars are in one piece, however the spare corners lie. */
    private static Map<String, Double> seen(Cloth whole, Visible tucked, Visible falling) {
        Map<String, Double> seen = new LinkedHashMap<>();
        for (Laid laid : whole.laid()) {
            seen.put(laid.patch().place().id(), Math.min(tucked.seen(laid.at()), falling.seen(laid.at())));
        }
        return seen;
    }

    private Scheme brought(Draft draft, Map<String, Double> seen, double most) {
        Scheme was = draft.scheme();
        Set<String> chosen = chosen(draft.shape().layout(), seen, most);
        List<Layout.Slot> slots = draft.shape().layout().slots();
        List<Fabric> others = others(was);
        List<List<Fabric>> bars = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            boolean out = chosen.contains(slots.get(i).place().id());
            bars.add(out ? List.of(fabric) : rest(was.bars().get(i), others));
        }
        boolean hearth = chosen.contains(HEARTH);
        return new Scheme(Scheme.Kind.OUTWARDS, hearth ? List.of(fabric) : rest(was.hearth(), others), bars);
    }

    /** The hearth and bars that show most for their size, as far as there is fabric. */
    private Set<String> chosen(Layout layout, Map<String, Double> seen, double most) {
        Map<String, Double> areas = new LinkedHashMap<>();
        areas.put(HEARTH, layout.hearth().areaMm2());
        layout.slots().forEach(slot -> areas.put(slot.place().id(), slot.size().areaMm2()));
        List<String> order = areas.keySet().stream()
                .filter(id -> seen.getOrDefault(id, 0.0) > 0)
                .filter(id -> !id.equals(HEARTH) || supply.holds(fabric, layout.hearth()))
                .sorted(Comparator.comparingDouble(
                        (String id) -> -seen.getOrDefault(id, 0.0) / areas.getOrDefault(id, 1.0)))
                .toList();
        Set<String> chosen = new LinkedHashSet<>();
        double used = 0;
        for (String id : order) {
            double area = areas.getOrDefault(id, 0.0);
            if (used + area <= most) {
                chosen.add(id);
                used += area;
            }
        }
        return chosen;
    }

    /** The fabrics that were planned, without the chosen one; where no other was planned, all others in the cloth. */
    private List<Fabric> rest(List<Fabric> meant, List<Fabric> others) {
        List<Fabric> rest =
                meant.stream().filter(other -> !other.equals(fabric)).toList();
        return rest.isEmpty() ? others : rest;
    }

    private List<Fabric> others(Scheme scheme) {
        Set<Fabric> others = new LinkedHashSet<>();
        scheme.bars().forEach(others::addAll);
        others.addAll(scheme.hearth());
        others.remove(fabric);
        return others.isEmpty()
                ? supply.fabrics().stream()
                        .filter(other -> !other.equals(fabric))
                        .toList()
                : List.copyOf(others);
    }
}
