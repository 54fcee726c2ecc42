package hearthcloth.store;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.stash.Stash;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.Workbench;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The workroom of a maker at random: her heap, chance, and what was seen last. */
final class MakersRoom {

    static final Budget STEPS = Budget.steps(300);
    static final Instant NOW = Instant.parse("2026-05-04T10:00:00Z");

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
    private @Nullable List<AtTheMachine> steps;
    private @Nullable Plan stepsOf;

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

    Workbench bench(SavedCloth cloth) {
        return new Workbench(cloth.document(), seen.heap().freeFor(cloth.id()), seen.next(), Ruler.EIGHTHS);
    }

    /** The steps of a cloth, which stay the same while its plan does. */
    SewingSoFar sewing(SavedCloth cloth) {
        Plan plan = Seen.plan(cloth);
        if (steps == null || !plan.equals(stepsOf)) {
            steps = AtTheMachine.of(
                    Guide.of(plan, Ruler.EIGHTHS), Voice.english(Ruler.EIGHTHS).sewing());
            stepsOf = plan;
        }
        return new SewingSoFar(cloth.document(), steps);
    }

    SavedCloth does(SavedCloth cloth, Deed deed) {
        return store.book(cloth, deed, Voice.english(Ruler.EIGHTHS));
    }
}
