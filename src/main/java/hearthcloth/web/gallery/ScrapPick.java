package hearthcloth.web.gallery;

import hearthcloth.measure.Rounding;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.ScrapForm;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * A piece that a cloth of scraps may be asked to have.
 *
 * @param words its number, fabric and size
 * @param fill how its fabric is drawn
 * @param in whether the cloth has to have it
 */
public record ScrapPick(String id, String words, String fill, boolean in) {

    static List<ScrapPick> all(Stash stash, ScrapForm wished, Swatches swatches, Voice voice) {
        DesigningWords words = DesigningWords.in(voice.language());
        return stash.pieces().stream()
                .map(piece -> new ScrapPick(
                        piece.id(),
                        words.piecingPiece(
                                piece.fabric().name(), piece.id(), voice.write(piece.size(), Rounding.NEAREST)),
                        swatches.fill(piece.fabric()),
                        wished.isIn(piece.id())))
                .toList();
    }
}
