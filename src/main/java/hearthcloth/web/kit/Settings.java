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
import hearthcloth.words.Language;
import hearthcloth.words.Preferred;
import hearthcloth.words.Spoken;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is asked once and can be changed: how she measures, which paper she prints on, what she speaks.
 *
 * @param eats what one of her seams eats, where she plans with what was learnt from her work
 * @param language of her own, in which the line of the stash is listened to; pages and prints follow as far as they are
 *     translated
 * @param asked false until she has said so; the first page asks
 */
public record Settings(Ruler ruler, Paper paper, Optional<Length> eats, Language language, boolean asked) {

    /**
     * The form that asks how she measures and prints, as {@code part/measures.jte} shows it.
     *
     * @param token proves that the form came from one of our own pages
     * @param back the page that is gone to afterwards
     */
    public record Form(Settings settings, String token, String back) {}

    private static final String RULER = "ruler";
    private static final String PAPER = "paper";
    private static final String EATS = "seam.eats";
    private static final String LANGUAGE = "language";

    /** Before anybody has said how she measures. */
    static Settings unasked(Preferred reader) {
        return new Settings(usual(reader), Paper.usedIn(reader.region()), Optional.empty(), reader.language(), false);
    }

    /** Inches for who reads English, and in the United States; centimetres elsewhere (ours). */
    private static Ruler usual(Preferred reader) {
        boolean inches =
                reader.language() == Language.ENGLISH || reader.region().equals("US");
        return inches ? Ruler.EIGHTHS : Ruler.MILLIMETRES;
    }

    /** What is kept, and where nothing is, what the reader's browser says. */
    static Settings of(Store store, Preferred reader) {
        Settings usual = unasked(reader);
        Map<String, String> kept = store.settings(List.of(RULER, PAPER, EATS, LANGUAGE));
        Optional<Ruler> ruler = Optional.ofNullable(kept.get(RULER)).map(Ruler::valueOf);
        Paper paper = Optional.ofNullable(kept.get(PAPER)).map(Paper::valueOf).orElse(usual.paper());
        Optional<Length> eats = Optional.ofNullable(kept.get(EATS))
                .filter(text -> text.matches("\\d{1,12}"))
                .map(text -> new Length(Long.parseLong(text)));
        Language language = Optional.ofNullable(kept.get(LANGUAGE))
                .flatMap(Language::tagged)
                .orElse(usual.language());
        return new Settings(ruler.orElse(usual.ruler()), paper, eats, language, ruler.isPresent());
    }

    public void keep(Store store) {
        store.set(RULER, ruler.name());
        store.set(PAPER, paper.name());
        store.set(LANGUAGE, language.tag());
        store.set(EATS, eats.map(length -> String.valueOf(length.nm())).orElse(""));
    }

    /** The same measured by another ruler and printed on another paper. */
    public Settings as(Ruler other, Paper sheet) {
        return new Settings(other, sheet, eats, language, asked);
    }

    /** The language that pages are written in for her. */
    public Language pages() {
        return Spoken.onPages(language);
    }

    /** How pages speak to her. */
    public Voice voice() {
        return Voice.of(pages(), ruler);
    }

    /** How the steps of sewing speak to her, which are translated before the pages round them. */
    public Voice stepVoice() {
        return Voice.of(Spoken.inGuides(language), ruler);
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
