package hearthcloth.wrap;

/**
 * One thing a tie needs of the cloth: to reach along a path over the gift and to have something to spare there.
 *
 * @param reason why it is needed
 * @param reach how the cloth's reach is measured
 * @param path real millimetres over the gift
 * @param spare real millimetres beyond it: knot and tail, tuck or overlap
 */
record Demand(Reason reason, Reach reach, double path, double spare) {

    /** The side of the smallest square that meets this demand with the gift in the middle, in real millimetres. */
    double square() {
        return reach.square(path + spare);
    }

    /** What is left of a cloth beyond the path, in real millimetres. */
    double left(Spread cloth) {
        return reach.left(cloth, path);
    }

    boolean isMet(Spread cloth) {
        return left(cloth) >= spare;
    }
}
