package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Face;
import hearthcloth.draw.cloth.CutPicture;
import hearthcloth.draw.cloth.FacePicture;
import hearthcloth.draw.cloth.FaceSheet;
import hearthcloth.draw.cloth.PatchName;
import hearthcloth.draw.cloth.ScaledPicture;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No label over another, none off the sheet, each at 4.5 : 1 at least, over cloths and colours by chance. */
class LegibilityTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void every_label_of_every_picture_can_be_read(long seed) {
        Plan plan = Samples.random(seed);
        Ruler ruler = seed % 3 == 0 ? Ruler.MILLIMETRES : Ruler.EIGHTHS;
        faces(plan, ruler);
        cuts(plan, ruler);
        for (Step step : plan.cloth().steps()) {
            Legible.check(new StepPicture(plan, step, Voice.english(Ruler.EIGHTHS)).within(78, 78));
        }
    }

    @Test
    void a_cloth_of_many_small_patches_can_be_read_too() {
        Plan plan = Samples.large(5, 3);
        faces(plan, Ruler.MILLIMETRES);
        cuts(plan, Ruler.MILLIMETRES);
    }

    private static void faces(Plan plan, Ruler ruler) {
        for (Face face : Face.values()) {
            ScaledPicture drawn = new FacePicture(plan, face, Voice.english(ruler)).within(180, 185);
            assertThat(drawn.excess(180, 185)).isZero();
            Picture picture = drawn.picture();
            Legible.check(picture);
            assertThat(texts(picture))
                    .containsAll(plan.cloth().patches().stream()
                            .map(patch -> patch.place().label())
                            .toList());
            Legible.check(FaceSheet.of(plan, face, Voice.english(ruler)));
        }
    }

    private static void cuts(Plan plan, Ruler ruler) {
        for (PieceTask task : Guide.of(plan, ruler).cutting()) {
            CutPicture cut = new CutPicture(plan, task, Voice.english(ruler));
            ScaledPicture drawn = cut.within(180, 150);
            assertThat(drawn.excess(180, 150)).isZero();
            Picture picture = drawn.picture();
            Legible.check(picture);
            String all = String.join("\n", texts(picture));
            for (CutTree.Kept kept : task.cut().tree().kept()) {
                assertThat(all).contains(PatchName.of(kept.patch(), Voice.english(ruler)));
                assertThat(all).contains(cut.asItLies(kept.at().size(), Rounding.UP));
            }
            for (int number = 1; number <= task.lines().size(); number++) {
                assertThat(all).containsPattern("(?m)^(cut )?" + number + "(: .*)?$");
            }
        }
    }

    static List<String> texts(Picture picture) {
        return picture.words().stream().map(Mark.Words::text).toList();
    }
}
