package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Place;
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
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No label over another, none off the sheet, each at 4.5 : 1 at least, over cloths and colours by chance. */
class LegibilityTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void every_label_of_every_picture_can_be_read_in_one_language_or_another(long seed) {
        List<Language> languages = List.of(Language.values());
        read(seed, languages.get((int) (seed % languages.size())));
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void every_label_of_every_picture_can_be_read_in_every_language(long seed) {
        for (Language language : Language.values()) {
            read(seed, language);
        }
    }

    private static void read(long seed, Language language) {
        Plan plan = Samples.random(seed);
        Voice voice = Voice.of(language, seed % 3 == 0 ? Ruler.MILLIMETRES : Ruler.EIGHTHS);
        faces(plan, voice);
        cuts(plan, voice);
        for (Step step : plan.cloth().steps()) {
            Legible.check(new StepPicture(plan, step, voice.by(Ruler.EIGHTHS)).within(78, 78));
        }
    }

    @Test
    void a_cloth_of_many_small_patches_can_be_read_too() {
        Plan plan = Samples.large(5, 3);
        faces(plan, Voice.english(Ruler.MILLIMETRES));
        cuts(plan, Voice.english(Ruler.MILLIMETRES));
    }

    private static void faces(Plan plan, Voice voice) {
        for (Face face : Face.values()) {
            ScaledPicture drawn = new FacePicture(plan, face, voice).within(180, 185);
            assertThat(drawn.excess(180, 185)).isZero();
            Picture picture = drawn.picture();
            Legible.check(picture);
            assertThat(texts(picture))
                    .containsAll(plan.cloth().patches().stream()
                            .map(patch -> patch.place() instanceof Place.Hearth
                                    ? PatchName.of(patch, voice)
                                    : patch.place().label())
                            .toList());
            Legible.check(FaceSheet.of(plan, face, voice));
        }
    }

    private static void cuts(Plan plan, Voice voice) {
        for (PieceTask task : Guide.of(plan, voice).cutting()) {
            CutPicture cut = new CutPicture(plan, task, voice);
            ScaledPicture drawn = cut.within(180, 150);
            assertThat(drawn.excess(180, 150)).isZero();
            Picture picture = drawn.picture();
            Legible.check(picture);
            String all = String.join("\n", texts(picture));
            for (CutTree.Kept kept : task.cut().tree().kept()) {
                assertThat(all).contains(PatchName.of(kept.patch(), voice));
                assertThat(all).contains(cut.asItLies(kept.at().size(), Rounding.UP));
            }
            for (int number = 1; number <= task.lines().size(); number++) {
                String named = voice.language() == Language.ENGLISH ? "(cut )?" : "(.*\\D)?";
                String measured = voice.language() == Language.ENGLISH ? "(: .*)?" : "(\\D.*)?";
                assertThat(all).containsPattern("(?m)^" + named + number + measured + "$");
            }
        }
    }

    static List<String> texts(Picture picture) {
        return picture.words().stream().map(Mark.Words::text).toList();
    }
}
