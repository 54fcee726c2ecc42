package hearthcloth.plan.cutjoin;

/**
 * A rectangle cut whole, such as a hearth: never joined.
 *
 * @param width across the piece when it is not turned
 * @param height along the piece when it is not turned
 * @param turnable whether it may be turned on a piece that allows turning
 */
public record Block(int id, long width, long height, Fabrics fabrics, boolean turnable) implements Demand {

    public Block {
        if (width <= 0 || height <= 0) {
            throw new IllegalArgumentException("block " + id + " is " + width + " x " + height);
        }
    }
}
