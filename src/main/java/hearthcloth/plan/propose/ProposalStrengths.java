package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One sentence on what a proposal is good at. It is read off the figures of the finished plans, and says only what is
 * true compared with every other plan that is offered with it; what it alone has comes first.
 */
final class ProposalStrengths {

    /** The most things said of one proposal. */
    private static final int MOST = ProposalParameters.standard().gallery().points();

    private final Offer mine;
    private final List<Offer> others;
    private final boolean isFirst;

    private record Offer(Layout layout, int pieces, PlanFigures figures) {

        int bars() {
            return layout.courses().size();
        }

        double widest() {
            return layout.courses().stream()
                    .map(Layout.Course::width)
                    .max(Comparator.naturalOrder())
                    .orElse(Length.ZERO)
                    .nm();
        }
    }

    /**
     * Something that can be counted.
     *
     * @param alone said when this proposal has less of it than every other
     * @param better said when it has less of it than the first
     */
    private record Good(ToDoubleFunction<Offer> less, Sentence alone, Sentence better) {}

    private ProposalStrengths(Offer mine, List<Offer> others, boolean isFirst) {
        this.mine = mine;
        this.others = others;
        this.isFirst = isFirst;
    }

    /** What plan {@code number} of these is good at. */
    static Sentence of(int number, List<DraftTrial> trials, List<Plan> plans) {
        List<Offer> others = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            others.add(new Offer(
                    trials.get(i).draft().shape().layout(), plan.cuts().size(), plan.figures()));
        }
        Offer mine = others.remove(number);
        Sentence idea = PlanningSentences.schemeIdea(
                trials.get(number).draft().scheme().kind().name());
        return PlanningSentences.good(
                Argument.capital(idea),
                Argument.row(Joined.COMMAS, new ProposalStrengths(mine, others, number == 0).points()));
    }

    private List<Sentence> points() {
        int joins = mine.figures().joins();
        List<Sentence> points = new ArrayList<>();
        for (Good good : goods()) {
            if (points.size() < MOST && isAlone(good.less())) {
                points.add(good.alone());
            }
        }
        boolean told = points.contains(fewestJoins(joins));
        if (points.size() < MOST && joins == 0 && !told) {
            points.add(PlanningSentences.pointNoJoin());
        }
        if (points.isEmpty()) {
            points.add(besideFirst().orElseGet(this::joined));
        }
        return points;
    }

    /** What it has more of than the first proposal, two things at most; empty for the first itself. */
    private Optional<Sentence> besideFirst() {
        if (isFirst) {
            return Optional.empty();
        }
        Offer first = others.get(0);
        List<Sentence> better = goods().stream()
                .filter(good -> good.less().applyAsDouble(mine) < good.less().applyAsDouble(first))
                .limit(MOST)
                .map(Good::better)
                .toList();
        return better.isEmpty()
                ? Optional.empty()
                : Optional.of(PlanningSentences.pointThan(Argument.row(Joined.AND, better)));
    }

    private static Sentence fewestJoins(int joins) {
        return joins == 0
                ? PlanningSentences.pointOnlyWithoutJoin()
                : PlanningSentences.pointFewestJoins(Argument.number(joins));
    }

    private List<Good> goods() {
        int cuts = mine.figures().cuts();
        Sentence fewestCuts = cuts == 0
                ? PlanningSentences.pointOnlyWithoutCut()
                : PlanningSentences.pointFewestCuts(Argument.number(cuts));
        Argument bars = Argument.number(mine.bars());
        return List.of(
                new Good(
                        offer -> offer.figures().joins(),
                        fewestJoins(mine.figures().joins()),
                        PlanningSentences.betterJoins()),
                new Good(
                        offer -> -offer.layout().finished().areaMm2(),
                        PlanningSentences.pointLargest(),
                        PlanningSentences.betterSize()),
                new Good(offer -> offer.figures().cuts(), fewestCuts, PlanningSentences.betterCuts()),
                new Good(
                        offer -> offer.figures().areas().lost(),
                        PlanningSentences.pointLeastLost(),
                        PlanningSentences.betterLost()),
                new Good(Offer::bars, PlanningSentences.pointFewestBars(bars), PlanningSentences.betterFewerBars()),
                new Good(
                        offer -> -offer.pieces(),
                        PlanningSentences.pointMostPieces(Argument.number(mine.pieces())),
                        PlanningSentences.betterPieces()),
                new Good(
                        offer -> offer.figures().areas().touched(),
                        PlanningSentences.pointLeavesMost(),
                        PlanningSentences.betterTouched()),
                new Good(
                        offer -> -offer.layout().hearth().areaMm2(),
                        PlanningSentences.pointLargestHearth(),
                        PlanningSentences.betterHearth()),
                new Good(
                        offer -> -offer.bars(),
                        PlanningSentences.pointMostBars(bars),
                        PlanningSentences.betterMoreBars()),
                new Good(Offer::widest, PlanningSentences.pointNarrowest(), PlanningSentences.betterNarrower()),
                new Good(offer -> -offer.widest(), PlanningSentences.pointWidest(), PlanningSentences.betterWider()));
    }

    private boolean isAlone(ToDoubleFunction<Offer> less) {
        double ours = less.applyAsDouble(mine);
        return !others.isEmpty() && others.stream().allMatch(other -> less.applyAsDouble(other) > ours);
    }

    /** For a plan that is not best at anything: how many joins it takes, and whether none of the others takes fewer. */
    private Sentence joined() {
        int joins = mine.figures().joins();
        boolean fewest = others.stream().allMatch(other -> other.figures().joins() >= joins);
        return fewest && !others.isEmpty()
                ? PlanningSentences.pointJoinsAsFew(joins)
                : PlanningSentences.pointJoins(joins);
    }
}
