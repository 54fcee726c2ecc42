package hearthcloth.web.tie;

import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.wrapping.WrappingWords;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.PublishedRule;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.TradeFit;
import hearthcloth.wrap.tying.Tying;
import java.util.ArrayList;
import java.util.List;

/**
 * How a tie is done round one gift, as its page shows it.
 *
 * @param knot the reef knot; without a picture for a tie without one
 * @param ifShort what to do when a corner does not reach; no picture where it cannot be drawn
 * @param own true where it is drawn with a cloth of hers
 */
public record TieView(
        String suited,
        String gift,
        List<Step> steps,
        Knot knot,
        Step ifShort,
        List<String> cautions,
        Sizes sizes,
        boolean own) {

    /** A step and the cloth at that moment. */
    public record Step(String words, String svg) {}

    /** How the reef knot is tied, with its picture. */
    public record Knot(String svg, List<String> steps) {}

    /** How large the cloth must be, and how sure that is. */
    public record Sizes(String usual, List<String> doubts, List<Trade> trade) {}

    /**
     * A size cloths are sold in.
     *
     * @param ours the largest gift of these proportions that it ties
     * @param enough yes or no: for this gift
     */
    public record Trade(String size, String name, String soldFor, String ours, boolean enough) {

        /** Whether it is enough, as a catalogue asks. */
        public String fits() {
            return enough ? "yes" : "no";
        }
    }

    /** Whether it is drawn with her own cloth, as a catalogue asks. */
    public String owned() {
        return own ? "yes" : "no";
    }

    private static final double WIDTH = 95;
    private static final double HEIGHT = 70;

    static TieView of(Tie tie, Gift gift, TiedGift tied, Voice voice, boolean own) {
        Tying tying = Tying.of(tie, gift, voice.tying());
        List<Step> steps = tying.steps().stream()
                .map(step -> new Step(
                        step.words(), TiedView.svg(tied.moment(step.moment(), WIDTH, HEIGHT, voice.printing()))))
                .toList();
        Knot knot = new Knot(
                tie.isKnotted() ? TiedView.svg(tied.knot(WIDTH, HEIGHT * 0.7, voice.printing())) : "", tying.knot());
        return new TieView(
                voice.tying().tieSuited(tie.name()),
                gift.describe(voice),
                steps,
                knot,
                new Step(
                        tying.ifShort(),
                        tied.whenShort(WIDTH, HEIGHT, voice.printing())
                                .map(TiedView::svg)
                                .orElse("")),
                tying.cautions(),
                sizes(tie, gift, voice),
                own);
    }

    private static Sizes sizes(Tie tie, Gift gift, Voice voice) {
        Ruler ruler = voice.ruler();
        Tail tail = Purpose.tail(ruler);
        List<String> doubts = new ArrayList<>();
        if (tie.isKnotted()) {
            doubts.add(tail.doubt(tie, gift, voice));
        }
        doubts.add(PublishedRule.of(gift).sentence(gift, tie, tail.usual(), voice));
        List<Trade> trade = TradeFit.of(tie, gift, tail.usual()).stream()
                .map(fit -> new Trade(
                        voice.write(fit.size().least(), Rounding.NEAREST),
                        fit.size().trade(),
                        voice.tying().tradeUses(fit.size().name()),
                        fit.largest()
                                .flatMap(largest -> largest.onMarks(ruler))
                                .map(largest -> largest.describe(voice))
                                .orElseGet(
                                        () -> WrappingWords.in(voice.language()).tieNothing()),
                        fit.enough()))
                .toList();
        Length usual = tie.smallestSquare(gift, tail.usual());
        return new Sizes(voice.write(usual, Rounding.UP), doubts, trade);
    }
}
