package hearthcloth.cloth;

import hearthcloth.measure.Length;

/**
 * How a cloth is made up: everything that stands between a finished size and the cut.
 *
 * @param leeway added to the length of every bar, trimmed off after sewing
 * @param trim added to the cut width of every bar, trimmed off its outer edge after sewing; usually none
 * @param fell the face on which the fells and the hem lie
 */
public record Making(SeamKind seam, Hem hem, Length leeway, Length trim, Face fell) {

    public Making {
        if (leeway.isNegative() || trim.isNegative()) {
            throw new IllegalArgumentException("leeway and trim are zero or more");
        }
    }

    /** ¼ + ½ in felled, ¼ + ¼ in hem, ½ in leeway, fells on the back: common practice, no source for the leeway. */
    public static Making inches() {
        Length quarter = Length.inches(1, 4);
        return new Making(
                SeamKind.felledInches(), Hem.square(quarter, quarter), Length.inches(1, 2), Length.ZERO, Face.BACK);
    }

    /** 5 + 10 mm felled, 5 + 5 mm hem, 12 mm leeway. */
    public static Making metric() {
        return new Making(
                SeamKind.felledMetric(), Hem.square(Length.mm(5), Length.mm(5)), Length.mm(12), Length.ZERO, Face.BACK);
    }

    public Making withSeam(SeamKind other) {
        return new Making(other, hem, leeway, trim, fell);
    }

    public Making withHem(Hem other) {
        return new Making(seam, other, leeway, trim, fell);
    }

    public Making withLeeway(Length other) {
        return new Making(seam, hem, other, trim, fell);
    }

    public Making withTrim(Length other) {
        return new Making(seam, hem, leeway, other, fell);
    }
}
