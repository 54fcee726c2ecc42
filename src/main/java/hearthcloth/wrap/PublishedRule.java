package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;

/** The sizing rules that have been published, shown beside ours. */
public enum PublishedRule {

    /**
     * The cloth's diagonal is three times the object's longest side: S = 3 L/√2. Source: docs/sources.md#rule-of-three.
     */
    DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE("National Museum of Ethnology, Osaka, 2002; City of Kiryu, page 1001031") {
        @Override
        public Length square(Gift gift) {
            return Outward.enough(3 * Outward.mm(gift.longestSide()) / Math.sqrt(2));
        }
    },

    /** The cloth's side is three times the bottle's height. Source: docs/sources.md#rule-bottles. */
    SIDE_THREE_TIMES_THE_BOTTLE("University of Kansas East Asian Library, How to Wrap Two Bottles and Shoes") {
        @Override
        public Length square(Gift gift) {
            return gift.leading().times(3);
        }
    };

    private final String source;

    PublishedRule(String source) {
        this.source = source;
    }

    /** The side of the square that this rule gives, rounded up. */
    public abstract Length square(Gift gift);

    /** The rule that applies to such a gift. */
    public static PublishedRule of(Gift gift) {
        return gift instanceof Gift.TwoBottles ? SIDE_THREE_TIMES_THE_BOTTLE : DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE;
    }

    /**
     * A sentence for the maker: the rule's size and how it does for this gift. The diagonal rule leaves half the
     * longest side less the height for each tail, so it is too short wherever that is less than the tail: for tall and
     * for small boxes.
     */
    public String sentence(Gift gift, Tie tie, Length tail, Voice voice) {
        TyingWords words = voice.tying();
        Length rule = square(gift);
        Length ours = tie.smallestSquare(gift, tail);
        String name = words.ruleWords(name());
        String size = voice.write(rule, Rounding.UP);
        if (!ours.isMoreThan(rule)) {
            return words.ruleMore(voice.write(rule.minus(ours), Rounding.DOWN), name, size, source);
        }
        String less = voice.write(ours.minus(rule), Rounding.UP);
        return isTall(gift)
                ? words.ruleSmallForTall(gift.describe(voice), less, name, size, source)
                : words.ruleSmall(gift.describe(voice), less, name, size, source);
    }

    private static boolean isTall(Gift gift) {
        return gift instanceof Gift.Box box && box.height().times(4).isMoreThan(box.along());
    }
}
