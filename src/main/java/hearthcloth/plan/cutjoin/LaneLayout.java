package hearthcloth.plan.cutjoin;

import hearthcloth.plan.join.Piecework;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes out lanes and what is cut from them as cuttings. Where nothing is nested the lanes may all be cut to the
 * longest use first, if that leaves a larger offcut.
 */
final class LaneLayout {

    private final Job job;
    private final Lanes lanes;
    private final Map<Integer, List<Lane>> byLevel = new HashMap<>();

    private record Piece(int bar, int index, long cut) {}

    private record Lane(long width, List<Piece> pieces) {
        long used() {
            return pieces.stream().mapToLong(Piece::cut).sum();
        }
    }

    LaneLayout(Job job, Lanes lanes, Piecework work) {
        this.job = job;
        this.lanes = lanes;
        Map<Integer, List<Piece>> bySlot = new HashMap<>();
        for (int bar = 0; bar < job.bars().size(); bar++) {
            for (int i = 0; i < work.parts(bar); i++) {
                bySlot.computeIfAbsent(work.strip(bar, i), slot -> new ArrayList<>())
                        .add(new Piece(job.bars().get(bar).id(), i, work.cut(bar, i)));
            }
        }
        bySlot.forEach((slot, pieces) -> byLevel.computeIfAbsent(
                        key(lanes.plot(slot), lanes.level(slot)), level -> new ArrayList<>())
                .add(new Lane(lanes.width(slot), pieces)));
        byLevel.values()
                .forEach(level -> level.sort(Comparator.comparingLong(Lane::width)
                        .thenComparing(Lane::used)
                        .reversed()));
    }

    private static int key(int plot, int level) {
        return plot * Lanes.MOST_LEVELS + level;
    }

    /** The used pieces of a ground with the lanes cut out of its plots. */
    CutPlan plan(Ground ground) {
        List<CutPiece> used = new ArrayList<>();
        int plot = 0;
        for (int i = 0; i < ground.pieces().size(); i++) {
            int[] next = {plot};
            Cutting cutting = fill(ground.cuttings().get(i), next);
            plot = next[0];
            if (cutting.leaves().anyMatch(Cutting.Part.class::isInstance)) {
                used.add(new CutPiece(ground.pieces().get(i), cutting));
            }
        }
        return CutPlan.of(used, job.blocks().size(), job.bars().size(), job.leastOffcut());
    }

    /** Replaces the free leaves, in their order, by what is cut from them. */
    private Cutting fill(Cutting cutting, int[] next) {
        if (cutting instanceof Cutting.Cut cut) {
            Cutting first = fill(cut.first(), next);
            Cutting second = fill(cut.second(), next);
            return new Cutting.Cut(
                    cut.x(), cut.y(), cut.width(), cut.height(), cut.lengthwise(), cut.at(), first, second);
        }
        return cutting instanceof Cutting.Offcut free ? level(next[0]++, 0, free) : cutting;
    }

    private Cutting level(int plot, int level, Cutting free) {
        if (level >= lanes.depth(plot)) {
            return free;
        }
        Cutting whole = lay(plot, level, free);
        boolean turned = lanes.turned(plot, level);
        long run = turned ? free.width() : free.height();
        long longest = byLevel.getOrDefault(key(plot, level), List.of()).stream()
                .mapToLong(Lane::used)
                .max()
                .orElse(run);
        if (level < lanes.depth(plot) - 1 || longest == run) {
            return whole;
        }
        Cutting trimmed =
                cut(free, turned, longest, near -> lay(plot, level, near)).orElse(whole);
        return worth(trimmed) > worth(whole) ? trimmed : whole;
    }

    /** Large offcuts first, then few cuts. */
    private double worth(Cutting cutting) {
        double squares = cutting.leaves()
                .filter(leaf ->
                        leaf instanceof Cutting.Offcut && Math.min(leaf.width(), leaf.height()) >= job.leastOffcut())
                .mapToDouble(leaf -> leaf.area() * leaf.area())
                .sum();
        return squares - 0.01 * cutting.cuts() * cutting.area() * cutting.area();
    }

    /** Lays the lanes of a level side by side, then the next level or the gap. */
    private Cutting lay(int plot, int level, Cutting free) {
        boolean turned = lanes.turned(plot, level);
        return lay(byLevel.getOrDefault(key(plot, level), List.of()), 0, turned, plot, level, free);
    }

    private Cutting lay(List<Lane> row, int i, boolean turned, int plot, int level, Cutting free) {
        if (i == row.size()) {
            return rest(turned, plot, level, free);
        }
        Lane lane = row.get(i);
        return split(
                free,
                !turned,
                lane.width(),
                near -> pieces(lane, 0, turned, near),
                far -> lay(row, i + 1, turned, plot, level, far));
    }

    private Cutting rest(boolean turned, int plot, int level, Cutting free) {
        long gap = lanes.gap(plot, level);
        boolean nests = level + 1 < lanes.depth(plot);
        if (!nests || gap == 0) {
            return nests ? level(plot, level + 1, free) : free;
        }
        return split(free, !turned, gap, near -> near, far -> level(plot, level + 1, far));
    }

    private Cutting pieces(Lane lane, int i, boolean turned, Cutting free) {
        if (i == lane.pieces().size()) {
            return free;
        }
        Piece piece = lane.pieces().get(i);
        return split(
                free,
                turned,
                piece.cut(),
                near -> new Cutting.Part(
                        piece.bar(), piece.index(), near.x(), near.y(), near.width(), near.height(), turned),
                far -> pieces(lane, i + 1, turned, far));
    }

    private interface Use {
        Cutting of(Cutting.Offcut rectangle);
    }

    private static Optional<Cutting> cut(Cutting free, boolean lengthwise, long size, Use near) {
        return size <= 0 ? Optional.empty() : Optional.of(split(free, lengthwise, size, near, far -> far));
    }

    /** Cuts a size off the left (lengthwise) or the top; no cut where nothing is left. */
    private static Cutting split(Cutting free, boolean lengthwise, long size, Use near, Use far) {
        long x = free.x();
        long y = free.y();
        long width = free.width();
        long height = free.height();
        if (size == (lengthwise ? width : height)) {
            return near.of(new Cutting.Offcut(x, y, width, height));
        }
        return lengthwise
                ? new Cutting.Cut(
                        x,
                        y,
                        width,
                        height,
                        true,
                        x + size,
                        near.of(new Cutting.Offcut(x, y, size, height)),
                        far.of(new Cutting.Offcut(x + size, y, width - size, height)))
                : new Cutting.Cut(
                        x,
                        y,
                        width,
                        height,
                        false,
                        y + size,
                        near.of(new Cutting.Offcut(x, y, width, size)),
                        far.of(new Cutting.Offcut(x, y + size, width, height - size)));
    }
}
