package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One sentence on what a proposal is good at. It is read off the figures of the finished plans, and says only what is
 * true compared with every other plan that is offered with it; what it alone has comes first.
 */
final class ProposalStrengths {

    /** The most things said of one proposal. */
    private static final int MOST = 2;

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
    private record Good(ToDoubleFunction<Offer> less, String alone, String better) {}

    private ProposalStrengths(Offer mine, List<Offer> others, boolean isFirst) {
        this.mine = mine;
        this.others = others;
        this.isFirst = isFirst;
    }

    /** What plan {@code number} of these is good at. */
    static String of(int number, List<DraftTrial> trials, List<Plan> plans) {
        List<Offer> others = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            others.add(new Offer(
                    trials.get(i).draft().shape().layout(), plan.cuts().size(), plan.figures()));
        }
        Offer mine = others.remove(number);
        String idea = trials.get(number).draft().scheme().kind().idea();
        return idea.substring(0, 1).toUpperCase(Locale.ROOT) + idea.substring(1) + "; "
                + String.join(", ", new ProposalStrengths(mine, others, number == 0).points()) + ".";
    }

    private List<String> points() {
        int joins = mine.figures().joins();
        List<String> points = new ArrayList<>();
        for (Good good : goods()) {
            if (points.size() < MOST && isAlone(good.less())) {
                points.add(good.alone());
            }
        }
        boolean told = points.stream().anyMatch(point -> point.contains("join"));
        if (points.size() < MOST && joins == 0 && !told) {
            points.add("no bar needs a join");
        }
        if (points.isEmpty()) {
            points.add(besideFirst().orElseGet(this::joined));
        }
        return points;
    }

    /** What it has more of than the first proposal, two things at most; empty for the first itself. */
    private Optional<String> besideFirst() {
        if (isFirst) {
            return Optional.empty();
        }
        Offer first = others.get(0);
        List<String> better = goods().stream()
                .filter(good -> good.less().applyAsDouble(mine) < good.less().applyAsDouble(first))
                .limit(MOST)
                .map(Good::better)
                .toList();
        return better.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", better) + " than the first");
    }

    private List<Good> goods() {
        int joins = mine.figures().joins();
        int cuts = mine.figures().cuts();
        return List.of(
                new Good(
                        offer -> offer.figures().joins(),
                        joins == 0 ? "the only one without a join" : "the fewest joins, " + joins,
                        "fewer joins"),
                new Good(offer -> -offer.layout().finished().areaMm2(), "the largest of these", "a larger cloth"),
                new Good(
                        offer -> offer.figures().cuts(),
                        cuts == 0 ? "the only one without a cut" : "the fewest cuts, " + cuts,
                        "fewer cuts"),
                new Good(offer -> offer.figures().areas().lost(), "the least fabric lost", "less fabric lost"),
                new Good(Offer::bars, "the fewest bars to sew, " + mine.bars(), "fewer bars to sew"),
                new Good(offer -> -offer.pieces(), "uses up most pieces, " + mine.pieces(), "more pieces used up"),
                new Good(
                        offer -> offer.figures().areas().touched(),
                        "leaves most of the stash whole",
                        "less of the stash cut into"),
                new Good(offer -> -offer.layout().hearth().areaMm2(), "the largest hearth", "a larger hearth"),
                new Good(offer -> -offer.bars(), "the most bars to look at, " + mine.bars(), "more bars to look at"),
                new Good(Offer::widest, "the narrowest bars", "narrower bars"),
                new Good(offer -> -offer.widest(), "the widest bars", "wider bars"));
    }

    private boolean isAlone(ToDoubleFunction<Offer> less) {
        double ours = less.applyAsDouble(mine);
        return !others.isEmpty() && others.stream().allMatch(other -> less.applyAsDouble(other) > ours);
    }

    /** For a plan that is not best at anything: how many joins it takes, and whether none of the others takes fewer. */
    private String joined() {
        int joins = mine.figures().joins();
        String count = joins == 1 ? "one join" : joins + " joins";
        boolean fewest = others.stream().allMatch(other -> other.figures().joins() >= joins);
        return fewest && !others.isEmpty() ? count + ", as few as any" : count;
    }
}
