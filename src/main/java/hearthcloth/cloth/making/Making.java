package hearthcloth.cloth.making;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;

/**
 * How a cloth is made up: everything that lies between a finished size and the cut.
 *
 * @param fell the face on which the fells and the hem lie
 */
public record Making(SeamKind seam, Hem hem, Margins margins, Face fell) {

    /** Makes cut sizes without rounding to a ruler's marks, for checks that calculate without a ruler. */
    public Making(SeamKind seam, Hem hem, Length leeway, Length trim, Face fell) {
        this(seam, hem, new Margins(leeway, trim, new Length(1)), fell);
    }

    /**
     * The usual way in inches: ¼ + ½ in felled, ¼ + ¼ in hem, ½ in leeway, fells on the back. Sources:
     * docs/sources.md#felled-inches, #hem-usual, #leeway.
     */
    public static Making inches() {
        Length quarter = Length.inches(1, 4);
        Margins margins = new Margins(Length.inches(1, 2), Length.ZERO, Ruler.EIGHTHS.step());
        return new Making(SeamKind.felledInches(), Hem.square(quarter, quarter), margins, Face.BACK);
    }

    /**
     * The usual way in metric units: 5 + 10 mm felled, 5 + 5 mm hem, 12 mm leeway. Sources:
     * docs/sources.md#felled-metric, #hem-usual, #leeway.
     */
    public static Making metric() {
        Margins margins = new Margins(Length.mm(12), Length.ZERO, Ruler.MILLIMETRES.step());
        return new Making(SeamKind.felledMetric(), Hem.square(Length.mm(5), Length.mm(5)), margins, Face.BACK);
    }

    public Length leeway() {
        return margins.leeway();
    }

    public Length trim() {
        return margins.trim();
    }

    public Making withSeam(SeamKind other) {
        return new Making(other, hem, margins, fell);
    }

    public Making withHem(Hem other) {
        return new Making(seam, other, margins, fell);
    }

    public Making withLeeway(Length other) {
        return new Making(seam, hem, new Margins(other, trim(), margins.mark()), fell);
    }

    public Making withTrim(Length other) {
        return new Making(seam, hem, new Margins(leeway(), other, margins.mark()), fell);
    }

    /** The same with fells and hem on {@code face}. */
    public Making felledOn(Face face) {
        return new Making(seam, hem, margins, face);
    }
}
