package hearthcloth.store.json;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.List;

/** A design as it is kept: its layout and its scheme of colours side by side. */
record KeptDesign(
        Order order,
        Size hearth,
        List<Layout.Course> courses,
        Scheme.Kind kind,
        List<Fabric> hearthFabrics,
        List<List<Fabric>> barFabrics,
        Making making,
        PiecingRules rules) {

    static KeptDesign of(Design design) {
        return new KeptDesign(
                design.order(),
                design.layout().hearth(),
                design.layout().courses(),
                design.scheme().kind(),
                design.scheme().hearth(),
                design.scheme().bars(),
                design.making(),
                design.rules());
    }

    Design design() {
        return new Design(
                order, new Layout(hearth, courses), new Scheme(kind, hearthFabrics, barFabrics), making, rules);
    }
}
