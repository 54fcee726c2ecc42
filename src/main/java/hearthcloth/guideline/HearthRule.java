package hearthcloth.guideline;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;

/** The piece in the middle: {@code open}, {@code largest square}, {@code 30 to 40 %}, {@code 14 in}, {@code 12 in finished}. */
public sealed interface HearthRule {

    /** The heap decides. */
    record Open() implements HearthRule {}

    /** The largest square that one piece of the heap gives. */
    record LargestSquare() implements HearthRule {}

    /** A share of the cloth's width. */
    record OfWidth(Share share) implements HearthRule {}

    /** This size, as it is cut or as it finishes. */
    record Exactly(Size size, boolean finished) implements HearthRule {}

    /**
     * Reads a rule.
     *
     * @throws MeasureException with a sentence, where it is none
     */
    static HearthRule parse(String written, Unit bare) {
        String plain = RuleText.plain(written);
        if (plain.equals(RuleText.OPEN)) {
            return new Open();
        }
        if (plain.replace("your ", "").equals("largest square")) {
            return new LargestSquare();
        }
        RuleText.numbered(written, RuleText.Asked.HEARTH);
        return RuleText.share(written).<HearthRule>map(OfWidth::new).orElseGet(() -> {
            RuleText.Meant meant = RuleText.Meant.of(written);
            return new Exactly(RuleText.size(meant.measure(), bare), meant.finished());
        });
    }

    /** As it is read. */
    default String written(Ruler ruler) {
        if (this instanceof Exactly exactly) {
            return RuleText.exact(exactly.size(), ruler) + (exactly.finished() ? " finished" : " cut");
        }
        if (this instanceof OfWidth ofWidth) {
            return ofWidth.share().toString();
        }
        return this instanceof LargestSquare ? "largest square" : RuleText.OPEN;
    }

    /** For a reader: what is asked of the hearth. */
    default Sentence said() {
        Argument none = Argument.text("");
        if (this instanceof Exactly exactly) {
            return RulingSentences.isHearth(
                    exactly.finished() ? "FINISHED" : "EXACT",
                    none,
                    none,
                    Argument.of(exactly.size(), Rounding.NEAREST));
        }
        if (this instanceof OfWidth ofWidth) {
            return RulingSentences.isHearth(
                    "SHARE",
                    Argument.number(ofWidth.share().least()),
                    Argument.number(ofWidth.share().most()),
                    none);
        }
        return RulingSentences.isHearth(this instanceof LargestSquare ? "SQUARE" : "OPEN", none, none, none);
    }
}
