package hearthcloth.wish;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A gift, how it is to be tied and how it stands on the cloth. */
public record GiftWish(Gift gift, Tie tie, Placing placing) {

    /**
     * Reads {@code --gift} and {@code --tie}; empty when there is no gift.
     *
     * @throws BadInputException when either cannot be used
     */
    public static Optional<GiftWish> read(@Nullable String gift, @Nullable String tie, @Nullable Unit unit) {
        return read(gift, tie, unit, new OptionText());
    }

    /** The same, what is wrong told by {@code text}. */
    static Optional<GiftWish> read(@Nullable String gift, @Nullable String tie, @Nullable Unit unit, OptionText text) {
        Optional<Gift> read =
                text.read("--gift", gift, Optional.empty(), written -> Optional.of(Gift.parse(written, unit)));
        if (gift == null && tie != null) {
            text.fault("--tie", RefusingSentences.tieFirst());
        }
        Optional<Tie> named = text.read("--tie", tie, Optional.empty(), written -> Optional.of(tie(written, read)));
        text.check();
        return read.map(given ->
                new GiftWish(given, named.orElseGet(() -> Tie.suiting(given).get(0)), Placing.CENTRED));
    }

    /**
     * The tie with this name.
     *
     * @throws BadInputException when there is none
     */
    public static Tie tie(String written) {
        OptionText text = new OptionText();
        Tie tie = text.read("--tie", written, Tie.FOUR_CORNER, name -> tie(name, Optional.empty()));
        text.check();
        return tie;
    }

    private static Tie tie(String written, Optional<Gift> gift) {
        List<Tie> suiting = gift.map(Tie::suiting).orElseGet(() -> Arrays.asList(Tie.values()));
        String choice = suiting.stream().map(Tie::words).collect(Collectors.joining(", "));
        Tie tie = Tie.named(written)
                .orElseThrow(() -> new RefusedException(
                        RefusingSentences.tieUnknown(Argument.text(choice), Argument.text(written))));
        if (!suiting.contains(tie)) {
            throw new RefusedException(RefusingSentences.tieOther(
                    Argument.text(choice), RulingSentences.suited(tie.name()), RulingSentences.tie(tie.name())));
        }
        return tie;
    }

    /** What each end needs for knot and tail, unless she gives a length. */
    public static Tail tail(Ruler ruler) {
        return ruler.isMetric() ? Tail.METRIC : Tail.INCHES;
    }

    /** The same wish with the cloth laid in another way. */
    public GiftWish placed(Placing other) {
        return new GiftWish(gift, tie, other);
    }

    /** The gift with its tie, for pictures of it tied. */
    public Wrapped wrapped(Ruler ruler) {
        return new Wrapped(gift, tie, tail(ruler), placing);
    }

    /** The side of the smallest square cloth. */
    Length least(Ruler ruler) {
        return least(tail(ruler).usual());
    }

    private Length least(Length end) {
        boolean centred = placing.right().equals(Length.ZERO) && placing.away().equals(Length.ZERO);
        return centred
                ? tie.smallestSquare(gift, end)
                : tie.smallest(gift, end, Size.square(end.plus(Length.mm(1))), placing)
                        .width();
    }

    /**
     * {@code a box 30 × 20 × 8 cm, errand wrap: a square cloth of at least 71.6 cm (66–77.3 cm with thin or thick cloth
     * at the knots)}.
     */
    public String sentence(Voice voice) {
        Tail tail = tail(voice.ruler());
        ReportingWords words = voice.rooms().reporting();
        String least = voice.write(least(voice.ruler()), Rounding.UP);
        String name = voice.tying().tieName(tie.name());
        return tie.isKnotted()
                ? words.giftRange(
                        gift.describe(voice),
                        voice.number(least(tail.least()), Rounding.UP),
                        voice.write(least(tail.most()), Rounding.UP),
                        least,
                        name)
                : words.giftLeast(gift.describe(voice), least, name);
    }
}
