package hearthcloth.photo.image;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.List;

/** The connected components of a mask, joined at a side or a corner of a pixel, found in linear time. */
public final class ConnectedComponents {

    private final int width;
    private final int height;
    /** The pixels of all components, one component after another. */
    private final int[] order;

    private final List<Island> all = new ArrayList<>();

    /**
     * One component: a range of {@link ConnectedComponents#pixel} and the box round it.
     *
     * @param sides of the picture that it touches, one bit each: left, top, right, below
     */
    public record Island(int from, int to, int left, int top, int right, int low, int sides) {

        public int area() {
            return to - from;
        }

        /** The longer side of the box, in pixels. */
        public int span() {
            return 1 + Math.max(right - left, low - top);
        }

        public int middleX() {
            return (left + right) / 2;
        }

        public int middleY() {
            return (top + low) / 2;
        }
    }

    public ConnectedComponents(GrayU8 mask) {
        width = mask.width;
        height = mask.height;
        boolean[] left = new boolean[width * height];
        int count = 0;
        for (int i = 0; i < left.length; i++) {
            left[i] = mask.data[i] != 0;
            count += mask.data[i] != 0 ? 1 : 0;
        }
        order = new int[count];
        int from = 0;
        for (int i = 0; i < left.length; i++) {
            if (left[i]) {
                Island island = flooded(i, from, left);
                all.add(island);
                from = island.to;
            }
        }
    }

    private Island flooded(int seed, int from, boolean[] left) {
        int to = from;
        order[to++] = seed;
        left[seed] = false;
        int x0 = width;
        int x1 = 0;
        int y0 = height;
        int y1 = 0;
        for (int next = from; next < to; next++) {
            int x = order[next] % width;
            int y = order[next] / width;
            x0 = Math.min(x0, x);
            x1 = Math.max(x1, x);
            y0 = Math.min(y0, y);
            y1 = Math.max(y1, y);
            for (int v = Math.max(0, y - 1); v <= Math.min(height - 1, y + 1); v++) {
                for (int u = Math.max(0, x - 1); u <= Math.min(width - 1, x + 1); u++) {
                    int n = v * width + u;
                    if (left[n]) {
                        left[n] = false;
                        order[to++] = n;
                    }
                }
            }
        }
        int sides = (x0 <= 1 ? 1 : 0) | (y0 <= 1 ? 2 : 0) | (x1 >= width - 2 ? 4 : 0) | (y1 >= height - 2 ? 8 : 0);
        return new Island(from, to, x0, y0, x1, y1, sides);
    }

    public List<Island> all() {
        return all;
    }

    /** The index of the i-th pixel of all components. */
    public int pixel(int i) {
        return order[i];
    }
}
