package hearthcloth.cloth;

import hearthcloth.measure.Size;

/**
 * A node: {@code second} sewn beside or below {@code first} along edges of equal length.
 *
 * @param wraps the half whose wide allowance is pressed over the other's narrow one
 */
public record Seam(Join join, Half wraps, Assembly first, Assembly second, Size size) implements Assembly {

    public Seam {
        if (!join.edge(first.size()).equals(join.edge(second.size()))) {
            throw new EdgeMismatchException(join, first, second);
        }
        if (!size.equals(join.joined(first.size(), second.size()))) {
            throw new IllegalArgumentException("a seam's size follows from its halves");
        }
    }

    /**
     * Joins two halves. The size is a component only so that a chain of bars is measured once, and not again at each
     * seam.
     */
    public static Seam of(Join join, Half wraps, Assembly first, Assembly second) {
        return new Seam(join, wraps, first, second, join.joined(first.size(), second.size()));
    }

    public Assembly half(Half half) {
        return half == Half.FIRST ? first : second;
    }

    @Override
    public <R> R fold(Fold<R> fold) {
        return fold.seam(this, first.fold(fold), second.fold(fold));
    }
}
