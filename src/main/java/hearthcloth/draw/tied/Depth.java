package hearthcloth.draw.tied;

import hearthcloth.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Panes sorted in space once, so that they can be listed from far to near for any eye. A binary space partition
 * (docs/sources.md#depth-order): the plane of one pane divides all others, and those that cross it are cut along it.
 */
final class Depth {

    /** Panes tried for each dividing plane. */
    private static final int TRIES = 8;

    /** How many panes of imbalance one cut pane is worth. */
    private static final int CUT = 6;

    private final @Nullable Node root;

    private record Node(
            Vector normal,
            List<Pane> on,
            @Nullable Node before,
            @Nullable Node behind) {}

    private Depth(@Nullable Node root) {
        this.root = root;
    }

    /** A plane known to divide things well: {@code normal · place = at}. */
    record Cut(Vector normal, double at) {}

    /** Divides the panes first along {@code cuts}, as far as each divides anything. */
    static Depth of(List<Pane> panes, List<Cut> cuts) {
        return new Depth(node(panes, cuts));
    }

    private static @Nullable Node node(List<Pane> panes, List<Cut> cuts) {
        for (int i = 0; i < cuts.size(); i++) {
            Cut cut = cuts.get(i);
            boolean before = panes.stream().anyMatch(pane -> pane.side(cut.normal, cut.at) == Pane.Side.BEFORE);
            boolean behind = panes.stream().anyMatch(pane -> pane.side(cut.normal, cut.at) == Pane.Side.BEHIND);
            if (before && behind) {
                return parted(panes, cut, -1, cuts.subList(i + 1, cuts.size()));
            }
        }
        if (panes.isEmpty()) {
            return null;
        }
        int chosen = parting(panes);
        Pane pane = panes.get(chosen);
        return parted(panes, new Cut(pane.out(), pane.out().dot(pane.corners().get(0))), chosen, List.of());
    }

    /** Divides by a plane; the pane at {@code chosen}, if any, lies in it. */
    private static Node parted(List<Pane> panes, Cut cut, int chosen, List<Cut> cuts) {
        Vector normal = cut.normal;
        double at = cut.at;
        List<Pane> on = new ArrayList<>();
        List<Pane> before = new ArrayList<>();
        List<Pane> behind = new ArrayList<>();
        for (int i = 0; i < panes.size(); i++) {
            Pane pane = panes.get(i);
            switch (i == chosen ? Pane.Side.ON : pane.side(normal, at)) {
                case ON -> on.add(pane);
                case BEFORE -> before.add(pane);
                case BEHIND -> behind.add(pane);
                case ACROSS -> {
                    before.add(pane.before(normal, at));
                    behind.add(pane.before(normal.times(-1), -at));
                }
            }
        }
        return new Node(normal, on, node(before, cuts), node(behind, cuts));
    }

    /** The pane, of some spread over the list, whose plane cuts fewest others and divides them most evenly. */
    private static int parting(List<Pane> panes) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        int step = Math.max(1, panes.size() / TRIES);
        for (int i = 0; i < panes.size(); i += step) {
            Pane pane = panes.get(i);
            Vector normal = pane.out();
            double at = normal.dot(pane.corners().get(0));
            int cut = 0;
            int uneven = 0;
            for (Pane other : panes) {
                switch (other.side(normal, at)) {
                    case BEFORE -> uneven++;
                    case BEHIND -> uneven--;
                    case ACROSS -> cut++;
                    case ON -> {}
                }
            }
            int cost = CUT * cut + Math.abs(uneven);
            if (cost < least) {
                least = cost;
                best = i;
            }
        }
        return best;
    }

    /** The panes from far to near for an eye infinitely far away in the unit direction {@code eye}. */
    List<Pane> from(Vector eye) {
        List<Pane> sorted = new ArrayList<>();
        sort(root, eye, sorted);
        return sorted;
    }

    private static void sort(@Nullable Node node, Vector eye, List<Pane> sorted) {
        if (node == null) {
            return;
        }
        boolean facing = node.normal.dot(eye) > 0;
        sort(facing ? node.behind : node.before, eye, sorted);
        for (int i = 0; i < node.on.size(); i++) {
            Pane pane = node.on.get(facing ? i : node.on.size() - 1 - i);
            double towards = pane.out().dot(eye);
            if (towards > 1e-9 || (towards < -1e-9 && !pane.oneSided())) {
                sorted.add(pane);
            }
        }
        sort(facing ? node.before : node.behind, eye, sorted);
    }
}
