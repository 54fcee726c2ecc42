package hearthcloth.work;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.Workbench;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A cloth of 24 in from forty scraps (seed 5), planned once for all tests of what happens to it. */
public final class Worked {

    public static final Stash HEAP = Stashes.scraps(40, 5);

    public static final Plan PLAN = Planned.plans(HEAP, 24, 1).get(0);

    /** The first number that is free for a new piece. */
    public static final int NEXT = 1_000;

    private Worked() {}

    /** Kept, and nothing cut. */
    public static Project kept() {
        return Project.of(DesignEdits.settled(PLAN, Order.ROUND), PLAN, Purpose.NOTHING);
    }

    /** All cut, and nothing sewn. */
    public static Project cut() {
        return kept().with(kept().life().at(Stage.CUT));
    }

    public static Project ticked(String... cuts) {
        return kept().with(kept().bench().withTicked(Set.of(cuts)));
    }

    public static Workbench bench(Project cloth) {
        return new Workbench(cloth, HEAP, NEXT, Ruler.EIGHTHS);
    }

    /** The bench of a cloth whose pieces were cut up: what it was cut from lies in the stash no more. */
    public static Workbench benchAfterCutting(Project cloth) {
        Set<Piece> gone = new HashSet<>();
        PLAN.cuts().forEach(cut -> gone.add(cut.piece()));
        return new Workbench(
                cloth,
                new Stash(HEAP.pieces().stream()
                        .filter(piece -> !gone.contains(piece))
                        .toList()),
                NEXT,
                Ruler.EIGHTHS);
    }

    public static Budget steps() {
        return Budget.steps(4_000);
    }

    /** A stash after a deed. */
    public static Stash after(Stash before, Deed.Pieces pieces) {
        List<Piece> now = new ArrayList<>(before.pieces());
        now.removeAll(pieces.gone());
        now.addAll(pieces.come());
        return new Stash(now);
    }

    /** Square millimetres of these pieces together. */
    public static double area(List<Piece> pieces) {
        return pieces.stream().mapToDouble(Piece::areaMm2).sum();
    }

    /** Square millimetres of the patches of a plan that are cut already, or of all. */
    public static double patches(Plan plan, boolean past) {
        return plan.cuts().stream()
                .filter(cut -> !past || cut.past())
                .flatMap(cut -> cut.tree().kept().stream())
                .mapToDouble(kept -> kept.at().size().areaMm2())
                .sum();
    }
}
