package hearthcloth.guideline.fit;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.making.Making;
import hearthcloth.guideline.BarsRule;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.HearthRule;
import hearthcloth.guideline.RoundsRule;
import hearthcloth.guideline.Share;
import hearthcloth.guideline.SizeRule;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.wrap.Tail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A guideline as a wish for one heap, with some of its rules left out. */
record RuleWish(Guideline guideline, Stash stash, Ask ask, Set<Bend.Rule> bent) {

    /** Joins in a bar where the rule of joins is bent; ours. */
    private static final int MORE_JOINS = 12;

    /** A whole hearth is at most this share of a cloth whose size is fixed, so that it is framed; ours. */
    private static final int HALF = 50;

    private boolean keeps(Bend.Rule rule) {
        return !bent.contains(rule);
    }

    private Ruler ruler() {
        return guideline.told().ruler();
    }

    private Making making() {
        return guideline.sewing().making();
    }

    Wish wish() {
        return new Wish(target(), shape(), making(), joins(), preferences());
    }

    private PiecingRules joins() {
        PiecingRules rules = guideline.sewing().joins();
        return keeps(Bend.Rule.JOINS)
                ? rules
                : new PiecingRules(rules.leastPiece(), rules.clearance(), Math.max(MORE_JOINS, rules.mostJoins()));
    }

    private Wish.Target target() {
        if (keeps(Bend.Rule.SIZE) && guideline.size() instanceof SizeRule.Exactly exactly) {
            return new Wish.Target(Optional.of(exactly.size()), false);
        }
        if (keeps(Bend.Rule.SIZE) && guideline.size() instanceof SizeRule.ForGift gift) {
            Tail tail = ruler().isMetric() ? Tail.METRIC : Tail.INCHES;
            Length side = ruler().mark(gift.tie().smallestSquare(gift.gift(), tail.usual()), Rounding.UP);
            return new Wish.Target(Optional.of(Size.square(side)), true);
        }
        return onlySide()
                .map(side -> new Wish.Target(Optional.of(Size.square(side)), false))
                .orElseGet(Wish.Target::none);
    }

    /** The greatest side allowed, where no round step of the planner lies between the two. */
    private Optional<Length> onlySide() {
        if (!keeps(Bend.Rule.SIZE) || !(guideline.size() instanceof SizeRule.Within within)) {
            return Optional.empty();
        }
        Length step = ruler().isMetric() ? Length.cm(2) : Length.inches(1);
        boolean between = !within.most().roundedTo(step, Rounding.DOWN).isLessThan(within.least());
        return between ? Optional.empty() : Optional.of(within.most());
    }

    private Wish.Shape shape() {
        RoundsRule rounds = guideline.shape().rounds();
        return new Wish.Shape(
                hearth(),
                keeps(Bend.Rule.BARS) && guideline.shape().bars() instanceof BarsRule.Widths widths
                        ? widths.widths().stream()
                                .map(width -> new Wish.Cut<>(width, widths.finished()))
                                .toList()
                        : List.of(),
                keeps(Bend.Rule.ROUNDS) && rounds.isOne() ? Optional.of(rounds.least()) : Optional.empty(),
                keeps(Bend.Rule.ORDER) ? guideline.shape().order() : Optional.empty());
    }

    private Optional<Wish.Cut<Size>> hearth() {
        if (!keeps(Bend.Rule.HEARTH)) {
            return Optional.empty();
        }
        if (guideline.shape().hearth() instanceof HearthRule.Exactly exactly) {
            return Optional.of(new Wish.Cut<>(exactly.size(), exactly.finished()));
        }
        if (guideline.shape().hearth() instanceof HearthRule.LargestSquare) {
            return Optional.of(new Wish.Cut<>(Size.square(largestSquare()), false));
        }
        return Optional.empty();
    }

