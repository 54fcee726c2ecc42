package hearthcloth.cloth;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One seam in the order it is sewn.
 *
 * <p>The work that is there is made first, then what is sewn to it, so that the parts of a bar are joined just before
 * the bar is sewn on.
 *
 * @param number from 1
 * @param seam the node of the tree
 * @param added the half that is new: the bar, however many parts it has, and otherwise the half with fewer patches
 * @param line the joining line in the finished cloth, seen from the front, as a rectangle without thickness
 * @param running the raw size of the work after this seam and its trimming: finished plus the allowances still open
 */
public record Step(int number, Seam seam, Half added, Rect line, Size running) {

    static List<Step> of(Cloth cloth) {
        List<Step> steps = new ArrayList<>();
        cloth.work().fold(new Order(cloth.making().seam())).emit().into(SeamFrame.whole(cloth.making()), steps);
        return List.copyOf(steps);
    }

    /** Finished length of the joining line. */
    public Length length() {
        return seam.join().edge(seam.first().size());
    }

    public List<Patch> patches(Half half) {
        return seam.half(half).fold(new Patches());
    }

    /** The name of the bar whose parts this seam joins, if it is a join within a bar. */
    public Optional<String> joinedBar() {
        return Bars.name(seam);
    }

    @FunctionalInterface
    private interface Emit {
        void into(SeamFrame frame, List<Step> steps);
    }

    private record Made(int patches, Optional<String> bar, Emit emit) {

        /** The half of a seam that is sewn to the other. */
        static Half added(Made first, Made second) {
            if (first.bar.isPresent() != second.bar.isPresent()) {
                return first.bar.isPresent() ? Half.FIRST : Half.SECOND;
            }
            return second.patches <= first.patches ? Half.SECOND : Half.FIRST;
        }
    }

    private record Order(SeamKind kind) implements Assembly.Fold<Made> {

        private static final Bars BARS = new Bars();

        @Override
        public Made patch(Patch patch) {
            return new Made(1, BARS.patch(patch), (frame, steps) -> {});
        }

        @Override
        public Made seam(Seam seam, Made first, Made second) {
            Half added = Made.added(first, second);
            Half work = added.other();
            return new Made(first.patches + second.patches, BARS.seam(seam, first.bar, second.bar), (frame, steps) -> {
                (work == Half.FIRST ? first : second).emit.into(frame.half(seam, work, kind), steps);
                (work == Half.FIRST ? second : first).emit.into(frame.half(seam, added, kind), steps);
                steps.add(new Step(
                        steps.size() + 1,
                        seam,
                        added,
                        frame.line(seam),
                        frame.closed().around(seam.size())));
            });
        }
    }
}
