package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.join.Piecework;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes out lanes and what is cut from them as cuttings. Where lanes lie side by side and nothing else is cut beside
 * or from them, all may first be cut to the longest length used, if that leaves a larger offcut.
 */
final class LaneLayout {

    private final CutJoinJob job;
    private final LaneState state;
    private final Map<Integer, List<Piece>> pieces = new LinkedHashMap<>();
    private final Map<Integer, List<Integer>> cutOff = new LinkedHashMap<>();

    private record Piece(CutDemand demand, int index, long cut) {}

    /** For demands in the order in which they were worked. */
    LaneLayout(CutJoinJob job, List<? extends CutDemand> demands, GuillotineLanes lanes, Piecework work) {
        this.job = job;
        this.state = lanes.state();
        for (int bar = 0; bar < demands.size(); bar++) {
            for (int i = 0; i < work.parts(bar); i++) {
                pieces.computeIfAbsent(state.plots + work.strip(bar, i), lane -> new ArrayList<>())
                        .add(new Piece(demands.get(bar), i, work.cut(bar, i)));
            }
        }
        for (int i = state.plots; i < state.limit; i++) {
            if (state.parent[i] >= 0) {
                cutOff.computeIfAbsent(state.parent[i], from -> new ArrayList<>())
                        .add(i);
            }
        }
        cutOff.values()
                .forEach(list -> list.sort(Comparator.comparing((Integer i) -> !state.lane[i])
                        .thenComparing(Comparator.comparingLong((Integer i) -> state.extent[i])
                                .thenComparing(this::used)
                                .reversed())));
    }

    /** The length of a lane that goes into parts. */
    private long used(int lane) {
        return pieces.getOrDefault(lane, List.of()).stream()
                .mapToLong(Piece::cut)
                .sum();
    }

    /** The used pieces of a ground with the lanes cut out of its plots. */
    CutPlan plan(FreePlots ground) {
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
        return cutting instanceof Cutting.Offcut free ? share(next[0]++, free) : cutting;
    }

    /** A rectangle with all that is cut from it. */
    private Cutting share(int rectangle, Cutting free) {
        if (state.lane[rectangle]) {
            return pieces(rectangle, 0, free);
        }
        List<Integer> row = cutOff.getOrDefault(rectangle, List.of());
        Cutting whole = lay(rectangle, row, 0, free);
        boolean across = state.across[rectangle];
        long longest = row.stream().mapToLong(this::used).max().orElse(0);
        boolean plain = row.stream().allMatch(i -> state.lane[i] && state.kids[i] == 0);
        if (!plain || longest == 0 || longest == (across ? free.width() : free.height())) {
            return whole;
        }
        Cutting trimmed = split(free, across, longest, near -> lay(rectangle, row, 0, near), far -> far);
        return worth(trimmed) > worth(whole) ? trimmed : whole;
    }

    /** Orders cuttings by large offcuts first, then by few cuts. */
    private double worth(Cutting cutting) {
        double squares = cutting.leaves()
                .filter(leaf ->
                        leaf instanceof Cutting.Offcut && Math.min(leaf.width(), leaf.height()) >= job.leastOffcut())
                .mapToDouble(leaf -> leaf.area() * leaf.area())
                .reduce(0, Double::sum);
        return squares - 0.01 * cutting.cuts() * cutting.area() * cutting.area();
    }

    /** Lays the parts of a rectangle side by side, lanes first. */
    private Cutting lay(int rectangle, List<Integer> row, int i, Cutting free) {
        return i == row.size()
                ? free
                : split(
                        free,
                        !state.across[rectangle],
                        state.extent[row.get(i)],
                        near -> share(row.get(i), near),
                        far -> lay(rectangle, row, i + 1, far));
    }

    private Cutting pieces(int lane, int i, Cutting free) {
        List<Piece> mine = pieces.getOrDefault(lane, List.of());
        if (i == mine.size()) {
            return lay(lane, cutOff.getOrDefault(lane, List.of()), 0, free);
        }
        Piece piece = mine.get(i);
        boolean lies = !state.across[lane];
        return split(free, lies, piece.cut(), near -> part(piece, near, lies), far -> pieces(lane, i + 1, far));
    }

    private static Cutting part(Piece piece, Cutting place, boolean turned) {
        boolean square = piece.demand() instanceof JobBlock block && block.width() == block.height();
        return new Cutting.Part(
                piece.demand().id(),
                piece.index(),
                place.x(),
                place.y(),
                place.width(),
                place.height(),
                turned && !square);
    }

    private interface Use {
        Cutting of(Cutting.Offcut rectangle);
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
