package hearthcloth.cutstock.piecing.tree;

/**
 * One rectangle out of a scrap.
 *
 * @param scrap the scrap's place in the heap, from 0
 * @param turned whether the scrap lies turned by a quarter in the cloth
 * @param width from left to right as it lies in the cloth
 * @param height from top to bottom as it lies in the cloth
 */
public record ScrapPatch(int scrap, boolean turned, long width, long height) implements Pieced {

    /** The same patch turned by a quarter. */
    public ScrapPatch quarterTurned() {
        return new ScrapPatch(scrap, !turned, /* width= */ height, /* height= */ width);
    }
}
