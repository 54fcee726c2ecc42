package hearthcloth.benchmarks.sheet;

/** How a rectangle is cut up: a piece, a rest, or one straight cut from edge to edge into two further slicings. */
public sealed interface Slicing {

    long width();

    long height();

    /** A wanted rectangle, {@code kind} its place in the list of the job. */
    record Piece(int kind, boolean turned, long width, long height) implements Slicing {}

    /** Nothing wanted. */
    record Rest(long width, long height) implements Slicing {}

    /** Two slicings of one height, side by side. */
    record Beside(Slicing left, Slicing right) implements Slicing {

        public Beside {
            if (left.height() != right.height()) {
                throw new IllegalArgumentException("a cut runs from edge to edge");
            }
        }

        @Override
        public long width() {
            return left.width() + right.width();
        }

        @Override
        public long height() {
            return left.height();
        }
    }

    /** Two slicings of one width, one above the other. */
    record Above(Slicing upper, Slicing lower) implements Slicing {

        public Above {
            if (upper.width() != lower.width()) {
                throw new IllegalArgumentException("a cut runs from edge to edge");
            }
        }

        @Override
        public long width() {
            return upper.width();
        }

        @Override
        public long height() {
            return upper.height() + lower.height();
        }
    }

    /** {@code slicing} in the corner of a rectangle at least as large; what is over becomes rests. */
    static Slicing within(Slicing slicing, long width, long height) {
        Slicing wide = slicing.width() == width
                ? slicing
                : new Beside(slicing, new Rest(width - slicing.width(), slicing.height()));
        return wide.height() == height ? wide : new Above(wide, new Rest(width, height - wide.height()));
    }

    /** The same cuts with every copy beyond {@code left[kind]} given up as a rest; {@code left} is used up. */
    static Slicing keeping(Slicing slicing, long[] left) {
        if (slicing instanceof Piece piece) {
            return left[piece.kind()]-- > 0 ? piece : new Rest(piece.width(), piece.height());
        }
        if (slicing instanceof Beside cut) {
            return new Beside(keeping(cut.left(), left), keeping(cut.right(), left));
        }
        if (slicing instanceof Above cut) {
            return new Above(keeping(cut.upper(), left), keeping(cut.lower(), left));
        }
        return slicing;
    }

    /** Adds the copies of every kind to {@code counts}. */
    static void count(Slicing slicing, long[] counts) {
        if (slicing instanceof Piece piece) {
            counts[piece.kind()]++;
        } else if (slicing instanceof Beside cut) {
            count(cut.left(), counts);
            count(cut.right(), counts);
        } else if (slicing instanceof Above cut) {
            count(cut.upper(), counts);
            count(cut.lower(), counts);
        }
    }
}
