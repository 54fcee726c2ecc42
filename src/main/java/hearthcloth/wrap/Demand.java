package hearthcloth.wrap;


/**
 * One thing a tie asks of the cloth: to reach along a path over the gift and to have something to spare there.
 *
 * @param reason why
 * @param reach how the cloth's reach is measured
 * @param path real millimetres over the gift
 * @param spare real millimetres beyond it: knot and tail, tuck or overlap
 */
record Demand(Reason reason, Reach reach, double path, double spare) {

    /** Side of the smallest square that meets this demand, gift in the middle; real millimetres. */
    double square() {
        return reach.square(path + spare);
    }

    /** What is left beyond the path. */
    double left(Spread cloth) {
        return reach.left(cloth, path);
    }

    boolean isMet(Spread cloth) {
        return left(cloth) >= spare;
    }
}