    private Length largestSquare() {
        Length largest = new Favourite(stash, guideline.colours().middle()).largestSquare(middle(), ruler());
        Optional<Length> side = target().size().map(size -> size.width().min(size.height()));
        return side.map(whole -> ruler().mark(new Length(whole.nm() * HALF / 100), Rounding.DOWN))
                .map(largest::min)
                .orElse(largest);
    }

    Optional<Fabric> middle() {
        return keeps(Bend.Rule.MIDDLE)
                ? new Favourite(stash, guideline.colours().middle()).fabric(ask.favourite())
                : Optional.empty();
    }

    private Wish.Preferences preferences() {
        List<String> fabrics = middle().map(
                        fabric -> new Favourite(stash, guideline.colours().middle()).first(fabric))
                .orElse(List.of());
        return new Wish.Preferences(fabrics, ask.proposals(), ask.seed(), ruler());
    }

    Idea idea() {
        Set<Scheme.Kind> ways =
                keeps(Bend.Rule.COLOURS) ? Set.copyOf(guideline.colours().ways()) : Set.of();
        return new Idea(this::allows, widths(), ways, sides());
    }

    private Optional<Idea.Sides> sides() {
        return keeps(Bend.Rule.SIZE) && guideline.size() instanceof SizeRule.Within within
                ? Optional.of(new Idea.Sides(within.least(), within.most()))
                : Optional.empty();
    }

    /** Widths within a range that the usual steps may miss: its ends. */
    private List<Length> widths() {
        if (!keeps(Bend.Rule.BARS) || !(guideline.shape().bars() instanceof BarsRule.Between between)) {
            return List.of();
        }
        Length lost = between.finished() ? making().seam().loss().plus(making().trim()) : Length.ZERO;
        return List.of(
                ruler().mark(between.least().plus(lost), Rounding.UP),
                ruler().mark(between.most().plus(lost), Rounding.DOWN));
    }

    private boolean allows(LayoutCandidate candidate) {
        Layout layout = candidate.layout();
        Length whole = layout.finished().width();
        boolean rounds = !keeps(Bend.Rule.ROUNDS) || guideline.shape().rounds().holds(candidate.rounds());
        boolean hearth = !keeps(Bend.Rule.HEARTH)
                || !(guideline.shape().hearth() instanceof HearthRule.OfWidth share)
                || share.share().holds(layout.hearth().width(), whole);
        return rounds && hearth && (!keeps(Bend.Rule.BARS) || allowsBars(candidate));
    }

    private boolean allowsBars(LayoutCandidate candidate) {
        Layout layout = candidate.layout();
        BarsRule rule = guideline.shape().bars();
        if (rule instanceof BarsRule.OfWidth ofWidth) {
            Share share = ofWidth.share();
            return layout.courses().stream()
                    .allMatch(course ->
                            share.holds(course.width(), layout.finished().width()));
        }
        if (rule instanceof BarsRule.Between between) {
            List<Length> widths = between.finished()
                    ? layout.courses().stream().map(Layout.Course::width).toList()
                    : cut(layout);
            return widths.stream()
                    .allMatch(width -> !width.isLessThan(between.least()) && !width.isMoreThan(between.most()));
        }
        return !(rule instanceof BarsRule.AsStrips)
                || candidate.ease().isPresent()
                || strips().containsAll(cut(layout));
    }

    /** The cut widths of a layout's bars. */
    private List<Length> cut(Layout layout) {
        List<Layout.Course> none = layout.courses().stream()
                .map(course -> new Layout.Course(course.side(), Length.ZERO))
                .toList();
        List<Layout.Course> lost = Layout.finishedOfCut(none, making());
        List<Length> cut = new ArrayList<>();
        for (int i = 0; i < lost.size(); i++) {
            cut.add(layout.courses().get(i).width().minus(lost.get(i).width()));
        }
        return cut;
    }

    /** The widths of narrow pieces, down to the ruler's marks. */
    private Set<Length> strips() {
        return stash.pieces().stream()
                .map(piece -> ruler().mark(piece.size().width().min(piece.size().height()), Rounding.DOWN))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
