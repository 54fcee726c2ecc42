package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.words.sewing.SewingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What comes before the first seam: laying everything out, and one seam tried on scraps. */
final class TrialSeam {

    private TrialSeam() {}

    static Task layout(Cloth cloth, SewingWords words) {
        int patches = cloth.patches().size();
        List<String> lines = new ArrayList<>();
        lines.add(words.layAll(patches));
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Bar)) {
            lines.add(words.layBars());
        }
        if (cloth.patches().stream().anyMatch(patch -> patch.place() instanceof Place.Free free && free.task() > 0)) {
            lines.add(words.layLetters());
        }
        lines.add(words.layLook());
        lines.add(words.layStack());
        lines.add(words.layWork());
        return Task.of(words.layTitle(), lines)
                .inShort(List.of(words.fewLayOut(patches), words.fewLayLook(), words.fewLayStack()));
    }

    /** The trial seam. Two scraps of 4 in or 10 cm lose n + W together, which shows quickly how one's machine sews. */
    static Task seam(Cloth cloth, MakerWords words) {
        SewingWords said = words.said();
        Making making = cloth.making();
        Length side = words.ruler().isMetric() ? Length.cm(10) : Length.inches(4);
        Size sewn = new Size(side.times(2).minus(making.seam().loss()), side);
        return new Task(
                said.trialTitle(),
                trial(making, side, words, cloth.isFree()),
                Optional.of(new Task.Check(sewn, said.trialCheck(words.measured(sewn)))),
                List.of(said.trialFells(MakerWords.face(making.fell()))),
                FewWords.fitted(List.of(
                        said.fewTrialCut(words.cut(side)),
                        said.fewTrialLength(words.stitch()),
                        said.fewTrialNarrow(),
                        said.fewTrialWide(),
                        said.fewTrialMeasure())));
    }

    private static List<String> trial(Making making, Length side, MakerWords words, boolean free) {
        SewingWords said = words.said();
        List<String> lines = new ArrayList<>();
        lines.add(said.trialCut(words.cut(side)));
        lines.add(said.trialLength(
                words.exact(making.seam().loss()),
                words.exact(making.seam().narrow()),
                words.stitch(),
                words.exact(making.seam().wide())));
        lines.add(said.trialWidth());
        if (free) {
            lines.add(said.trialFree());
        } else if (making.leeway().isPositive()) {
            lines.add(said.trialLeeway(words.exact(making.leeway())));
        }
        return lines;
    }
}
