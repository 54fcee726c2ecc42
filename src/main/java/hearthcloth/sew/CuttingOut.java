package hearthcloth.sew;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Turns the cutting plan of each piece into instructions for its cuts, in the order of {@link CutTree#cuts}: which
 * direction, how far from which edge, and what each side becomes. A patch is measured from the edge beside it where
 * that edge has been cut already, everything else from the left or the top. Sizes are whole marks of the ruler the plan
 * was made with; on any other ruler they are rounded up to the next mark.
 */
final class CuttingOut {

    private final PieceCut piece;
    private final Map<String, Laid> laid;
    private final Length leastPiece;
    private final MakerWords words;
    private final Map<Rect, String> names = new HashMap<>();
    private int rests;

    private CuttingOut(PieceCut piece, Map<String, Laid> laid, Length leastPiece, MakerWords words) {
        this.piece = piece;
        this.laid = laid;
        this.leastPiece = leastPiece;
        this.words = words;
        names.put(piece.tree().at(), words.said().nameThePiece());
    }

    static List<PieceTask> of(Plan plan, MakerWords words) {
        Map<String, Laid> laid = plan.laid();
        return plan.cuts().stream()
                .map(cut -> new CuttingOut(cut, laid, plan.rules().leastPiece(), words).task())
                .toList();
    }

    private PieceTask task() {
        List<CutLine> lines = new ArrayList<>();
        for (CutTree.Parted cut : piece.tree().cuts()) {
            Side from = from(cut);
            CutTree measured = from == Side.LEFT || from == Side.TOP ? cut.first() : cut.second();
            lines.add(new CutLine(lines.size() + 1, cut, from, extent(cut, measured), sentence(cut, from, measured)));
        }
        return new PieceTask(piece, title(), lines, gives(), left());
    }

    private String title() {
        String id = id();
        String fabric = piece.piece().fabric().name();
        String size = words.had(piece.piece().size());
        return piece.past()
                ? words.said().cutTitleDone(fabric, id, size)
                : words.said().cutTitle(fabric, id, size);
    }

    private String id() {
        return piece.piece().id();
    }

    private String sentence(CutTree.Parted cut, Side from, CutTree measured) {
        CutTree other = measured.equals(cut.first()) ? cut.second() : cut.first();
        String what = name(cut);
        String gives = becomes(measured);
        String leaves = becomes(other);
        return MakerWords.capital(words.said()
                .cutLine(
                        gives,
                        leaves,
                        words.cut(extent(cut, measured)),
                        from.word(),
                        cut.upright() ? "down" : "across",
                        what));
    }

    private Side from(CutTree.Parted cut) {
        boolean first =
                !(cut.second() instanceof CutTree.Kept && isCutAlready(cut)) || cut.first() instanceof CutTree.Kept;
        if (cut.upright()) {
            return first ? Side.LEFT : Side.RIGHT;
        }
        return first ? Side.TOP : Side.BOTTOM;
    }

    /** Whether the far edge of what is cut is no longer an edge of the piece itself, so that it is straight. */
    private boolean isCutAlready(CutTree.Parted cut) {
        Rect whole = piece.tree().at();
        return cut.upright()
                ? cut.at().right().isLessThan(whole.right())
                : cut.at().bottom().isLessThan(whole.bottom());
    }

    private static Length extent(CutTree.Parted cut, CutTree part) {
        return cut.upright() ? part.at().width() : part.at().height();
    }

    private String name(CutTree tree) {
        return Objects.requireNonNullElse(names.get(tree.at()), words.said().nameThePiece());
    }

    private String becomes(CutTree tree) {
        if (tree instanceof CutTree.Kept kept) {
            return label(kept);
        }
        if (tree instanceof CutTree.Left left) {
            return isReusable(left.at())
                    ? words.said().nameOffcut(offcut(left.at()))
                    : words.said().nameScrap();
        }
        rests++;
        String name = words.said().nameStrip(id() + letter(rests));
        names.put(tree.at(), name);
        return name;
    }

    /** Offcuts are numbered from 1, largest first. */
    private String offcut(Rect left) {
        return Integer.toString(
                piece.tree().left().stream().filter(this::isReusable).toList().indexOf(left) + 1);
    }

    private static String letter(int number) {
        String last = String.valueOf((char) ('a' + (number - 1) % 26));
        return number <= 26 ? last : letter((number - 1) / 26) + last;
    }

    private String label(CutTree.Kept kept) {
        return words.patch(patch(kept));
    }

    private Patch patch(CutTree.Kept kept) {
        return Objects.requireNonNull(laid.get(kept.patch()), kept.patch()).patch();
    }

    private List<String> gives() {
        List<String> gives = new ArrayList<>();
        for (CutTree.Kept kept : piece.tree().kept()) {
            gives.add(MakerWords.capital(words.said()
                    .cutGives(how(kept), label(kept), words.cut(kept.at().size()))));
        }
        return gives;
    }

    private String how(CutTree.Kept kept) {
        boolean whole = kept == piece.tree();
        return kept.turned() ? whole ? "turnedWhole" : "turned" : whole ? "whole" : "plain";
    }

    private List<String> left() {
        List<String> left = new ArrayList<>();
        int bits = 0;
        for (Rect rect : piece.tree().left()) {
            if (isReusable(rect)) {
                left.add(words.said().cutKeep(offcut(rect), words.had(rect.size())));
            } else {
                bits++;
            }
        }
        if (bits > 0) {
            left.add(words.said().cutScraps(bits));
        }
        return left;
    }

    private boolean isReusable(Rect rect) {
        return CutTree.isReusable(rect.size(), leastPiece);
    }
}
