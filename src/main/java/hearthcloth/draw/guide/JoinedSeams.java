package hearthcloth.draw.guide;

import hearthcloth.cloth.Step;
import hearthcloth.sew.SeamTask;
import java.util.ArrayList;
import java.util.List;

/** Seams in groups: joins of one bar that follow each other and are sewn alike together, every other seam alone. */
final class JoinedSeams {

    private JoinedSeams() {}

    static List<List<SeamTask>> of(List<SeamTask> seams) {
        List<List<SeamTask>> groups = new ArrayList<>();
        for (SeamTask seam : seams) {
            List<SeamTask> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (!last.isEmpty() && isLike(last.get(0).step(), seam.step())) {
                last.add(seam);
            } else {
                groups.add(new ArrayList<>(List.of(seam)));
            }
        }
        return groups;
    }

    private static boolean isLike(Step one, Step other) {
        return other.joinedBar().isPresent()
                && other.joinedBar().equals(one.joinedBar())
                && addedWraps(one) == addedWraps(other)
                && one.added() == other.added()
                && one.seam().join() == other.seam().join();
    }

    /** Whether the new half wraps the other. */
    static boolean addedWraps(Step step) {
        return step.seam().wraps() == step.added();
    }
}
