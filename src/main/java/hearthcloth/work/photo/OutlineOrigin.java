package hearthcloth.work.photo;

import hearthcloth.photo.Remeasurement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Who has placed a piece's outline. */
public sealed interface OutlineOrigin {

    /** The uncertainty of each of {@code corners} corners, one standard deviation in pixels of the picture. */
    List<Double> pixels(int corners);

    /** The reader's outline. */
    record Read() implements OutlineOrigin {
        @Override
        public List<Double> pixels(int corners) {
            return Collections.nCopies(corners, Remeasurement.PIXELS);
        }
    }

    /** The reader's outline, corrected by her. */
    record Moved() implements OutlineOrigin {
        @Override
        public List<Double> pixels(int corners) {
            return Collections.nCopies(corners, Remeasurement.PIXELS);
        }
    }

    /**
     * Her own outline of a piece that was not read.
     *
     * @param pixels uncertainty of each corner: a place tapped on the whole picture is known better than the finger's
     *     width, but no better than the screen's pixels
     */
    record Drawn(List<Double> pixels) implements OutlineOrigin {
        public Drawn {
            pixels = List.copyOf(pixels);
        }

        @Override
        public List<Double> pixels(int corners) {
            return pixels;
        }

        /** The outline with corner {@code i} placed from close up. */
        Drawn moved(int i) {
            List<Double> now = new ArrayList<>(pixels);
            now.set(i, Remeasurement.PIXELS);
            return new Drawn(now);
        }

        /** The outline with one more corner after corner {@code i}, no more certain than those on either side. */
        Drawn more(int i) {
            List<Double> now = new ArrayList<>(pixels);
            now.add(i + 1, Math.max(pixels.get(i), pixels.get((i + 1) % pixels.size())));
            return new Drawn(now);
        }

        /** The outline of a part with this number of corners. */
        Drawn part(int corners) {
            return new Drawn(Collections.nCopies(corners, Collections.max(pixels)));
        }

        Drawn less(int i) {
            List<Double> now = new ArrayList<>(pixels);
            now.remove(i);
            return new Drawn(now);
        }
    }
}
