package hearthcloth.plan.colour;

import hearthcloth.cloth.Showing;
import hearthcloth.colour.Lab;
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

    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final double[][] apart;
    private final double[] lightness;
    private final List<Fabric> fabrics;

    /** Of the front. */
    FabricDifferences(List<Fabric> fabrics) {
        this(fabrics, false);
    }

    private FabricDifferences(List<Fabric> fabrics, boolean back) {
        this.fabrics = List.copyOf(fabrics);
        List<Lab> shown = new ArrayList<>();
        List<Lab> turned = new ArrayList<>();
        for (Fabric fabric : fabrics) {
            numbers.put(fabric.name(), numbers.size());
            shown.add((back ? fabric.wrongSide() : fabric.colour()).lab());
            turned.add((back ? fabric.colour() : fabric.wrongSide()).lab());
        }
        List<Lab> labs = new ArrayList<>(shown);
        if (fabrics.stream().anyMatch(fabric -> !fabric.wrongSide().equals(fabric.colour()))) {
            labs.addAll(turned);
        }
        this.apart = new double[labs.size()][labs.size()];
        this.lightness = labs.stream().mapToDouble(Lab::lightness).toArray();
        for (int i = 0; i < labs.size(); i++) {
            for (int j = 0; j < i; j++) {
                apart[i][j] = labs.get(i).difference(labs.get(j));
                apart[j][i] = apart[i][j];
            }
        }
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

    /** CIEDE2000 between two fabrics. */
    double between(int one, int other) {
        return apart[one][other];
    }

    /** How many points of L* two fabrics lie from each other. */
    double gap(int one, int other) {
        return Math.abs(lightness[one] - lightness[other]);
    }

    /** L* of a fabric. */
    double lightness(int fabric) {
        return lightness[fabric];
    }
}
