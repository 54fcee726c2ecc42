package hearthcloth.photo;

import boofcv.struct.image.GrayU8;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Wears shapes of a mask away at their rim and lets them grow, by squares of any size in the same time. What lies beyond the
 * picture neither wears nor grows.
 */
final class Wear {

    /** Columns that are swept together. */
    private static final int CHUNK = 64;

    private Wear() {}

    /** What has the whole square of {@code 2 half + 1} pixels round it in the mask. */
    static GrayU8 worn(GrayU8 mask, int half) {
        GrayU8 out = near(mask, half, 0);
        for (int i = 0; i < out.data.length; i++) {
            out.data[i] ^= 1;
        }
        return out;
    }

    /** What has a place of the mask in the square of {@code 2 half + 1} pixels round it. */
    static GrayU8 grown(GrayU8 mask, int half) {
        return near(mask, half, 1);
    }

    /** Without what is narrower than {@code 2 half + 1} pixels. */
    static GrayU8 opened(GrayU8 mask, int half) {
        return grown(worn(mask, half), half);
    }

    /** With gaps filled that are narrower than {@code 2 half + 1} pixels. */
    static GrayU8 closed(GrayU8 mask, int half) {
        return worn(grown(mask, half), half);
    }

    /** Where a place of this value is no more than {@code half} pixels away along both axes: along rows, then columns. */
    private static GrayU8 near(GrayU8 mask, int half, int value) {
        GrayU8 along = new GrayU8(mask.width, mask.height);
        IntStream.range(0, mask.height).parallel().forEach(y -> row(mask, along, y, half, value));
        GrayU8 out = new GrayU8(mask.width, mask.height);
        IntStream.range(0, (mask.width + CHUNK - 1) / CHUNK)
                .parallel()
                .forEach(c -> columns(along, out, c * CHUNK, Math.min(mask.width, (c + 1) * CHUNK), half));
        return out;
    }

    private static void row(GrayU8 mask, GrayU8 out, int y, int half, int value) {
        int from = y * mask.width;
        int last = -mask.width - 2 * half;
        for (int x = 0; x < mask.width + half; x++) {
            if (x < mask.width && mask.data[from + x] == value) {
                last = x;
            }
            if (x >= half) {
                out.data[from + x - half] = (byte) (last >= x - 2 * half ? 1 : 0);
            }
        }
    }

    private static void columns(GrayU8 mask, GrayU8 out, int left, int right, int half) {
        int[] last = new int[right - left];
        Arrays.fill(last, -mask.height - 2 * half);
        for (int y = 0; y < mask.height + half; y++) {
            for (int x = left; x < right; x++) {
                if (y < mask.height && mask.data[y * mask.width + x] == 1) {
                    last[x - left] = y;
                }
                if (y >= half) {
                    out.data[(y - half) * mask.width + x] = (byte) (last[x - left] >= y - 2 * half ? 1 : 0);
                }
            }
        }
    }
}
