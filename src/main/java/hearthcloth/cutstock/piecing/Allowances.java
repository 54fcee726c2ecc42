package hearthcloth.cutstock.piecing;

/**
 * What sewing takes of a cut patch.
 *
 * @param narrow what a seam takes of the side that is wrapped
 * @param wide what a seam takes of the side that wraps
 * @param hem what an outer edge takes
 */
public record Allowances(long narrow, long wide, long hem) {

    public Allowances {
        if (narrow < 0 || wide < narrow || hem < 0) {
            throw new IllegalArgumentException("allowances " + narrow + ", " + wide + ", " + hem);
        }
    }

    /** What a seam takes of both sides together: cut lengths less this add up exactly ("net"). */
    public long seam() {
        return narrow + wide;
    }

    /** The length a cloth of a finished length is cut to. */
    public long cut(long finished) {
        return finished + 2 * hem;
    }

    /** The net length of a finished length. */
    long net(long finished) {
        return cut(finished) - seam();
    }

    /** The cut side with which a patch shows at least so much, whoever wraps. */
    public long cutToShow(long least) {
        return least + 2 * Math.max(wide, hem);
    }
}
