package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plain sheet in plain view is read on floors that are hard to read on, and nothing of the floor comes as a piece undoubted. */
class PlainSheetTest {

    @ParameterizedTest
    @CsvSource({"6, HERRINGBONE", "7, TILES", "8, CHIPS", "9, CREASED"})
    void a_sheet_in_plain_view_is_read_on_boards_tiles_chips_and_folds(long seed, Floor.Kind floor) throws IOException {
        Scene scene = Scenes.drawn(seed, new Scenes.Wish(floor, 8, 2.1, 8, Scenes.A4));
        Reading reading =
                PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.7f), ReferenceSheet.A4, ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        Verdict verdict = new Verdict(scene, (Reading.Read) reading, floor.name());
        assertThat(PlainSheetEvaluation.isWrong(scene, (Reading.Read) reading)).isFalse();
        assertThat(verdict.invented).as("undoubted").allMatch(one -> one.endsWith("doubted"));
        assertThat(verdict.found).isGreaterThanOrEqualTo(verdict.visible - 1);
    }
}
