package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.words.printing.PrintingWords;
import java.util.List;

/** What to buy for the cloths that lack something; and that nothing is lacking, where nothing is. */
public final class ShoppingPage {

    private final PrintingWords words;
    private final Flow flow;

    public ShoppingPage(PrintingWords words, Flow flow) {
        this.words = words;
        this.flow = flow;
    }

    /**
     * A way of buying.
     *
     * @param title how the fabric is sold
     * @param lines what to buy, for which cloth
     */
    public record Way(String title, List<String> lines) {
        public Way {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Adds the list.
     *
     * @param lacks what is lacking, in sentences; empty where nothing is
     */
    public void flow(List<String> lacks, List<Way> ways) {
        flow.heading(words.shopTitle());
        if (lacks.isEmpty()) {
            line("", words.shopNone());
            return;
        }
        lacks.forEach(lack -> line("•", lack));
        flow.gap(2);
        line("", ways.isEmpty() ? words.shopNoWay() : words.shopWays());
        for (Way way : ways) {
            flow.gap(2)
                    .lead(new TextColumn(flow.width())
                            .words(way.title(), PrintSizes.STRONG)
                            .finished(way.title()));
            way.lines().forEach(line -> line("•", line));
        }
    }

    private void line(String mark, String said) {
        TextColumn column = new TextColumn(flow.width());
        flow.add((mark.isEmpty() ? column.words(said, PrintSizes.BODY) : column.item(mark, 4, said, PrintSizes.BODY))
                .gap(0.4)
                .finished(said));
    }
}
