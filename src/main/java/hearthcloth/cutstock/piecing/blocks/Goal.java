package hearthcloth.cutstock.piecing.blocks;

/**
 * The rectangle that a search of blocks is to cover, and what that may cost.
 *
 * @param width its net width
 * @param height its net height
 * @param spare the most net area that may go into its scraps beyond its own
 * @param mostLost the most area that may be lost, cutting counted by its price
 */
public record Goal(int width, int height, long spare, long mostLost) {

    long area() {
        return (long) width * height;
    }

    /** How wide, or high, a block may be; one that may be turned lies with its longer side across. */
    int limit(int side, boolean turnable) {
        if (!turnable) {
            return side == Blocks.WIDTH ? width : height;
        }
        return side == Blocks.WIDTH ? Math.max(width, height) : Math.min(width, height);
    }
}
