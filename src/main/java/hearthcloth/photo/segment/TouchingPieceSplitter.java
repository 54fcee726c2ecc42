package hearthcloth.photo.segment;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import hearthcloth.photo.image.BinaryMorphology;

/**
 * Separates shapes where they are narrow: the rim of the mask is worn away, and the cores that are left grow back
 * without growing together.
 */
final class TouchingPieceSplitter {

    /**
     * A core grows this many pixels farther than the mask was worn away, so that it reaches the sharp corners of its
     * shape.
     */
    private static final int FARTHER = 2;

    private final GrayU8 mask;
    private final GrayS32 owner;
    private final int[] queue;

    private TouchingPieceSplitter(GrayU8 mask) {
        this.mask = mask;
        owner = new GrayS32(mask.width, mask.height);
        queue = new int[mask.data.length];
    }

    /**
     * The mask with a line cleared through every place that is narrower than {@code 2 half + 1} pixels and has wider
     * places on both sides of it.
     */
    static GrayU8 of(GrayU8 mask, int half) {
        return new TouchingPieceSplitter(mask).apart(half);
    }

    private GrayU8 apart(int half) {
        GrayU8 worn = BinaryMorphology.worn(mask, half);
        BinaryImageOps.contour(worn, ConnectRule.FOUR, owner);
        int end = 0;
        for (int i = 0; i < worn.data.length; i++) {
            if (worn.data[i] != 0) {
                queue[end++] = i;
            }
        }
        int from = 0;
        for (int round = 0; round < half + FARTHER; round++) {
            int next = end;
            for (; from < end; from++) {
                next = grown(queue[from], next);
            }
            end = next;
        }
        GrayU8 out = new GrayU8(mask.width, mask.height);
        for (int q = 0; q < end; q++) {
            out.data[queue[q]] = (byte) (isSeam(queue[q]) ? 0 : 1);
        }
        return out;
    }

    /** Gives the unowned places round an owned one to the same core, and returns the queue's new end. */
    private int grown(int place, int end) {
        int last = end;
        int x = place % mask.width;
        int y = place / mask.width;
        for (int v = Math.max(0, y - 1); v <= Math.min(mask.height - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(mask.width - 1, x + 1); u++) {
                int near = v * mask.width + u;
                if (mask.data[near] != 0 && owner.data[near] == 0) {
                    owner.data[near] = owner.data[place];
                    queue[last++] = near;
                }
            }
        }
        return last;
    }

    /** Whether the place to the right, below or diagonally below belongs to another core. */
    private boolean isSeam(int place) {
        int x = place % mask.width;
        int y = place / mask.width;
        int right = x + 1 < mask.width ? 1 : 0;
        int below = y + 1 < mask.height ? mask.width : 0;
        return isOther(place, place + right) || isOther(place, place + below) || isOther(place, place + right + below);
    }

    private boolean isOther(int place, int near) {
        return owner.data[near] != 0 && owner.data[near] != owner.data[place];
    }
}
