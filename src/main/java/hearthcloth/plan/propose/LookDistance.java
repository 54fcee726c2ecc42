package hearthcloth.plan.propose;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.colour.Lab;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How different two cloths look side by side: both pictures laid over each other at one size, and the mean distance of
 * their colours in CIELAB over a grid of places. Each picture is looked at once.
 */
final class LookDistance {

    /** Below this mean distance two pictures pass for one cloth (ours). */
    static final double SEEN = 8;

    private static final int GRID = 12;

    private final IdentityHashMap<DraftTrial, List<Lab>> grids = new IdentityHashMap<>();

    double between(DraftTrial one, DraftTrial other) {
        List<Lab> first = grids.computeIfAbsent(one, LookDistance::grid);
        List<Lab> second = grids.computeIfAbsent(other, LookDistance::grid);
        double sum = 0;
        for (int i = 0; i < first.size(); i++) {
            sum += first.get(i).apart(second.get(i));
        }
        return sum / first.size();
    }

    private static List<Lab> grid(DraftTrial trial) {
        Map<String, Lab> labs = new LinkedHashMap<>();
        for (Piece piece : trial.answer().used()) {
            labs.put(piece.fabric().name(), piece.fabric().colour().lab());
        }
        Cloth cloth = trial.cloth();
        Size size = cloth.finished();
        List<Laid> laid = cloth.laid();
        List<Lab> grid = new ArrayList<>();
        for (int i = 0; i < GRID * GRID; i++) {
            long x = size.width().nm() / (2 * GRID) * (2 * (i % GRID) + 1);
            long y = size.height().nm() / (2 * GRID) * (2 * (i / GRID) + 1);
            grid.add(at(laid, x, y, labs));
        }
        return grid;
    }

    private static Lab at(List<Laid> laid, long x, long y, Map<String, Lab> labs) {
        for (Laid one : laid) {
            if (one.at().right().nm() > x
                    && one.at().x().nm() <= x
                    && one.at().bottom().nm() > y
                    && one.at().y().nm() <= y) {
                return labs.getOrDefault(one.patch().fabric(), Lab.BLACK);
            }
        }
        return Lab.BLACK;
    }
}
