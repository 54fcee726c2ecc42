package hearthcloth.store;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;

/** The workroom of a maker at random: her heap, chance, and what was seen last. */
final class MakersRoom {

    static final Budget STEPS = Budget.steps(300);

    /**
     * What a maker begins with, and designs like which her cloths are.
     *
     * @param most cloths she keeps
     */
    record Heap(Stash stash, List<Plan> plans, int most) {

        private static final Heap SMALL = of(Stashes.scraps(14, 3), 15, 4);
        private static final Heap LARGE = of(Stashes.scraps(50, 3), 22, 4);

        private static Heap of(Stash stash, int inches, int most) {
            return new Heap(stash, Planned.plans(stash, inches, 3), most);
        }

        /** Most makers have a small heap; every eighth one a large heap and large cloths. */
        static Heap of(long seed) {
            return seed % 8 == 0 ? LARGE : SMALL;
        }
    }

    final Random random;
    final OneStory story = new OneStory();
    private final Heap heap;
    private final long seed;
    private Store store;
    private Seen seen;

    MakersRoom(Store store, long seed) {
        this.store = store;
        this.seed = seed;
        this.heap = Heap.of(seed);
        this.random = new Random(seed);
        this.seen = Seen.of(store);
    }

    /** By which no two makers have a cloth of the same name. */
    long seed() {
        return seed;
    }

    Store store() {
        return store;
    }

    Heap heap() {
        return heap;
    }

    Seen seen() {
        return seen;
    }

    /** The workroom as it is found after its program was killed. */
    void isNow(Store other) {
        store = other;
    }

    /** Looks at everything anew. */
    Seen look() {
        seen = Seen.of(store);
        return seen;
    }

    /** One of the cloths that have come so far, if there is any. */
    Optional<SavedCloth> one(Predicate<Stage> stage) {
        List<SavedCloth> some = seen.cloths().stream()
                .filter(cloth -> stage.test(cloth.document().life().stage())
                        && cloth.document().plan().isPresent())
                .toList();
        return some.isEmpty() ? Optional.empty() : Optional.of(any(some));
    }

    <T> T any(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    RemainingPlan.Table table(SavedCloth cloth) {
        return new RemainingPlan.Table(seen.heap().freeFor(cloth.id()), seen.next(), Ruler.EIGHTHS);
    }

    /** A cloth's design and plan changed, and pieces with it. */
    void edited(SavedCloth cloth, String label, Project now, List<Piece> gone, List<Piece> come) {
        store.asOneChange(label, () -> {
            if (!gone.isEmpty() || !come.isEmpty()) {
                store.stash().edit(new StashEdit(label, gone, come));
            }
            return store.cloths().save(cloth, label, now);
        });
    }

    /** A way on while sewing: what happened on the bench, what became of pieces, and the rest planned anew. */
    void booked(SavedCloth cloth, String label, On on, Optional<BenchFact> fact) {
        List<Piece> come = new ArrayList<>(on.slip().come());
        come.addAll(on.resewn().come());
        store.asOneChange(label, () -> {
            SavedCloth now =
                    fact.map(one -> store.cloths().happened(cloth, label, one)).orElse(cloth);
            if (!on.slip().gone().isEmpty() || !come.isEmpty()) {
                store.stash().edit(new StashEdit(label, on.slip().gone(), come));
            }
            Project was = now.document();
            return store.cloths()
                    .save(
                            now,
                            label,
                            new Project(
                                    on.design(),
                                    Optional.of(on.resewn().plan()),
                                    List.of(),
                                    was.bench(),
                                    was.life().at(on.resewn().cuts().isEmpty() ? Stage.CUT : Stage.RECUT)));
        });
    }

    /** A way on while sewing. */
    record On(Design design, RemainingPlan.Resewn resewn, LateMiscut slip) {
        On(Design design, RemainingPlan.Resewn resewn) {
            this(design, resewn, new LateMiscut(resewn.plan(), List.of(), List.of()));
        }
    }
}
