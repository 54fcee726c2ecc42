package hearthcloth.plan;

import hearthcloth.cloth.Layout;
import hearthcloth.cloth.Order;
import hearthcloth.measure.Size;
import java.util.List;

/**
 * A layout that answers the wish, before fabrics are chosen.
 *
 * @param chosen what was chosen where the wish was silent
 */
record Shape(Order order, int rounds, Layout layout, List<String> chosen) {

    Shape {
        chosen = List.copyOf(chosen);
    }

    Size finished() {
        return layout.finished();
    }
}
