package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.words.speech.Voice;

/**
 * What each knotted corner needs beyond the place of the knot, for the knot and the end that shows: a usual figure and
 * the range it may honestly lie in. It is the largest uncertainty of every size here.
 *
 * <p>Derived: a 90° corner of cloth gathered at distance t from its tip, of thickness τ, packs to a round of diameter D
 * = √(16 τ t/π) (docs/sources.md#bunch). A reef knot takes n diameters from each end and leaves a free end e: t = e + n
 * D, so with c = n √(16 τ/π), √t = (c + √(c² + 4 e))/2. The number n is a guess, 7, with 5 to 9 as the range; no figure
 * for cloth has been published (docs/sources.md#knot-take-up). The usual 12 cm is then light cotton, 0.25 mm thick,
 * with ends of about 3.5 cm. The one published hint, two fists of end (docs/sources.md#two-fists), is generous.
 */
public record Tail(Length least, Length usual, Length most) {

    /** 12 cm, between 8 and 16 (ours, from the formula above for light cotton). */
    public static final Tail METRIC = new Tail(Length.cm(8), Length.cm(12), Length.cm(16));

    /** 5 in, between 3½ and 6½. */
    public static final Tail INCHES = new Tail(Length.inches(7, 2), Length.inches(5), Length.inches(13, 2));

    /** A free end that is worth tying: 3.5 cm, as in the usual 12 cm. */
    public static final Length END = Length.mm(35);

    public Tail {
        if (least.isNegative() || least.isMoreThan(usual) || usual.isMoreThan(most)) {
            throw new IllegalArgumentException("a tail from " + least + " by " + usual + " to " + most);
        }
    }

    /**
     * How sure a size is, in sentences for the maker: the sides of the square with the least and the most that knot and
     * end take.
     */
    public String doubt(Tie tie, Gift gift, Voice voice) {
        Length end = voice.ruler().isMetric() ? END : Length.inches(11, 8);
        return voice.tying()
                .doubt(
                        voice.write(end, Rounding.NEAREST),
                        voice.write(tie.smallestSquare(gift, most), Rounding.UP),
                        voice.write(least, Rounding.NEAREST),
                        voice.write(most, Rounding.NEAREST),
                        voice.write(tie.smallestSquare(gift, least), Rounding.UP),
                        voice.write(usual, Rounding.NEAREST));
    }
}
