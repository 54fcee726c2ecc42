package hearthcloth.plan.together;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.patchwork.SeveralFreeCloths;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans one cloth from the pieces it may have, or several of scraps alone in one search. */
final class OneCloth {

    /** A hearth is about this share of the cloth's side at least; ours. */
    private static final int HEARTH_SHARE = 4;

    private final List<Asked> asked;

    OneCloth(List<Asked> asked) {
        this.asked = asked;
    }

    /**
     * One cloth; empty where none is found.
     *
     * @param seen how often each fabric is a hearth already; a seldom one is tried first
     */
    Optional<Made> plan(int cloth, List<Piece> pieces, ShortSearch.Depth depth, Map<String, Integer> seen, Work work) {
        Asked one = asked.get(cloth);
        Stash stash = new Stash(pieces);
        if (one.isFree()) {
            return Optional.ofNullable(several(List.of(cloth), pieces, work).get(cloth));
        }
        if (one.patchwork().isPresent()) {
            Wish wish = wish(one.wish(), one.wish().preferences().fabrics(), work.seed());
            PlanOutcome outcome =
                    PatchworkPlanner.plan(stash, wish, one.patchwork().get(), 1, work.budget(), told -> {});
            return outcome instanceof PlanOutcome.Proposals found
                    ? Optional.of(Made.of(found.plans().get(0)))
                    : Optional.empty();
        }
        Optional<Made> best = Optional.empty();
        for (List<String> fabrics : fabrics(one.wish(), stash, seen)) {
            Optional<Made> made = ShortSearch.of(stash, wish(one.wish(), fabrics, work.seed()), depth, work.budget())
                    .map(Made::of);
            Optional<Made> before = best;
            best = made.filter(other ->
                            before.isEmpty() || other.joins() < before.get().joins())
                    .or(() -> before);
            if (best.isPresent() && best.get().joins() == 0) {
                return best;
            }
        }
        return best;
    }

    /**
     * One cloth whose hearth is of this fabric if it can be; as {@link #plan} where she chose fabrics herself, or wishes
     * scraps or blocks.
     */
    Optional<Made> led(int cloth, List<Piece> pieces, String fabric, Work work) {
        Asked one = asked.get(cloth);
        boolean chosen = !one.wish().preferences().fabrics().isEmpty();
        if (chosen || one.patchwork().isPresent()) {
            return plan(cloth, pieces, ShortSearch.Depth.SHORT, Map.of(), work);
        }
        Stash stash = new Stash(pieces);
        List<String> names = new ArrayList<>(List.of(fabric));
        stash.fabrics().stream()
                .map(Fabric::name)
                .filter(name -> !name.equals(fabric))
                .forEach(names::add);
        return ShortSearch.of(stash, wish(one.wish(), names, work.seed()), ShortSearch.Depth.SHORT, work.budget())
                .map(Made::of);
    }

    /**
     * How much one search may do.
     *
     * @param steps of a search for scraps
     */
    record Work(long seed, long steps, Budget budget) {}

    /** Several cloths of scraps, by number; those that are not found are not in it. */
    Map<Integer, Made> several(List<Integer> cloths, List<Piece> pieces, Work work) {
        List<Wish> wishes =
                cloths.stream().map(cloth -> asked.get(cloth).wish()).toList();
        Asked first = asked.get(cloths.get(0));
        List<Optional<Plan>> plans = SeveralFreeCloths.plan(
                new Stash(pieces),
                wishes,
                first.patchwork().orElseThrow(),
                Budget.either(Budget.steps(work.steps()), work.budget()),
                work.seed());
        Map<Integer, Made> made = new LinkedHashMap<>();
        for (int i = 0; i < cloths.size(); i++) {
            int cloth = cloths.get(i);
            plans.get(i).ifPresent(plan -> made.put(cloth, Made.of(plan)));
        }
        return made;
    }

    /** Her own choice, or first a hearth that few have and then as it comes. */
    private static List<List<String>> fabrics(Wish wish, Stash stash, Map<String, Integer> seen) {
        List<String> own = wish.preferences().fabrics();
        if (!own.isEmpty() || seen.isEmpty() || wish.preferences().outside().isPresent()) {
            return List.of(own);
        }
        List<List<String>> ways = new ArrayList<>();
        rarest(wish, stash, seen).ifPresent(hearth -> {
            List<String> named = new ArrayList<>(List.of(hearth));
            stash.fabrics().stream()
                    .map(Fabric::name)
                    .filter(name -> !name.equals(hearth))
                    .forEach(named::add);
            ways.add(named);
        });
        ways.add(own);
        return ways;
    }

    /** The fabric that is a hearth least often, of those with a piece that could be one and, of these, with most to choose. */
    private static Optional<String> rarest(Wish wish, Stash stash, Map<String, Integer> seen) {
        Length side = wish.target()
                .size()
                .map(size -> size.width().min(size.height()))
                .orElse(Length.ZERO)
                .dividedBy(HEARTH_SHARE, Rounding.UP);
        Size least = wish.shape().hearth().map(Wish.Cut::measure).orElse(Size.square(side));
        String best = "";
        int fewest = Integer.MAX_VALUE;
        for (Fabric fabric : stash.fabrics()) {
            boolean holds = stash.of(fabric).stream()
                    .anyMatch(piece -> piece.size().holds(least) || piece.size().holds(least.turned()));
            int often = seen.getOrDefault(fabric.name(), 0);
            if (holds && often < fewest) {
                best = fabric.name();
                fewest = often;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    private static Wish wish(Wish was, List<String> fabrics, long seed) {
        Wish.Preferences wished = was.preferences();
        return new Wish(
                was.target(),
                was.shape(),
                was.making(),
                was.rules(),
                new Wish.Preferences(fabrics, 1, wished.seed() + seed, wished.ruler(), wished.looks()));
    }
}
