package hearthcloth.wrap.tying;

import hearthcloth.words.speech.Voice;

/**
 * Between what two shares something lies, however the spare corners of a tied cloth do.
 *
 * @param least from 0 to 1, and {@code most} no less
 */
public record Between(double least, double most) {

    /** A share that whole per cent make out. */
    private static final double WORTH = 0.05;

    public static Between of(double one, double other) {
        return new Between(Math.min(one, other), Math.max(one, other));
    }

    /** Whether both ends are the same in whole per cent. */
    public boolean isOne() {
        return whole(least) == whole(most);
    }

    /** Whether a twentieth of what is seen or more is of it at both ends. */
    public boolean isAlways() {
        return least >= WORTH;
    }

    /** Whole per cent without the sign: {@code 70–89}. */
    public String words() {
        return isOne() ? Long.toString(whole(most)) : whole(least) + "–" + whole(most);
    }

    String percent(Voice voice) {
        return voice.measuring().percent(words());
    }

    private static long whole(double share) {
        return Math.round(100 * share);
    }
}
