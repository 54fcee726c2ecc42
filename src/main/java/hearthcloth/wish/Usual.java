package hearthcloth.wish;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.wrap.Slack;

/**
 * What holds where she wishes nothing else.
 *
 * @param slack of a cloth for a gift
 */
public record Usual(Ruler ruler, Making making, PiecingRules rules, Slack slack) {

    /** Where nothing is known of her but her ruler. */
    public static Usual of(Ruler ruler) {
        return new Usual(
                ruler,
                ruler.isMetric() ? Making.metric() : Making.inches(),
                ruler.isMetric() ? PiecingRules.metric() : PiecingRules.inches(),
                Slack.usual(ruler));
    }
}
