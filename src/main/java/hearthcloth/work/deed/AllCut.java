package hearthcloth.work.deed;

import hearthcloth.cloth.Rect;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.util.ArrayList;
import java.util.List;

/**
 * All of a cloth is cut: its pieces, but for those that were cut before, are used up, and the offcuts that can be used again
 * come back with numbers of their own.
 *
 * @param next the first number that is free for a new piece
 */
public record AllCut(Project cloth, int next) {

    /**
     * Finishes the cutting.
     *
     * @param name of the cloth
     */
    public Deed of(String name) {
        return Deed.of(
                label(name),
                cloth.with(cloth.life().at(Stage.CUT)),
                pieces(cloth.plan().orElseThrow()));
    }

    /** How this is called in the journal. */
    public static Sentence label(String name) {
        return MendingSentences.deedAllCut(Argument.text(name));
    }

    private Deed.Pieces pieces(Plan plan) {
        List<Piece> gone = new ArrayList<>();
        List<Piece> offcuts = new ArrayList<>();
        for (PieceCut cut : plan.cuts()) {
            // One that was cut into by mistake gives no patch, and is a whole piece no more.
            if (cut.past() || cut.tree() instanceof CutTree.Left) {
                continue;
            }
            gone.add(cut.piece());
            for (Rect left : cut.tree().left()) {
                if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                    offcuts.add(cut.piece().part(next + offcuts.size(), left.size()));
                }
            }
        }
        return new Deed.Pieces(gone, offcuts);
    }
}
