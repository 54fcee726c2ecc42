package hearthcloth.cloth;

import java.util.ArrayList;
import java.util.List;

/** All patches of a tree, first halves before second. */
record Patches() implements Assembly.Fold<List<Patch>> {

    @Override
    public List<Patch> patch(Patch patch) {
        return List.of(patch);
    }

    @Override
    public List<Patch> seam(Seam seam, List<Patch> first, List<Patch> second) {
        List<Patch> all = new ArrayList<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }
}
