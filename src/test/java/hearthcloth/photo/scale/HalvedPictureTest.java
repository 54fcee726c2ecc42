package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A photograph looked at half the size: each pixel is the mean of four, and what is read there holds in the whole one. */
class HalvedPictureTest {

    private static final long SEED = 20;

    @Test
    void each_pixel_is_the_mean_of_four() {
        PixelImage whole = new PixelImage(5, 3);
        whole.put(2, 0, 10, 250, 1);
        whole.put(3, 0, 20, 250, 2);
        whole.put(2, 1, 30, 250, 4);
        whole.put(3, 1, 40, 253, 5);

        PixelImage half = whole.halved();

        assertThat(List.of(half.width, half.height)).containsExactly(2, 1);
        assertThat(half.rgb(0, 0)).isZero();
        assertThat(half.rgb(1, 0)).isEqualTo(25 << 16 | 251 << 8 | 3);
    }

    @Test
    void places_lengths_and_what_is_unsure_of_them_are_the_same_on_the_floor() {
        PixelImage half = new PixelImage(1200, 900);
        LensModel lens = LensModel.unknown(half).with(0.03, 0.004);
        List<Point> corners =
                List.of(new Point(300, 200), new Point(520, 215), new Point(505, 530), new Point(290, 520));
        FloorScale small = FloorScale.of(
                new SheetFinder.Found(0, corners, new FloorPlane.Turned(210, 297), 0.01, 0, 0.4),
                ReferenceSheet.A4,
                lens,
                half,
                Optional.of(0.8));

        FloorScale large = small.enlarged(2);

        assertThat(List.of(large.pictureWidth(), large.pictureHeight())).containsExactly(2400, 1800);
        Random chance = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            Point a = new Point(chance.nextInt(1200), chance.nextInt(900));
            Point b = new Point(chance.nextInt(1200), chance.nextInt(900));
            assertThat(large.onFloor(a.times(2)).to(small.onFloor(a))).isLessThan(1e-6);
            assertThat(large.inPicture(large.onFloor(a.times(2))).to(a.times(2)))
                    .isLessThan(1e-3);
            assertThat(large.seenDeviation(a.times(2), b.times(2), 0.2))
                    .isEqualTo(small.seenDeviation(a, b, 0.2), offset(1e-6));
            assertThat(large.pixelsPerMm(a.times(2))).isEqualTo(2 * small.pixelsPerMm(a), offset(0.05));
        }
    }
}
