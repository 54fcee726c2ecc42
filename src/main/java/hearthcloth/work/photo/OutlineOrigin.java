package hearthcloth.work.photo;

import hearthcloth.photo.Remeasurement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;


/** Whose outline a piece has. */
public sealed interface OutlineOrigin {

    /** How far off each of {@code corners} may be, one standard deviation in pixels of the picture. */
    List<Double> pixels(int corners);

    /** The reader's. */
    record Read() implements OutlineOrigin {
        @Override
        public List<Double> pixels(int corners) {
            return Collections.nCopies(corners, Remeasurement.PIXELS);
        }
    }

    /** The reader's, put right by her. */
    record Moved() implements OutlineOrigin {
        @Override
        public List<Double> pixels(int corners) {
            return Collections.nCopies(corners, Remeasurement.PIXELS);
        }
    }

    /**
     * Hers alone, of a piece that was not read.
     *
     * @param pixels how far off each corner may be: a place tapped on the whole picture is surer than the finger, but not
     *     than the screen
     */
    record Drawn(List<Double> pixels) implements OutlineOrigin {
        public Drawn {
            pixels = List.copyOf(pixels);
        }

        @Override
        public List<Double> pixels(int corners) {
            return pixels;
        }

        /** With corner {@code i} put where it belongs, seen close up. */
        Drawn moved(int i) {
            List<Double> now = new ArrayList<>(pixels);
            now.set(i, Remeasurement.PIXELS);
            return new Drawn(now);
        }

        /** With one more after corner {@code i}, no surer than those on either side. */
        Drawn more(int i) {
            List<Double> now = new ArrayList<>(pixels);
            now.add(i + 1, Math.max(pixels.get(i), pixels.get((i + 1) % pixels.size())));
            return new Drawn(now);
        }

        /** Of a part with so many corners. */
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
