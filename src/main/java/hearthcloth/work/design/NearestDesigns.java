package hearthcloth.work.design;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The nearest cloths that can be cut, beside a design for which the fabric does not suffice: each differs from it in one thing
 * alone, and by as little as was found. All of them are planned through, ready to take.
 *
 * @param cloth in the design that lacks something
 * @param name of the cloth
 * @param stash what it may be planned from
 */
public record NearestDesigns(Project cloth, String name, Stash stash) {

    /** Shares of the wished measure that are tried, the nearest first; ours. */
    private static final List<Integer> PERCENT = List.of(97, 94, 90, 85, 80, 70, 60, 50);

    /** What is another than she decided. */
    public enum Kind {
        FABRICS,
        BARS,
        HEARTH,
        ROUNDS,
        SIZE
    }

    /** One of them. */
    public record Near(Kind kind, Design design, Plan plan) {}

    /**
     * Those that were found, in the order of {@link Kind}; two of the same finished size and fabrics are one.
     *
     * @param budgets ends the search for each of them early
     */
    public List<Near> found(Supplier<Budget> budgets) {
        List<Near> found = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            of(kind, budgets.get())
                    .filter(near ->
                            found.stream().noneMatch(other -> other.design().equals(near.design())))
                    .ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** The nearest of this kind; empty where none was found. */
    public Optional<Near> of(Kind kind, Budget budget) {
        DesignFit fit = new DesignFit(stash);
        return designs(kind, budget)
                .takeWhile(design -> !budget.spent())
                .flatMap(design -> fit
                        .find(design, Sentence.itself(name), budget)
                        .map(plan -> new Near(kind, DesignSettled.bound(design, plan), plan))
                        .stream())
                .findFirst();
    }

    /** The cloth with that design. */
    public Project taken(Near near) {
        return new Project(near.design(), Optional.of(near.plan()), List.of(), cloth.bench(), cloth.life());
    }

    private Stream<Design> designs(Kind kind, Budget budget) {
        DesignEdits edits = new DesignEdits(cloth.design());
        int rounds = edits.rounds();
        return switch (kind) {
            case FABRICS -> new ColoursAgain(cloth, stash).other(open(), 0, budget).stream();
            case BARS -> PERCENT.stream().flatMap(percent -> narrower(cloth.design(), percent).stream());
            case HEARTH -> PERCENT.stream().flatMap(percent -> inner(cloth.design(), percent).stream());
            case ROUNDS ->
                IntStream.iterate(rounds - 1, round -> round > 0, round -> round - 1)
                        .mapToObj(edits::rounds);
            case SIZE ->
                PERCENT.stream()
                        .flatMap(percent ->
                                narrower(cloth.design(), percent).flatMap(bars -> inner(bars, percent)).stream());
        };
    }

    private static DesignFit.Wished open() {
        return new DesignFit.Wished(Optional.empty(), Contrast.READS);
    }

    /** Every bar narrower, cut on a mark; empty where one would show too little. */
    private static Optional<Design> narrower(Design design, int percent) {
        Design now = design;
        for (int bar = 0; bar < design.layout().slots().size(); bar++) {
            Length shown = design.layout().courses().get(bar).width();
            Length lost = new DesignEdits(now).barCut(bar).minus(shown);
            Length cut = onMark(share(shown, percent).plus(lost), design);
            if (cut.minus(lost).isLessThan(DesignEdits.LEAST_SHOWN)) {
                return Optional.empty();
            }
            now = new DesignEdits(now).bars(List.of(bar), cut);
        }
        return now.equals(design) ? Optional.empty() : Optional.of(now);
    }

    /** The hearth smaller, cut on a mark; empty where too little of it would show. */
    private static Optional<Design> inner(Design design, int percent) {
        Size was = new DesignEdits(design).hearthCut();
        Size cut = new Size(onMark(share(was.width(), percent), design), onMark(share(was.height(), percent), design));
        Design now = new DesignEdits(design).hearth(cut);
        Size shown = now.layout().hearth();
        boolean isTooSmall = shown.width().isLessThan(DesignEdits.LEAST_SHOWN)
                || shown.height().isLessThan(DesignEdits.LEAST_SHOWN);
        return isTooSmall ? Optional.empty() : Optional.of(now);
    }

    private static Length share(Length length, int percent) {
        return length.times(percent).dividedBy(100, Rounding.DOWN);
    }

    private static Length onMark(Length length, Design design) {
        return length.roundedTo(design.making().margins().mark(), Rounding.DOWN);
    }
}
