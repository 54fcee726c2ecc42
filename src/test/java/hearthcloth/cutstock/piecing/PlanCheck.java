package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Judges a plan in cut sizes, seam by seam; shares no arithmetic with the search, which works in nets. */
final class PlanCheck {

    private final PiecingJob job;
    private final List<String> faults = new ArrayList<>();
    private final Set<Integer> used = new HashSet<>();
    private long lost;
    private long cut;
    private int patches;

    private PlanCheck(PiecingJob job) {
        this.job = job;
    }

    /** What is wrong with one cloth by itself. */
    static List<String> treeFaults(PiecingJob job, PiecedCloth cloth) {
        PlanCheck check = new PlanCheck(job);
        long[] size = check.size(cloth.tree());
        long hem = 2 * job.allowances().hem();
        check.require(
                size[0] == cloth.made().width() + hem && size[1] == cloth.made().height() + hem,
                "cut to " + size[0] + "x" + size[1]);
        return check.faults;
    }

    static List<String> faults(PiecingJob job, PiecingPlan plan) {
        PlanCheck check = new PlanCheck(job);
        Set<Integer> seen = new HashSet<>();
        for (PiecedCloth cloth : plan.cloths()) {
            long[] size = check.size(cloth.tree());
            long hem = 2 * job.allowances().hem();
            check.require(seen.add(cloth.cloth()), "cloth " + cloth.cloth() + " twice");
            check.require(
                    size[0] == cloth.made().width() + hem
                            && size[1] == cloth.made().height() + hem,
                    "cloth " + cloth.cloth() + " is cut to " + size[0] + "x" + size[1]);
        }
        PiecingPlan.Figures told = plan.figures();
        check.require(check.lost == told.lost(), "lost " + check.lost + ", told " + told.lost());
        check.require(check.cut == told.cut(), "cut " + check.cut + ", told " + told.cut());
        check.require(Math.max(0, check.patches - plan.cloths().size()) == told.seams(), "seams told " + told.seams());
        boolean full = plan.cloths().size() == job.cloths().size()
                && plan.cloths().stream()
                        .allMatch(cloth -> cloth.made().equals(job.cloths().get(cloth.cloth())));
        check.require(full == told.full(), "full told " + told.full());
        return check.faults;
    }

    private void require(boolean holds, String fault) {
        if (!holds) {
            faults.add(fault);
        }
    }

    private long[] size(Pieced tree) {
        if (tree instanceof ScrapPatch patch) {
            judge(patch);
            return new long[] {patch.width(), patch.height()};
        }
        Joint joint = (Joint) tree;
        long[] a = size(joint.first());
        long[] b = size(joint.second());
        long eaten = job.allowances().narrow() + job.allowances().wide();
        int meet = joint.beside() ? 1 : 0;
        require(a[meet] == b[meet], "edges " + a[meet] + " and " + b[meet] + " do not meet");
        a[1 - meet] += b[1 - meet] - eaten;
        return a;
    }

    private void judge(ScrapPatch patch) {
        Scrap scrap = job.scraps().get(patch.scrap());
        require(!patch.turned() || scrap.turnable(), "scrap " + patch.scrap() + " has a nap and is turned");
        require(used.add(patch.scrap()), "scrap " + patch.scrap() + " is used twice");
        long width = patch.turned() ? scrap.height() : scrap.width();
        long height = patch.turned() ? scrap.width() : scrap.height();
        require(patch.width() <= width && patch.height() <= height, "scrap " + patch.scrap() + " is too small");
        long shown = Math.min(patch.width(), patch.height())
                - 2 * Math.max(job.allowances().wide(), job.allowances().hem());
        require(shown >= job.terms().least(), "scrap " + patch.scrap() + " shows " + shown);
        long right = width - patch.width();
        long below = height - patch.height();
        long across = kept(right, height) + kept(patch.width(), below);
        long down = kept(right, patch.height()) + kept(width, below);
        lost += width * height - patch.width() * patch.height() - Math.max(across, down);
        cut += patch.width() * patch.height();
        patches++;
    }

    private long kept(long a, long b) {
        boolean goesBack = job.terms().keepShort() > 0
                && Math.min(a, b) >= job.terms().keepShort()
                && Math.max(a, b) >= job.terms().keepLong();
        return goesBack ? a * b : 0;
    }
}
