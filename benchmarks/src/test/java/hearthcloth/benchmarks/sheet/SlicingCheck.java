package hearthcloth.benchmarks.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** Reads a plan with its own arithmetic: lays every leaf on the sheet and looks for gaps, overlaps and excess. */
final class SlicingCheck {

    private record Leaf(long x, long y, Slicing what) {}

    private SlicingCheck() {}

    /** Fails unless the plan is a plan of the job, worth what it says. */
    static void check(SheetJob job, SheetPlan plan) {
        List<Leaf> leaves = new ArrayList<>();
        lay(plan.cuts(), 0, 0, leaves);
        long area = 0;
        long worth = 0;
        long[] counts = new long[job.wanted().size()];
        for (Leaf leaf : leaves) {
            Slicing what = leaf.what();
            assertThat(what.width()).isPositive();
            assertThat(what.height()).isPositive();
            assertThat(leaf.x() + what.width()).isLessThanOrEqualTo(job.width());
            assertThat(leaf.y() + what.height()).isLessThanOrEqualTo(job.height());
            area += what.width() * what.height();
            if (what instanceof Slicing.Piece piece) {
                worth += worth(job, piece);
                counts[piece.kind()]++;
            }
        }
        assertThat(area).as("the leaves cover the sheet").isEqualTo(job.width() * job.height());
        for (int kind = 0; kind < counts.length; kind++) {
            assertThat(counts[kind]).isLessThanOrEqualTo(job.wanted().get(kind).copies());
        }
        assertThat(plan.worth()).isEqualTo(worth).isLessThanOrEqualTo(plan.bound());
        assertThat(overlaps(leaves)).as("overlaps").isFalse();
    }

    private static long worth(SheetJob job, Slicing.Piece piece) {
        Wanted wanted = job.wanted().get(piece.kind());
        assertThat(piece.turned() && !job.turning()).isFalse();
        assertThat(piece.turned() ? piece.height() : piece.width()).isEqualTo(wanted.width());
        assertThat(piece.turned() ? piece.width() : piece.height()).isEqualTo(wanted.height());
        return wanted.worth();
    }

    private static boolean overlaps(List<Leaf> leaves) {
        for (int i = 0; i < leaves.size(); i++) {
            for (int k = 0; k < i; k++) {
                Leaf a = leaves.get(i);
                Leaf b = leaves.get(k);
                if (a.x() < b.x() + b.what().width()
                        && b.x() < a.x() + a.what().width()
                        && a.y() < b.y() + b.what().height()
                        && b.y() < a.y() + a.what().height()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void lay(Slicing slicing, long x, long y, List<Leaf> leaves) {
        if (slicing instanceof Slicing.Beside cut) {
            lay(cut.left(), x, y, leaves);
            lay(cut.right(), x + cut.left().width(), y, leaves);
        } else if (slicing instanceof Slicing.Above cut) {
            lay(cut.upper(), x, y, leaves);
            lay(cut.lower(), x, y + cut.upper().height(), leaves);
        } else {
            leaves.add(new Leaf(x, y, slicing));
        }
    }
}
