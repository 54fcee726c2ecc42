package hearthcloth.cloth.making;

import hearthcloth.measure.Length;

/**
 * What is added between an exact size and the cut.
 *
 * @param leeway added to the length of every bar, trimmed off after sewing
 * @param trim added to the width of every bar, trimmed off its outer edge after sewing; usually none
 * @param mark the step of the maker's ruler; cut sizes are rounded up to the next whole one
 */
public record Margins(Length leeway, Length trim, Length mark) {

    public Margins {
        if (leeway.isNegative() || trim.isNegative() || !mark.isPositive()) {
            throw new IllegalArgumentException("leeway and trim are zero or more, the ruler's step more than zero");
        }
    }
}
