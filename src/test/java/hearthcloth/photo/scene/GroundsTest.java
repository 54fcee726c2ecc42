package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grounds of more than one colour: a figured rug, a mat and the table beyond it, a floor half in hard shade. */
class GroundsTest {

    @ParameterizedTest(name = "{1}, seed {0}")
    @CsvSource({"4101, RUG", "4201, MAT"})
    void pieces_are_found_on_ground_of_several_colours(long seed, Floor.Kind floor) throws IOException {
        found(seed, floor);
    }

    @Tag("long")
    @ParameterizedTest(name = "{1}, seed {0}")
    @CsvSource({"4102, RUG", "4202, MAT"})
    void more_pieces_are_found_on_ground_of_several_colours(long seed, Floor.Kind floor) throws IOException {
        found(seed, floor);
    }

    private static void found(long seed, Floor.Kind floor) throws IOException {
        Scene scene = Scenes.drawn(seed, new Scenes.Wish(floor, 8, 2.1, 18, Scenes.A4));

        Verdict verdict = read(scene);

        assertThat(verdict.missed).isEmpty();
        assertThat(verdict.invented).isEmpty();
        assertThat(verdict.found).isGreaterThan(4);
    }

    @Test
    void a_hard_shadow_parts_no_ground() throws IOException {
        Scene plain = Scenes.drawn(4301, new Scenes.Wish(Floor.Kind.PLAIN, 8, 2.1, 9, Scenes.A4));
        Light.Shadow hard = new Light.Shadow(-1500, -1200, 1500, 1500, 0.45, 0.003);
        Light light = new Light(0.0001, 0, List.of(hard), 0.2, 0.2);

        Verdict verdict = read(new Scene(plain.floor, plain.scraps, light, plain.camera, 2, 4301));

        assertThat(verdict.missed).isEmpty();
        assertThat(verdict.invented).isEmpty();
        assertThat(verdict.found).isGreaterThan(4);
    }

    private static Verdict read(Scene scene) throws IOException {
        byte[] jpeg = Evaluation.jpeg(scene.photograph(), 0.7f);
        Reading reading = PhotoReader.read(jpeg, ReferenceSheet.A4, ReadingProgress.NONE);
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return new Verdict(scene, (Reading.Read) reading, "drawn");
    }
}
