package hearthcloth.guideline;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.List;
import java.util.Optional;

/** How large the cloth is to be: {@code open}, {@code 16 in}, {@code 16 to 20 in}, {@code for box 30 x 20 x 8 cm, errand wrap}. */
public sealed interface SizeRule {

    /** As large as the heap makes it. */
    record Open() implements SizeRule {}

    /** This finished size. */
    record Exactly(Size size) implements SizeRule {}

    /** A square between these sides, the larger the better. */
    record Within(Length least, Length most) implements SizeRule {}

    /**
     * Large enough to tie a gift.
     *
     * @param written the gift as she wrote it
     */
    record ForGift(String written, Gift gift, Tie tie) implements SizeRule {}

    /**
     * Reads a rule.
     *
     * @throws MeasureException with a sentence, where it is none
     */
    static SizeRule parse(String written, Unit bare) {
        if (RuleText.isOpen(written)) {
            return new Open();
        }
        if (RuleText.plain(written).startsWith("for ")) {
            return gift(written.strip().substring(4).strip(), bare);
        }
        RuleText.numbered(written, RuleText.Asked.SIZE);
        return RuleText.range(written, bare)
                .<SizeRule>map(ends -> new Within(ends.get(0), ends.get(1)))
                .orElseGet(() -> new Exactly(RuleText.size(written, bare)));
    }

    private static SizeRule gift(String written, Unit bare) {
        int comma = written.lastIndexOf(',');
        Optional<Tie> named = comma < 0 ? Optional.empty() : Tie.named(written.substring(comma + 1));
        String gift = named.isPresent() ? written.substring(0, comma).strip() : written;
        Gift read = Gift.parse(gift, bare);
        List<Tie> suiting = Tie.suiting(read);
        Tie tie = named.orElse(suiting.get(0));
        if (!suiting.contains(tie)) {
            throw new RefusedException(RefusingSentences.tieOther(
                    Argument.text(suiting.get(0).words()),
                    RulingSentences.suited(tie.name()),
                    RulingSentences.tie(tie.name())));
        }
        return new ForGift(gift, read, tie);
    }

    /** As it is read. */
    default String written(Ruler ruler) {
        if (this instanceof Exactly exactly) {
            return RuleText.exact(exactly.size(), ruler);
        }
        if (this instanceof Within within) {
            return RuleText.range(within.least(), within.most(), ruler);
        }
        return this instanceof ForGift gift
                ? "for " + gift.written() + ", " + gift.tie().words()
                : RuleText.OPEN;
    }

    /** For a reader: what is asked of the cloth. */
    default Sentence said() {
        Argument none = Argument.text("");
        if (this instanceof Exactly exactly) {
            return RulingSentences.isSize("EXACT", none, Argument.of(exactly.size(), Rounding.NEAREST));
        }
        if (this instanceof Within within) {
            return RulingSentences.isSize(
                    "WITHIN",
                    Argument.of(within.most(), Rounding.NEAREST),
                    Argument.of(within.least(), Rounding.NEAREST));
        }
        return this instanceof ForGift gift
                ? RulingSentences.isGift(
                        gift.gift().said(), RulingSentences.tie(gift.tie().name()))
                : RulingSentences.isSize("OPEN", none, none);
    }
}
