package hearthcloth.cloth;

/** Two halves whose edges differ cannot be sewn into a flat rectangle. */
final class EdgeMismatchException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    EdgeMismatchException(Join join, Assembly first, Assembly second) {
        super("cannot sew " + second.size() + (join == Join.BESIDE ? " beside " : " below ") + first.size()
                + ": the edges are " + join.edge(first.size()) + " and " + join.edge(second.size()));
    }
}
