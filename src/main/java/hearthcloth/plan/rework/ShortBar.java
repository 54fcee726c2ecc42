package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ways on where the next bar turns out too short for the work it is to be sewn to, each planned through from pieces
 * that are there. What is sewn stays as it is. The same call gives the same ways.
 */
public final class ShortBar {

    private final RemainingPlan rest;
    private final String bar;
    private final Design design;
    private final RemainingPlan.Table table;
    private final int number;

    /** What is done about it, in the order in which ways are offered. */
    public enum Kind {
        JOINED_STRIP,
        ANEW,
        PIECED,
        TRIMMED
    }

    /** One way on: the whole plan from here, and the design it follows. */
    public record Way(Kind kind, Design design, RemainingPlan.Resewn resewn, List<Sentence> told) {}

    /**
     * Prepares the ways.
     *
     * @param rest the work as it is, which knows the real length of the bar
     * @param bar its name
     * @param design as it was planned
     */
    public ShortBar(RemainingPlan rest, String bar, Design design, RemainingPlan.Table table) {
        this.rest = rest;
        this.bar = bar;
        this.design = design;
        this.table = table;
        this.number = design.layout().slots().stream()
                .map(slot -> slot.place().bar())
                .toList()
                .indexOf(bar);
    }

    private Layout.Slot slot() {
        return design.layout().slots().get(number);
    }

    private Laid whole(Design of) {
        return of.whole().laid().stream()
                .filter(laid -> laid.patch().place().id().equals(bar))
                .findFirst()
                .orElseThrow();
    }

    /** How much it is too short; zero or less where it suffices. */
    public Length missing() {
        Length real = rest.lengths(bar).stream().reduce(Length.ZERO, Length::plus);
        int joins = rest.lengths(bar).size() - 1;
        Length joined = real.minus(design.making().seam().loss().times(joins));
        Laid laid = whole(design);
        return slot().length()
                .plus(Design.firstEnd(laid, slot()))
                .plus(Design.lastEnd(laid, slot()))
                .minus(joined);
    }

    /**
     * The ways on, best first.
     *
     * @param budget ends each search
     * @throws MeasureException where the bar is long enough
     */
    public List<Way> ways(Budget budget) {
        if (!missing().isPositive()) {
            throw new RefusedException(MendingSentences.noShort(Argument.text(bar)));
        }
        List<Way> ways = new ArrayList<>();
        joined(budget).ifPresent(ways::add);
        anew(budget).ifPresent(ways::add);
        if (ways.isEmpty()) {
            made(rest.fit(design, table, budget))
                    .map(made -> new Way(
                            Kind.PIECED,
                            design,
                            made,
                            List.of(MendingSentences.shortPieced(Argument.text(bar), pieces(made)))))
                    .ifPresent(ways::add);
        }
        trimmed(budget).ifPresent(ways::add);
        return List.copyOf(ways);
    }

    private static Optional<RemainingPlan.Resewn> made(RemainingPlan.Answer answer) {
        return answer instanceof RemainingPlan.Answer.Made made ? Optional.of(made.resewn()) : Optional.empty();
    }

    private RemainingWork work() {
        return new RemainingWork(rest, design, rest.asTheyAre(design), table.next());
    }

    private Optional<Way> anew(Budget budget) {
        return made(rest.answer(work().aside(Set.of(bar)), table, budget))
                .map(made -> new Way(
                        Kind.ANEW,
                        design,
                        made,
                        List.of(
                                MendingSentences.shortAnew(Argument.text(bar), pieces(made)),
                                MendingSentences.shortBack())));
    }

    private Argument pieces(RemainingPlan.Resewn made) {
        return Argument.row(
                Argument.Joined.AND,
                made.cuts().stream()
                        .filter(cut -> cut.tree().kept().stream().anyMatch(kept -> isOfBar(kept.patch())))
                        .map(cut -> WayWords.piece(cut.piece()))
                        .toList());
    }

    private boolean isOfBar(String patch) {
        return patch.equals(bar) || patch.startsWith(bar + ".");
    }

    /** The work trimmed by what the bar is too short, on the side of the bar last sewn on there. */
    private Optional<Way> trimmed(Budget budget) {
        boolean upright = slot().place().side().isUpright();
        Length less = missing().roundedTo(table.ruler().step(), Rounding.UP);
        Size raw = new SewnCloth(design, rest.bars()).raw();
        Size now = upright
                ? new Size(raw.width(), raw.height().minus(less))
                : new Size(raw.width().minus(less), raw.height());
        try {
            Design after = SewnCloth.measured(design, rest.bars(), now).design();
            Sentence told = MendingSentences.shortTrim(
                    Argument.text(bar),
                    trimmedAt(upright),
                    Argument.of(less, Rounding.NEAREST),
                    Argument.of(upright ? now.height() : now.width(), Rounding.NEAREST),
                    upright ? "high" : "wide");
            return made(rest.fit(after, table, budget))
                    .filter(made -> made.cuts().isEmpty())
                    .map(made -> new Way(Kind.TRIMMED, after, made, List.of(told)));
        } catch (MeasureException e) {
            // So much would leave nothing of what is sewn.
            return Optional.empty();
        }
    }

