package hearthcloth.wish;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads how the cloth lies under the gift: which face out, how it is turned, how far the gift is off its middle. */
public final class PlacingReader {

    private PlacingReader() {}

    /**
     * From {@code --outside}, {@code --turned} and {@code --off-middle}.
     *
     * @throws BadInputException with a sentence for each that cannot be used, or when there is no gift to place
     */
    public static Placing read(WishWords words, boolean gift, @Nullable Unit bare) {
        OptionText text = new OptionText();
        if (!gift) {
            needsGift(text, WishField.OUTSIDE.option(), words.of(WishField.OUTSIDE));
            needsGift(text, WishField.TURNED.option(), words.of(WishField.TURNED));
            needsGift(text, WishField.OFF_MIDDLE.option(), words.of(WishField.OFF_MIDDLE));
            needsGift(text, WishField.SHOW.option(), words.of(WishField.SHOW));
            needsGift(text, WishField.SLACK.option(), words.of(WishField.SLACK));
        }
        Face out = text.word(WishField.OUTSIDE.option(), words.of(WishField.OUTSIDE), Face.FRONT);
        int turned = text.whole(WishField.TURNED.option(), words.of(WishField.TURNED), 0, 0, 3);
        Placing placed = text.read(
                WishField.OFF_MIDDLE.option(),
                words.of(WishField.OFF_MIDDLE),
                Placing.CENTRED,
                way -> shifted(way, bare));
        text.check();
        return placed.turned(turned).showing(out);
    }

    private static void needsGift(OptionText text, String option, @Nullable String given) {
        if (given != null) {
            text.fault(option, RefusingSentences.wishTied());
        }
    }

    private static Placing shifted(String written, @Nullable Unit bare) {
        Length right = Length.ZERO;
        Length away = Length.ZERO;
        for (String part : written.split("(?<!\\d)[,;]|[,;](?!\\d)", -1)) {
            String plain = part.strip().toLowerCase(Locale.ROOT);
            int space = plain.lastIndexOf(' ');
            if (space < 0) {
                throw unread(written);
            }
            Length length = Measures.length(plain.substring(0, space), bare);
            if (length.isMoreThan(Gift.LONGEST)) {
                throw new RefusedException(RefusingSentences.wishFar(Argument.text(part.strip())));
            }
            switch (plain.substring(space + 1)) {
                case "right" -> right = right.plus(length);
                case "left" -> right = right.minus(length);
                case "away" -> away = away.plus(length);
                case "near" -> away = away.minus(length);
                default -> throw unread(written);
            }
        }
        return Placing.CENTRED.shifted(right, away);
    }

    private static MeasureException unread(String written) {
        return new RefusedException(RefusingSentences.wishOff(Argument.text(written)));
    }
}
