package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random makers over a few pieces and cloths. The bench they are held against keeps, for each thing, a pile of the
 * changes that lie on it, and knows no rule: a change may be put on or lifted off only at the top of every pile.
 */
class JournalTest {

    private static final int SEED = 20_261_130;
    private static final int STEPS = 60;

    private final Random random = new Random(SEED);
    private final Map<String, List<Long>> piles = new TreeMap<>();
    private Journal journal = new Journal(List.of());
    private long number;

    private static boolean isGround(Thing thing) {
        return thing.kind() != Thing.Kind.STASH;
    }

    private void put(Change change) {
        change.touched().stream()
                .filter(JournalTest::isGround)
                .forEach(thing -> piles.computeIfAbsent(thing.word(), word -> new ArrayList<>())
                        .add(change.number()));
    }

    private void lift(Change change) {
        for (Thing thing : change.touched()) {
            if (isGround(thing)) {
                List<Long> pile = piles.getOrDefault(thing.word(), List.of());
                assertThat(pile.get(pile.size() - 1))
                        .as("nothing lies on change " + change.number() + " when it is taken back")
                        .isEqualTo(change.number());
                pile.remove(pile.size() - 1);
            }
        }
    }

    private Map<String, List<Long>> seen() {
        Map<String, List<Long>> seen = new TreeMap<>();
        piles.forEach((word, pile) -> {
            if (!pile.isEmpty()) {
                seen.put(word, List.copyOf(pile));
            }
        });
        return seen;
    }

    private Thing cloth() {
        return Thing.cloth(String.valueOf(random.nextInt(3)));
    }

    /** What a maker touches at once: a cloth alone, pieces alone, or a cloth with the pieces it is cut from. */
    private Set<Thing> touched() {
        Set<Thing> touched = new HashSet<>();
        int kind = random.nextInt(3);
        if (kind != 1) {
            touched.add(cloth());
        }
        if (kind != 0) {
            touched.add(Thing.STASH);
            for (int i = random.nextInt(3); i >= 0; i--) {
                touched.add(Thing.piece(String.valueOf(random.nextInt(8))));
            }
        }
        return touched;
    }

    private void does() {
        number++;
        Change change = new Change(number, "change " + number, touched(), 0);
        journal = with(journal, change);
        put(change);
        assertThat(journal.redo(Thing.STASH).isPresent() && change.touched().contains(Thing.STASH))
                .as("what was taken back of what she has now changed is forgotten")
                .isFalse();
    }

    private boolean takesBack(Thing thing) {
        Optional<Turn> turn = journal.undo(thing);
        turn.ifPresent(all -> {
            List<Change> order = new ArrayList<>(all.changes());
            Collections.reverse(order);
            order.forEach(this::lift);
            journal = marked(journal, all, journal.nextUndo());
        });
        return turn.isPresent();
    }

    private boolean doesAgain(Thing thing) {
        Optional<Turn> turn = journal.redo(thing);
        turn.ifPresent(all -> {
            all.changes().forEach(this::put);
            journal = marked(journal, all, 0);
        });
        return turn.isPresent();
    }

    /** The piles made anew from the journal alone. */
    private Map<String, List<Long>> folded() {
        Map<String, List<Long>> fold = new TreeMap<>();
        for (Change change : journal.changes()) {
            if (change.isInForce()) {
                change.touched().stream()
                        .filter(JournalTest::isGround)
                        .forEach(thing -> fold.computeIfAbsent(thing.word(), word -> new ArrayList<>())
                                .add(change.number()));
            }
        }
        return fold;
    }

    private void maker() {
        piles.clear();
        journal = new Journal(List.of());
        number = 0;
        for (int step = 0; step < STEPS; step++) {
            Thing looks = random.nextInt(2) == 0 ? Thing.STASH : cloth();
            switch (random.nextInt(5)) {
                case 0, 1 -> does();
                case 2 -> takesBack(looks);
                case 3 -> doesAgain(looks);
                default -> backAndForth(looks);
            }
            assertThat(seen()).as("the bench is the fold of the journal").isEqualTo(folded());
        }
    }

