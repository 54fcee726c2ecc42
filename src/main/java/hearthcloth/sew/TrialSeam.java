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
        lines.add("Lay " + (patches == 1 ? "the one patch" : "all " + patches + " patches")
                + " as in the picture of the front, each with its label.");
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Bar)) {
            lines.add("The hearth is the middle. A bar is named by its round and its turn: 2C is the third bar of the"
                    + " second round, and 2C·1 the first part of it.");
        }
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Free free && free.task() > 0)) {
            lines.add("A letter is a small task: all of A is sewn together first, then B and so on, in the order of the"
                    + " numbers. Keep each letter in a pile of its own.");
        }
        lines.add("Step back and look: it is the last moment to swap two of one size.");
        lines.add("Stack them in sewing order, the first on top.");
        return Task.of("Lay everything out", lines);
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
                        sewn, "Together they should now measure " + words.measured(sewn) + ", across the seam first.")),
                List.of("All seams are turned to the " + fells + ", and the " + smooth
                        + " stays smooth: that is how you tell the faces apart."));
    }

    private static List<String> trial(Making making, Length side, MakerWords words, boolean free) {
        List<String> lines = new ArrayList<>();
        lines.add("Cut two scraps " + words.cut(side) + " square and sew them together as in the first seam below.");
        lines.add("The seam takes " + words.exact(making.seam().narrow()) + " of one edge and "
                + words.exact(making.seam().wide()) + " of the other, "
                + words.exact(making.seam().loss()) + " in all.");
        lines.add("If the scraps come out narrower, stitch a thread's width nearer the edge; if wider, farther in.");
        if (free) {
            lines.add(
                    "Measure after every step below: nothing is cut too long here, so a part that is off by more than a"
                            + " thread or two no longer meets its neighbour.");
        } else if (making.leeway().isPositive()) {
            lines.add("Measure after every step below. A little more or less does no harm, since every bar is cut "
                    + words.exact(making.leeway())
                    + " longer than it need be; if it is off by more than that, unpick.");
        }
        return lines;
    }
}
