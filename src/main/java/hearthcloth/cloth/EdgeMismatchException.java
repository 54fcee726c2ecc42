package hearthcloth.cloth;

/** Two halves whose edges differ cannot be sewn into a flat rectangle; the message, their sizes, is for programmers. */
final class EdgeMismatchException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    EdgeMismatchException(Join join, Assembly first, Assembly second) {
        super(join + ": " + first.size() + " / " + second.size());
    }
}
