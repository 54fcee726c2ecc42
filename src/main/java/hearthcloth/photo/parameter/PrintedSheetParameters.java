package hearthcloth.photo.parameter;

/**
 * How the reader finds the measuring sheet that the workroom prints. "Tuned" means set by trial on the drawers of drawn
 * photographs, as docs/reading.md tells them.
 *
 * @param reading how a single mark is read
 * @param together which marks lie on one sheet
 * @param rims where the sides of a mark are measured
 * @param paper how far the paper reaches beyond the print
 */
public record PrintedSheetParameters(Reading reading, Together together, Rims rims, Paper paper) {

    /** The values that the reader works with. */
    public static PrintedSheetParameters standard() {
        return new PrintedSheetParameters(
                new Reading(40, 3, 0.86), new Together(3, 0.4, 14), new Rims(0.75, 0.9, 0.35, 0.06), new Paper(15, 24));
    }

    /**
     * How a single mark is read.
     *
     * @param leastRim the least rim of a mark that is looked at, in pixels of the picture that is searched; tuned
     * @param mostWrong the most cells that may be read wrongly: the decoder takes the nearest code up to the distance it
     *     is told. With five, the family's own, a chequered cloth would show more marks that are none; those that still
     *     do lie to no others as on the print and are left out later
     * @param leastLike the share of a mark's cells that must be as printed in the full picture, so that it counts; a
     *     chance pattern has half; tuned
     */
    public record Reading(int leastRim, int mostWrong, double leastLike) {}

    /**
     * Which marks lie on one sheet.
     *
     * @param leastMarks with fewer marks it is no sheet: cloth does not show three that lie as on the print
     * @param nearShare how far a mark may lie from where one other mark says, as a share of the distance between them:
     *     what tilt does to a parallel projection, and bending; tuned
     * @param nearMm the same from where all others say, in millimetres on the print: what bending does; tuned
     */
    public record Together(int leastMarks, double nearShare, double nearMm) {}

    /**
     * Where the sides of a mark are measured.
     *
     * @param reach how far in from the expected side a side is looked for, as a share of a cell, so that no other edge
     *     is met
     * @param leash a corner may be found this far from where it was expected, as a share of a cell; tuned
     * @param leastShare the share of a side that must show; tuned
     * @param leastDeviation a corner is not known better than this, in pixels; tuned
     */
    public record Rims(double reach, double leash, double leastShare, double leastDeviation) {}

    /**
     * How far the paper reaches beyond the dark rim on A4 and on Letter, with the print a little off.
     *
     * @param besideMm at the left and right, in millimetres
     * @param beyondMm at the top and bottom, in millimetres
     */
    public record Paper(double besideMm, double beyondMm) {}
}
