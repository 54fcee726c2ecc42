package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Cuts the same parts out of the same piece again, so that fewer leftovers remain, then less is lost, then the
 * leftovers are larger. A tree of cuts has one cut less than leaves, so fewest leftovers is fewest cuts as well.
 *
 * <p>It tries one leftover, then two, and so on below the present number. In a straight cutting every leftover and part
 * may be pushed left and up, so cuts need only lie where parts beside each other end; all of these are tried, and
 * results are stored for each rectangle and set of parts. At most {@value #MOST_LOOKS} cuts are examined for a piece,
 * and only pieces with at most {@value #MOST_PARTS} parts; otherwise the piece stays as it is.
 */
public final class Recut {

    private static final int MOST_PARTS = 8;
    private static final int MOST_LOOKS = 20_000;

    private final long leastOffcut;
    private final List<Cutting.Part> parts;
    private final Predicate<Cutting.Part> turns;
    private final Map<State, Optional<Rating>> known = new LinkedHashMap<>();
    private int looks;

    private record State(long width, long height, int set, int leftovers) {}

    private record Rating(Cutting cutting, double lost, double squares) {
        private static final Comparator<Rating> ORDER = Comparator.comparingDouble(Rating::lost)
                .thenComparing(Comparator.comparingDouble(Rating::squares).reversed());

        boolean isBetterThan(Rating other) {
            return ORDER.compare(this, other) < 0;
        }
    }

    private Recut(List<Cutting.Part> parts, Predicate<Cutting.Part> turns, long leastOffcut) {
        this.parts = parts;
        this.turns = turns;
        this.leastOffcut = leastOffcut;
    }

    /** The plan with every piece recut that gains by it; the parts and pieces are the same, and so are the joins. */
    public static CutPlan of(CutJoinJob job, CutPlan plan) {
        Map<Integer, CutDemand> demands = new LinkedHashMap<>();
        job.blocks().forEach(block -> demands.put(block.id(), block));
        job.bars().forEach(bar -> demands.put(bar.id(), bar));
        List<CutPiece> pieces = plan.pieces().stream()
                .map(used -> piece(used, job.leastOffcut(), part -> mayTurn(demands.get(part.demand()), used.piece())))
                .toList();
        return CutPlan.of(pieces, job.blocks().size(), job.bars().size(), job.leastOffcut());
    }

    private static boolean mayTurn(@Nullable CutDemand demand, StockPiece piece) {
        return demand instanceof JobBar bar
                ? bar.turn().allows(true, piece.lengthwiseOnly()) && bar.turn().allows(false, piece.lengthwiseOnly())
                : demand instanceof JobBlock block && block.turnable() && !piece.lengthwiseOnly();
    }

    private static CutPiece piece(CutPiece used, long leastOffcut, Predicate<Cutting.Part> turns) {
        List<Cutting.Part> parts = new ArrayList<>();
        List<Cutting> left = new ArrayList<>();
        used.cutting().leaves().forEach(leaf -> {
            if (leaf instanceof Cutting.Part part) {
                parts.add(part);
            } else {
                left.add(leaf);
            }
        });
        if (left.size() < 2 || parts.size() > MOST_PARTS) {
            return used;
        }
        Recut recut = new Recut(parts, turns, leastOffcut);
        double lost = left.stream().mapToDouble(recut::lost).reduce(0, Double::sum);
        double squares = left.stream().mapToDouble(recut::square).reduce(0, Double::sum);
        Rating before = new Rating(used.cutting(), lost, squares);
        return new CutPiece(
                used.piece(), recut.better(used.piece(), before, left.size()).cutting());
    }

    private Rating better(StockPiece piece, Rating before, int leftovers) {
        int all = (1 << parts.size()) - 1;
        for (int most = 1; most <= leftovers; most++) {
            Optional<Rating> found = best(piece.width(), piece.length(), all, most);
            if (looks > MOST_LOOKS) {
                return before;
            }
            if (found.isPresent()) {
                return most < leftovers || found.get().isBetterThan(before) ? found.get() : before;
            }
        }
        return before;
    }

    private double lost(Cutting left) {
        return Math.min(left.width(), left.height()) < leastOffcut ? left.area() : 0;
    }

    private double square(Cutting left) {
        return Math.min(left.width(), left.height()) < leastOffcut ? 0 : left.area() * left.area();
    }

    /** The best cutting of a rectangle, at the origin, into a set of parts with at most this many leftovers. */
    private Optional<Rating> best(long width, long height, int set, int leftovers) {
        if (set == 0) {
            Cutting left = new Cutting.Offcut(0, 0, width, height);
            return leftovers < 1 ? Optional.empty() : Optional.of(new Rating(left, lost(left), square(left)));
        }
        double spare = (double) width * height - area(set);
        if (spare < 0 || (spare > 0 && leftovers == 0) || looks > MOST_LOOKS) {
            return Optional.empty();
        }
        State state = new State(width, height, set, leftovers);
        Optional<Rating> before = known.get(state);
        if (before != null) {
            return before;
        }
        Optional<Rating> found = Integer.bitCount(set) == 1 && spare == 0 ? whole(width, height, set) : cut(state);
        known.put(state, found);
        return found;
    }

    private double area(int set) {
        double area = 0;
        for (int i = 0; i < parts.size(); i++) {
            area += (set >> i & 1) == 1 ? parts.get(i).area() : 0;
        }
        return area;
    }

    private Optional<Rating> whole(long width, long height, int set) {
        Cutting.Part part = parts.get(Integer.numberOfTrailingZeros(set));
        boolean same = part.width() == width && part.height() == height;
        boolean over = part.width() == height && part.height() == width && turns.test(part);
        Cutting laid = new Cutting.Part(part.demand(), part.index(), 0, 0, width, height, same == part.turned());
        return same || over ? Optional.of(new Rating(laid, 0, 0)) : Optional.empty();
    }

    /** The best over every first cut that ends beside or below a set of parts. */
    private Optional<Rating> cut(State state) {
        Optional<Rating> best = Optional.empty();
        for (int first = state.set(); first > 0; first = (first - 1) & state.set()) {
            int rest = state.set() & ~first;
            if (looks > MOST_LOOKS) {
                return Optional.empty();
            }
            for (boolean lengthwise : new boolean[] {true, false}) {
                long extent = lengthwise ? state.width() : state.height();
                for (long at : ends(first, lengthwise, extent)) {
                    for (int share = 0; share <= state.leftovers(); share++) {
                        best = better(best, halves(state, lengthwise, at, first, rest, share));
                    }
                }
            }
        }
        return best;
    }

    private Optional<Rating> halves(State state, boolean lengthwise, long at, int first, int rest, int share) {
        looks++;
        Optional<Rating> one =
                lengthwise ? best(at, state.height(), first, share) : best(state.width(), at, first, share);
        if (one.isEmpty()) {
            return one;
        }
        int others = state.leftovers() - share;
        Optional<Rating> other = lengthwise
                ? best(state.width() - at, state.height(), rest, others)
                : best(state.width(), state.height() - at, rest, others);
        return other.map(right -> joined(state, lengthwise, at, one.get(), right));
    }

    private static Rating joined(State state, boolean lengthwise, long at, Rating one, Rating other) {
        Cutting far = moved(other.cutting(), lengthwise ? at : 0, lengthwise ? 0 : at);
        Cutting cut = new Cutting.Cut(0, 0, state.width(), state.height(), lengthwise, at, one.cutting(), far);
        return new Rating(cut, one.lost() + other.lost(), one.squares() + other.squares());
    }

    private static Cutting moved(Cutting cutting, long right, long down) {
        long x = cutting.x() + right;
        long y = cutting.y() + down;
        if (cutting instanceof Cutting.Cut cut) {
            return new Cutting.Cut(
                    x,
                    y,
                    cut.width(),
                    cut.height(),
                    cut.lengthwise(),
                    cut.at() + (cut.lengthwise() ? right : down),
                    moved(cut.first(), right, down),
                    moved(cut.second(), right, down));
        }
        return cutting instanceof Cutting.Part part
                ? new Cutting.Part(part.demand(), part.index(), x, y, part.width(), part.height(), part.turned())
                : new Cutting.Offcut(x, y, cutting.width(), cutting.height());
    }

    private static Optional<Rating> better(Optional<Rating> one, Optional<Rating> other) {
        return other.isPresent() && (one.isEmpty() || other.get().isBetterThan(one.get())) ? other : one;
    }

    /** The places, inside the extent, where parts of a set can end when pushed together. */
    private List<Long> ends(int set, boolean lengthwise, long extent) {
        TreeSet<Long> sums = new TreeSet<>(List.of(0L));
        for (int i = 0; i < parts.size(); i++) {
            if ((set >> i & 1) == 1) {
                Cutting.Part part = parts.get(i);
                TreeSet<Long> more = new TreeSet<>(sums);
                for (long sum : sums) {
                    more.add(sum + (lengthwise ? part.width() : part.height()));
                    if (turns.test(part)) {
                        more.add(sum + (lengthwise ? part.height() : part.width()));
                    }
                }
                sums = more;
            }
        }
        return sums.stream().filter(end -> end > 0 && end < extent).toList();
    }
}
