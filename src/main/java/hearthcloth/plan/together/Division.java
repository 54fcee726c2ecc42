package hearthcloth.plan.together;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Ways to plan the cloths that are still missing from what an allotment leaves. */
final class Division {

    /** Steps of a search for scraps, for each cloth in it. */
    private static final long PIECING = 6_000;

    private final List<Asked> asked;
    private final OneCloth one;
    private final double middle;
    private final SplittableRandom chance;
    private final Budget budget;

    Division(List<Asked> asked, double middle, SplittableRandom chance, Budget budget) {
        this.asked = asked;
        this.one = new OneCloth(asked);
        this.middle = middle;
        this.chance = chance;
        this.budget = budget;
    }

    /** Whom each piece is offered to. */
    enum Offer {
        /** Pieces are dealt out first, and what somebody leaves goes on to those who could make nothing. */
        HANDS,
        /** All are offered to each in turn. */
        ALL
    }

    /**
     * The same with as many of these cloths as can be made, in this order. Scraps alone come last, together: they take what
     * nobody else can use.
     */
    Allotment planned(Allotment from, List<Integer> cloths, Offer offer, ShortSearch.Depth depth) {
        List<Integer> barred =
                cloths.stream().filter(cloth -> !asked.get(cloth).isFree()).toList();
        Allotment now = offer == Offer.HANDS ? dealt(from, cloths, barred, depth) : from;
        for (int cloth : barred) {
            if (now.made(cloth).isEmpty()) {
                now = fromAll(now, cloth, depth);
            }
        }
        for (List<Integer> alike : alike(cloths)) {
            now = pieced(now, alike);
        }
        return now;
    }

    private Allotment dealt(Allotment from, List<Integer> all, List<Integer> barred, ShortSearch.Depth depth) {
        Map<Integer, Double> needs = new LinkedHashMap<>();
        all.forEach(cloth -> needs.put(cloth, need(cloth)));
        Map<Integer, List<Piece>> hands = new Hands(middle, needs).dealt(from.untouched(), chance);
        Allotment now = from;
        for (int cloth : barred) {
            List<Piece> hand = hands.getOrDefault(cloth, List.of());
            var made = one.plan(cloth, hand, depth, hearths(now), work(PIECING));
            now = made.isPresent() ? now.with(cloth, made.get()) : now;
        }
        return now;
    }

    /** From pieces nobody has cut into, or else from what others leave too. */
    private Allotment fromAll(Allotment now, int cloth, ShortSearch.Depth depth) {
        var whole = one.plan(cloth, now.untouched(), depth, hearths(now), work(PIECING));
        var made = whole.isPresent() && whole.get().joins() == 0
                ? whole
                : one.plan(cloth, now.free(), depth, hearths(now), work(PIECING))
                        .filter(other ->
                                whole.isEmpty() || other.joins() < whole.get().joins())
                        .or(() -> whole);
        return made.isPresent() ? now.with(cloth, made.get()) : now;
    }

    /** The cloths of scraps, those that are pieced by the same rules side by side. */
    private List<List<Integer>> alike(List<Integer> cloths) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int cloth : cloths) {
            if (asked.get(cloth).isFree()) {
                groups.stream()
                        .filter(group -> asked.get(group.get(0)).isLike(asked.get(cloth)))
                        .findFirst()
                        .orElseGet(() -> {
                            List<Integer> group = new ArrayList<>();
                            groups.add(group);
                            return group;
                        })
                        .add(cloth);
            }
        }
        return groups;
    }

    private Allotment pieced(Allotment from, List<Integer> alike) {
        Allotment now = from;
        for (var made : one.several(alike, from.untouched(), work(PIECING * alike.size()))
                .entrySet()) {
            now = now.with(made.getKey(), made.getValue());
        }
        return now;
    }

    private OneCloth.Work work(long steps) {
        return new OneCloth.Work(chance.nextInt(1 << 20), steps, budget);
    }

    /** How often each fabric is a hearth. */
    private static Map<String, Integer> hearths(Allotment now) {
        Map<String, Integer> hearths = new LinkedHashMap<>();
        now.made().values().forEach(made -> {
            if (!made.hearth().isEmpty()) {
                hearths.merge(made.hearth(), 1, Integer::sum);
            }
        });
        return hearths;
    }

    /** How much a cloth needs compared with others: its area, or as much as any where that is left open. */
    private double need(int cloth) {
        return asked.get(cloth)
                .wish()
                .target()
                .size()
                .map(size -> size.areaMm2())
                .orElse(1e5);
    }
}
