package hearthcloth.plan.together;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A piece given to another cloth by hand: that cloth is planned anew so that it uses the piece, whoever had it settles with
 * what is left, and where that is not enough a few others are planned anew too. All others stay as they are. Only where each
 * piece is one cloth's alone ({@link OffcutRule#KEPT}).
 */
public final class HandedPiece {

    /** Ways of using the piece that are tried for the cloth it is given to; ours. */
    private static final int MOST_WAYS = 12;
    /** How often others are taken apart so that whoever had the piece has a cloth again; ours. */
    private static final int MOST_SETTLING = 8;

    private static final long PIECING = 6_000;

    private final Stash heap;
    private final List<Asked> asked;
    private final PlanningTogether.Effort effort;
    private final SplittableRandom chance;
    private final OneCloth one;
    private final Division division;

    private HandedPiece(Stash heap, List<Asked> asked, PlanningTogether.Effort effort) {
        this.heap = heap;
        this.asked = asked;
        this.effort = effort;
        this.chance = new SplittableRandom(effort.seed());
        this.one = new OneCloth(asked);
        this.division = new Division(asked, Fairness.middle(heap), chance, effort.budget());
    }

    /**
     * The cloths after it is given; empty where no cloth was found that uses it.
     *
     * @param was what the piece is moved in
     * @param piece its number in the heap
     * @param to the number of the cloth it is given to, from 0
     * @throws IllegalArgumentException where the heap has no such piece, or one cloth is cut from what another leaves
     */
    public static Optional<Together> moved(
            Stash heap, Together was, String piece, int to, PlanningTogether.Effort effort) {
        if (!was.leftovers().isEmpty()) {
            throw new IllegalArgumentException("pieces are shared between cloths");
        }
        Piece given = heap.pieces().stream()
                .filter(each -> each.id().equals(piece))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no piece " + piece));
        List<Asked> asked = was.parts().stream().map(Together.Part::asked).toList();
        HandedPiece handed = new HandedPiece(heap, asked, effort);
        return handed.moved(handed.allotted(was), given, to)
                .map(now -> new Finishing(now, asked, effort)
                        .together(Optional.empty(), was.measure().bound()));
    }

    /** What is as it was wished; the nearest of the others are offered anew. */
    private Allotment allotted(Together was) {
        Allotment now = Allotment.of(heap, OffcutRule.KEPT);
        for (int cloth : was.order()) {
            Together.Part part = was.parts().get(cloth);
            if (part.isAsWished() && part.plan().isPresent()) {
                now = now.with(cloth, Made.of(part.plan().get()));
            }
        }
        return now;
    }

    private Optional<Allotment> moved(Allotment was, Piece given, int to) {
        Set<Integer> apart = new LinkedHashSet<>(Set.of(to));
        was.made().forEach((cloth, made) -> {
            if (uses(made.plan(), given)) {
                apart.add(cloth);
            }
        });
        List<Piece> own = was.made(to).map(made -> pieces(made.plan())).orElse(List.of());
        Allotment without = was.without(apart);
        return using(to, given, own, was.untouched()).map(made -> settled(without.with(to, made), apart, to));
    }

    private static boolean uses(Plan plan, Piece piece) {
        return plan.cuts().stream().anyMatch(cut -> cut.piece().equals(piece));
    }

    private static List<Piece> pieces(Plan plan) {
        return plan.cuts().stream().<Piece>map(cut -> cut.piece()).toList();
    }

    /** The cloth that uses the piece with fewest joins, of those that are found. */
    private Optional<Made> using(int to, Piece given, List<Piece> own, List<Piece> free) {
        List<Made> found = new ArrayList<>();
        for (List<Piece> hand : hands(given, own, free)) {
            if (found.isEmpty() || !effort.budget().spent()) {
                one.plan(to, hand, ShortSearch.Depth.SHORT, Map.of(), work())
                        .filter(made -> uses(made.plan(), given))
                        .or(() -> one.led(to, hand, given.fabric().name(), work())
                                .filter(made -> uses(made.plan(), given)))
                        .ifPresent(found::add);
            }
            if (!found.isEmpty() && found.get(found.size() - 1).joins() == 0) {
                break;
            }
        }
        return found.stream().min(Comparator.comparingInt(Made::joins));
    }

    private OneCloth.Work work() {
        return new OneCloth.Work(chance.nextInt(1 << 20), PIECING, Budget.steps(PIECING));
    }

    /**
     * What it may be cut from, in the order tried: its own pieces and the given one without one of the others, the likest in
     * size first; these all; and with what nobody has.
     */
    private static List<List<Piece>> hands(Piece given, List<Piece> own, List<Piece> free) {
        List<Piece> likest = new ArrayList<>(own);
        likest.sort(Comparator.comparingDouble(piece -> Math.abs(piece.areaMm2() - given.areaMm2())));
        List<List<Piece>> hands = new ArrayList<>();
        for (Piece left : likest.subList(0, Math.min(MOST_WAYS, likest.size()))) {
            List<Piece> hand = with(given, own, List.of());
            hand.remove(left);
            hands.add(hand);
        }
        hands.add(with(given, own, List.of()));
        hands.add(with(given, own, free));
        hands.add(with(given, List.of(), free));
        return hands;
    }

    private static List<Piece> with(Piece given, List<Piece> own, List<Piece> free) {
        Set<Piece> all = new LinkedHashSet<>(own);
        all.add(given);
        all.addAll(free);
        return new ArrayList<>(all);
    }

    /** The others planned again from what is left; where one lacks then, a few more are taken apart. */
    private Allotment settled(Allotment from, Set<Integer> apart, int to) {
        List<Integer> missing = new ArrayList<>(apart);
        missing.remove(Integer.valueOf(to));
        Allotment best = division.planned(from, missing, Division.Offer.ALL, ShortSearch.Depth.SHORT);
        for (int tried = 0;
                tried < MOST_SETTLING
                        && lacks(best, from, missing)
                        && !effort.budget().spent();
                tried++) {
            List<Integer> others = new ArrayList<>(from.made().keySet());
            others.remove(Integer.valueOf(to));
            List<Integer> more = new ArrayList<>(missing);
            for (int i = 0; i <= tried / 2 && !others.isEmpty(); i++) {
                more.add(others.remove(chance.nextInt(others.size())));
            }
            Allotment next = division.planned(
                    from.without(new LinkedHashSet<>(more)), more, Division.Offer.ALL, ShortSearch.Depth.SHORT);
            if (Fairness.of(next, asked.size()).compareTo(Fairness.of(best, asked.size())) < 0) {
                best = next;
            }
        }
        return best;
    }

    private static boolean lacks(Allotment now, Allotment from, List<Integer> missing) {
        return now.made().size() < from.made().size() + missing.size();
    }
}
