package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What comes before the first seam: laying everything out, and one seam tried on scraps. */
final class TrialSeam {

    private TrialSeam() {}

    static Task layout(Cloth cloth) {
        int patches = cloth.patches().size();
        List<String> lines = new ArrayList<>();
        lines.add("Lay out " + (patches == 1 ? "the one patch" : "all " + patches + " patches")
                + " as in the picture of the front, each with its slip.");
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Bar)) {
            lines.add("The hearth is the centre. A bar is named by its round and its turn: 2C is the third bar of the"
                    + " second round. 2C·1 is the first part of that bar.");
        }
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Free free && free.task() > 0)) {
            lines.add(
                    "A letter is a small task. Sew all of A together first, then all of B and so on, in the order of the"
                            + " numbers. Keep each letter in its own pile.");
        }
        lines.add("Step back and look. Now is the last time to swap two patches of the same size.");
        lines.add("Stack the patches in sewing order, the first on top.");
        lines.add("In the steps below, \"the work\" is everything sewn together so far.");
        return Task.of("Lay everything out", lines)
                .inShort(List.of(
                        "Lay out " + (patches == 1 ? "the one patch" : "all " + patches)
                                + " as in the picture, each with its slip.",
                        "Step back and look. Two of the same size can still be swapped.",
                        "Stack them in sewing order, the first on top."));
    }

    /** The trial seam. Two scraps of 4 in or 10 cm lose n + W together, which shows quickly how one's machine sews. */
    static Task seam(Cloth cloth, MakerWords words) {
        Making making = cloth.making();
        Length side = words.ruler().isMetric() ? Length.cm(10) : Length.inches(4);
        Size sewn = new Size(side.times(2).minus(making.seam().loss()), side);
        String fells = MakerWords.face(making.fell());
        String smooth = MakerWords.face(making.fell().other());
        return new Task(
                "Try the seam on two scraps",
                trial(making, side, words, cloth.isFree()),
                Optional.of(new Task.Check(
                        sewn,
                        "Together they should now measure " + words.measured(sewn)
                                + ". Measure across the seam first.")),
                List.of("All seams are pressed to the " + fells + ", and the " + smooth
                        + " stays smooth. This is how you tell front from back."),
                FewWords.fitted(List.of(
                        "Cut two scraps " + words.cut(side) + " square. Sew them as you will the first seam.",
                        "Set the stitch length to " + MakerWords.STITCH + ".",
                        "Too narrow? Stitch a thread nearer the edge next time.",
                        "Too wide? Stitch a thread farther in.",
                        "Measure after every step.")));
    }

    private static List<String> trial(Making making, Length side, MakerWords words, boolean free) {
        List<String> lines = new ArrayList<>();
        lines.add("Cut two scraps " + words.cut(side) + " square and sew them together as in the first seam below.");
        lines.add("Set the stitch length to " + MakerWords.STITCH + ". The seam takes up "
                + words.exact(making.seam().narrow()) + " of one edge and "
                + words.exact(making.seam().wide()) + " of the other: "
                + words.exact(making.seam().loss()) + " in all.");
        lines.add(
                "If the scraps come out too narrow, stitch a thread's width nearer the edge. If they come out too wide,"
                        + " stitch a thread's width farther in.");
        if (free) {
            lines.add(
                    "Measure after every step. Nothing is cut too long here. If a part is off by more than a thread or two,"
                            + " it no longer meets its neighbour.");
        } else if (making.leeway().isPositive()) {
            lines.add("Measure after every step. Every bar is cut " + words.exact(making.leeway())
                    + " too long, so a small difference does no harm. If it is off by more than that, unpick.");
        }
        return lines;
    }
}
