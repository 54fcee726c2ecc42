package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.CutFigures;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Says what is wrong with a plan, from the job and the parts' rectangles alone: it trusts neither the plan's cuts nor
 * its figures, and shares no code with the search.
 */
public final class PlanOracle {

    private final CutJoinJob job;
    private final CutPlan plan;
    private final List<String> faults = new ArrayList<>();

    private PlanOracle(CutJoinJob job, CutPlan plan) {
        this.job = job;
        this.plan = plan;
    }

    private record Box(long x, long y, long right, long bottom) {
        static Box of(Cutting c) {
            return new Box(c.x(), c.y(), c.x() + c.width(), c.y() + c.height());
        }

        boolean overlaps(Box o) {
            return x < o.right && o.x < right && y < o.bottom && o.y < bottom;
        }
    }

    /** Everything that is wrong, in words; empty for a plan that can be cut and sewn. */
    public static List<String> faults(CutJoinJob job, CutPlan plan) {
        PlanOracle oracle = new PlanOracle(job, plan);
        plan.pieces().forEach(oracle::piece);
        oracle.pieces();
        job.blocks().forEach(oracle::block);
        job.bars().forEach(oracle::bar);
        job.neighbours().forEach(oracle::neighbours);
        oracle.figures();
        return oracle.faults;
    }

    private void check(boolean holds, String fault) {
        if (!holds) {
            faults.add(fault);
        }
    }

    private void pieces() {
        long distinct =
                plan.pieces().stream().map(used -> used.piece().id()).distinct().count();
        check(distinct == plan.pieces().size(), "a piece is cut twice");
        check(plan.pieces().stream().allMatch(used -> job.stock().contains(used.piece())), "a piece is not in stock");
    }

    private void piece(CutPiece used) {
        StockPiece piece = used.piece();
        Box whole = new Box(0, 0, piece.width(), piece.length());
        check(Box.of(used.cutting()).equals(whole), "cutting does not cover piece " + piece.id());
        tree(used.cutting(), piece.id());
        List<Box> boxes = new ArrayList<>();
        for (Cutting leaf : used.cutting().leaves().toList()) {
            Box box = Box.of(leaf);
            check(leaf.width() > 0 && leaf.height() > 0, "empty leaf " + leaf);
            check(
                    box.x >= 0 && box.y >= 0 && box.right <= whole.right && box.bottom <= whole.bottom,
                    "outside " + leaf);
            check(boxes.stream().noneMatch(box::overlaps), "overlap on piece " + piece.id() + ": " + leaf);
            boxes.add(box);
        }
        check(guillotine(boxes), "not edge to edge on piece " + piece.id());
    }

    /** Each cut's two sides must be exactly what the cut makes of its rectangle. */
    private void tree(Cutting cutting, int piece) {
        if (cutting instanceof Cutting.Cut c) {
            Box all = Box.of(c);
            Box near = c.lengthwise()
                    ? new Box(all.x, all.y, c.at(), all.bottom)
                    : new Box(all.x, all.y, all.right, c.at());
            Box far = c.lengthwise()
                    ? new Box(c.at(), all.y, all.right, all.bottom)
                    : new Box(all.x, c.at(), all.right, all.bottom);
            check(
                    Box.of(c.first()).equals(near) && Box.of(c.second()).equals(far),
                    "a cut on piece " + piece + " is off");
            tree(c.first(), piece);
            tree(c.second(), piece);
        }
    }

    /** Whether boxes come apart by straight cuts, found anew. */
    private static boolean guillotine(List<Box> boxes) {
        if (boxes.size() <= 1) {
            return true;
        }
        for (Box edge : boxes) {
            List<Box> left = boxes.stream().filter(b -> b.right <= edge.right).toList();
            List<Box> right = boxes.stream().filter(b -> b.x >= edge.right).toList();
            if (!right.isEmpty() && left.size() + right.size() == boxes.size()) {
                return guillotine(left) && guillotine(right);
            }
            List<Box> upper =
                    boxes.stream().filter(b -> b.bottom <= edge.bottom).toList();
            List<Box> lower = boxes.stream().filter(b -> b.y >= edge.bottom).toList();
            if (!lower.isEmpty() && upper.size() + lower.size() == boxes.size()) {
                return guillotine(upper) && guillotine(lower);
            }
        }
        return false;
    }

