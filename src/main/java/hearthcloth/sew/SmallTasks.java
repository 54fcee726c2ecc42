package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.words.sewing.SewingWords;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The small tasks of free patchwork: which patches belong to which, what a part of the work is called, and where a task begins
 * and ends. Patches are named in sewing order, so every part of the work is a run of names.
 */
final class SmallTasks {

    private final SewingWords words;
    private final Map<Integer, Integer> sizes = new HashMap<>();
    private final Set<Integer> begun = new HashSet<>();

    SmallTasks(Cloth cloth, SewingWords words) {
        this.words = words;
        cloth.patches().forEach(patch -> {
            if (patch.place() instanceof Place.Free free && free.task() > 0) {
                sizes.merge(free.task(), 1, Integer::sum);
            }
        });
    }

    /** The name of a part of several patches; empty where they are not named by tasks. */
    Optional<String> name(List<Laid> patches) {
        List<Place.Free> names = names(patches);
        if (names.size() < patches.size()) {
            return Optional.empty();
        }
        Place.Free first = names.get(0);
        Place.Free last = names.get(names.size() - 1);
        if (first.task() == last.task()) {
            return Optional.of(inTask(names));
        }
        boolean whole = first.number() == 1 && last.number() == size(last.task());
        String from = whole ? first.letters() : first.id();
        String to = whole ? last.letters() : last.id();
        return Optional.of(
                first.task() == 1 && first.number() == 1 ? words.nameWorkTo(from, to) : words.namePartTo(from, to));
    }

    private String inTask(List<Place.Free> names) {
        Place.Free first = names.get(0);
        if (names.size() == size(first.task())) {
            return words.nameBlock(first.letters());
        }
        String last = names.get(names.size() - 1).id();
        return names.size() == 2 ? words.namePair(first.id(), last) : words.namePartTo(first.id(), last);
    }

    /** What is laid out before the first seam of a task; empty before any other seam. */
    Optional<String> begins(List<Laid> patches) {
        List<Place.Free> names = names(patches);
        if (names.size() < patches.size()
                || names.get(0).task() != names.get(names.size() - 1).task()) {
            return Optional.empty();
        }
        Place.Free first = names.get(0);
        if (!begun.add(first.task())) {
            return Optional.empty();
        }
        return Optional.of(
                words.blockBegins(first.letters() + "1", first.letters() + size(first.task()), first.letters()));
    }

    /** What is said when all patches of a task are together; empty before. */
    Optional<String> ends(List<Laid> patches) {
        List<Place.Free> names = names(patches);
        boolean together = names.size() == patches.size()
                && names.get(0).task() == names.get(names.size() - 1).task()
                && names.size() == size(names.get(0).task());
        return together ? Optional.of(words.blockDone(names.get(0).letters())) : Optional.empty();
    }

    private int size(int task) {
        return sizes.getOrDefault(task, 0);
    }

    private static List<Place.Free> names(List<Laid> patches) {
        return patches.stream()
                .map(laid -> laid.patch().place())
                .filter(place -> place instanceof Place.Free free && free.task() > 0)
                .map(Place.Free.class::cast)
                .sorted(java.util.Comparator.comparingInt(Place.Free::task).thenComparingInt(Place.Free::number))
                .toList();
    }
}
