package hearthcloth.plan.fit;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A layout that answers the wish, before fabrics are chosen.
 *
 * @param chosen what was chosen where the wish was silent
 * @param ease where the widths were taken from strips of the stash, about how many joins these strips leave
 */
public record LayoutCandidate(Order order, int rounds, Layout layout, List<Sentence> chosen, OptionalDouble ease) {

    public LayoutCandidate {
        chosen = List.copyOf(chosen);
    }

    /** A layout whose widths were not taken from the stash. */
    public LayoutCandidate(Order order, int rounds, Layout layout, List<Sentence> chosen) {
        this(order, rounds, layout, chosen, OptionalDouble.empty());
    }

    public Size finished() {
        return layout.finished();
    }

    /** Whether the hearth is between a fifth and a half of each side, so that it is seen and framed (ours). */
    public static boolean isWell(Size hearth, Size whole) {
        return isFifth(hearth, whole)
                && isHalf(hearth.width(), whole.width())
                && isHalf(hearth.height(), whole.height());
    }

    /** Whether the hearth is at least a fifth of each side. */
    public static boolean isFifth(Size hearth, Size whole) {
        return hearth.width().times(5).nm() >= whole.width().nm()
                && hearth.height().times(5).nm() >= whole.height().nm();
    }

    private static boolean isHalf(Length hearth, Length whole) {
        return hearth.times(2).nm() <= whole.nm();
    }
}
