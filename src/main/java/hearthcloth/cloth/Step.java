package hearthcloth.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;

/**
 * One seam in the order it is sewn.
 *
 * <p>The half with more patches is made first, so that the parts of a bar are joined just before the bar is sewn on.
 *
 * @param number from 1
 * @param seam the node of the tree
 * @param line the joining line in the finished cloth, seen from the front, a rectangle without thickness
 * @param running the raw size of the work after this seam and its trimming: finished plus the allowances still open
 */
public record Step(int number, Seam seam, Rect line, Size running) {

    static List<Step> of(Cloth cloth) {
        List<Step> steps = new ArrayList<>();
        cloth.work().fold(new Order(cloth.making().seam())).emit().into(Frame.whole(cloth.making()), steps);
        return List.copyOf(steps);
    }

    /** Finished length of the joining line. */
    public Length length() {
        return seam.join().edge(seam.first().size());
    }

    /** The half that is new: the smaller one, sewn to the work that is there. */
    public Half added() {
        return count(Half.SECOND) <= count(Half.FIRST) ? Half.SECOND : Half.FIRST;
    }

    public List<Patch> patches(Half half) {
        return seam.half(half).fold(new Patches());
    }

    /** The name of the bar whose parts this seam joins, if it is a join within a bar. */
    public java.util.Optional<String> joinedBar() {
        return Bars.name(seam);
    }

    private int count(Half half) {
        return patches(half).size();
    }

    @FunctionalInterface
    private interface Emit {
        void into(Frame frame, List<Step> steps);
    }

    private record Made(int patches, Emit emit) {}

    private record Order(SeamKind kind) implements Assembly.Fold<Made> {

        @Override
        public Made patch(Patch patch) {
            return new Made(1, (frame, steps) -> {});
        }

        @Override
        public Made seam(Seam seam, Made first, Made second) {
            return new Made(first.patches + second.patches, (frame, steps) -> {
                boolean firstLeads = first.patches >= second.patches;
                Half lead = firstLeads ? Half.FIRST : Half.SECOND;
                (firstLeads ? first : second).emit.into(frame.half(seam, lead, kind), steps);
                (firstLeads ? second : first).emit.into(frame.half(seam, lead.other(), kind), steps);
                steps.add(new Step(
                        steps.size() + 1, seam, frame.line(seam), frame.closed().around(seam.size())));
            });
        }
    }
}
