package hearthcloth.cutstock.piecing.parameter;

/**
 * How a cloth is arranged anew by annealing. Costs and temperatures are in pairs of like fabrics that touch.
 *
 * @param crossing what two seams cost that end within the clearance of each other: more than all pairs of like fabrics that one
 *     change of places makes, so that no crossing is bought with colour
 * @param warmest the temperature at the start of a round: a few pairs worse is taken; tuned
 * @param coolest at its end: hardly anything worse is taken; tuned
 * @param round changes from the warmest to the coolest; then it is warmed again; tuned
 * @param exchange one change in so many exchanges two patches of one size, the others the parts of a row; tuned
 */
public record CompositionParameters(double crossing, double warmest, double coolest, int round, int exchange) {

    /** The values that the search works with. */
    public static CompositionParameters standard() {
        return new CompositionParameters(20, 3, 0.15, 2000, 5);
    }
}