    private Sentence trimmedAt(boolean upright) {
        List<Layout.Slot> slots = design.layout().slots();
        for (int i = rest.bars() - 1; i >= 0; i--) {
            if (slots.get(i).place().side().isUpright() != upright) {
                return MendingSentences.bar(Argument.text(slots.get(i).place().bar()));
            }
        }
        return MendingSentences.hearth();
    }

    private Optional<Way> joined(Budget budget) {
        List<Length> shown = shown();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        Length length = shown.get(shown.size() - 1);
        String id = slot().place().part(shown.size()).id();
        Size size = stripCut(shown, id);
        return strips(size).map(piece -> cut(piece, size, id)).flatMap(cut -> {
            RemainingWork work =
                    work().joined(new RemainingWork.Strip(bar, cut, length), shown.subList(0, shown.size() - 1));
            return made(rest.answer(work, table.without(cut.piece()), budget))
                    .map(made -> new Way(
                            Kind.JOINED_STRIP,
                            design,
                            made,
                            List.of(MendingSentences.shortStrip(
                                    Argument.text(bar), WayWords.piece(cut.piece()), Argument.of(size, Rounding.UP)))));
        });
    }

    /** What each part of the bar and, last, the strip shows; empty where a part would be under the least piece. */
    private List<Length> shown() {
        List<Length> cut = new ArrayList<>(rest.lengths(bar));
        if (cut.isEmpty()) {
            return List.of();
        }
        cut.add(Length.ZERO);
        List<Length> shown = new ArrayList<>(design.finishedParts(whole(design), slot(), cut));
        int last = shown.size() - 1;
        Length least = design.rules().leastPiece();
        Length more = least.minus(shown.get(last)).max(Length.ZERO);
        shown.set(last, shown.get(last).plus(more));
        shown.set(last - 1, shown.get(last - 1).minus(more));
        return shown.stream().anyMatch(part -> part.isLessThan(least)) ? List.of() : shown;
    }

    /** The strip's cut size as it lies in the cloth, asked of a cloth in which the bar is parted so. */
    private Size stripCut(List<Length> shown, String id) {
        List<List<Layout.Part>> bars = new ArrayList<>();
        List<Layout.Slot> slots = design.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            Fabric fabric = design.scheme().bars().get(i).get(0);
            List<Length> parts = i == number ? shown : List.of(slots.get(i).length());
            bars.add(parts.stream()
                    .map(length -> new Layout.Part(fabric.name(), Design.showing(fabric), length))
                    .toList());
        }
        Cloth cloth = design.sewn(design.scheme().hearth().get(0), bars);
        return cloth.laid().stream()
                .filter(laid -> laid.patch().place().id().equals(id))
                .findFirst()
                .orElseThrow()
                .cut();
    }

    /** The smallest piece that gives the strip: of the bar's own fabric or, without one, of another it may be of. */
    private Optional<Piece> strips(Size size) {
        String own = rest.parts(bar).get(0).fabric();
        List<String> allowed =
                design.scheme().bars().get(number).stream().map(Fabric::name).toList();
        return table.stash().pieces().stream()
                .filter(piece -> piece.fabric().name().equals(own)
                        || allowed.contains(piece.fabric().name()))
                .filter(piece -> piece.size().holds(size) || isTurned(piece, size))
                .min(Comparator.comparing((Piece piece) -> piece.fabric().name().equals(own) ? 0 : 1)
                        .thenComparingDouble(Piece::areaMm2)
                        .thenComparingInt(Piece::row));
    }

    private static boolean isTurned(Piece piece, Size size) {
        return !piece.size().holds(size)
                && piece.fabric().nap() == Fabric.Nap.ANY
                && piece.size().holds(size.turned());
    }

    private static PieceCut cut(Piece piece, Size size, String id) {
        boolean turned = isTurned(piece, size);
        Size lies = turned ? size.turned() : size;
        Size all = piece.size();
        Rect at = Rect.at(Length.ZERO, Length.ZERO, lies);
        CutTree tree = new CutTree.Kept(at, id, turned);
        if (lies.height().isLessThan(all.height())) {
            Rect column = Rect.at(Length.ZERO, Length.ZERO, new Size(lies.width(), all.height()));
            Rect below = Rect.at(
                    Length.ZERO,
                    lies.height(),
                    new Size(lies.width(), all.height().minus(lies.height())));
            tree = CutTree.parted(column, false, lies.height(), tree, new CutTree.Left(below));
        }
        if (lies.width().isLessThan(all.width())) {
            Rect beside =
                    Rect.at(lies.width(), Length.ZERO, new Size(all.width().minus(lies.width()), all.height()));
            tree = CutTree.parted(
                    Rect.at(Length.ZERO, Length.ZERO, all), true, lies.width(), tree, new CutTree.Left(beside));
        }
        return new PieceCut(piece, tree);
    }
}
