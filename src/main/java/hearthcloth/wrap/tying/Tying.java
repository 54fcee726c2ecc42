package hearthcloth.wrap.tying;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.ArrayList;
import java.util.List;

/**
 * How a tie is done with the hands. The order of the steps is the trade's (docs/sources.md#tie-steps); the words are
 * our own.
 *
 * @param ifShort what to do when a corner will not reach
 * @param cautions where it can hurt
 */
public record Tying(List<Step> steps, String ifShort, List<String> cautions) {

    /** One step: something to do, and the moment it leads to. */
    public record Step(String words, TyingMoment moment) {}

    /** How the reef knot is tied, whatever the tie. */
    public static final List<String> KNOT = List.of(
            "Lay the left end over the right end. Bring it round behind and up. This is half the knot.",
            "Lay the same end, now on the right, over the other again, and bring it through the loop.",
            "Pull both ends. A reef knot lies flat, its ends in line with the pull. If the ends stand up and down, it is a"
                    + " granny knot, which comes loose. Undo the second half and cross it the other way.");

    public Tying {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /** The steps of a tie round a gift. */
    public static Tying of(Tie tie, Gift gift) {
        List<Step> steps = TyingLines.of(tie, gift).stream()
                .map(line -> new Step(line.words(), line.moment()))
                .toList();
        return new Tying(steps, TyingLines.ifShort(tie), cautions(tie, gift));
    }

    /**
     * Cautions of common sense, without a source, but for the roll, which is not for open liquids
     * (docs/sources.md#no-liquids).
     */
    private static List<String> cautions(Tie tie, Gift gift) {
        List<String> cautions = new ArrayList<>();
        if (tie.isKnotted()) {
            cautions.add("Keep long ends and loops away from small children and out of cots: a tied cloth can tighten"
                    + " round a neck.");
        }
        cautions.add("Keep a wrapped gift away from candles, stoves and lamps. Loose ends catch fire first.");
        if (gift instanceof Gift.Bottle || gift instanceof Gift.TwoBottles) {
            cautions.add("Try the knot over a table first. Until then, carry a bottle with one hand under it.");
        } else if (tie == Tie.ROLL) {
            cautions.add("Do not use it for anything that can spill: a roll lies on its side.");
        } else {
            cautions.add("Put food in its own box or paper first. Wash the cloth before it touches food.");
        }
        return cautions;
    }
}
