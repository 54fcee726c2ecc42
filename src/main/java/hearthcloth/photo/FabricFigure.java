package hearthcloth.photo;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.colour.Lab;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * How figured a fabric is, read off a square picture of it: the mean of its colours in CIELAB, how far they lie from it, and how
 * far they repeat.
 */
public final class FabricFigure {

    /** Places looked at along a side: of a hand's breadth of cloth about a millimetre each, so that threads blend. */
    private static final int PLACES = 96;

    /** Colours that spread less pass for one colour (docs/sources.md#just-noticed). */
    private static final double LEAST_SPREAD = 5;

    /** With fewer crossings from light to dark along a side it may be uneven light as well, which has one. */
    private static final double LEAST_CROSSINGS = 2;

    private final List<Lab> places;
    private final int side;

    private FabricFigure(List<Lab> places) {
        this.places = places;
        this.side = (int) Math.round(Math.sqrt(places.size()));
    }

    /**
     * The figure; empty where the cloth is plain, where the picture holds less than one repeat, or cannot be read.
     *
     * @param acrossMm of cloth that the picture shows from side to side
     */
    public static Optional<Figure> of(byte[] picture, double acrossMm) {
        try {
            return of(Photograph.ofAny(picture).colours(PLACES), acrossMm);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The same of the mean colours of its places, row by row. */
    static Optional<Figure> of(List<Colour> places, double acrossMm) {
        FabricFigure figure = new FabricFigure(places.stream().map(Colour::lab).toList());
        return figure.side * figure.side == places.size() ? figure.read(acrossMm) : Optional.empty();
    }

    private Optional<Figure> read(double acrossMm) {
        Lab mean = new Lab(mean(Lab::lightness), mean(Lab::a), mean(Lab::b));
        double spread = Math.sqrt(mean(place -> square(place.difference(mean))));
        ToDoubleFunction<Lab> most = Stream.<ToDoubleFunction<Lab>>of(Lab::lightness, Lab::a, Lab::b)
                .max((one, other) -> Double.compare(deviation(one), deviation(other)))
                .orElseThrow();
        double crossings = Math.max(crossings(most, 1, side), crossings(most, side, 1));
        if (spread < LEAST_SPREAD || crossings < LEAST_CROSSINGS) {
            return Optional.empty();
        }
        return Optional.of(new Figure(mean, spread, deviation(Lab::lightness), 2 * acrossMm / crossings));
    }

    private double mean(ToDoubleFunction<Lab> value) {
        return places.stream().mapToDouble(value).reduce(0, Double::sum) / places.size();
    }

    private double deviation(ToDoubleFunction<Lab> value) {
        double mean = mean(value);
        return Math.sqrt(mean(place -> square(value.applyAsDouble(place) - mean)));
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * How often a line across the picture passes from well above the mean to well below it or back, in the mean of all lines.
     *
     * @param step from one place of a line to the next
     * @param line from one line to the next
     */
    private double crossings(ToDoubleFunction<Lab> value, int step, int line) {
        double mean = mean(value);
        double well = deviation(value) / 2;
        int count = 0;
        for (int row = 0; row < side; row++) {
            int was = 0;
            for (int at = 0; at < side; at++) {
                double off = value.applyAsDouble(places.get(row * line + at * step)) - mean;
                int now = Math.abs(off) < well ? was : (int) Math.signum(off);
                count += now != was && was != 0 ? 1 : 0;
                was = now;
            }
        }
        return (double) count / side;
    }
}
