package hearthcloth.plan.fit;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the stash has of each fabric, counted once so that thousands of drafts can be estimated quickly. */
public final class Supply {

    private final List<Fabric> fabrics;
    private final Map<String, List<Piece>> pieces = new LinkedHashMap<>();
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private final Map<Strip, Length> longest = new LinkedHashMap<>();

    private record Strip(String fabric, Length width) {}

    public Supply(Stash stash) {
        this.fabrics = stash.fabrics();
        for (Piece piece : stash.pieces()) {
            pieces.computeIfAbsent(piece.fabric().name(), name -> new ArrayList<>())
                    .add(piece);
            areas.merge(piece.fabric().name(), piece.areaMm2(), Double::sum);
        }
    }

    public List<Fabric> fabrics() {
        return fabrics;
    }

    public List<Piece> of(Fabric fabric) {
        return pieces.getOrDefault(fabric.name(), List.of());
    }

    public List<Piece> of(List<Fabric> some) {
        return some.stream().flatMap(fabric -> of(fabric).stream()).toList();
    }

    public double area(Fabric fabric) {
        return areas.getOrDefault(fabric.name(), 0.0);
    }

    public double area(List<Fabric> some) {
        return some.stream().mapToDouble(this::area).reduce(0, Double::sum);
    }

    /** True when some single piece of {@code fabric} holds a rectangle of this size, turned if the nap allows it. */
    public boolean holds(Fabric fabric, Size size) {
        return of(fabric).stream()
                .anyMatch(piece -> piece.size().holds(size)
                        || (fabric.nap() == Fabric.Nap.ANY && piece.size().holds(size.turned())));
    }

    /** The longest strip of this width that one piece of these fabrics gives; zero where none is wide enough. */
    public Length longest(List<Fabric> some, Length width) {
        Length most = Length.ZERO;
        for (Fabric fabric : some) {
            most = most.max(longest.computeIfAbsent(new Strip(fabric.name(), width), strip -> longest(fabric, width)));
        }
        return most;
    }

    private Length longest(Fabric fabric, Length width) {
        Length most = Length.ZERO;
        for (Piece piece : of(fabric)) {
            Size size = piece.size();
            if (!size.width().isLessThan(width)) {
                most = most.max(size.height());
            }
            if (!size.height().isLessThan(width)) {
                most = most.max(size.width());
            }
        }
        return most;
    }
}
