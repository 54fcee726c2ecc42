package hearthcloth.wrap.drape;

/**
 * What a cloth is made of, as it falls.
 *
 * @param gramsPerM2 its weight
 * @param bending its bending rigidity in newton metres
 * @param bias how hard it is pulled on the bias, in newtons a metre
 * @param thickness the distance layers keep, as a share of the grid's gap; more than cloth is thick, so that layers stay
 *     apart between the points
 * @param off the distance it keeps from the gift, as a share of the gap
 */
record Stuff(double gramsPerM2, double bending, double bias, double thickness, double off) {

    /** This stuff drawn larger: on a cloth so many times as long it hangs alike. */
    Stuff scaled(double times) {
        return new Stuff(gramsPerM2, bending * times * times * times, bias, thickness, off);
    }
}
