package hearthcloth.web;

import hearthcloth.cloth.Making;
import hearthcloth.cloth.Margins;
import hearthcloth.draw.Paper;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.Rules;
import hearthcloth.store.Store;

/**
 * What is asked once and can be changed: how she measures, which paper she prints on.
 *
 * @param asked false until she has said so; the first page asks
 */
public record Settings(Ruler ruler, Paper paper, boolean asked) {

    /** Before anybody has said how she measures. */
    static final Settings UNASKED = new Settings(Ruler.EIGHTHS, Paper.LETTER, false);

    private static final String RULER = "ruler";
    private static final String PAPER = "paper";

    static Settings of(Store store) {
        Ruler ruler = store.setting(RULER).map(Ruler::valueOf).orElse(Ruler.EIGHTHS);
        Paper paper = store.setting(PAPER).map(Paper::valueOf).orElse(ruler.isMetric() ? Paper.A4 : Paper.LETTER);
        return new Settings(ruler, paper, store.setting(RULER).isPresent());
    }

    void keep(Store store) {
        store.set(RULER, ruler.name());
        store.set(PAPER, paper.name());
    }

    /** The unit of a number that is typed without one. */
    public Unit bare() {
        return ruler.unit();
    }

    /** As usual in her unit, cut to the marks of her ruler. */
    public Making making() {
        Making usual = ruler.isMetric() ? Making.metric() : Making.inches();
        Margins margins = new Margins(usual.leeway(), usual.trim(), ruler.step());
        return new Making(usual.seam(), usual.hem(), margins, usual.fell());
    }

    public Rules rules() {
        return ruler.isMetric() ? Rules.metric() : Rules.inches();
    }
}
