package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A thing to be wrapped, by its outside measures. Every measure is above zero and at most {@link #LONGEST}, and the
 * longest is at least {@link #SHORTEST}; the constructors throw {@link MeasureException} with a sentence for the maker.
 * Immutable.
 */
public sealed interface Gift {

    /**
     * The largest measure of a gift. A larger one is furniture, or a slip of the unit (docs/sources.md#input-limits).
     */
    Length LONGEST = Length.of(2, Unit.METRE);

    /** The least longest measure of a gift. Nothing smaller can be tied. */
    Length SHORTEST = Length.cm(1);

    /**
     * Reads a gift as a maker writes it: {@code box 30 x 20 x 8 cm}, {@code 8 x 30 cm bottle}, {@code two bottles 8 x 30
     * cm}, {@code ball 22 cm}, {@code books 21 x 15 x 2 cm}, {@code roll 6 x 40 cm}. Upper or lower case, the kind of
     * gift before or after its measures.
     *
     * @param assumed the unit of bare numbers; null when a unit must be written
     * @throws MeasureException with a sentence naming the mend
     */
    static Gift parse(String text, @Nullable Unit assumed) {
        return GiftReader.read(text, assumed);
    }

    /** A description for the maker, with its article: {@code a box 30 × 20 × 8 cm}. */
    default String describe(Ruler ruler) {
        return describe(Voice.english(ruler));
    }

    /** The same in any language. */
    default Sentence said() {
        return GiftWords.of(this);
    }

    /** The gift with its measures, in words. */
    default String describe(Voice voice) {
        return GiftWords.of(this, voice);
    }

    /** The measure by which gifts of one shape are compared: a box's length, a bottle's height, a ball's diameter. */
    Length leading();

    /** A gift of the same proportions with this leading measure; the others are rounded to the nearest nanometre. */
    Gift like(Length leading);

    /**
     * The same gift with its leading measure rounded down to the ruler's marks, as a maker is told it; empty where so small
     * a gift cannot be tied.
     */
    default Optional<Gift> onMarks(Ruler ruler) {
        Length marked = ruler.mark(leading(), Rounding.DOWN);
        return marked.isPositive() && !scaled(longestSide(), marked, leading()).isLessThan(SHORTEST)
                ? Optional.of(like(marked))
                : Optional.empty();
    }

    /** The longest straight side, as the published rules mean it. */
    Length longestSide();

    /** A box standing on its length × width base. */
    record Box(Length length, Length width, Length height) implements Gift {

        public Box {
            checked(length, width, height);
        }

        /** The longer side of the base, which lies on the knotted diagonal. */
        public Length along() {
            return length.max(width);
        }

        /** The shorter side of the base. */
        public Length across() {
            return length.min(width);
        }

        @Override
        public Length leading() {
            return length;
        }

        @Override
        public Box like(Length leading) {
            return new Box(leading, scaled(width, leading, length), scaled(height, leading, length));
        }

        @Override
        public Length longestSide() {
            return length.max(width).max(height);
        }
    }

    /**
     * A bottle standing upright: a straight body up to the shoulder, narrowing to the mouth.
     *
     * @param neck diameter of the mouth
     * @param shoulder height at which the body begins to narrow
     */
    record Bottle(Length diameter, Length height, Length neck, Length shoulder) implements Gift {

        public Bottle {
            checked(diameter, height, neck, shoulder);
            if (neck.isMoreThan(diameter) || shoulder.isMoreThan(height)) {
                throw new RefusedException(RefusingSentences.giftBottle());
            }
        }

        /**
         * A bottle with the shoulder and mouth of a common wine bottle (docs/sources.md#wine-bottle): shoulder at 19/30
         * of the height, mouth 2/5 of the diameter.
         */
        public static Bottle of(Length diameter, Length height) {
            checked(diameter, height);
            return new Bottle(
                    diameter,
                    height,
                    diameter.times(2).dividedBy(5, Rounding.NEAREST),
                    height.times(19).dividedBy(30, Rounding.NEAREST));
        }

        @Override
        public Length leading() {
            return height;
        }

        @Override
        public Bottle like(Length leading) {
            return new Bottle(
                    scaled(diameter, leading, height),
                    leading,
                    scaled(neck, leading, height),
                    scaled(shoulder, leading, height));
        }

        @Override
        public Length longestSide() {
            return diameter.max(height);
        }
    }

    /** Two like bottles, laid base to base and stood up side by side. */
    record TwoBottles(Bottle each) implements Gift {

        /** The gap between the bases while the bottles are rolled in: a fist (docs/sources.md#fist). */
        private static final Length FIST = Length.mm(90);

        /**
         * How far from the cloth's middle each base lies: half the fist's gap, or the bottle's own width where that is
         * more, since the pair comes to stand side by side on the cloth between.
         */
        public Length apart() {
            return FIST.dividedBy(2, Rounding.UP).max(each.diameter);
        }

        @Override
        public Length leading() {
            return each.height;
        }

        @Override
        public TwoBottles like(Length leading) {
            return new TwoBottles(each.like(leading));
        }

        @Override
        public Length longestSide() {
            return each.longestSide();
        }
    }

    /** A ball, melon or anything near round. */
    record Round(Length diameter) implements Gift {

        public Round {
            checked(diameter);
        }

        @Override
        public Length leading() {
            return diameter;
        }

        @Override
        public Round like(Length leading) {
            return new Round(leading);
        }

        @Override
        public Length longestSide() {
            return diameter;
        }
    }

    /** Two like books, each {@code height} along the spine, {@code width} from spine to edge and {@code thickness}. */
    record Books(Length height, Length width, Length thickness) implements Gift {

        public Books {
            checked(height, width, thickness);
        }

        @Override
        public Length leading() {
            return height;
        }

        @Override
        public Books like(Length leading) {
            return new Books(leading, scaled(width, leading, height), scaled(thickness, leading, height));
        }

        @Override
        public Length longestSide() {
            return height.max(width).max(thickness);
        }
    }

    /** A tube, bolt of cloth or rolled mat lying on its side. */
    record Roll(Length diameter, Length length) implements Gift {

        public Roll {
            checked(diameter, length);
        }

        @Override
        public Length leading() {
            return length;
        }

        @Override
        public Roll like(Length leading) {
            return new Roll(scaled(diameter, leading, length), leading);
        }

        @Override
        public Length longestSide() {
            return diameter.max(length);
        }
    }

    private static Length scaled(Length part, Length leading, Length whole) {
        long nm = Rounding.NEAREST.whole((double) part.nm() * leading.nm() / whole.nm());
        return new Length(Math.max(1, nm));
    }

    private static void checked(Length... sides) {
        Length most = Length.ZERO;
        for (Length side : sides) {
            if (!side.isPositive()) {
                throw new RefusedException(RefusingSentences.giftZero());
            }
            most = most.max(side);
        }
        if (most.isMoreThan(LONGEST)) {
            throw new RefusedException(
                    RefusingSentences.giftLarge(Argument.text(Ruler.MILLIMETRES.write(most, Rounding.NEAREST))));
        }
        if (most.isLessThan(SHORTEST)) {
            throw new RefusedException(RefusingSentences.giftSmall());
        }
    }
}
