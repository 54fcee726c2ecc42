package hearthcloth.plan.patchwork.byhand;

/**
 * One way to put two things together, the second to the right of the first or below it.
 *
 * @param first a scrap of the first
 * @param second a scrap of the second
 * @param beside whether the second comes to the right, else below
 * @param turned whether the second is turned by a quarter before
 * @param trim what that trims
 */
public record ScrapFit(int first, int second, boolean beside, boolean turned, Trim trim) {

    /**
     * What is trimmed where two edges meet.
     *
     * @param marks how much longer one edge is, in marks
     * @param offSecond whether the second is the longer one
     * @param share the area that is trimmed off, as a share of both
     */
    public record Trim(long marks, boolean offSecond, double share) {}
}
