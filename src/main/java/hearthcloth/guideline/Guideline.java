package hearthcloth.guideline;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.tie.Wrapped;
import java.util.Optional;

/**
 * An idea for cloths that come out different from every heap. What a rule leaves open, the heap decides. Immutable.
 *
 * @param told what its teacher says of it
 * @param size how large a cloth may be
 * @param shape hearth, bars, rounds, order
 * @param colours which fabric where
 * @param sewing how it is made up, and what joins are allowed
 */
public record Guideline(Told told, SizeRule size, ShapeRule shape, ColourRule colours, SewingRule sewing) {

    /**
     * Her own words.
     *
     * @param name of the idea; not blank
     * @param by who hands it on; may be empty
     * @param words as plain text, of any length; may be empty
     * @param picture her own, if she gave one
     * @param ruler in which its measures are written
     */
    public record Told(String name, String by, String words, Optional<Picture> picture, Ruler ruler) {
        public Told {
            if (name.isBlank()) {
                throw new IllegalArgumentException("an idea has a name");
            }
        }
    }

    /**
     * A picture as a file holds it.
     *
     * @param kind image/png or image/jpeg
     * @param base64 the file's bytes in base 64
     * @param words what is seen on it, for those who cannot see it; may be empty
     */
    public record Picture(String kind, String base64, String words) {}

    /**
     * The layout.
     *
     * @param order empty where the heap decides
     */
    public record ShapeRule(HearthRule hearth, BarsRule bars, RoundsRule rounds, Optional<Order> order) {}

    /** Seam, hem and margins, and how bars may be joined. */
    public record SewingRule(Making making, PiecingRules joins) {}

    /** The same idea measured by another ruler; the measures of its rules stay what they are. */
    public Guideline by(Ruler ruler) {
        return new Guideline(
                new Told(told.name(), told.by(), told.words(), told.picture(), ruler), size, shape, colours, sewing);
    }

    /** The gift it is tied round with its tie, where its size is one of a gift. */
    public Optional<Wrapped> wrapped() {
        Tail tail = told.ruler().isMetric() ? Tail.METRIC : Tail.INCHES;
        return size instanceof SizeRule.ForGift wished
                ? Optional.of(new Wrapped(wished.gift(), wished.tie(), tail, Placing.CENTRED))
                : Optional.empty();
    }
}
