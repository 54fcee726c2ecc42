package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** Gifts in words, each with its measures. */
final class GiftWords {

    private GiftWords() {}

    static String of(Gift gift, Voice voice) {
        return of(gift).in(voice);
    }

    static Sentence of(Gift gift) {
        if (gift instanceof Gift.Box box) {
            return RulingSentences.giftBox(edges(box.length(), box.width(), box.height()));
        }
        if (gift instanceof Gift.Bottle bottle) {
            return RulingSentences.giftBottle(near(bottle.diameter()), near(bottle.height()));
        }
        if (gift instanceof Gift.TwoBottles bottles) {
            Gift.Bottle each = bottles.each();
            return RulingSentences.giftBottles(near(each.diameter()), near(each.height()));
        }
        if (gift instanceof Gift.Books books) {
            return RulingSentences.giftBooks(edges(books.height(), books.width(), books.thickness()));
        }
        if (gift instanceof Gift.Roll roll) {
            return RulingSentences.giftRoll(near(roll.diameter()), near(roll.length()));
        }
        return RulingSentences.giftRound(near(gift.longestSide()));
    }

    private static Argument near(Length length) {
        return Argument.of(length, Rounding.NEAREST);
    }

    private static Argument edges(Length... sides) {
        return new Argument.Edges(List.of(sides), Rounding.NEAREST);
    }
}
