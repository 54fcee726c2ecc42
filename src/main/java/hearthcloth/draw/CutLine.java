package hearthcloth.draw;

import hearthcloth.measure.Length;
import hearthcloth.plan.CutTree;
import java.util.ArrayList;
import java.util.List;

/**
 * One cut with its number and how it is measured: from the outer edge of the part that the ruler lies on, which is the
 * part kept as it is, else the first.
 *
 * @param number from 1, in the order to cut
 * @param cut where
 * @param fromFirst measured from the left or top edge of what is cut, else from the opposite one
 * @param of which part is cut
 */
record CutLine(int number, CutTree.Parted cut, boolean fromFirst, Part of) {

    /**
     * The part of the piece that a cut goes through.
     *
     * @param cut the number of the cut that made it; 0 for the whole piece
     * @param measured true for the part that was under the ruler then, false for the rest
     */
    record Part(int cut, boolean measured) {
        static final Part WHOLE = new Part(0, true);
    }

    /** Every cut of {@code tree} in the order to make them. */
    static List<CutLine> of(CutTree tree) {
        List<CutLine> lines = new ArrayList<>();
        collect(tree, Part.WHOLE, lines);
        return List.copyOf(lines);
    }

    private static void collect(CutTree tree, Part of, List<CutLine> lines) {
        if (!(tree instanceof CutTree.Parted cut)) {
            return;
        }
        CutLine line = new CutLine(lines.size() + 1, cut, isFirstMeasured(cut), of);
        lines.add(line);
        collect(cut.first(), new Part(line.number, line.fromFirst), lines);
        collect(cut.second(), new Part(line.number, !line.fromFirst), lines);
    }

    private static boolean isFirstMeasured(CutTree.Parted cut) {
        if (cut.first() instanceof CutTree.Kept) {
            return true;
        }
        return !(cut.second() instanceof CutTree.Kept) && !(cut.first() instanceof CutTree.Left);
    }

    /** What the ruler shows: how wide the measured part is. */
    Length measure() {
        CutTree part = fromFirst ? cut.first() : cut.second();
        return cut.upright() ? part.at().width() : part.at().height();
    }

    /** The part under the ruler. */
    CutTree measured() {
        return fromFirst ? cut.first() : cut.second();
    }

    /** What lies on the other side. */
    CutTree rest() {
        return fromFirst ? cut.second() : cut.first();
    }
}
