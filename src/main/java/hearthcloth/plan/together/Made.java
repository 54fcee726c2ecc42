package hearthcloth.plan.together;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A planned cloth and what counts of it when it is compared with others.
 *
 * @param joins seams inside bars
 * @param hearth the hearth's fabric; empty where there is no hearth
 * @param lightness of each fabric by name, in L*, with its share of the cloth, which sum up to 1
 */
record Made(Plan plan, int joins, String hearth, Map<String, Double> lightness, Map<String, Double> shares) {

    Made {
        lightness = Map.copyOf(lightness);
        shares = Map.copyOf(shares);
    }

    static Made of(Plan plan) {
        Map<String, Double> lightness = new LinkedHashMap<>();
        for (Fabric fabric : plan.fabrics()) {
            lightness.put(fabric.name(), fabric.colour().lab().lightness());
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        double whole = plan.cloth().finished().areaMm2();
        String hearth = "";
        for (Laid laid : plan.cloth().laid()) {
            shares.merge(laid.patch().fabric(), laid.at().size().areaMm2() / whole, Double::sum);
            hearth = laid.patch().place() instanceof Place.Hearth ? laid.patch().fabric() : hearth;
        }
        return new Made(plan, plan.figures().joins(), hearth, lightness, shares);
    }

    /** How much of it is darker than {@code middle}, from 0 to 1. */
    double dark(double middle) {
        double dark = 0;
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            dark += lightness.getOrDefault(share.getKey(), middle) < middle ? share.getValue() : 0;
        }
        return dark;
    }
}
