package hearthcloth.plan.together;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Plans many cloths from one heap. First the pieces are dealt out and each cloth is planned plainly from its hand, so that
 * something that certainly works is there at once. Then the cloths are planned one after another from the whole heap, as one
 * would by hand, and whichever is fairer is improved: the worst and a few others are taken apart and planned anew from what
 * is free, and the new division is kept where it is no less fair. So the worst cloth never has more joins than one after
 * another would give it. The same heap, wishes, seed and effort give the same plans, as long as the budget does not end first.
 */
public final class PlanningTogether {

    /** Divisions that are tried for each unit of effort and each dozen of cloths. */
    private static final int TRIES = 8;
    /** After so many tries in vain, and two more for each cloth, a division that nothing proves improvable is left. */
    private static final int VAIN = 8;
    /** The most cloths that are taken apart at once. */
    private static final int MOST_APART = 4;

    private final List<Asked> asked;
    private final Effort effort;
    private final Consumer<TogetherProgress> seen;
    private final SplittableRandom chance;
    private final Division division;
    private final int bound;
    private final Allotment nothing;
    private Allotment now;
    private Fairness fairness;
    private Optional<Fairness> inTurn = Optional.empty();

    /**
     * How hard to search.
     *
     * @param effort 1 and more; each unit is about a second for a dozen cloths on an ordinary machine, counted in tries
     * @param seed of every random choice
     * @param budget ends the search early, but not before a first division is found
     */
    public record Effort(int effort, long seed, Budget budget) {}

    private PlanningTogether(
            Stash heap, OffcutRule offcuts, List<Asked> asked, Effort effort, Consumer<TogetherProgress> seen) {
        this.asked = asked;
        this.effort = effort;
        this.seen = seen;
        this.chance = new SplittableRandom(effort.seed());
        this.division = new Division(asked, Fairness.middle(heap), chance, effort.budget());
        this.bound = JointBound.worstJoins(heap, asked);
        this.nothing = Allotment.of(heap, offcuts);
        this.now = nothing;
        this.fairness = Fairness.of(now, asked.size());
    }

    /**
     * Plans the cloths.
     *
     * @param asked at least one, each with a size or with a shape that decides it
     * @param seen told each fairer division, on this thread
     */
    public static Together plan(Stash heap, List<Asked> asked, Effort effort, Consumer<TogetherProgress> seen) {
        return plan(heap, OffcutRule.SHARED, asked, effort, seen);
    }

    /** The same, and what becomes of what a cloth leaves of its pieces. */
    public static Together plan(
            Stash heap, OffcutRule offcuts, List<Asked> asked, Effort effort, Consumer<TogetherProgress> seen) {
        if (asked.isEmpty()) {
            throw new IllegalArgumentException("no cloth is asked for");
        }
        PlanningTogether planning = new PlanningTogether(heap, offcuts, List.copyOf(asked), effort, seen);
        planning.search();
        return new Finishing(planning.now, planning.asked, effort).together(planning.inTurn, planning.bound);
    }

    private List<Integer> all() {
        return IntStream.range(0, asked.size()).boxed().toList();
    }

    private void search() {
        int most = Math.max(1, TRIES * effort.effort() * Math.max(1, 12 / asked.size()));
        List<Integer> largestFirst = new ArrayList<>(all());
        largestFirst.sort(Comparator.comparingDouble(this::area).reversed());
        take(division.planned(now, largestFirst, Division.Offer.HANDS, ShortSearch.Depth.PLAIN), 0, most);
        if (!effort.budget().spent()) {
            Allotment turn = inTurn();
            inTurn = Optional.of(Fairness.of(turn, asked.size()));
            take(turn, 1, most);
        }
        int vain = 0;
        for (int tried = 2; tried < most && !isDone(vain) && !effort.budget().spent(); tried++) {
            vain = take(another(), tried, most) ? 0 : vain + 1;
        }
    }

    private double area(int cloth) {
        return asked.get(cloth)
                .wish()
                .target()
                .size()
                .map(size -> size.areaMm2())
                .orElse(0.0);
    }

    /** One after another in the order asked, each from what those before it left: as one would by hand. */
    private Allotment inTurn() {
        return division.planned(nothing, all(), Division.Offer.ALL, ShortSearch.Depth.LONG);
    }

    /** Takes the division if it is no less fair; true if it is fairer. */
    private boolean take(Allotment next, int tried, int most) {
        Fairness other = Fairness.of(next, asked.size());
        int better = other.compareTo(fairness);
        if (better <= 0) {
            now = next;
            fairness = other;
        }
        seen.accept(new TogetherProgress(tried + 1, most, asked.size(), fairness));
        return better < 0;
    }

    /** Whether nothing is lacking, nothing can be joined less and the rest was long in vain. */
    private boolean isDone(int vain) {
        return fairness.lacking() == 0 && fairness.worst() <= bound && vain >= VAIN + 2 * asked.size();
    }

    /** Some taken apart and planned anew. */
    private Allotment another() {
        Set<Integer> apart = apart();
        Allotment kept = now.without(apart);
        List<Integer> missing = new ArrayList<>(all());
        missing.removeAll(kept.made().keySet());
        shuffle(missing);
        Division.Offer offer = chance.nextInt(2) == 0 ? Division.Offer.HANDS : Division.Offer.ALL;
        return division.planned(kept, missing, offer, ShortSearch.Depth.SHORT);
    }

    /** The one that most needs it and a few others by chance; where scraps alone are lacking, all of scraps. */
    private Set<Integer> apart() {
        Set<Integer> apart = new LinkedHashSet<>();
        List<Integer> made = new ArrayList<>(now.made().keySet());
        if (made.isEmpty()) {
            return apart;
        }
        shuffle(made);
        boolean lacks = fairness.lacking() > 0;
        if (!lacks) {
            made.sort(Comparator.comparingDouble(this::burden).reversed());
            apart.add(made.remove(0));
            shuffle(made);
        }
        boolean scraps = all().stream()
                .anyMatch(cloth -> now.made(cloth).isEmpty() && asked.get(cloth).isFree());
        if (scraps && chance.nextInt(2) == 0) {
            made.stream().filter(cloth -> asked.get(cloth).isFree()).forEach(apart::add);
        }
        int more = (lacks ? 1 : 0) + chance.nextInt(MOST_APART);
        made.stream().limit(more).forEach(apart::add);
        return apart;
    }

    /** How much a cloth needs to be planned anew: its joins, and a hearth that others have too. */
    private double burden(int cloth) {
        Optional<Made> made = now.made(cloth);
        if (made.isEmpty()) {
            return 0;
        }
        String hearth = made.get().hearth();
        long alike = now.made().values().stream()
                .filter(other -> !hearth.isEmpty() && other.hearth().equals(hearth))
                .count();
        return made.get().joins() + 0.4 * Math.max(0, alike - 1);
    }

    private void shuffle(List<Integer> list) {
        for (int i = list.size() - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            Integer kept = list.get(i);
            list.set(i, list.get(j));
            list.set(j, kept);
        }
    }
}
