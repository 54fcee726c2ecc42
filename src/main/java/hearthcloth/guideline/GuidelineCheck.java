package hearthcloth.guideline;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Order;
import hearthcloth.guideline.ClothFacts.Bar;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.wrap.Tail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Holds a finished cloth to each rule by the cloth's own measures, however it was made. */
public final class GuidelineCheck {

    private final Guideline guideline;
    private final Ruler ruler;

    public GuidelineCheck(Guideline guideline) {
        this.guideline = guideline;
        this.ruler = guideline.told().ruler();
    }

    /**
     * The rules that a cloth with a hearth does not keep, with how it differs.
     *
     * @param fabrics of the cloth
     * @param middle the fabric that the rule wants in the middle; empty where any may be
     */
    public List<Bend> bends(Cloth cloth, List<Fabric> fabrics, Optional<Fabric> middle) {
        ClothFacts facts = ClothFacts.of(cloth);
        List<Bend> bends = new ArrayList<>();
        colours(cloth, fabrics).ifPresent(bends::add);
        middle(cloth, middle).ifPresent(bends::add);
        bars(facts).ifPresent(bends::add);
        rounds(facts).ifPresent(bends::add);
        joins(facts).ifPresent(bends::add);
        hearth(facts).ifPresent(bends::add);
        order(facts).ifPresent(bends::add);
        size(facts).ifPresent(bends::add);
        return List.copyOf(bends);
    }

    private Optional<Bend> colours(Cloth cloth, List<Fabric> fabrics) {
        List<Scheme.Kind> ways = guideline.colours().ways();
        boolean kept = ways.isEmpty() || ways.stream().anyMatch(way -> SchemeRule.holds(way, cloth, fabrics));
        return bend(kept, Bend.Rule.COLOURS, () -> {
            List<Scheme.Kind> found = ClothFacts.ways(cloth, fabrics);
            return RulingSentences.bendColours(
                    found.isEmpty() ? "none" : "some",
                    found.isEmpty()
                            ? Argument.text("")
                            : PlanningSentences.scheme(found.get(0).name()),
                    guideline.colours().names());
        });
    }

    private static Optional<Bend> middle(Cloth cloth, Optional<Fabric> wanted) {
        String lies = cloth.patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(Patch::fabric)
                .findFirst()
                .orElse("");
        boolean kept = wanted.isEmpty() || wanted.get().name().equals(lies);
        return bend(
                kept,
                Bend.Rule.MIDDLE,
                () -> RulingSentences.bendMiddle(
                        Argument.text(lies),
                        Argument.text(wanted.map(Fabric::name).orElse(""))));
    }

    private Optional<Bend> bars(ClothFacts facts) {
        BarsRule rule = guideline.shape().bars();
        boolean kept = facts.bars().stream().allMatch(bar -> keeps(rule, bar, facts));
        return bend(kept, Bend.Rule.BARS, () -> {
            TreeSet<Length> cut = new TreeSet<>();
            facts.bars().forEach(bar -> cut.add(bar.width().cut()));
            Argument least = Argument.of(cut.first(), Rounding.NEAREST);
            Argument widths = cut.first().equals(cut.last())
                    ? least
                    : RulingSentences.bendWidths(least, Argument.of(cut.last(), Rounding.NEAREST));
            return RulingSentences.bendBars(rule.said(), widths);
        });
    }

    private boolean keeps(BarsRule rule, Bar bar, ClothFacts facts) {
        if (rule instanceof BarsRule.Widths widths) {
            int round = Math.min(bar.round(), widths.widths().size()) - 1;
            return isSame(bar.width().meant(widths.finished()), widths.widths().get(round));
        }
        if (rule instanceof BarsRule.Between between) {
            Length width = bar.width().meant(between.finished());
            return !width.plus(ruler.step()).isLessThan(between.least())
                    && !width.isMoreThan(between.most().plus(ruler.step()));
        }
        return !(rule instanceof BarsRule.OfWidth share)
                || share.share().holds(bar.width().finished(), facts.finished().width());
    }

    /** Within a mark of her ruler. */
    private boolean isSame(Length one, Length other) {
        return Math.abs(one.nm() - other.nm()) <= ruler.step().nm();
    }

    private boolean isSame(Size one, Size other) {
        return isSame(one.width(), other.width()) && isSame(one.height(), other.height());
    }

    private Optional<Bend> rounds(ClothFacts facts) {
        RoundsRule rule = guideline.shape().rounds();
        return bend(
                rule.holds(facts.rounds()),
                Bend.Rule.ROUNDS,
                () -> RulingSentences.bendRounds(facts.rounds(), rule.said()));
    }

    private Optional<Bend> joins(ClothFacts facts) {
        int most = guideline.sewing().joins().mostJoins();
        return bend(
                facts.mostJoins() <= most,
                Bend.Rule.JOINS,
                () -> RulingSentences.bendJoins(facts.mostJoins(), Argument.number(most)));
    }

    private Optional<Bend> hearth(ClothFacts facts) {
        HearthRule rule = guideline.shape().hearth();
        Size finished = facts.hearth().finished();
        boolean kept = true;
        if (rule instanceof HearthRule.Exactly exactly) {
            kept = isSame(facts.hearth().meant(exactly.finished()), exactly.size());
        } else if (rule instanceof HearthRule.OfWidth share) {
            kept = share.share().holds(finished.width(), facts.finished().width());
        } else if (rule instanceof HearthRule.LargestSquare) {
            kept = isSame(facts.hearth().cut().width(), facts.hearth().cut().height());
        }
        return bend(
                kept,
                Bend.Rule.HEARTH,
                () -> RulingSentences.bendHearth(
                        rule.said(),
                        Argument.percent(Math.round(100.0
                                * finished.width().nm()
                                / facts.finished().width().nm())),
                        Argument.of(facts.hearth().cut(), Rounding.UP)));
    }

    private Optional<Bend> order(ClothFacts facts) {
        return bend(
                guideline.shape().order().isEmpty() || guideline.shape().order().equals(facts.order()),
                Bend.Rule.ORDER,
                () -> RulingSentences.bendOrder(
                        facts.order().map(Order::name).orElse("OTHER"),
                        guideline.shape().order().map(Order::name).orElse("")));
    }

    private Optional<Bend> size(ClothFacts facts) {
        SizeRule rule = guideline.size();
        Size is = facts.finished();
        boolean kept = true;
        if (rule instanceof SizeRule.Exactly exactly) {
            kept = isSame(is, exactly.size());
        } else if (rule instanceof SizeRule.Within within) {
            Length shorter = is.width().min(is.height());
            kept = !shorter.plus(ruler.step()).isLessThan(within.least())
                    && !is.width().max(is.height()).isMoreThan(within.most().plus(ruler.step()));
        } else if (rule instanceof SizeRule.ForGift gift) {
            kept = gift.tie().fit(gift.gift(), is, tail(ruler)).holds();
        }
        return bend(
                kept, Bend.Rule.SIZE, () -> RulingSentences.bendSize(rule.said(), Argument.of(is, Rounding.NEAREST)));
    }

    /** What each end of a tied cloth needs, as it is usual with this ruler. */
    static Length tail(Ruler ruler) {
        return (ruler.isMetric() ? Tail.METRIC : Tail.INCHES).usual();
    }

    private static Optional<Bend> bend(boolean kept, Bend.Rule rule, java.util.function.Supplier<Sentence> sentence) {
        return kept ? Optional.empty() : Optional.of(new Bend(rule, sentence.get()));
    }
}
