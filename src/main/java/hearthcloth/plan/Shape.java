package hearthcloth.plan;

import hearthcloth.cloth.Layout;
import hearthcloth.cloth.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A layout that answers the wish, before fabrics are chosen.
 *
 * @param chosen what was chosen where the wish was silent
 * @param ease where the widths were taken from strips of the stash, about how many joins these strips leave
 */
record Shape(Order order, int rounds, Layout layout, List<String> chosen, OptionalDouble ease) {

    Shape {
        chosen = List.copyOf(chosen);
    }

    /** A layout whose widths were not taken from the stash. */
    Shape(Order order, int rounds, Layout layout, List<String> chosen) {
        this(order, rounds, layout, chosen, OptionalDouble.empty());
    }

    Size finished() {
        return layout.finished();
    }

    /** A hearth between a fifth and a half of each side, so that it is seen and framed. */
    static boolean isWell(Size hearth, Size whole) {
        return isFifth(hearth, whole)
                && isHalf(hearth.width(), whole.width())
                && isHalf(hearth.height(), whole.height());
    }

    /** A fifth of each side at least. */
    static boolean isFifth(Size hearth, Size whole) {
        return hearth.width().times(5).nm() >= whole.width().nm()
                && hearth.height().times(5).nm() >= whole.height().nm();
    }

    private static boolean isHalf(Length hearth, Length whole) {
        return hearth.times(2).nm() <= whole.nm();
    }
}
