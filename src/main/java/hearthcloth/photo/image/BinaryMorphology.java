package hearthcloth.photo.image;

import boofcv.struct.image.GrayU8;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.ddogleg.struct.DogArray_I32;

/**
 * Erosion and dilation of a mask by squares, and what is made of them. What lies beyond the picture neither erodes nor
 * grows.
 */
public final class BinaryMorphology {

    /** Reads and writes eight pixels at once. */
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.nativeOrder());

    private BinaryMorphology() {}

    /** Erosion: the places whose whole square of {@code 2 half + 1} pixels lies in the mask. */
    public static GrayU8 worn(GrayU8 mask, int half) {
        return inverse(grown(inverse(mask), half));
    }

    private static GrayU8 inverse(GrayU8 mask) {
        GrayU8 out = mask.clone();
        for (int i = 0; i < out.data.length; i++) {
            out.data[i] ^= 1;
        }
        return out;
    }

    /** Dilation: the places with a place of the mask in their square of {@code 2 half + 1} pixels. */
    public static GrayU8 grown(GrayU8 mask, int half) {
        int wide = mask.width + 2 * half;
        byte[] plane = new byte[wide * (mask.height + 2 * half)];
        for (int y = 0; y < mask.height; y++) {
            System.arraycopy(mask.data, y * mask.width, plane, (y + half) * wide + half, mask.width);
        }
        plane = spread(spread(plane, 1, 2 * half + 1), wide, 2 * half + 1);
        GrayU8 out = new GrayU8(mask.width, mask.height);
        for (int y = 0; y < mask.height; y++) {
            System.arraycopy(plane, y * wide, out.data, y * mask.width, mask.width);
        }
        return out;
    }

    /** Opening: the mask without what is narrower than {@code 2 half + 1} pixels. */
    public static GrayU8 opened(GrayU8 mask, int half) {
        return grown(worn(mask, half), half);
    }

    /** Closing: the mask with gaps filled that are narrower than {@code 2 half + 1} pixels. */
    public static GrayU8 closed(GrayU8 mask, int half) {
        return worn(grown(mask, half), half);
    }

    /** The mask with everything filled that cannot be reached from the picture's rim through sides of pixels. */
    public static GrayU8 filled(GrayU8 mask) {
        int wide = mask.width + 2;
        boolean[] free = new boolean[wide * (mask.height + 2)];
        DogArray_I32 seeds = new DogArray_I32();
        for (int y = 0; y < mask.height; y++) {
            for (int x = 0; x < mask.width; x++) {
                int at = (y + 1) * wide + x + 1;
                free[at] = mask.data[y * mask.width + x] == 0;
                if (free[at] && (x == 0 || y == 0 || x == mask.width - 1 || y == mask.height - 1)) {
                    seeds.add(at);
                }
            }
        }
        while (seeds.size > 0) {
            reach(seeds.removeTail(), free, wide, seeds);
        }
        GrayU8 out = mask.clone();
        for (int i = 0; i < out.data.length; i++) {
            out.data[i] |= (byte) (free[(i / mask.width + 1) * wide + i % mask.width + 1] ? 1 : 0);
        }
        return out;
    }

    /** Takes the whole run of free places round one, and notes where runs begin above and below it. */
    private static void reach(int seed, boolean[] free, int wide, DogArray_I32 seeds) {
        int from = seed;
        while (free[from - 1]) {
            from--;
        }
        int to = seed;
        while (free[to]) {
            to++;
        }
        Arrays.fill(free, from, to, false);
        for (int beside : new int[] {-wide, wide}) {
            for (int i = from + beside; i < to + beside; i++) {
                if (free[i] && (i == from + beside || !free[i - 1])) {
                    seeds.add(i);
                }
            }
        }
    }

    /** Combines each place with the {@code count - 1} that follow it at a stride, by doubling. */
    private static byte[] spread(byte[] plane, int stride, int count) {
        byte[] now = plane;
        byte[] next = new byte[plane.length];
        for (int done = 1, more; done < count; done += more) {
            more = Math.min(done, count - done);
            join(now, next, more * stride);
            byte[] before = now;
            now = next;
            next = before;
        }
        return now;
    }

    private static void join(byte[] from, byte[] to, int shift) {
        int end = from.length - shift;
        int i = 0;
        for (; i + Long.BYTES <= end; i += Long.BYTES) {
            EIGHT.set(to, i, (long) EIGHT.get(from, i) | (long) EIGHT.get(from, i + shift));
        }
        for (; i < end; i++) {
            to[i] = (byte) (from[i] | from[i + shift]);
        }
        System.arraycopy(from, end, to, end, shift);
    }
}
