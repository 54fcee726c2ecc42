package hearthcloth.plan.propose;

import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Every layout with every plan of colour that is worth trying, sorted by a quick estimate. */
final class Drafts {

    private static final ProposalParameters.Drafting DRAFTING =
            ProposalParameters.standard().drafting();

    private final Wish wish;
    private final Supply supply;
    private final LayoutCandidates shapes;
    private final Schemes schemes;
    private final DraftScore judgement;
    private final ChosenBars chosen;
    private final Optional<VisibleFabricSchemes> outwards;

    /** With a fabric to be brought to the outside, if one is wished there. */
    Drafts(
            Wish wish,
            Supply supply,
            LayoutCandidates shapes,
            List<Fabric> named,
            ColourGoal goal,
            Optional<VisibleFabricSchemes> outwards) {
        this.wish = wish;
        this.supply = supply;
        this.shapes = shapes;
        Contrast contrast = wish.preferences().looks().contrast();
        this.schemes = new Schemes(supply, named, contrast);
        this.chosen = new ChosenBars(supply, goal);
        this.judgement = new DraftScore(supply, wish.making());
        this.outwards = outwards;
    }

    /** What the thriftiest layout takes, compared with what there is, for a wish without a draft worth trying. */
    Sentence thrift(Optional<Size> size) {
        double has = supply.area(supply.fabrics());
        double takes = shapes.forSize(size).stream()
                .mapToDouble(judgement::areaMm2)
                .min()
                .orElse(0);
        return takes > has
                ? PlanningSentences.needMore(
                        Argument.area(has, Rounding.DOWN),
                        Argument.area(takes - has, Rounding.UP),
                        Argument.area(takes, Rounding.UP))
                : PlanningSentences.needFabrics();
    }

    /**
     * The drafts to try, the promising ones first and every combination of order and plan of colour among the early
     * ones.
     */
    public List<Draft> of(Optional<Size> size, int most) {
        return of(size, kind -> true, most);
    }

    public List<Draft> of(Optional<Size> size, Predicate<Scheme.Kind> kinds, int most) {
        boolean isChosen = outwards.isEmpty() && ChosenBars.areAsked(kinds);
        Map<Draft, Double> costs = new LinkedHashMap<>();
        for (LayoutCandidate shape : shapes.forSize(size)) {
            for (Scheme scheme : schemes.forLayout(
                    shape.layout(), kind -> kinds.test(kind) || (isChosen && kind == Scheme.Kind.ALL))) {
                for (Design design :
                        mixed(new Design(shape.order(), shape.layout(), scheme, wish.making(), wish.rules()))) {
                    Draft draft = new Draft(shape, design);
                    judgement.judged(draft).ifPresent(judged -> costs.put(draft, cost(draft, judged)));
                }
            }
        }
        if (isChosen) {
            costs.putAll(bars(costs, kinds));
            costs.keySet().removeIf(draft -> !kinds.test(draft.scheme().kind()));
        }
        List<Draft> sorted = costs.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .map(Map.Entry::getKey)
                .toList();
        return outwards.map(wished -> brought(wished, sorted, most)).orElseGet(() -> taken(sorted, most));
    }

    /** The design, with the plan of colour in it that is to be mixed with its own; none where both cannot be. */
    private List<Design> mixed(Design design) {
        Optional<Scheme.Kind> with = wish.preferences().looks().with();
        Scheme.Kind kind = design.scheme().kind();
        return with.isEmpty() || kind == Scheme.Kind.ALL
                ? List.of(design)
                : chosen.mixed(design, with.get()).stream().toList();
    }

    /** The most promising drafts in which any fabric may lie anywhere, with one fabric chosen for each bar. */
    private Map<Draft, Double> bars(Map<Draft, Double> costs, Predicate<Scheme.Kind> kinds) {
        Map<Draft, Double> found = new LinkedHashMap<>();
        Map<List<Object>, Integer> looks = new LinkedHashMap<>();
        int each = kinds.test(Scheme.Kind.ALL)
                ? DRAFTING.colours().chosenEach()
                : DRAFTING.colours().wishedEach();
        Map<List<Object>, Integer> kept = new LinkedHashMap<>();
        costs.entrySet().stream()
                .filter(entry -> isFree(entry.getKey()))
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .filter(draft -> looks.merge(look(draft), 1, Integer::sum) <= each)
                .forEach(draft -> chosen.of(draft.design(), kinds).forEach(design -> {
                    Draft one = new Draft(draft.shape(), design);
                    if (kept.merge(look(one), 1, Integer::sum)
                            <= DRAFTING.colours().keptEach()) {
                        judgement.judged(one).ifPresent(judged -> found.put(one, cost(one, judged)));
                    }
                }));
        return found;
    }

    private static boolean isFree(Draft draft) {
        return draft.scheme().kind() == Scheme.Kind.ALL
                && draft.scheme().bars().get(0).size() > 1
                && draft.scheme().hearth().size() == 1;
    }

    private static List<Object> look(Draft draft) {
        return List.of(
                draft.scheme().kind(),
                draft.shape().order(),
                draft.shape().ease().isPresent());
    }

    /** Half of the tries, each first with the wished fabric brought to the outside and then unchanged. */
    private List<Draft> brought(VisibleFabricSchemes wished, List<Draft> sorted, int most) {
        Set<Draft> drafts = new LinkedHashSet<>();
        for (Draft draft : taken(sorted, most / 2)) {
            wished.brought(draft).stream()
                    .filter(other -> judgement.judged(other).isPresent())
                    .forEach(drafts::add);
            drafts.add(draft);
        }
        return List.copyOf(drafts);
    }

    /**
     * What a draft costs, in joins; less is tried earlier. Strips that are already there are known better than the
     * estimate guesses them, and count for more than taste.
     */
    private static double cost(Draft draft, DraftScore.Judged judged) {
        LayoutCandidate shape = draft.shape();
        double joins = shape.ease()
                .orElse(judged.joins()
                        + shape.layout().courses().size() / DRAFTING.estimate().bars());
        double taste = shape.ease().isPresent()
                ? unlikeness(shape) / DRAFTING.estimate().ready()
                : unlikeness(shape);
        return joins + judged.tightness() + taste;
    }

    /**
     * The distance of the hearth's size from a good third of the cloth; a matter of taste, counted like a join or two.
     */
    private static double unlikeness(LayoutCandidate shape) {
        Size hearth = shape.layout().hearth();
        double share = (double) hearth.width().nm() / shape.finished().width().nm();
        return DRAFTING.estimate().unlike()
                * Math.abs(share - DRAFTING.estimate().hearth());
    }

    /**
     * Takes one from each combination in turn, so that no single one uses up all tries; two where any fabric may lie
     * anywhere, which is where the fewest joins are found.
     */
    private static List<Draft> taken(List<Draft> sorted, int most) {
        Map<List<Object>, List<Draft>> looks = new LinkedHashMap<>();
        for (Draft draft : sorted) {
            looks.computeIfAbsent(look(draft), key -> new ArrayList<>()).add(draft);
        }
        List<Draft> taken = new ArrayList<>();
        for (int turn = 0; taken.size() < Math.min(most, sorted.size()); turn++) {
            for (List<Draft> look : looks.values()) {
                int each = look.get(0).scheme().kind() == Scheme.Kind.ALL ? 2 : 1;
                look.stream()
                        .skip((long) turn * each)
                        .limit(Math.min(each, most - taken.size()))
                        .forEach(taken::add);
            }
        }
        return taken;
    }
}
