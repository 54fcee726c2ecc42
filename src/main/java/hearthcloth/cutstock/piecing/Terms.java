package hearthcloth.cutstock.piecing;

/**
 * How scraps may be used.
 *
 * @param least what a patch must show each way
 * @param keepShort the least short side of an offcut that goes back to the stash; 0 where none goes back
 * @param keepLong the least long side of such an offcut
 * @param patches how many patches may come out of one scrap, 1 to 3
 * @param clearance how far apart the ends of seams on the two sides of a seam are to lie
 */
public record Terms(long least, long keepShort, long keepLong, int patches, long clearance) {

    /** The most patches that may come out of one scrap. */
    public static final int MOST_PATCHES = 3;

    public Terms {
        if (least < 0 || keepShort < 0 || keepLong < keepShort || clearance < 0) {
            throw new IllegalArgumentException("least " + least + ", keep " + keepShort + " x " + keepLong);
        }
        if (patches < 1 || patches > MOST_PATCHES) {
            throw new IllegalArgumentException(patches + " patches out of one scrap");
        }
    }
}
