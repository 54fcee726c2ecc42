package hearthcloth.cli.report;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Capacity;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.PublishedRule;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.TradeFit;
import hearthcloth.wrap.TradeSize;
import hearthcloth.wrap.tying.Tying;
import java.io.PrintStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Prints sizes as short tables. */
public final class SizeReport {

    private final PrintStream out;
    private final Voice voice;
    private final ReportingWords words;
    private final Tail tail;

    public SizeReport(PrintStream out, Voice voice) {
        this.out = out;
        this.voice = voice;
        this.words = voice.rooms().reporting();
        this.tail = GiftWish.tail(voice.ruler());
    }

    /** Prints the cloth that each tie needs for a gift; only {@code tie} where one is given. */
    public void gift(Gift gift, @Nullable Tie tie) {
        List<Tie> ties = tie == null ? Tie.suiting(gift) : List.of(tie);
        out.println(words.sizeGift(gift.describe(voice)));
        out.println();
        int widest = ties.stream().mapToInt(t -> name(t).length()).max().orElse(0);
        for (Tie each : ties) {
            out.println(("  " + padded(name(each), widest) + "  "
                            + padded(up(each.smallestSquare(gift, tail.usual())), 10)
                            + (each.isKnotted() ? tailWords(each, gift) : words.sizeNoKnot()))
                    .stripTrailing());
        }
        out.println();
        Tie first = ties.get(0);
        out.println(PublishedRule.of(gift).sentence(gift, first, tail.usual(), voice));
        trade(first.smallestSquare(gift, tail.usual()));
        sold(first, gift);
    }

    /** Prints the sizes in which cloths for gifts are sold: what for, and what this tie does with them. */
    private void sold(Tie tie, Gift gift) {
        out.println();
        out.println(words.sizeSold(voice.tying().tieName(tie.name())));
        for (TradeFit fit : TradeFit.of(tie, gift, tail.usual())) {
            String uses = voice.tying().tradeUses(fit.size().name());
            String ours = fit.largest()
                    .flatMap(largest -> largest.onMarks(voice.ruler()))
                    .map(largest -> words.sizeUpTo(largest.describe(voice), uses))
                    .orElseGet(() -> words.sizeNone(uses));
            String enough = words.sizeFits(fit.enough() ? "yes" : "no");
            out.println("  " + padded(near(fit.size().least()), 9) + "  " + padded(enough, 6) + "  " + ours);
        }
    }

    /** Prints how a tie is done. */
    public void steps(Gift gift, Tie tie) {
        Tying tying = Tying.of(tie, gift, voice.tying());
        out.println();
        out.println(words.sizeSteps(voice.tying().tieName(tie.name())));
        out.println();
        int number = 1;
        for (Tying.Step step : tying.steps()) {
            out.println("  " + number++ + "  " + step.words());
        }
        if (tie.isKnotted()) {
            out.println();
            out.println(words.sizeKnot());
            tying.knot().forEach(line -> out.println("  " + line));
        }
        out.println();
        out.println(tying.ifShort());
        tying.cautions().forEach(caution -> out.println(words.care(caution)));
    }

    /** Prints what a cloth ties round. */
    public void cloth(Size cloth, @Nullable Tie tie) {
        String size = cloth.isSquare() ? words.square(near(cloth.width())) : voice.write(cloth, Rounding.NEAREST);
        out.println(words.sizeCloth(near(tail.usual()), size));
        out.println();
        List<Capacity> all = tie == null
                ? Capacity.of(cloth, tail.usual())
                : Capacity.of(tie, cloth, tail.usual()).toList();
        int widest = all.stream().mapToInt(c -> name(c.tie()).length()).max().orElse(0);
        for (Capacity each : all) {
            String largest = each.largest()
                    .flatMap(gift -> gift.onMarks(voice.ruler()))
                    .map(gift -> gift.describe(voice))
                    .orElseGet(words::sizeNothing);
            out.println("  " + padded(name(each.tie()), widest) + "  " + largest + "  (" + each.shape(voice) + ")");
        }
    }

    private String tailWords(Tie tie, Gift gift) {
        return words.sizeEnds(
                up(tie.smallestSquare(gift, tail.least())),
                near(tail.least()),
                up(tie.smallestSquare(gift, tail.most())),
                near(tail.most()),
                near(tail.usual()));
    }

    private void trade(Length side) {
        TradeSize.enoughFor(side).ifPresent(found -> {
            String size = near(found.least());
            out.println(found.trade().isEmpty() ? words.sizeTrade(size) : words.sizeTradeNamed(size, found.trade()));
        });
    }

    private String name(Tie tie) {
        return voice.tying().tieName(tie.name()) + (tie.trade().isEmpty() ? "" : " (" + tie.trade() + ")");
    }

    private String up(Length length) {
        return voice.write(length, Rounding.UP);
    }

    private String near(Length length) {
        return voice.write(length, Rounding.NEAREST);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
