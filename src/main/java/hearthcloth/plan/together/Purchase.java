package hearthcloth.plan.together;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;

/**
 * Fabric to buy so that a cloth that lacks something can be made as it was wished; that it suffices was found by planning the
 * cloth from it.
 *
 * @param cloth which cloth, from 0
 * @param count how many fat quarters, or 1 length off the bolt
 * @param size of one: what is reckoned with, which is a little less than what is sold
 */
public record Purchase(int cloth, Goods goods, int count, Size size) {

    /**
     * How fabric is sold. Sources: docs/sources.md#fat-quarter, #cotton-width, #wide-bolt; the widths are without selvages,
     * the metric ones rounded down.
     */
    @SuppressWarnings("ImmutableEnumChecker") // a Size is immutable, though nothing marks it so
    public enum Goods {
        FAT_QUARTERS(Length.inches(20), Length.inches(18), Length.cm(50), Length.cm(45)),
        NARROW_BOLT(Length.inches(40), Length.inches(9), Length.cm(102), Length.cm(25)),
        WIDE_BOLT(Length.inches(58), Length.inches(9), Length.cm(145), Length.cm(25));

        private final Size inches;
        private final Size metric;

        Goods(Length wide, Length step, Length wideMetric, Length stepMetric) {
            this.inches = new Size(wide, step);
            this.metric = new Size(wideMetric, stepMetric);
        }

        /** A fat quarter, or the shortest length off the bolt that is reckoned with. */
        Size least(boolean isMetric) {
            return isMetric ? metric : inches;
        }
    }
}
