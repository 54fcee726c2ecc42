package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;

/**
 * How much larger than the least a cloth for a gift is planned on each side, for what sewing may take more than was
 * planned, so that a few millimetres do not turn a cloth that ties into one that does not.
 *
 * <p>Where her own hand is not known, eight rows lie across a cloth (six seams of three rounds, and the hem twice), and
 * each may take a thread or two more than planned, 1.5 mm: 12 mm or half an inch (docs/sources.md#slack).
 */
public record Slack(Length length) {

    /** More than this is a slip of the unit (docs/sources.md#input-limits). */
    public static final Length MOST = Length.cm(10);

    public static final Slack NONE = new Slack(Length.ZERO);

    /** Rows across a usual cloth, each of which may take more than planned. */
    public static final int ROWS = 8;

    private static final Length METRIC = Length.mm(12);

    private static final Length INCHES = Length.inches(1, 2);

    public Slack {
        if (length.isNegative() || length.isMoreThan(MOST)) {
            throw new IllegalArgumentException("a slack of " + length);
        }
    }

    /** Where nothing is known of how she sews. */
    public static Slack usual(Ruler ruler) {
        return new Slack(ruler.isMetric() ? METRIC : INCHES);
    }

    /** The side of a square to plan, to a mark of the ruler, where {@code least} is the least that ties. */
    public Length on(Length least, Ruler ruler) {
        return ruler.mark(least.plus(length), Rounding.UP);
    }

    /** In a sentence: {@code It is planned 1.2 cm larger than the least, for what sewing may take.}; empty where there is none. */
    public String sentence(Voice voice) {
        return length.isPositive() ? voice.rooms().reporting().planLarger(voice.write(length, Rounding.UP)) : "";
    }
}
