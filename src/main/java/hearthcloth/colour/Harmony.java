package hearthcloth.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * How fabrics relate to each other by colour: ordered from light to dark, in two halves, or the one that stands out.
 *
 * <p>Works on anything that has a colour and keeps the given order among equals, so the same list always gives the same
 * answer. Light and dark go by L*: docs/sources.md#lightness-scale.
 */
public final class Harmony {

    private Harmony() {}

    /** The same things from lightest to darkest. */
    public static <T> List<T> lightToDark(List<T> fabrics, Function<? super T, Colour> colour) {
        return fabrics.stream()
                .map(fabric -> new Lit<>(fabric, colour.apply(fabric).lab().lightness()))
                .sorted(Comparator.comparingDouble((Lit<T> lit) -> lit.lightness)
                        .reversed())
                .map(Lit::fabric)
                .toList();
    }

    /**
     * A light and a dark half that differ as much as possible: the light-to-dark row is cut where the spread within the
     * two parts is least, which is where the spread between them is greatest; of equal cuts the most even one is taken.
     *
     * <p>The parts need not have the same number: one black among pale fabrics stands alone. After Otsu, with one
     * weight for each fabric: docs/sources.md#two-classes. Cost: one sort.
     *
     * @throws IllegalArgumentException if there are fewer than two
     */
    public static <T> Halves<T> halves(List<T> fabrics, Function<? super T, Colour> colour) {
        if (fabrics.size() < 2) {
            throw new IllegalArgumentException("two halves need at least two fabrics, not " + fabrics.size());
        }
        List<T> row = lightToDark(fabrics, colour);
        double[] lightness = row.stream()
                .mapToDouble(fabric -> colour.apply(fabric).lab().lightness())
                .toArray();
        int cut = widestCut(lightness);
        return new Halves<>(row.subList(0, cut), row.subList(cut, row.size()), lightness[cut - 1] - lightness[cut]);
    }

    /**
     * The fabric that stands out most, for the hearth: the one whose least CIEDE2000 to any other is greatest; the
     * darker of equals.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static <T> T standingOut(List<T> fabrics, Function<? super T, Colour> colour) {
        if (fabrics.isEmpty()) {
            throw new IllegalArgumentException("one is picked from at least one fabric");
        }
        List<Lab> labs = new ArrayList<>();
        fabrics.forEach(fabric -> labs.add(colour.apply(fabric).lab()));
        int best = 0;
        double farthest = -1;
        for (int i = 0; i < labs.size(); i++) {
            double distance = distanceToOthers(labs, i);
            boolean equal = Math.abs(distance - farthest) < 1e-9;
            boolean darker = labs.get(i).lightness() < labs.get(best).lightness();
            if (equal ? darker : distance > farthest) {
                farthest = distance;
                best = i;
            }
        }
        return fabrics.get(best);
    }

    private static double distanceToOthers(List<Lab> labs, int one) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < labs.size(); i++) {
            if (i != one) {
                least = Math.min(least, labs.get(one).difference(labs.get(i)));
            }
        }
        return least;
    }

    /** How many come first, so that n₁·n₂·(mean₁ − mean₂)², the spread between the parts, is greatest. */
    private static int widestCut(double[] falling) {
        int n = falling.length;
        double total = 0;
        for (double lightness : falling) {
            total += lightness;
        }
        int best = 0;
        double widest = -1;
        double first = 0;
        for (int cut = 1; cut < n; cut++) {
            first += falling[cut - 1];
            double apart = first / cut - (total - first) / (n - cut);
            double spread = cut * (double) (n - cut) * apart * apart;
            boolean equal = Math.abs(spread - widest) <= 1e-9 * n * n;
            boolean evener = Math.abs(2 * cut - n) < Math.abs(2 * best - n);
            if (equal ? evener : spread > widest) {
                widest = spread;
                best = cut;
            }
        }
        return best;
    }

    private record Lit<T>(T fabric, double lightness) {}
}
