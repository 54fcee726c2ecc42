package hearthcloth.cutstock.piecing.blocks;

import java.util.Arrays;

/** Blocks that wait, the one of least key first. A binary heap of plain numbers. */
final class Queue {

    private int[] blocks = new int[16];
    private float[] keys = new float[16];
    private int count;

    boolean isEmpty() {
        return count == 0;
    }

    void clear() {
        count = 0;
    }

    float leastKey() {
        return keys[0];
    }

    void add(int block, float key) {
        if (count == blocks.length) {
            blocks = Arrays.copyOf(blocks, 2 * count);
            keys = Arrays.copyOf(keys, 2 * count);
        }
        int at = count++;
        while (at > 0 && keys[(at - 1) / 2] > key) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        blocks[at] = block;
        keys[at] = key;
    }

    int take() {
        int least = blocks[0];
        int block = blocks[--count];
        float key = keys[count];
        int at = 0;
        for (int child = 1; child < count; child = 2 * at + 1) {
            if (child + 1 < count && keys[child + 1] < keys[child]) {
                child++;
            }
            if (keys[child] >= key) {
                break;
            }
            move(child, at);
            at = child;
        }
        blocks[at] = block;
        keys[at] = key;
        return least;
    }

    private void move(int from, int to) {
        blocks[to] = blocks[from];
        keys[to] = keys[from];
    }
}