    private void block(JobBlock block) {
        List<CutPlan.Placed> parts = plan.partsOf(block.id());
        check(parts.size() == 1, "block " + block.id() + " occurs " + parts.size() + " times");
        for (CutPlan.Placed placed : parts) {
            Cutting.Part part = placed.part();
            boolean upright = part.width() == block.width() && part.height() == block.height();
            boolean turned = part.height() == block.width() && part.width() == block.height();
            check(part.turned() ? turned : upright, "block " + block.id() + " is cut as " + part);
            check(!part.turned() || (block.turnable() && !placed.piece().lengthwiseOnly()), "block turned against nap");
            check(block.fabrics().has(placed.piece().fabric()), "block " + block.id() + " is of a wrong fabric");
        }
    }

    private void bar(JobBar bar) {
        List<CutPlan.Placed> parts = plan.partsOf(bar.id());
        String name = "bar " + bar.id();
        check(!parts.isEmpty(), name + " is missing");
        check(parts.size() - 1 <= bar.mostJoins(), name + " has too many joins");
        long sum = 0;
        for (int i = 0; i < parts.size(); i++) {
            CutPlan.Placed placed = parts.get(i);
            Cutting.Part part = placed.part();
            boolean turned = part.turned();
            long across = turned ? part.height() : part.width();
            long along = turned ? part.width() : part.height();
            sum += along;
            check(part.index() == i, name + " has wrong indices");
            check(across == bar.width(), name + " has a part " + across + " wide");
            check(parts.size() == 1 || along >= bar.leastPart(), name + " has a part of " + along);
            check(bar.fabrics().has(placed.piece().fabric()), name + " is of a wrong fabric");
            boolean nap = placed.piece().lengthwiseOnly();
            boolean lies = switch (bar.turn()) {
                case ANY -> true;
                case ALONG -> !turned;
                case ACROSS -> turned;
                case NAP -> !(turned && nap);
                case NAP_ACROSS -> turned || !nap;
            };
            check(lies, name + " lies the wrong way");
        }
        check(sum - job.joinLoss() * (parts.size() - 1) == bar.length(), name + " adds up to " + sum);
        long fabrics =
                parts.stream().map(placed -> placed.piece().fabric()).distinct().count();
        check(!bar.oneFabric() || fabrics == 1, name + " mixes fabrics");
        for (long join : joins(bar.id())) {
            for (Span span : bar.forbidden()) {
                check(join <= span.from() || join >= span.to(), name + " has a join at " + join + " in " + span);
            }
        }
    }

    private List<Long> joins(int bar) {
        List<Long> positions = new ArrayList<>();
        List<CutPlan.Placed> parts = plan.partsOf(bar);
        for (int j = 1; j < parts.size(); j++) {
            long cuts = 0;
            for (int i = 0; i < j; i++) {
                cuts += parts.get(i).part().turned()
                        ? parts.get(i).part().width()
                        : parts.get(i).part().height();
            }
            positions.add(cuts - (j - 1) * job.joinLoss() - job.joinOffset());
        }
        return positions;
    }

    private void neighbours(NeighbourBars pair) {
        for (long p : joins(pair.first())) {
            for (long q : joins(pair.second())) {
                check(Math.abs(p + pair.shift() - q) >= pair.clearance(), "joins too close: " + pair);
            }
        }
    }

    private void figures() {
        Map<Integer, Integer> parts = new HashMap<>();
        double used = 0;
        double lost = 0;
        double kept = 0;
        for (CutPiece piece : plan.pieces()) {
            for (Cutting leaf : piece.cutting().leaves().toList()) {
                double area = (double) leaf.width() * leaf.height();
                if (leaf instanceof Cutting.Part part) {
                    parts.merge(part.demand(), 1, Integer::sum);
                    used += area;
                } else if (leaf.width() < job.leastOffcut() || leaf.height() < job.leastOffcut()) {
                    lost += area;
                } else {
                    kept += area;
                }
            }
        }
        int joins = parts.values().stream().mapToInt(count -> count - 1).sum();
        CutFigures said = plan.figures();
        check(said.joins() == joins, "joins are " + joins + ", said " + said.joins());
        check(
                close(said.usedArea(), used) && close(said.sliverArea(), lost) && close(said.offcutArea(), kept),
                "areas");
    }

    private static boolean close(double one, double other) {
        return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));
    }
}
