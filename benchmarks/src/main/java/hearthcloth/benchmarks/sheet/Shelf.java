package hearthcloth.benchmarks.sheet;

import java.util.Arrays;

/** The dearest parts of one size, dearest first, never two with the same copies. */
final class Shelf {

    private Part[] parts = new Part[2];
    private int size;

    int size() {
        return size;
    }

    Part get(int index) {
        return parts[index];
    }

    /** The least price still on the shelf; it holds at least one part. */
    long least() {
        return parts[size - 1].price();
    }

    /** Whether a part with these copies lies here already. */
    boolean holds(long price, long[] counts) {
        for (int i = place(price) - 1; i >= 0 && parts[i].price() == price; i--) {
            if (parts[i].sameCopies(counts)) {
                return true;
            }
        }
        return false;
    }

    /** Puts a part in its place; the last one falls off beyond {@code most}. */
    void put(Part part, int most) {
        int place = place(part.price());
        if (size == parts.length) {
            parts = Arrays.copyOf(parts, Math.min(2 * size, most + 1));
        }
        System.arraycopy(parts, place, parts, place + 1, size - place);
        parts[place] = part;
        size = Math.min(size + 1, most);
    }

    /** Behind every part at least as dear. */
    private int place(long price) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (parts[middle].price() >= price) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
