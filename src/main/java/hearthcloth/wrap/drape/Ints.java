package hearthcloth.wrap.drape;

import java.util.Arrays;

/** A growing row of whole numbers. */
final class Ints {

    private int[] held = new int[1024];
    private int count;

    void add(int... more) {
        room(more.length);
        for (int each : more) {
            held[count++] = each;
        }
    }

    void add(int a, int b, int c, int d) {
        room(4);
        held[count++] = a;
        held[count++] = b;
        held[count++] = c;
        held[count++] = d;
    }

    void addAll(Ints other) {
        room(other.count);
        System.arraycopy(other.held, 0, held, count, other.count);
        count += other.count;
    }

    private void room(int more) {
        if (count + more > held.length) {
            held = Arrays.copyOf(held, Math.max(2 * held.length, count + more));
        }
    }

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    /** The numbers themselves; only the first {@link #count} of them mean anything. */
    int[] held() {
        return held;
    }

    int[] all() {
        return Arrays.copyOf(held, count);
    }
}
