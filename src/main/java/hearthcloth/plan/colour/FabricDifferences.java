package hearthcloth.plan.colour;

import hearthcloth.cloth.Showing;
import hearthcloth.colour.Figure;
import hearthcloth.colour.Lab;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fabrics of a plan by number, with how different each two look on one face of the cloth; worked out once, asked
 * thousands of times. A fabric whose wrong side lies on the front has a number of its own.
 */
final class FabricDifferences {

    private static final ColourParameters.Figures FIGURES =
            ColourParameters.standard().looks().figures();

    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final double[][] apart;
    private final double[][] gaps;
    private final double[] lightness;
    private final List<Fabric> fabrics;

    /**
     * One face of a fabric.
     *
     * @param spread how far its own colours lie from the mean, by CIEDE2000, as far as its figures are seen one by one
     * @param lights the same in points of L*
     */
    private record Shown(Lab mean, double spread, double lights) {

        private static Shown of(Fabric fabric, boolean isWrong) {
            if (isWrong && fabric.wrong().isPresent()) {
                return new Shown(fabric.wrongSide().lab(), 0, 0);
            }
            return fabric.figure()
                    .map(figure -> figured(figure, FIGURES.seen(figure.repeatMm())))
                    .orElseGet(() -> new Shown(fabric.mean(), 0, 0));
        }

        private static Shown figured(Figure figure, double seen) {
            return new Shown(figure.mean(), seen * figure.spread(), seen * figure.lightness());
        }

        /** How surely both are told apart, by CIEDE2000: a figure comes nearer by its spread. */
        private double apart(Shown other) {
            return Math.max(0, mean.difference(other.mean) - spread - other.spread);
        }

        private double gap(Shown other) {
            double gap = Math.abs(mean.lightness() - other.mean.lightness());
            return Math.max(0, gap - lights - other.lights);
        }
    }

    /** Of the front. */
    FabricDifferences(List<Fabric> fabrics) {
        this(fabrics, false);
    }

    private FabricDifferences(List<Fabric> fabrics, boolean back) {
        this.fabrics = List.copyOf(fabrics);
        List<Shown> all = new ArrayList<>();
        for (Fabric fabric : fabrics) {
            numbers.put(fabric.name(), numbers.size());
            all.add(Shown.of(fabric, back));
        }
        if (fabrics.stream().anyMatch(fabric -> !fabric.wrongSide().equals(fabric.colour()))) {
            fabrics.forEach(fabric -> all.add(Shown.of(fabric, !back)));
        }
        this.apart = new double[all.size()][all.size()];
        this.gaps = new double[all.size()][all.size()];
        this.lightness = all.stream().mapToDouble(face -> face.mean.lightness()).toArray();
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < i; j++) {
                apart[i][j] = all.get(i).apart(all.get(j));
                apart[j][i] = apart[i][j];
                gaps[i][j] = all.get(i).gap(all.get(j));
                gaps[j][i] = gaps[i][j];
            }
        }
    }

    /** Whether a hearth of one fabric stands out from a bar of the other, both with their right sides on the front. */
    static boolean standsOut(Fabric one, Fabric other) {
        Shown hearth = Shown.of(one, false);
        Shown bar = Shown.of(other, false);
        return EdgeCost.standsOut(hearth.apart(bar), hearth.gap(bar));
    }

    /** The same numbers on the other face; itself where no fabric has another colour there. */
    FabricDifferences back() {
        return isTwoFaced() ? new FabricDifferences(fabrics, true) : this;
    }

    /** Whether some fabric has another colour on its wrong side. */
    boolean isTwoFaced() {
        return apart.length > fabrics.size();
    }

    /** How many numbers there are. */
    int count() {
        return lightness.length;
    }

    int number(String fabric) {
        Integer number = numbers.get(fabric);
        if (number == null) {
            throw new IllegalArgumentException("no fabric of the plan is called \"" + fabric + "\"");
        }
        return number;
    }

    /** The number of a fabric that shows this side on the front. */
    int number(String fabric, Showing showing) {
        return number(fabric) + (showing == Showing.WRONG && isTwoFaced() ? fabrics.size() : 0);
    }

    /** CIEDE2000 between two fabrics, less what their own figures come nearer. */
    double between(int one, int other) {
        return apart[one][other];
    }

    /** How many points of L* two fabrics lie from each other, less the same. */
    double gap(int one, int other) {
        return gaps[one][other];
    }

    /** L* of a fabric. */
    double lightness(int fabric) {
        return lightness[fabric];
    }
}
