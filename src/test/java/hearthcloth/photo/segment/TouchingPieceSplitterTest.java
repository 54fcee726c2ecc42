package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayU8;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two squares of 40 pixels side by side, joined by a bridge 6 long and so many high. */
class TouchingPieceSplitterTest {

    @ParameterizedTest(name = "a bridge of {0} parts by {1}: {2}")
    @CsvSource({"0, 5, 2", "6, 5, 2", "10, 5, 2", "12, 5, 1", "12, 10, 2", "20, 10, 2", "24, 10, 1"})
    void a_shape_parts_where_it_is_narrow_and_nowhere_else(int bridge, int half, int parts) {
        GrayU8 mask = new GrayU8(110, 60);
        fill(mask, 10, 10, 40, 40);
        fill(mask, 56, 10, 40, 40);
        fill(mask, 50, 20, 6, bridge);

        GrayU8 apart = TouchingPieceSplitter.of(mask, half);

        assertThat(BinaryImageOps.contour(apart, ConnectRule.FOUR, null)).hasSize(parts);
        assertThat(count(mask) - count(apart)).isBetween(0, bridge * (6 + 1));
    }

    private static void fill(GrayU8 mask, int left, int top, int width, int height) {
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                mask.set(x, y, 1);
            }
        }
    }

    private static int count(GrayU8 mask) {
        int count = 0;
        for (byte b : mask.data) {
            count += b;
        }
        return count;
    }
}
