package hearthcloth.cloth.face;

import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Side;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

/**
 * What lies along the four edges of an assembly, each edge a run of spans from its left or top end. The folds for
 * layers and for faces both need to know what meets what along an edge. Immutable.
 *
 * @param <T> what is known of a span: a number of plies, the patch that shows
 */
record EdgeRuns<T>(List<Span<T>> left, List<Span<T>> top, List<Span<T>> right, List<Span<T>> bottom) {

    /** A stretch of an edge. */
    record Span<T>(Length from, Length to, T value) {

        Span<T> movedBy(Length distance) {
            return new Span<>(from.plus(distance), to.plus(distance), value);
        }
    }

    static <T> EdgeRuns<T> around(Patch patch, T value) {
        List<Span<T>> across = List.of(new Span<>(Length.ZERO, patch.size().width(), value));
        List<Span<T>> down = List.of(new Span<>(Length.ZERO, patch.size().height(), value));
        return new EdgeRuns<>(down, across, down, across);
    }

    List<Span<T>> on(Side side) {
        return switch (side) {
            case LEFT -> left;
            case TOP -> top;
            case RIGHT -> right;
            case BOTTOM -> bottom;
        };
    }

    /**
     * The rim of a joined pair: the outer edges stay, and the edges across the seam are put end to end by {@code
     * meeting}.
     */
    static <T> EdgeRuns<T> joined(Seam seam, EdgeRuns<T> first, EdgeRuns<T> second, Meeting<T> meeting) {
        Length at = seam.join().across(seam.first().size());
        return seam.join() == Join.BESIDE
                ? new EdgeRuns<>(
                        first.left,
                        meeting.of(first.top, moved(second.top, at), at, Side.TOP),
                        second.right,
                        meeting.of(first.bottom, moved(second.bottom, at), at, Side.BOTTOM))
                : new EdgeRuns<>(
                        meeting.of(first.left, moved(second.left, at), at, Side.LEFT),
                        first.top,
                        meeting.of(first.right, moved(second.right, at), at, Side.RIGHT),
                        second.bottom);
    }

    /** How two edges in line become one where a seam ends between them, at distance {@code at}. */
    @FunctionalInterface
    interface Meeting<T> {
        List<Span<T>> of(List<Span<T>> first, List<Span<T>> second, Length at, Side side);
    }

    static <T> List<Span<T>> moved(List<Span<T>> spans, Length distance) {
        return spans.stream().map(span -> span.movedBy(distance)).toList();
    }

    /** The spans with what lies between {@code from} and {@code to} changed. */
    static <T> List<Span<T>> changed(List<Span<T>> spans, Length from, Length to, UnaryOperator<T> change) {
        List<Span<T>> out = new ArrayList<>();
        for (Span<T> span : spans) {
            Length a = span.from().max(from);
            Length b = span.to().min(to);
            if (!a.isLessThan(b)) {
                out.add(span);
                continue;
            }
            add(out, new Span<>(span.from(), a, span.value()));
            add(out, new Span<>(a, b, change.apply(span.value())));
            add(out, new Span<>(b, span.to(), span.value()));
        }
        return List.copyOf(out);
    }

    /** Two runs over the same edge as one, divided at the ends of both. */
    static <T> List<Span<T>> merged(List<Span<T>> one, List<Span<T>> other, BinaryOperator<T> both) {
        List<Span<T>> out = new ArrayList<>();
        for (Span<T> a : one) {
            for (Span<T> b : other) {
                Length from = a.from().max(b.from());
                Length to = a.to().min(b.to());
                add(out, new Span<>(from, to, both.apply(a.value(), b.value())));
            }
        }
        return List.copyOf(out);
    }

    private static <T> void add(List<Span<T>> out, Span<T> span) {
        if (span.from().isLessThan(span.to())) {
            out.add(span);
        }
    }
}
