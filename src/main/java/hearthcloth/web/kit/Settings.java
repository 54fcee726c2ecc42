package hearthcloth.web.kit;

import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.store.Store;
import java.util.Optional;

/**
 * What is asked once and can be changed: how she measures, which paper she prints on.
 *
 * @param eats what one of her seams eats, where she plans with what was learnt from her work
 * @param asked false until she has said so; the first page asks
 */
public record Settings(Ruler ruler, Paper paper, Optional<Length> eats, boolean asked) {

    /**
     * The form that asks how she measures and prints, as {@code part/measures.jte} shows it.
     *
     * @param token proves that the form came from one of our own pages
     * @param back the page that is gone to afterwards
     */
    public record Form(Settings settings, String token, String back) {}

    /** Before anybody has said how she measures. */
    static final Settings UNASKED = new Settings(Ruler.EIGHTHS, Paper.LETTER, Optional.empty(), false);

    private static final String RULER = "ruler";
    private static final String PAPER = "paper";
    private static final String EATS = "seam.eats";

    static Settings of(Store store) {
        Ruler ruler = store.setting(RULER).map(Ruler::valueOf).orElse(Ruler.EIGHTHS);
        Paper paper = store.setting(PAPER).map(Paper::valueOf).orElse(ruler.isMetric() ? Paper.A4 : Paper.LETTER);
        Optional<Length> eats = store.setting(EATS)
                .filter(text -> text.matches("\\d{1,12}"))
                .map(text -> new Length(Long.parseLong(text)));
        return new Settings(ruler, paper, eats, store.setting(RULER).isPresent());
    }

    public void keep(Store store) {
        store.set(RULER, ruler.name());
        store.set(PAPER, paper.name());
        store.set(EATS, eats.map(length -> String.valueOf(length.nm())).orElse(""));
    }

    /** The same measured by another ruler and printed on another paper. */
    public Settings as(Ruler other, Paper sheet) {
        return new Settings(other, sheet, eats, asked);
    }

    /** The unit of a number that is typed without one. */
    public Unit bare() {
        return ruler.unit();
    }

    /** As usual in her unit, cut to the marks of her ruler. */
    public Making making() {
        Making usual = ruler.isMetric() ? Making.metric() : Making.inches();
        Margins margins = new Margins(usual.leeway(), usual.trim(), ruler.step());
        SeamKind seam = eats.flatMap(
                        length -> new SewingHand(SewingHand.FEWEST, length, Length.ZERO).applied(usual.seam()))
                .orElse(usual.seam());
        return new Making(seam, usual.hem(), margins, usual.fell());
    }

    /** As usual in her unit, before anything is learnt from her work. */
    public SeamKind usualSeam() {
        return (ruler.isMetric() ? Making.metric() : Making.inches()).seam();
    }

    public PiecingRules rules() {
        return ruler.isMetric() ? PiecingRules.metric() : PiecingRules.inches();
    }
}
