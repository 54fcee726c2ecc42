package hearthcloth.work;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Capacity;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import java.util.Optional;

/**
 * What a cloth is for: a gift and its tie, or a size, or neither. Kept in her own words, so that it is shown as
 * she wrote it; measures without a unit were completed with hers.
 *
 * @param gift as {@link Gift#parse} reads it; empty where there is none
 * @param tie its words; empty for the first that suits
 * @param size as {@link Measures#size} reads it; empty where there is none
 */
public record Purpose(String gift, String tie, String size) {

    public static final Purpose NOTHING = new Purpose("", "", "");

    /** Below this nothing can be sewn, above nothing tied: the range of the planner. */
    public static final Length LEAST = Length.cm(5);

    public static final Length MOST = Length.cm(500);

    /**
     * A cloth for a gift. One written without a unit is completed with hers, so that changing the ruler later does not
     * change the gift.
     *
     * @throws MeasureException when the gift cannot be read
     */
    public static Purpose of(String gift, String tie, Unit bare) {
        Gift.parse(gift, bare);
        try {
            Gift.parse(gift, null);
            return new Purpose(gift, tie, "");
        } catch (MeasureException e) {
            return new Purpose(gift + " " + bare.symbol(), tie, "");
        }
    }

    /** True where gift and size can be read, as whatever comes from elsewhere must be. */
    public boolean isReadable() {
        try {
            thing();
            return size.isEmpty() || size(size, Unit.INCH).width().isPositive();
        } catch (MeasureException e) {
            return false;
        }
    }

    public Optional<Gift> thing() {
        return gift.isEmpty() ? Optional.empty() : Optional.of(Gift.parse(gift, Unit.INCH));
    }

    public Optional<Tie> tied() {
        return thing().map(thing ->
                Tie.named(tie).orElseGet(() -> Tie.suiting(thing).get(0)));
    }

    /** The gift with its tie, as it is drawn; empty where there is no gift. */
    public Optional<Wrapped> wrapped(Ruler ruler) {
        return thing().flatMap(gift -> tied().map(tying -> Wrapped.of(gift, tying, tail(ruler))));
    }

    /**
     * The same; where she has said no gift, for a box of a cake's shape that a cloth of this size ties with a tenth to spare, so
     * that it can be shown tied. This where it ties none.
     */
    public Purpose orShown(Size finished, Ruler ruler) {
        if (!gift.isEmpty()) {
            return this;
        }
        return Capacity.of(Tie.FOUR_CORNER, finished, tail(ruler).usual())
                .findFirst()
                .flatMap(Capacity::largest)
                .map(largest -> largest.like(largest.leading().times(9).dividedBy(10, Rounding.DOWN)))
                .flatMap(box -> box.onMarks(ruler))
                .map(box -> new Purpose(box.describe(ruler), Tie.FOUR_CORNER.words(), ""))
                .orElse(this);
    }

    /** Whether a cloth of this size ties what she wants to wrap, in a sentence; empty where she said nothing. */
    public String fits(Size finished, Voice voice) {
        return wrapped(voice.ruler())
                .map(round -> round.sentence(finished, voice))
                .orElse("");
    }

    /** In a sentence: {@code a box 12 × 9 × 4 in, errand wrap}. */
    public String words(Voice voice) {
        FramingWords words = FramingWords.in(voice.language());
        return thing().map(thing -> words.giftTied(
                        thing.describe(voice),
                        tied().map(tie -> voice.tying().tieName(tie.name())).orElse("")))
                .orElseGet(() ->
                        size.isEmpty() ? "" : words.giftCloth(voice.write(size(size, Unit.INCH), Rounding.NEAREST)));
    }

    /** What each end is left for knot and tail, unless she measures otherwise. */
    public static Tail tail(Ruler ruler) {
        return ruler.isMetric() ? Tail.METRIC : Tail.INCHES;
    }

    /**
     * A size she typed, within what can be planned.
     *
     * @throws MeasureException naming the mend
     */
    public static Size size(String written, Unit bare) {
        Size size = Measures.size(written, bare);
        for (Length side : new Length[] {size.width(), size.height()}) {
            if (side.isLessThan(LEAST) || side.isMoreThan(MOST)) {
                throw new RefusedException(RefusingSentences.wishCloth(Argument.text(written)));
            }
        }
        return size;
    }
}
