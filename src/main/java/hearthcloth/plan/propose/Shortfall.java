package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why a wish cannot be met, in sentences that say what is short, by how much, and what would help. */
final class Shortfall {

    private final Wish wish;
    private final Stash stash;

    Shortfall(Wish wish, Stash stash) {
        this.wish = wish;
        this.stash = stash;
    }

    /** The sentences, and whether they prove that nothing can be made. */
    record Reasons(List<Sentence> why, boolean proven) {}

    Reasons reasons(Optional<Size> size, List<LayoutCandidate> shapes) {
        List<Sentence> why = new ArrayList<>();
        size.flatMap(this::tooLittle).ifPresent(why::add);
        if (!why.isEmpty()) {
            return new Reasons(why, true);
        }
        if (shapes.isEmpty()) {
            why.add(noShape(size));
            return new Reasons(
                    why,
                    wish.shape().hearth().isPresent() && !wish.shape().bars().isEmpty());
        }
        boolean proven = noHearth(shapes, why);
        proven |= noBar(shapes, why);
        return new Reasons(why, proven);
    }

    /** A sentence where the cloth is larger than all the fabric together. */
    private Optional<Sentence> tooLittle(Size size) {
        double missing = size.areaMm2() - stash.areaMm2();
        return missing <= 0
                ? Optional.empty()
                : Optional.of(PlanningSentences.shortCloth(
                        Argument.area(stash.areaMm2(), Rounding.NEAREST),
                        Argument.area(missing, Rounding.NEAREST),
                        Argument.area(size.areaMm2(), Rounding.NEAREST)));
    }

    /** A sentence where hearth, bars and size do not fit together, with the size they do come to. */
    private Sentence noShape(Optional<Size> size) {
        if (wish.shape().hearth().isEmpty() || wish.shape().bars().isEmpty()) {
            return size.map(wanted -> PlanningSentences.shapeNone(Argument.of(wanted, Rounding.DOWN)))
                    .orElseGet(PlanningSentences::shapeNoneAny);
        }
        Order order = wish.shape().order().orElse(Order.ROUND);
        List<Sentence> come = new ArrayList<>();
        for (int rounds = 1; rounds <= 6; rounds++) {
            comesTo(order, rounds).ifPresent(come::add);
        }
        return come.isEmpty()
                ? PlanningSentences.shapeNothing()
                : PlanningSentences.shapeComes(Argument.row(Joined.COMMAS, come));
    }

    private Optional<Sentence> comesTo(Order order, int rounds) {
        List<Wish.Cut<Length>> bars = wish.shape().bars();
        List<Layout.Course> courses = Layout.courses(
                order, rounds, bars.stream().map(Wish.Cut::measure).toList());
        if (!bars.get(0).finished()) {
            courses = Layout.finishedOfCut(courses, wish.making());
        }
        Wish.Cut<Size> wished = wish.shape().hearth().orElseThrow();
        Size hearth =
                wished.finished() ? wished.measure() : Layout.hearthOfCut(wished.measure(), courses, wish.making());
        if (!hearth.width().isPositive()
                || !hearth.height().isPositive()
                || courses.stream().anyMatch(course -> !course.width().isPositive())) {
            return Optional.empty();
        }
        Size size = new Layout(hearth, courses).finished();
        return Optional.of(PlanningSentences.shapeSize(rounds, Argument.of(size, Rounding.DOWN)));
    }

    /** Adds a sentence where no single piece holds the smallest hearth that would do. */
    private boolean noHearth(List<LayoutCandidate> shapes, List<Sentence> why) {
        Size least = shapes.stream()
                .map(shape -> Layout.hearthEdges(shape.layout().courses(), wish.making())
                        .around(shape.layout().hearth()))
                .min(Comparator.comparingDouble(Size::areaMm2))
                .orElseThrow();
        boolean held = stash.pieces().stream().anyMatch(piece -> holds(piece, least));
        if (!held) {
            Piece largest = stash.pieces().stream()
                    .max(Comparator.comparing(
                            piece -> piece.size().width().min(piece.size().height())))
                    .orElseThrow();
            why.add(PlanningSentences.hearthNoPiece(named(largest), Argument.of(least, Rounding.UP)));
        }
        return !held && wish.shape().hearth().isPresent();
    }

    private static boolean holds(Piece piece, Size size) {
        return piece.size().holds(size)
                || (piece.fabric().nap() == Fabric.Nap.ANY
                        && piece.size().turned().holds(size));
    }

    /** Adds a sentence where no piece is as wide as the narrowest bar that would do. */
    private boolean noBar(List<LayoutCandidate> shapes, List<Sentence> why) {
        Length least = shapes.stream()
                .flatMap(shape -> cutWidths(shape.layout()).stream())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Piece widest = stash.pieces().stream()
                .max(Comparator.comparing(
                        piece -> piece.size().width().min(piece.size().height())))
                .orElseThrow();
        boolean narrow = widest.size().width().min(widest.size().height()).isLessThan(least);
        if (narrow) {
            why.add(PlanningSentences.barNoPiece(named(widest), Argument.of(least, Rounding.UP)));
        }
        return narrow && !wish.shape().bars().isEmpty();
    }

    /** The widths of the bars as they are cut: what the seams and the hem take of each is what a bar so wide would lose. */
    private List<Length> cutWidths(Layout layout) {
        List<Layout.Course> less = Layout.finishedOfCut(layout.courses(), wish.making());
        List<Length> widths = new ArrayList<>();
        for (int i = 0; i < less.size(); i++) {
            Length shown = layout.courses().get(i).width();
            widths.add(shown.plus(shown.minus(less.get(i).width())));
        }
        return widths;
    }

    /** A fabric is named that the stash has not. */
    static Sentence noFabric(String name, Stash stash) {
        List<String> names = stash.fabrics().stream().map(Fabric::name).toList();
        return PlanningSentences.fabricUnknown(Argument.text(name), Argument.names(Joined.COMMAS, names));
    }

    private static Sentence named(Piece piece) {
        return PlanningSentences.pieceLine(
                Argument.text(piece.fabric().name()),
                Argument.number(piece.row()),
                Argument.of(piece.size(), Rounding.DOWN));
    }
}
