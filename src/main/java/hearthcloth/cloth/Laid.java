package hearthcloth.cloth;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A patch at its place in the finished cloth, with the allowance on each side. What closes a side decides its
 * allowance: wide where the patch wraps, narrow where it is wrapped, the hem's at the rim.
 *
 * @param at joining line to joining line, seen from the front
 * @param margin added to the cut only: leeway in length, trim in width, and what brings both up to the ruler's marks
 */
public record Laid(Patch patch, Rect at, Edges allowances, Size margin) {

    static List<Laid> of(Cloth cloth) {
        List<Laid> laid = new ArrayList<>();
        cloth.work().fold(new Down(cloth.making(), laid)).accept(SeamFrame.whole(cloth.making()), true);
        return List.copyOf(laid);
    }

    /** The finished size plus the allowances: the size of the patch when everything is trimmed. */
    public Size exact() {
        return allowances.around(at.size());
    }

    /** The cut size: the exact size plus leeway and trim, up to the next mark of the ruler. */
    public Size cut() {
        return new Size(exact().width().plus(margin.width()), exact().height().plus(margin.height()));
    }

    /**
     * Folds to a function of the frame, so that places are handed down the tree. The flag says that a part is the last
     * of its bar: a bar's leeway lies on its last part, since the bar is laid on from its first end and trimmed at the
     * other.
     */
    private record Down(Making making, List<Laid> out) implements Assembly.Fold<BiConsumer<SeamFrame, Boolean>> {

        @Override
        public BiConsumer<SeamFrame, Boolean> patch(Patch patch) {
            return (frame, last) -> {
                Rect at = Rect.at(frame.x(), frame.y(), patch.size());
                Size exact = frame.closed().around(patch.size());
                out.add(new Laid(patch, at, frame.closed(), marked(exact, margin(patch, last))));
            };
        }

        /** The margin that brings {@code exact} up to whole marks of the ruler. */
        private Size marked(Size exact, Size margin) {
            return new Size(marked(exact.width(), margin.width()), marked(exact.height(), margin.height()));
        }

        private Length marked(Length exact, Length margin) {
            Length mark = making.margins().mark();
            return exact.plus(margin).roundedTo(mark, Rounding.UP).minus(exact);
        }

        @Override
        public BiConsumer<SeamFrame, Boolean> seam(
                Seam seam, BiConsumer<SeamFrame, Boolean> first, BiConsumer<SeamFrame, Boolean> second) {
            boolean bar = isOneBar(seam);
            return (frame, last) -> {
                first.accept(frame.half(seam, Half.FIRST, making.seam()), !bar);
                second.accept(frame.half(seam, Half.SECOND, making.seam()), !bar || last);
            };
        }

        private Size margin(Patch patch, boolean last) {
            if (!(patch.place() instanceof Place.Bar bar)) {
                return Size.square(Length.ZERO);
            }
            Length along = last ? making.leeway() : Length.ZERO;
            return bar.side().isUpright() ? new Size(making.trim(), along) : new Size(along, making.trim());
        }

        private static boolean isOneBar(Seam seam) {
            return Bars.name(seam.first()).isPresent()
                    && Bars.name(seam.first()).equals(Bars.name(seam.second()));
        }
    }
}
