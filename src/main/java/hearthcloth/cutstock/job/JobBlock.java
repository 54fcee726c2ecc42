package hearthcloth.cutstock.job;

/**
 * A rectangle cut whole, such as a hearth: never joined.
 *
 * @param width across the piece when it is not turned
 * @param height along the piece when it is not turned
 * @param turnable whether it may be turned on a piece that allows turning
 */
public record JobBlock(int id, long width, long height, FabricSets fabrics, boolean turnable) implements CutDemand {

    public JobBlock {
        if (width <= 0 || height <= 0) {
            throw new IllegalArgumentException("block " + id + " is " + width + " x " + height);
        }
    }
}
