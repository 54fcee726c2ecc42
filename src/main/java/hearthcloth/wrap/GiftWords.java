package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.words.speech.Voice;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gifts in words, each with its measures. */
final class GiftWords {

    private GiftWords() {}

    static String of(Gift gift, Voice voice) {
        if (gift instanceof Gift.Box box) {
            return voice.tying().giftBox(sides(voice, box.length(), box.width(), box.height()));
        }
        if (gift instanceof Gift.Bottle bottle) {
            return voice.tying().giftBottle(near(voice, bottle.diameter()), near(voice, bottle.height()));
        }
        if (gift instanceof Gift.TwoBottles bottles) {
            Gift.Bottle each = bottles.each();
            return voice.tying().giftBottles(near(voice, each.diameter()), near(voice, each.height()));
        }
        if (gift instanceof Gift.Books books) {
            return voice.tying().giftBooks(sides(voice, books.height(), books.width(), books.thickness()));
        }
        if (gift instanceof Gift.Roll roll) {
            return voice.tying().giftRoll(near(voice, roll.diameter()), near(voice, roll.length()));
        }
        return voice.tying().giftRound(near(voice, gift.longestSide()));
    }

    private static String near(Voice voice, Length length) {
        return voice.write(length, Rounding.NEAREST);
    }

    private static String sides(Voice voice, Length... sides) {
        return Stream.of(sides)
                        .map(side -> voice.number(side, Rounding.NEAREST))
                        .collect(Collectors.joining(" × ")) + " " + voice.unit();
    }
}
