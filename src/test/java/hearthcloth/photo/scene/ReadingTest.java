package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A small part of {@link Evaluation}, to notice when reading gets worse. */
class ReadingTest {

    @ParameterizedTest(name = "seed {0}, {1}, tilt {2}")
    @CsvSource({"2001, WOOD, 20", "2002, CARPET, 35"})
    void drawn_photographs_are_read_as_they_were_drawn(long seed, Floor.Kind floor, double tilt) throws IOException {
        Scene scene = Scenes.drawn(seed, new Scenes.Wish(floor, tilt, 2.1, 9, Scenes.A4));
        List<Double> heard = new ArrayList<>();
        ReadingProgress progress = (share, what) -> heard.add(share);

        Reading reading = PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.6f), ReferenceSheet.A4, progress);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        Verdict verdict = new Verdict(scene, (Reading.Read) reading, "seed " + seed);
        assertThat(verdict.missed).isEmpty();
        assertThat(verdict.invented).isEmpty();
        List<Verdict.SideCheck> sure =
                verdict.sides.stream().filter(s -> !s.doubted()).toList();
        assertThat(sure.stream().filter(Verdict.SideCheck::good).count())
                .isGreaterThanOrEqualTo(sure.size() * 17L / 20);
        assertThat(sure.stream().filter(Verdict.SideCheck::held).count())
                .isGreaterThanOrEqualTo(sure.size() * 17L / 20);
        assertThat(verdict.uses).filteredOn(use -> !use.doubted()).isNotEmpty().allSatisfy(use -> {
            assertThat(use.overMm()).isLessThan(0.25);
            assertThat(use.share()).isGreaterThan(0.9);
        });
        assertThat(heard).isSorted().hasSizeGreaterThan(3);
    }
}
