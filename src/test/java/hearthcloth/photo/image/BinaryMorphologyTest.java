package hearthcloth.photo.image;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against BoofCV's erosion and dilation, pixel by pixel as often, and against its labels. */
class BinaryMorphologyTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 9, 14})
    void wears_and_grows_as_a_library_does_step_by_step(int half) {
        for (int seed = 0; seed < 40; seed++) {
            GrayU8 mask = blotches(new Random(seed), 61 + seed, 47, half);

            assertThat(isEqual(BinaryMorphology.worn(mask, half), BinaryImageOps.erode8(mask, half, null)))
                    .isTrue();
            assertThat(isEqual(BinaryMorphology.grown(mask, half), BinaryImageOps.dilate8(mask, half, null)))
                    .isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 9})
    void fills_all_but_what_a_library_labels_as_ground_at_the_rim(int half) {
        for (int seed = 0; seed < 40; seed++) {
            Random chance = new Random(seed);
            GrayU8 mask = blotches(chance, 61 + seed, 47, half);
            GrayU8 holes = blotches(chance, 61 + seed, 47, half / 2);
            BinaryImageOps.logicXor(mask, holes, mask);

            assertThat(isEqual(BinaryMorphology.filled(mask), filled(mask))).isTrue();
        }
    }

    private static GrayU8 filled(GrayU8 mask) {
        GrayU8 ground = BinaryImageOps.invert(mask, null);
        GrayS32 labels = new GrayS32(mask.width, mask.height);
        BinaryImageOps.contour(ground, ConnectRule.FOUR, labels);
        Set<Integer> atRim = new HashSet<>();
        for (int y = 0; y < mask.height; y++) {
            for (int x = 0; x < mask.width; x++) {
                if (x == 0 || y == 0 || x == mask.width - 1 || y == mask.height - 1) {
                    atRim.add(labels.get(x, y));
                }
            }
        }
        GrayU8 out = new GrayU8(mask.width, mask.height);
        for (int i = 0; i < out.data.length; i++) {
            int label = labels.data[i];
            out.data[i] = (byte) (label != 0 && atRim.contains(label) ? 0 : 1);
        }
        return out;
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
