package hearthcloth.wrap;

import hearthcloth.measure.Length;

/** What a fit says of one corner or of the cover alone, for checks against derivations that give these apart. */
public final class FitTails {

    private FitTails() {}

    /** What is left at this corner beyond its path, for knot, tail or tuck. */
    public static Length left(Fit fit, Corner corner) {
        return fit.answers().stream()
                .filter(answer -> answer.corner() == corner)
                .map(Fit.Answer::left)
                .reduce((one, last) -> last)
                .orElseThrow();
    }

    /** Whether no part of the gift stays bare. */
    static boolean isCovered(Fit fit) {
        return fit.answers().stream()
                .filter(answer -> answer.reason() == Reason.COVER)
                .allMatch(Fit.Answer::enough);
    }
}