    private void backAndForth(Thing looks) {
        Map<String, List<Long>> before = seen();
        Journal was = journal;
        if (takesBack(looks)) {
            assertThat(doesAgain(looks)).isTrue();
            assertThat(seen()).as("undo, then redo, is as if nothing had been").isEqualTo(before);
            assertThat(journal).isEqualTo(was);
        }
    }

    @Test
    void random_makers_take_back_nothing_by_half_and_undo_then_redo_changes_nothing() {
        for (int i = 0; i < 300; i++) {
            maker();
        }
    }

    @Test
    @Tag("long")
    void ten_thousand_random_makers_do_so_too() {
        for (int i = 0; i < 10_000; i++) {
            maker();
        }
    }

    private static Change change(long number, String label, Thing... touched) {
        return new Change(number, label, Set.of(touched), 0);
    }

    @Test
    void cutting_is_taken_back_from_the_stash_with_what_was_sewn_since_and_says_so() {
        Journal sewing = new Journal(List.of(
                change(1, "add 2 of Oat", Thing.STASH, Thing.piece("1"), Thing.piece("2")),
                change(2, "cut Dawn", Thing.STASH, Thing.cloth("dawn"), Thing.piece("1"), Thing.piece("3")),
                change(3, "step 1 sewn", Thing.cloth("dawn")),
                change(4, "lock 1A", Thing.cloth("dusk"))));

        Turn turn = sewing.undo(Thing.STASH).orElseThrow();

        assertThat(turn.label()).isEqualTo("cut Dawn (step 1 sewn)");
        assertThat(turn.changes()).extracting(Change::number).containsExactly(2L, 3L);
        assertThat(undone(sewing, turn).undo(Thing.cloth("dawn"))).isEmpty();
        assertThat(undone(sewing, turn).redo(Thing.cloth("dawn"))).contains(marked(sewing, turn));
    }

    /** The journal with one more change, without those that it makes impossible to do again. */
    private static Journal with(Journal journal, Change change) {
        List<Change> more = new ArrayList<>(journal.changes());
        more.removeAll(journal.forgottenBy(change.touched()));
        more.add(change);
        return new Journal(more);
    }

    private static Journal undone(Journal journal, Turn turn) {
        return marked(journal, turn, journal.nextUndo());
    }

    /** The journal with the changes of a turn taken back by the undo of that number, or in force again where it is 0. */
    private static Journal marked(Journal journal, Turn turn, long undo) {
        Set<Long> turned = turn.changes().stream().map(Change::number).collect(Collectors.toSet());
        return new Journal(journal.changes().stream()
                .map(change -> turned.contains(change.number())
                        ? new Change(change.number(), change.label(), change.touched(), undo)
                        : change)
                .toList());
    }

    private static Turn marked(Journal before, Turn turn) {
        Journal after = undone(before, turn);
        List<Change> changes =
                after.changes().stream().filter(change -> !change.isInForce()).toList();
        return new Turn(changes.get(0), changes);
    }

    @Test
    void a_cut_is_taken_back_from_the_cloth_with_the_use_of_its_offcut() {
        Journal used = new Journal(List.of(
                change(1, "cut Dawn", Thing.STASH, Thing.cloth("dawn"), Thing.piece("1"), Thing.piece("3")),
                change(2, "use up 3 of Oat", Thing.STASH, Thing.piece("3")),
                change(3, "add 1 of Slate", Thing.STASH, Thing.piece("4"))));

        assertThat(used.undo(Thing.cloth("dawn")).orElseThrow().label()).isEqualTo("cut Dawn (use up 3 of Oat)");
    }

    @Test
    void a_change_of_an_earlier_file_is_taken_to_touch_any_piece() {
        Journal earlier = new Journal(List.of(
                change(1, "cut Dawn", Thing.STASH, Thing.cloth("dawn"), Thing.ANY_PIECE),
                change(2, "add 1 of Slate", Thing.STASH, Thing.piece("4"))));

        assertThat(earlier.undo(Thing.cloth("dawn")).orElseThrow().changes()).hasSize(2);
    }
}
