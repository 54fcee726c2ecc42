package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.TextColumn;
import java.util.List;

/** What to buy for the cloths that lack something; and that nothing is lacking, where nothing is. */
public final class ShoppingPage {

    private final Flow flow;

    public ShoppingPage(Flow flow) {
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
        flow.heading("Shopping list");
        if (lacks.isEmpty()) {
            line("", "Nothing: every cloth can be cut from what you have. Thread and tools are named in each guide.");
            return;
        }
        lacks.forEach(lack -> line("•", lack));
        flow.gap(2);
        line(
                "",
                ways.isEmpty()
                        ? "However much of one fabric was added, no way was found to make these."
                        : "Any one of these ways is enough, together with what the others leave. Each was tried: the cloths"
                                + " were planned from it. Wash and press what you buy before it is cut.");
        for (Way way : ways) {
            flow.gap(2)
                    .lead(new TextColumn(flow.width())
                            .words(way.title(), PrintSizes.STRONG)
                            .finished(way.title()));
            way.lines().forEach(line -> line("•", line));
        }
    }

    private void line(String mark, String words) {
        TextColumn column = new TextColumn(flow.width());
        flow.add((mark.isEmpty() ? column.words(words, PrintSizes.BODY) : column.item(mark, 4, words, PrintSizes.BODY))
                .gap(0.4)
                .finished(words));
    }
}
