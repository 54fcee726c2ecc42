package hearthcloth.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The changes of one workroom, in the order they were made, and the rules of undo and redo. A later change rests on an
 * earlier one where both touch the same piece, cloth or photograph, or where it rests on one that does. Undo takes back
 * the last change of what she looks at together with all that rest on it, so that no change is ever taken back by half
 * and none is left without its ground. Immutable.
 */
public record Journal(List<Change> changes) {

    public Journal {
        changes = changes.stream()
                .sorted(Comparator.comparingLong(Change::number))
                .toList();
    }

    /** What undo would take back for someone who looks at {@code seen}; empty where nothing is left to undo. */
    public Optional<Turn> undo(Thing seen) {
        return changes.stream()
                .filter(change -> change.isInForce() && isSeen(change, seen))
                .reduce((one, later) -> later)
                .map(this::withThoseThatRestOn);
    }

    /** A cloth's own page undoes what was done to it; that it came or went is undone where cloths stand. */
    private static boolean isSeen(Change change, Thing seen) {
        boolean isOfShelf = seen.kind() == Thing.Kind.CLOTH && change.touched().contains(Thing.SHELF);
        return change.touched().contains(seen) && !isOfShelf;
    }

    private Turn withThoseThatRestOn(Change meant) {
        Set<Thing> ground = new HashSet<>(meant.touched());
        List<Change> taken = new ArrayList<>(List.of(meant));
        for (Change later : changes) {
            if (later.number() > meant.number() && later.isInForce() && share(ground, later.touched())) {
                taken.add(later);
                ground.addAll(later.touched());
            }
        }
        return new Turn(meant, taken);
    }

    /**
     * What redo would do again for someone who looks at {@code seen}: all that was taken back with the last of it, and
     * what was taken back after that on the same things, on which it rests.
     */
    public Optional<Turn> redo(Thing seen) {
        return changes.stream()
                .filter(change -> !change.isInForce() && isSeen(change, seen))
                .max(Comparator.comparingLong(Change::undone).thenComparing(Change::number, Comparator.reverseOrder()))
                .map(this::withItsGround);
    }

    private Turn withItsGround(Change meant) {
        Set<Thing> ground = new HashSet<>();
        List<Change> again = new ArrayList<>();
        undos().tailMap(meant.undone()).forEach((undo, group) -> {
            if (undo == meant.undone() || share(ground, touched(group))) {
                again.addAll(group);
                ground.addAll(touched(group));
            }
        });
        again.sort(Comparator.comparingLong(Change::number));
        return new Turn(meant, again);
    }

    /**
     * The changes that can no longer be done again once something is done to {@code touched}: those that were taken
     * back from it, and those that rest on these.
     */
    public List<Change> forgottenBy(Set<Thing> touched) {
        Set<Thing> ground = new HashSet<>();
        List<Change> forgotten = new ArrayList<>();
        undos().descendingMap().forEach((undo, group) -> {
            Set<Thing> its = touched(group);
            if (its.stream().anyMatch(touched::contains) || share(touched, its) || share(ground, its)) {
                forgotten.addAll(group);
                ground.addAll(its);
            }
        });
        return forgotten;
    }

    /** The number that the next undo gets. */
    public long nextUndo() {
        return changes.stream().mapToLong(Change::undone).max().orElse(0) + 1;
    }

    /** Changes that were taken back, by the undo that did it. */
    private TreeMap<Long, List<Change>> undos() {
        return changes.stream()
                .filter(change -> !change.isInForce())
                .collect(Collectors.groupingBy(Change::undone, TreeMap::new, Collectors.toList()));
    }

    private static Set<Thing> touched(List<Change> group) {
        return group.stream().flatMap(change -> change.touched().stream()).collect(Collectors.toSet());
    }

    private static boolean share(Set<Thing> ground, Set<Thing> touched) {
        return touched.stream().anyMatch(thing -> isShared(ground, thing));
    }

    private static boolean isShared(Set<Thing> ground, Thing thing) {
        return switch (thing.kind()) {
            case STASH, SHELF -> false;
            case PIECE ->
                ground.contains(thing)
                        || ground.contains(Thing.ANY_PIECE)
                        || (thing.equals(Thing.ANY_PIECE)
                                && ground.stream().anyMatch(other -> other.kind() == Thing.Kind.PIECE));
            case CLOTH, PHOTOGRAPH -> ground.contains(thing);
        };
    }
}
