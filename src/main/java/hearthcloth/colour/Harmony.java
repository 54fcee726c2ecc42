package hearthcloth.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * How fabrics relate to each other by colour: ordered from light to dark, or the one that stands out.
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

    /**
     * The one of {@code able} that fits in most with {@code all}: whose mean CIEDE2000 to them is least; the earlier of
     * equals.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static <T> T fittingIn(List<T> able, List<T> all, Function<? super T, Colour> colour) {
        return able.stream()
                .min(Comparator.comparingDouble((T one) -> all.stream()
                        .mapToDouble(other -> colour.apply(one)
                                .lab()
                                .difference(colour.apply(other).lab()))
                        .reduce(0, Double::sum)))
                .orElseThrow(() -> new IllegalArgumentException("one is picked from at least one fabric"));
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

    private record Lit<T>(T fabric, double lightness) {}
}
