package hearthcloth.cutstock.piecing.cabin;

import java.util.List;

/**
 * One block: a hearth and bars round it, of a fixed size; how wide its bars are is open.
 *
 * @param width net
 * @param height net
 * @param bars in the order they are sewn, the innermost first
 */
public record Cabin(long width, long height, List<Log> bars) {

    public Cabin {
        bars = List.copyOf(bars);
    }

    /** Which scraps a bar may be made of. */
    public enum Tone {
        LIGHT,
        DARK,
        ANY
    }

    /** Where a bar is sewn on. */
    public enum Edge {
        LEFT,
        TOP,
        RIGHT,
        BOTTOM;

        /** Whether the bar stands upright. */
        public boolean upright() {
            return this == LEFT || this == RIGHT;
        }

        /** The edge a quarter turn on, with the clock. */
        public Edge turned() {
            return switch (this) {
                case LEFT -> TOP;
                case TOP -> RIGHT;
                case RIGHT -> BOTTOM;
                case BOTTOM -> LEFT;
            };
        }
    }

    /** A bar: its edge of the work, and the tone it is to have. */
    public record Log(Edge edge, Tone tone) {}
}
