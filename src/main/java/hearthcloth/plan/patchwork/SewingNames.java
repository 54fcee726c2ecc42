package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names patches in sewing order and parts the sewing into small tasks: A1, A2 … are sewn together first, then B1 and so on.
 * A task has no more patches than a hand has fingers, so that few loose parts lie about; a block is one task however many
 * patches it has. Patches that are sewn one by one to the work go on in one task.
 */
final class SewingNames {

    /** The most patches in a task that is no block. */
    static final int HAND = 5;

    private final Map<Integer, Place> names = new LinkedHashMap<>();
    private final List<Set<Integer>> blocks;
    private int task;
    private int number;
    private boolean oneByOne;

    private SewingNames(List<Set<Integer>> blocks) {
        this.blocks = blocks;
    }

    /**
     * The work with its patches named.
     *
     * @param work with patches numbered from 1
     * @param blocks the patches of each block
     */
    static Assembly named(Assembly work, List<Set<Integer>> blocks) {
        return work.fold(new Renamed(names(work, blocks)));
    }

    /** The name of each patch by its number. */
    static Map<Integer, Place> names(Assembly work, List<Set<Integer>> blocks) {
        SewingNames naming = new SewingNames(blocks);
        naming.name(work);
        return naming.names;
    }

    private void name(Assembly part) {
        List<Integer> patches = part.fold(new Numbers());
        if (patches.size() <= HAND || blocks.contains(Set.copyOf(patches))) {
            begin();
            nameAll(part);
            oneByOne = false;
            return;
        }
        Seam seam = (Seam) part;
        Half added = added(seam);
        name(seam.half(added.other()));
        if (seam.half(added) instanceof Patch patch) {
            nameOne(patch);
        } else {
            name(seam.half(added));
        }
    }

    private void begin() {
        task++;
        number = 0;
    }

    private void nameOne(Patch patch) {
        if (!oneByOne || number >= HAND) {
            begin();
        }
        oneByOne = true;
        names.put(number(patch), new Place.Free(task, ++number));
    }

    private void nameAll(Assembly part) {
        if (part instanceof Patch patch) {
            names.put(number(patch), new Place.Free(task, ++number));
            return;
        }
        Seam seam = (Seam) part;
        Half added = added(seam);
        nameAll(seam.half(added.other()));
        nameAll(seam.half(added));
    }

    /** The half that is sewn to the other: the one with fewer patches, as in {@link hearthcloth.cloth.Step}. */
    private static Half added(Seam seam) {
        int first = seam.first().fold(new Numbers()).size();
        return seam.second().fold(new Numbers()).size() <= first ? Half.SECOND : Half.FIRST;
    }

    private static int number(Patch patch) {
        return ((Place.Free) patch.place()).number();
    }

    /** The numbers of a part's patches. */
    private record Numbers() implements Assembly.Fold<List<Integer>> {

        @Override
        public List<Integer> patch(Patch patch) {
            return List.of(number(patch));
        }

        @Override
        public List<Integer> seam(Seam seam, List<Integer> first, List<Integer> second) {
            List<Integer> all = new java.util.ArrayList<>(first);
            all.addAll(second);
            return all;
        }
    }

    private record Renamed(Map<Integer, Place> names) implements Assembly.Fold<Assembly> {

        @Override
        public Assembly patch(Patch patch) {
            Place place = java.util.Objects.requireNonNull(names.get(number(patch)));
            return new Patch(place, patch.fabric(), patch.size(), patch.showing());
        }

        @Override
        public Assembly seam(Seam seam, Assembly first, Assembly second) {
            return Seam.of(seam.join(), seam.wraps(), first, second);
        }
    }
}
