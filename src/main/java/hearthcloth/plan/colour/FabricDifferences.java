package hearthcloth.plan.colour;

import hearthcloth.colour.Lab;
import hearthcloth.stash.Fabric;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The fabrics of a plan by number, with how different each two look; worked out once, asked thousands of times. */
final class FabricDifferences {

    private final Map<String, Integer> numbers = new HashMap<>();
    private final double[][] apart;
    private final double[] lightness;

    FabricDifferences(List<Fabric> fabrics) {
        List<Lab> labs = fabrics.stream().map(fabric -> fabric.colour().lab()).toList();
        int count = labs.size();
        this.apart = new double[count][count];
        this.lightness = new double[count];
        for (int i = 0; i < count; i++) {
            numbers.put(fabrics.get(i).name(), i);
            lightness[i] = labs.get(i).lightness();
            for (int j = 0; j < i; j++) {
                apart[i][j] = labs.get(i).difference(labs.get(j));
                apart[j][i] = apart[i][j];
            }
        }
    }

    int number(String fabric) {
        Integer number = numbers.get(fabric);
        if (number == null) {
            throw new IllegalArgumentException("no fabric of the plan is called \"" + fabric + "\"");
        }
        return number;
    }

    /** CIEDE2000 between two fabrics. */
    double between(int one, int other) {
        return apart[one][other];
    }

    /** L* of a fabric. */
    double lightness(int fabric) {
        return lightness[fabric];
    }
}
