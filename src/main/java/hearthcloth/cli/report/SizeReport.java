package hearthcloth.cli.report;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.wish.GiftWish;
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
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Prints sizes as short tables. */
public final class SizeReport {

    private final PrintStream out;
    private final Ruler ruler;
    private final Tail tail;

    public SizeReport(PrintStream out, Ruler ruler) {
        this.out = out;
        this.ruler = ruler;
        this.tail = GiftWish.tail(ruler);
    }

    /** Prints the cloth that each tie needs for a gift; only {@code tie} where one is given. */
    public void gift(Gift gift, @Nullable Tie tie) {
        List<Tie> ties = tie == null ? Tie.suiting(gift) : List.of(tie);
        out.println("Round " + gift.describe(ruler) + ", the finished cloth is a square of at least:");
        out.println();
        int widest = ties.stream().mapToInt(t -> name(t).length()).max().orElse(0);
        for (Tie each : ties) {
            out.println(("  " + padded(name(each), widest) + "  "
                            + padded(up(each.smallestSquare(gift, tail.usual())), 10)
                            + (each.isKnotted() ? tailWords(each, gift) : "no knot"))
                    .stripTrailing());
        }
        out.println();
        Tie first = ties.get(0);
        out.println(PublishedRule.of(gift).sentence(gift, first, tail.usual(), Voice.english(ruler)));
        trade(first.smallestSquare(gift, tail.usual()));
        sold(first, gift);
    }

    /** Prints the sizes in which cloths for gifts are sold: what for, and what this tie does with them. */
    private void sold(Tie tie, Gift gift) {
        out.println();
        out.println(
                "Ready-made sizes (common practice), and the largest gift of this shape in the " + tie.words() + ":");
        for (TradeFit fit : TradeFit.of(tie, gift, tail.usual())) {
            String ours = fit.largest()
                    .flatMap(largest -> largest.onMarks(ruler))
                    .map(largest -> "up to " + largest.describe(ruler))
                    .orElse("none");
            out.println("  " + padded(near(fit.size().least()), 9) + "  " + (fit.enough() ? "fits  " : "small ") + "  "
                    + ours + "; sold for: " + fit.size().uses());
        }
    }

    /** Prints how a tie is done. */
    public void steps(Gift gift, Tie tie) {
        Tying tying = Tying.of(tie, gift, Voice.english(ruler).tying());
        out.println();
        out.println("How to tie the " + tie.words() + ":");
        out.println();
        int number = 1;
        for (Tying.Step step : tying.steps()) {
            out.println("  " + number++ + "  " + step.words());
        }
        if (tie.isKnotted()) {
            out.println();
            out.println("The reef knot:");
            tying.knot().forEach(line -> out.println("  " + line));
        }
        out.println();
        out.println(tying.ifShort());
        tying.cautions().forEach(caution -> out.println("Take care: " + caution));
    }

    /** Prints what a cloth ties round. */
    public void cloth(Size cloth, @Nullable Tie tie) {
        String size = cloth.isSquare() ? near(cloth.width()) + " square" : ruler.write(cloth, Rounding.NEAREST);
        out.println("The largest gifts that a finished cloth " + size + " ties, with " + near(tail.usual())
                + " at each knotted corner for knot and end:");
        out.println();
        List<Capacity> all = tie == null
                ? Capacity.of(cloth, tail.usual())
                : Capacity.of(tie, cloth, tail.usual()).toList();
        int widest = all.stream().mapToInt(c -> name(c.tie()).length()).max().orElse(0);
        for (Capacity each : all) {
            String largest = each.largest()
                    .flatMap(gift -> gift.onMarks(ruler))
                    .map(gift -> gift.describe(ruler))
                    .orElse("nothing; it is too small");
            out.println("  " + padded(name(each.tie()), widest) + "  " + largest + "  (" + each.shape() + ")");
        }
    }

    private String tailWords(Tie tie, Gift gift) {
        return "with " + near(tail.usual()) + " at each knotted corner; " + up(tie.smallestSquare(gift, tail.least()))
                + " with " + near(tail.least()) + ", " + up(tie.smallestSquare(gift, tail.most())) + " with "
                + near(tail.most());
    }

    private void trade(Length side) {
        Optional<TradeSize> size = TradeSize.enoughFor(side);
        size.ifPresent(found -> out.println("The next ready-made size up is "
                + ruler.write(found.least(), Rounding.NEAREST)
                + (found.trade().isEmpty() ? "" : " (" + found.trade() + ")") + "."));
    }

    private static String name(Tie tie) {
        return tie.words() + (tie.trade().isEmpty() ? "" : " (" + tie.trade() + ")");
    }

    private String up(Length length) {
        return ruler.write(length, Rounding.UP);
    }

    private String near(Length length) {
        return ruler.write(length, Rounding.NEAREST);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
