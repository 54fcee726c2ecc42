package hearthcloth.photo.image;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import hearthcloth.photo.image.ConnectedComponents.Island;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link ConnectedComponents} beside joining neighbours until nothing changes. */
class ConnectedComponentsTest {

    /** For each pixel the least pixel that it hangs together with; -1 where the mask is empty. */
    private static int[] least(GrayU8 mask) {
        int[] least = new int[mask.data.length];
        for (int i = 0; i < least.length; i++) {
            least[i] = mask.data[i] != 0 ? i : -1;
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < least.length; i++) {
                for (int k = 0; k < least.length && least[i] >= 0; k++) {
                    boolean near = Math.abs(i % mask.width - k % mask.width) <= 1
                            && Math.abs(i / mask.width - k / mask.width) <= 1;
                    if (near && least[k] >= 0 && least[k] < least[i]) {
                        least[i] = least[k];
                        changed = true;
                    }
                }
            }
        }
        return least;
    }

    @Test
    void pixels_that_touch_at_a_side_or_corner_are_one_component() {
        SplittableRandom chance = new SplittableRandom(32);
        for (int round = 0; round < 60; round++) {
            GrayU8 mask = new GrayU8(4 + chance.nextInt(8), 4 + chance.nextInt(8));
            for (int i = 0; i < mask.data.length; i++) {
                mask.data[i] = (byte) (chance.nextInt(3) == 0 ? 1 : 0);
            }
            int[] least = least(mask);
            ConnectedComponents components = new ConnectedComponents(mask);
            Set<Integer> seen = new HashSet<>();
            for (Island island : components.all()) {
                List<Integer> pixels = new ArrayList<>();
                for (int i = island.from(); i < island.to(); i++) {
                    pixels.add(components.pixel(i));
                }
                int mark = least[pixels.get(0)];
                assertThat(mark).isNotNegative();
                assertThat(pixels).hasSize((int)
                        Arrays.stream(least).filter(l -> l == mark).count());
                assertThat(pixels).allMatch(p -> least[p] == mark && seen.add(p));
                assertThat(island.area()).isEqualTo(pixels.size());
                assertBox(mask, island, pixels);
            }
            assertThat(seen)
                    .hasSize((int) Arrays.stream(least).filter(l -> l >= 0).count());
        }
    }

    private static void assertBox(GrayU8 mask, Island island, List<Integer> pixels) {
        int left = pixels.stream().mapToInt(p -> p % mask.width).min().orElseThrow();
        int right = pixels.stream().mapToInt(p -> p % mask.width).max().orElseThrow();
        int top = pixels.stream()
                .mapToInt(p -> Math.floorDiv(p, mask.width))
                .min()
                .orElseThrow();
        int low = pixels.stream()
                .mapToInt(p -> Math.floorDiv(p, mask.width))
                .max()
                .orElseThrow();
        assertThat(List.of(island.left(), island.top(), island.right(), island.low()))
                .containsExactly(left, top, right, low);
        assertThat(island.span()).isEqualTo(Math.max(right - left, low - top) + 1);
        // within one pixel of the picture's side counts as touching it
        assertThat((island.sides() & 1) != 0).isEqualTo(left <= 1);
        assertThat((island.sides() & 2) != 0).isEqualTo(top <= 1);
        assertThat((island.sides() & 4) != 0).isEqualTo(right >= mask.width - 2);
        assertThat((island.sides() & 8) != 0).isEqualTo(low >= mask.height - 2);
    }

    @Test
    void an_island_tells_the_middle_of_its_box() {
        GrayU8 mask = new GrayU8(20, 20);
        for (int x = 4; x <= 10; x++) {
            mask.set(x, 6, 1);
            mask.set(x, 7, 1);
            mask.set(x, 8, 1);
        }

        Island island = new ConnectedComponents(mask).all().get(0);

        assertThat(island.area()).isEqualTo(21);
        assertThat(island.span()).isEqualTo(7);
        assertThat(island.middleX()).isEqualTo(7);
        assertThat(island.middleY()).isEqualTo(7);
        assertThat(island.sides()).isZero();
    }
}
