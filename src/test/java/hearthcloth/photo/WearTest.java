package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.image.GrayU8;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against BoofCV's erosion and dilation, pixel by pixel as often. */
class WearTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 9, 14})
    void wears_and_grows_as_a_library_does_step_by_step(int half) {
        for (int seed = 0; seed < 40; seed++) {
            GrayU8 mask = blotches(new Random(seed), 61 + seed, 47, half);

            assertThat(isEqual(Wear.worn(mask, half), BinaryImageOps.erode8(mask, half, null)))
                    .isTrue();
            assertThat(isEqual(Wear.grown(mask, half), BinaryImageOps.dilate8(mask, half, null)))
                    .isTrue();
        }
    }

    private static boolean isEqual(GrayU8 one, GrayU8 other) {
        return Arrays.equals(one.data, other.data);
    }

    private static GrayU8 blotches(Random chance, int width, int height, int half) {
        GrayU8 mask = new GrayU8(width, height);
        for (int n = 0; n < 5; n++) {
            int x0 = chance.nextInt(width) - half;
            int y0 = chance.nextInt(height) - half;
            int x1 = x0 + chance.nextInt(5 * half + 2);
            int y1 = y0 + chance.nextInt(5 * half + 2);
            for (int y = Math.max(0, y0); y <= Math.min(height - 1, y1); y++) {
                for (int x = Math.max(0, x0); x <= Math.min(width - 1, x1); x++) {
                    mask.set(x, y, 1);
                }
            }
        }
        return mask;
    }
}
