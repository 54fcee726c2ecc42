package hearthcloth.web.stash;

import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.store.Store;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.PieceDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of a line, to be shown while she types.
 *
 * @param words what was understood, or what is still asked; empty for an empty line
 * @param note what she should know; may be empty
 * @param trouble true where she pressed Enter and it cannot be taken
 */
@PageView.Template("part/stash-heard.jte")
public record StashHeard(
        Optional<PieceDrawing> drawn, String count, String words, String about, String note, boolean trouble)
        implements PageView {

    private static final double PIXELS = 96;

    static final StashHeard NOTHING = new StashHeard(Optional.empty(), "", "", "", "", false);

    static StashHeard of(String line, Store store, Ruler ruler, boolean entered) {
        if (line.isEmpty()) {
            return NOTHING;
        }
        if (line.strip().contains("\n")) {
            return many(line, ruler, entered);
        }
        SpokenLine said = SpokenPieces.hear(line, ruler.unit());
        if (said instanceof SpokenLine.Unclear unclear) {
            return new StashHeard(Optional.empty(), "", ErrorPages.upright(unclear.sentence()), "", "", entered);
        }
        SpokenPieces pieces = (SpokenPieces) said;
        Arrivals arrivals = new Arrivals(store.stash().whole(), 0);
        Fabric fabric = arrivals.fabric(pieces);
        double scale =
                PieceDrawing.scale(pieces.size().width().max(pieces.size().height()), PIXELS);
        String washed = StashView.washed(pieces.washed());
        return new StashHeard(
                Optional.of(PieceDrawing.of(
                        pieces.size(),
                        fabric,
                        pieces.count(),
                        scale,
                        store.swatches().across(),
                        "heard-cloth")),
                pieces.count() + " ×",
                ruler.write(pieces.size(), Rounding.NEAREST) + ", " + fabric.name(),
                StashView.about(fabric) + (washed.isEmpty() ? "" : ", " + washed) + "; "
                        + ruler.number(pieces.size().width(), Rounding.NEAREST) + " wide, "
                        + ruler.number(pieces.size().height(), Rounding.NEAREST) + " along the selvage",
                arrivals.differs(pieces)
                        ? fabric.name() + " is in your stash already and stays as it is there: "
                                + StashView.about(fabric) + "."
                        : "",
                false);
    }

    /** Of many lines: how many pieces they are, and the first that is unclear. */
    private static StashHeard many(String text, Ruler ruler, boolean entered) {
        List<SpokenPieces> heard = new ArrayList<>();
        List<String> unclear = new ArrayList<>();
        for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
            SpokenLine said = SpokenPieces.hear(line, ruler.unit());
            if (said instanceof SpokenPieces pieces) {
                heard.add(pieces);
            } else if (said instanceof SpokenLine.Unclear wrong) {
                unclear.add("“" + line.strip() + "”: " + wrong.sentence() + ".");
            }
        }
        int pieces = heard.stream().mapToInt(SpokenPieces::count).sum();
        long fabrics = heard.stream().map(SpokenPieces::name).distinct().count();
        String words = StashView.pieces(pieces) + " of " + fabrics + (fabrics == 1 ? " fabric" : " fabrics");
        String about = unclear.isEmpty()
                ? ""
                : unclear.size() == 1
                        ? "One line is unclear. " + unclear.get(0)
                        : unclear.size() + " lines are unclear; the first: " + unclear.get(0);
        return new StashHeard(Optional.empty(), "", pieces == 0 ? about : words, pieces == 0 ? "" : about, "", entered);
    }
}
