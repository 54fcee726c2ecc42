package hearthcloth.plan.propose;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Showing;
import hearthcloth.colour.Lab;
import hearthcloth.measure.Length;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How different two cloths look side by side: both pictures laid over each other at one size, and the mean distance of
 * their colours in CIELAB over a grid of places. Each picture is looked at once.
 */
final class LookDistance {

    private static final ProposalParameters.Unlike UNLIKE =
            ProposalParameters.standard().gallery().unlike();

    /** Below this mean distance two pictures pass for one cloth. */
    static final double SEEN = UNLIKE.looks();

    private static final int GRID = UNLIKE.grid();

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
        Map<String, Lab> turned = new LinkedHashMap<>();
        for (Piece piece : trial.answer().used()) {
            labs.put(piece.fabric().name(), piece.fabric().mean());
            turned.put(piece.fabric().name(), piece.fabric().wrongSide().lab());
        }
        Cloth cloth = trial.cloth();
        long wide = cloth.finished().width().nm() / (2L * GRID);
        long high = cloth.finished().height().nm() / (2L * GRID);
        List<Lab> grid = new ArrayList<>(Collections.nCopies(GRID * GRID, Lab.BLACK));
        for (Laid laid : cloth.laid()) {
            Map<String, Lab> shown = laid.patch().showing() == Showing.WRONG ? turned : labs;
            Lab lab = shown.getOrDefault(laid.patch().fabric(), Lab.BLACK);
            for (int row = first(laid.at().y(), high); row < first(laid.at().bottom(), high); row++) {
                for (int column = first(laid.at().x(), wide);
                        column < first(laid.at().right(), wide);
                        column++) {
                    grid.set(row * GRID + column, lab);
                }
            }
        }
        return grid;
    }

    /** The first place of a row whose middle is not before this; middles lie at the odd multiples of half a step. */
    private static int first(Length from, long half) {
        return (int) Math.min(GRID, Math.max(0, -Math.floorDiv(half - from.nm(), 2 * half)));
    }
}
