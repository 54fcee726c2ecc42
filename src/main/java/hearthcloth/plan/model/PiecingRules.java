package hearthcloth.plan.model;

import hearthcloth.measure.Length;

/**
 * What the maker allows when bars are pieced.
 *
 * @param leastPiece no part of a bar finishes shorter than this; smaller offcuts count as lost
 * @param clearance the least distance of a join from every seam it would cross
 * @param mostJoins the most joins in one bar
 */
public record PiecingRules(Length leastPiece, Length clearance, int mostJoins) {

    /** 2 in, 1 in and 4 joins: our defaults, without a source. */
    public static PiecingRules inches() {
        return new PiecingRules(Length.inches(2), Length.inches(1), 4);
    }

    /** 5 cm, 25 mm and 4 joins: our defaults, without a source. */
    public static PiecingRules metric() {
        return new PiecingRules(Length.cm(5), Length.mm(25), 4);
    }
}
