package hearthcloth.guideline;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How wide bars are: {@code open}, {@code strips}, {@code 8 to 12 %}, {@code 2 to 3 in}, {@code 5 in, 4 in}; as cut, or with
 * {@code finished} behind it as they finish.
 */
public sealed interface BarsRule {

    /** The heap decides. */
    record Open() implements BarsRule {}

    /** As wide as narrow pieces of the heap are. */
    record AsStrips() implements BarsRule {}

    /** A share of the cloth's width, as the bars finish. */
    record OfWidth(Share share) implements BarsRule {}

    /** Anything between two widths. */
    record Between(Length least, Length most, boolean finished) implements BarsRule {}

    /** These widths, one for all or round by round; the last goes on. */
    record Widths(List<Length> widths, boolean finished) implements BarsRule {
        public Widths {
            widths = List.copyOf(widths);
        }
    }

    /**
     * Reads a rule.
     *
     * @throws MeasureException with a sentence, where it is none
     */
    static BarsRule parse(String written, Unit bare) {
        String plain = RuleText.plain(written);
        if (plain.equals(RuleText.OPEN)) {
            return new Open();
        }
        if (plain.equals("strips") || plain.equals("as wide as your strips")) {
            return new AsStrips();
        }
        RuleText.numbered(written, RuleText.Asked.BARS);
        return RuleText.share(written).<BarsRule>map(OfWidth::new).orElseGet(() -> measured(written, bare));
    }

    private static BarsRule measured(String written, Unit bare) {
        RuleText.Meant meant = RuleText.Meant.of(written);
        return RuleText.range(meant.measure(), bare)
                .<BarsRule>map(ends -> new Between(ends.get(0), ends.get(1), meant.finished()))
                .orElseGet(() -> new Widths(widths(meant.measure(), bare), meant.finished()));
    }

    private static List<Length> widths(String measure, Unit bare) {
        List<Length> widths = Measures.lengths(measure.replaceAll("(?<!\\d)[,;]|[,;](?!\\d)|;", " x "), bare);
        if (widths.size() > RoundsRule.MOST) {
            throw new RefusedException(
                    RefusingSentences.wishManyWidths(Argument.number(widths.size()), Argument.number(RoundsRule.MOST)));
        }
        return widths.stream()
                .map(width -> RuleText.length(width.toString(), bare))
                .toList();
    }

    /** As it is read. */
    default String written(Ruler ruler) {
        if (this instanceof Widths widths) {
            return widths.widths().stream()
                            .map(width -> RuleText.exact(width, ruler))
                            .collect(Collectors.joining(", "))
                    + (widths.finished() ? " finished" : " cut");
        }
        if (this instanceof Between between) {
            return RuleText.range(between.least(), between.most(), ruler) + (between.finished() ? " finished" : " cut");
        }
        if (this instanceof OfWidth ofWidth) {
            return ofWidth.share().toString();
        }
        return this instanceof AsStrips ? "strips" : RuleText.OPEN;
    }

    /** For a reader: what is asked of the bars. */
    default Sentence said() {
        if (this instanceof Widths widths) {
            return is(
                    widths.finished() ? "WIDTHS_FINISHED" : "WIDTHS",
                    new Argument.Widths(widths.widths(), Rounding.NEAREST),
                    Argument.text(""));
        }
        if (this instanceof Between between) {
            return is(
                    between.finished() ? "BETWEEN_FINISHED" : "BETWEEN",
                    Argument.of(between.least(), Rounding.NEAREST),
                    Argument.of(between.most(), Rounding.NEAREST));
        }
        if (this instanceof OfWidth ofWidth) {
            return is(
                    "SHARE",
                    Argument.number(ofWidth.share().least()),
                    Argument.number(ofWidth.share().most()));
        }
        return is(this instanceof AsStrips ? "STRIPS" : "OPEN", Argument.text(""), Argument.text(""));
    }

    private static Sentence is(String kind, Argument width, Argument most) {
        return RulingSentences.isBars(kind, most, width);
    }
}
