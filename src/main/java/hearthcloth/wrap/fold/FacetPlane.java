package hearthcloth.wrap.fold;

import hearthcloth.geometry.Vector;

/**
 * A flat side of the wrapped gift; facets in one plane lie over each other in their order.
 *
 * @param name unique within a fold: {@code top}, {@code strip 3.2}
 * @param out unit vector outwards
 */
public record FacetPlane(String name, Vector out) {

    /** From where a side can be seen. */
    public enum Where {
        UNDERNEATH,
        SIDES,
        TOP
    }

    /** Where a side is seen from; within 45° of straight up or down it is the top or the underside. */
    public Where where() {
        if (out.z() < -Math.sqrt(0.5)) {
            return Where.UNDERNEATH;
        }
        return out.z() > Math.sqrt(0.5) ? Where.TOP : Where.SIDES;
    }
}
