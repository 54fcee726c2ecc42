package hearthcloth.plan.rework;

import hearthcloth.cloth.Place;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A patch that was cut too small.
 *
 * @param made the cuts that were made: piece id, colon, number of the cut as {@link CutTree#cuts} counts from 1; with
 *     those that parted the patch from its piece
 * @param patch the patch, by its id
 * @param measured what it measures, across by along as it lies in the picture of its piece, in whole marks of the ruler
 */
public record Miscut(Plan plan, Set<String> made, String patch, Size measured) {

    public Miscut {
        made = Set.copyOf(made);
    }

    /**
     * A patch as she measured it.
     *
     * @throws MeasureException where it is no smaller than it was to be, or nothing at all
     */
    public static Miscut of(Plan plan, Set<String> made, String patch, Size measured) {
        Plan.Source source = Objects.requireNonNull(plan.sources().get(patch), patch);
        Size wanted = source.kept().at().size();
        Length mark = plan.cloth().making().margins().mark();
        Size real = new Size(
                measured.width().min(wanted.width()).roundedTo(mark, Rounding.DOWN),
                measured.height().min(wanted.height()).roundedTo(mark, Rounding.DOWN));
        if (!real.width().isPositive() || !real.height().isPositive()) {
            throw new RefusedException(MendingSentences.noNothing());
        }
        if (real.equals(wanted)) {
            throw new RefusedException(MendingSentences.noLarge());
        }
        Set<String> all = new HashSet<>(made);
        path(source.from(), patch).forEach(all::add);
        plan.cuts().stream().filter(PieceCut::past).forEach(cut -> all.addAll(names(cut)));
        return new Miscut(plan, all, patch, real);
    }

    /** The patch that the next cut of a piece is for; empty where all of its cuts are made. */
    public static Optional<String> next(Plan plan, Set<String> made, String piece) {
        return plan.cuts().stream()
                .filter(cut -> cut.piece().id().equals(piece) && !cut.past())
                .flatMap(cut -> cut.tree().kept().stream()
                        .map(CutTree.Kept::patch)
                        .filter(patch -> !made.containsAll(path(cut, patch))))
                .findFirst();
    }

    /** The cuts that part a patch from its piece. */
    static List<String> path(PieceCut from, String patch) {
        List<CutTree.Parted> cuts = from.tree().cuts();
        return cuts.stream()
                .filter(cut -> cut.kept().stream().anyMatch(kept -> kept.patch().equals(patch)))
                .map(cut -> name(from, cuts.indexOf(cut)))
                .toList();
    }

    /** All cuts of a piece. */
    private static List<String> names(PieceCut cut) {
        return IntStream.range(0, cut.tree().cuts().size())
                .mapToObj(i -> name(cut, i))
                .toList();
    }

    static String name(PieceCut from, int index) {
        return from.piece().id() + ":" + (index + 1);
    }

    /** The bar of the patch, or {@code hearth}. */
    public String bar() {
        return bar(plan, patch);
    }

    static String bar(Plan plan, String patch) {
        Place place = Objects.requireNonNull(plan.laid().get(patch)).patch().place();
        return place instanceof Place.Bar bar ? bar.bar() : place.id();
    }

    /** What it measures, as it lies in the cloth. */
    Size inCloth() {
        return kept().turned() ? measured.turned() : measured;
    }

    private CutTree.Kept kept() {
        return Objects.requireNonNull(plan.sources().get(patch)).kept();
    }

    /** How much it is short of what it was to be cut, on each side as it lies on its piece. */
    Size shortBy() {
        Size wanted = kept().at().size();
        return new Size(wanted.width().minus(measured.width()), wanted.height().minus(measured.height()));
    }
}
