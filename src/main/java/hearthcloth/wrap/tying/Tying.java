package hearthcloth.wrap.tying;

import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.ArrayList;
import java.util.List;

/**
 * How a tie is done with the hands. The order of the steps is the trade's (docs/sources.md#tie-steps); the words are
 * our own.
 *
 * @param knot how the reef knot is tied, whatever the tie
 * @param ifShort what to do when a corner will not reach
 * @param cautions where it can hurt
 */
public record Tying(List<Step> steps, List<String> knot, String ifShort, List<String> cautions) {

    /** One step: something to do, and the moment it leads to. */
    public record Step(String words, TyingMoment moment) {}

    public Tying {
        steps = List.copyOf(steps);
        knot = List.copyOf(knot);
        cautions = List.copyOf(cautions);
    }

    /** The steps of a tie round a gift. */
    public static Tying of(Tie tie, Gift gift, TyingWords words) {
        List<Step> steps = new TyingLines(words).of(tie, gift);
        List<String> knot = List.of(words.knotFirst(), words.knotSecond(), words.knotPull());
        return new Tying(steps, knot, TyingLines.ifShort(tie, words), cautions(tie, gift, words));
    }

    /**
     * Cautions of common sense, without a source, but for the roll, which is not for open liquids
     * (docs/sources.md#no-liquids).
     */
    private static List<String> cautions(Tie tie, Gift gift, TyingWords words) {
        List<String> cautions = new ArrayList<>();
        if (tie.isKnotted()) {
            cautions.add(words.careChildren());
        }
        cautions.add(words.careFlames());
        if (gift instanceof Gift.Bottle || gift instanceof Gift.TwoBottles) {
            cautions.add(words.careBottle());
        } else if (tie == Tie.ROLL) {
            cautions.add(words.careSpills());
        } else {
            cautions.add(words.careFood());
        }
        return cautions;
    }
}
