package hearthcloth.guideline;

import hearthcloth.measure.Length;

/**
 * A share of the cloth's width, in whole per cent.
 *
 * @param least from 1
 * @param most to 99, not below the least
 */
public record Share(int least, int most) {

    /** How far from a share that is said as one number a cloth may lie; ours. */
    static final int ABOUT = 3;

    public Share {
        if (least < 1 || most > 99 || least > most) {
            throw new IllegalArgumentException("no share: " + least + " to " + most);
        }
    }

    /** The share of a part, made into a rule that allows a little either way. */
    static Share about(Length part, Length whole) {
        int share = (int) Math.max(1, Math.min(99, Math.round(100.0 * part.nm() / whole.nm())));
        return new Share(Math.max(1, share - ABOUT), Math.min(99, share + ABOUT));
    }

    /** Whether a part is so much of the whole; half a per cent either way is rounding. */
    public boolean holds(Length part, Length whole) {
        double share = 100.0 * part.nm() / whole.nm();
        return share >= least - 0.5 && share <= most + 0.5;
    }

    @Override
    public String toString() {
        return least + " to " + most + " %";
    }
}
