package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why a wish cannot be met, in sentences that say what is short, by how much, and what would help. */
final class Shortfall {

    private final Wish wish;
    private final Stash stash;
    private final Ruler ruler;

    Shortfall(Wish wish, Stash stash) {
        this.wish = wish;
        this.stash = stash;
        this.ruler = wish.preferences().ruler();
    }

    /** The sentences, and whether they prove that nothing can be made. */
    record Reasons(List<String> why, boolean proven) {}

    Reasons reasons(Optional<Size> size, List<LayoutCandidate> shapes) {
        List<String> why = new ArrayList<>();
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
    private Optional<String> tooLittle(Size size) {
        double missing = size.areaMm2() - stash.areaMm2();
        if (missing <= 0) {
            return Optional.empty();
        }
        return Optional.of(
                "The cloth alone is " + ruler.area(size.areaMm2(), Rounding.NEAREST) + "; all the fabric together is "
                        + ruler.area(stash.areaMm2(), Rounding.NEAREST) + ", so at least "
                        + ruler.area(missing, Rounding.NEAREST)
                        + " is missing before any seam.");
    }

    /** A sentence where hearth, bars and size do not fit together, with the size they do come to. */
    private String noShape(Optional<Size> size) {
        if (wish.shape().hearth().isEmpty() || wish.shape().bars().isEmpty()) {
            return "No hearth and bars of this kind come to "
                    + size.map(wanted -> ruler.write(wanted, Rounding.DOWN)).orElse("a cloth")
                    + "; leave one of them to the stash, or ask for another number of rounds.";
        }
        Order order = wish.shape().order().orElse(Order.ROUND);
        List<String> come = new ArrayList<>();
        for (int rounds = 1; rounds <= 6; rounds++) {
            comesTo(order, rounds).ifPresent(come::add);
        }
        return come.isEmpty()
                ? "With these seams nothing would be left of the hearth or the bars; make them larger."
                : "This hearth with these bars comes to " + String.join(", ", come)
                        + "; ask for one of these, or leave the" + " hearth or the bars to the stash.";
    }

    private Optional<String> comesTo(Order order, int rounds) {
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
        String size = ruler.write(new Layout(hearth, courses).finished(), Rounding.DOWN);
        return Optional.of(size + " with " + (rounds == 1 ? "one round" : rounds + " rounds"));
    }

    /** Adds a sentence where no single piece holds the smallest hearth that would do. */
    private boolean noHearth(List<LayoutCandidate> shapes, List<String> why) {
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
            why.add("No single piece holds the hearth, cut " + ruler.write(least, Rounding.UP) + "; the best is "
                    + named(largest) + ".");
        }
        return !held && wish.shape().hearth().isPresent();
    }

    private static boolean holds(Piece piece, Size size) {
        return piece.size().holds(size)
                || (piece.fabric().nap() == Fabric.Nap.ANY
                        && piece.size().turned().holds(size));
    }

    /** Adds a sentence where no piece is as wide as the narrowest bar that would do. */
    private boolean noBar(List<LayoutCandidate> shapes, List<String> why) {
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
            why.add("No piece is wide enough for a bar cut " + ruler.write(least, Rounding.UP) + "; the widest is "
                    + named(widest) + ".");
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

    private String named(Piece piece) {
        return piece.fabric().name() + ", " + ruler.write(piece.size(), Rounding.DOWN) + " (line " + piece.row() + ")";
    }
}
