package hearthcloth.web.stash;

import hearthcloth.measure.Rounding;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.store.Store;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.PieceDrawing;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of a line, to be shown while she types.
 *
 * @param told what is said of it
 * @param trouble true where she pressed Enter and it cannot be taken
 */
@PageView.Template("part/stash-heard.jte")
public record StashHeard(Language language, Optional<PieceDrawing> drawn, String count, Told told, boolean trouble)
        implements PageView {

    private static final double PIXELS = 96;

    /**
     * In words.
     *
     * @param words what was understood, or what is still asked; empty for an empty line
     * @param note what she should know; may be empty
     */
    private record Told(String words, String about, String note) {}

    /** Of an empty line. */
    static StashHeard nothing(Language language) {
        return asking(language, "", "", false);
    }

    private static StashHeard asking(Language language, String words, String about, boolean entered) {
        return new StashHeard(language, Optional.empty(), "", new Told(words, about, ""), entered);
    }

    public String words() {
        return told.words;
    }

    public String about() {
        return told.about;
    }

    public String note() {
        return told.note;
    }

    static StashHeard of(String line, Store store, Voice voice, boolean entered) {
        Language language = voice.language();
        if (line.isEmpty()) {
            return nothing(language);
        }
        if (line.strip().contains("\n")) {
            return many(line, voice, entered);
        }
        SpokenLine said = SpokenPieces.hear(line, voice.ruler().unit());
        if (said instanceof SpokenLine.Unclear unclear) {
            return asking(language, ErrorPages.upright(unclear.said().in(voice)), "", entered);
        }
        StashingWords words = StashingWords.in(language);
        SpokenPieces pieces = (SpokenPieces) said;
        Arrivals arrivals = new Arrivals(store.stash().whole(), 0);
        Fabric fabric = arrivals.fabric(pieces);
        double scale =
                PieceDrawing.scale(pieces.size().width().max(pieces.size().height()), PIXELS);
        return new StashHeard(
                language,
                Optional.of(PieceDrawing.of(
                        pieces.size(),
                        fabric,
                        pieces.count(),
                        scale,
                        store.swatches().across(),
                        "heard-cloth")),
                pieces.count() + " ×",
                new Told(
                        words.heardWhat(fabric.name(), voice.write(pieces.size(), Rounding.NEAREST)),
                        words.heardAbout(
                                FabricSaid.and(
                                        FabricSaid.about(fabric, language),
                                        words.washed(pieces.washed().name()),
                                        language),
                                voice.number(pieces.size().height(), Rounding.NEAREST),
                                voice.number(pieces.size().width(), Rounding.NEAREST)),
                        arrivals.differs(pieces)
                                ? words.heardKnown(FabricSaid.about(fabric, language), fabric.name())
                                : ""),
                false);
    }

    /** Of many lines: how many pieces they are, and the first that is unclear. */
    private static StashHeard many(String text, Voice voice, boolean entered) {
        StashingWords words = StashingWords.in(voice.language());
        List<SpokenPieces> heard = new ArrayList<>();
        List<String> unclear = new ArrayList<>();
        for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
            SpokenLine said = SpokenPieces.hear(line, voice.ruler().unit());
            if (said instanceof SpokenPieces pieces) {
                heard.add(pieces);
            } else if (said instanceof SpokenLine.Unclear wrong) {
                unclear.add(words.lineUnclear(line.strip(), wrong.said().in(voice)));
            }
        }
        int pieces = heard.stream().mapToInt(SpokenPieces::count).sum();
        int fabrics = (int) heard.stream().map(SpokenPieces::name).distinct().count();
        String about = unclear.isEmpty() ? "" : words.heardUnclear(unclear.get(0), unclear.size());
        return pieces == 0
                ? asking(voice.language(), about, "", entered)
                : asking(voice.language(), words.heardFabrics(fabrics, words.pieces(pieces)), about, entered);
    }
}
