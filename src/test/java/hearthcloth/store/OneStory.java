package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.Language;
import hearthcloth.work.StashAtHand;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;

/** What must hold of stash, cloths and journal after whatever was done. */
final class OneStory {

    private final Map<String, String> names = new TreeMap<>();
    /** The names of bars that each cloth has had: of its first plan, and of those with a narrow round more. */
    private final Map<String, Set<Set<String>>> bars = new TreeMap<>();

    /** A cloth came and has this name from now on; its bars keep theirs for life. */
    void begins(String id, String name, Plan plan) {
        names.put(id, name);
        bars.put(id, new HashSet<>(Set.of(barsOf(plan))));
    }

    /** A narrow round may have come; the bars of before keep their names. */
    void mayHaveMore(String id, Plan plan) {
        Set<String> now = barsOf(plan);
        Set<Set<String>> known = Objects.requireNonNull(bars.get(id));
        assertThat(known).as("names of bars").anyMatch(now::containsAll);
        known.add(now);
    }

    void isCalled(String id, String name) {
        names.put(id, name);
    }

    int cloths() {
        return names.size();
    }

    void holds(Seen seen) {
        assertThat(seen.fault()).as("tables and journal").isEmpty();
        Set<Piece> pieces = new HashSet<>(seen.heap().stash().pieces());
        seen.cloths().forEach(cloth -> holds(cloth, pieces, seen.heap()));
        shared(seen, pieces);
    }

    private void holds(SavedCloth cloth, Set<Piece> pieces, StashAtHand heap) {
        assertThat(cloth.name()).isEqualTo(names.get(cloth.id()));
        Plan plan = Seen.plan(cloth).checked();
        assertThat(bars.get(cloth.id())).as("names of bars").contains(barsOf(plan));
        for (PieceCut cut : plan.cuts()) {
            Offset<Double> within = Offset.offset(1e-9 * cut.piece().areaMm2());
            assertThat(parts(cut.tree())).isCloseTo(cut.piece().areaMm2(), within);
        }
        boolean toCut = cloth.document().life().stage().isToCut();
        assertThat(plan.cuts().stream().filter(cut -> cut.past() || !toCut).map(PieceCut::piece))
                .as("cut, and not in the stash")
                .noneMatch(pieces::contains);
        if (toCut) {
            List<Piece> counted = plan.cuts().stream()
                    .filter(cut -> !cut.past())
                    .map(PieceCut::piece)
                    .toList();
            boolean can = pieces.containsAll(counted) && counted.stream().noneMatch(heap::isAside);
            assertThat(heap.canBeCut(cloth.id())).isEqualTo(can);
            assertThat(can || !heap.warnings(cloth.id(), Language.ENGLISH).isEmpty())
                    .isTrue();
        }
    }

    private static double parts(CutTree tree) {
        return tree.kept().stream()
                        .mapToDouble(kept -> kept.at().size().areaMm2())
                        .sum()
                + tree.left().stream()
                        .mapToDouble(left -> left.size().areaMm2())
                        .sum();
    }

    /** A piece on which two cloths count is told at both. */
    private static void shared(Seen seen, Set<Piece> pieces) {
        for (SavedCloth one : seen.cloths()) {
            Set<Piece> own = counted(one, pieces);
            for (SavedCloth other : seen.cloths()) {
                boolean both = !one.id().equals(other.id())
                        && counted(other, pieces).stream().anyMatch(own::contains);
                if (both) {
                    assertThat(seen.heap().warnings(one.id(), Language.ENGLISH))
                            .anyMatch(told -> told.startsWith(other.name() + " counts on"));
                }
            }
        }
    }

    private static Set<Piece> counted(SavedCloth cloth, Set<Piece> pieces) {
        return cloth.document().life().stage().isToCut()
                ? Seen.plan(cloth).cuts().stream()
                        .filter(cut -> !cut.past())
                        .map(PieceCut::piece)
                        .filter(pieces::contains)
                        .collect(Collectors.toSet())
                : Set.of();
    }

    private static Set<String> barsOf(Plan plan) {
        return plan.cloth().patches().stream()
                .map(patch -> bar(patch.place().id()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String bar(String patch) {
        return patch.replaceFirst("\\..*", "");
    }

    /** A patch that lies where it lay keeps its name, where its bar has as many parts of the same sizes as before. */
    static void sameNames(Plan before, Plan after) {
        Map<String, String> names = new TreeMap<>();
        before.sources().forEach((patch, source) -> names.put(place(source), patch));
        after.sources().forEach((patch, source) -> {
            String was = names.get(place(source));
            if (was != null && partsOf(before, was).equals(partsOf(after, patch))) {
                assertThat(patch).as("the name of a patch").isEqualTo(was);
            }
        });
    }

    private static String place(Plan.Source source) {
        return source.from().piece().id() + " " + source.kept().at();
    }

    /** Where the parts of the patch's bar lie, in no order. */
    private static Set<String> partsOf(Plan plan, String patch) {
        String bar = bar(patch);
        return plan.sources().entrySet().stream()
                .filter(one -> bar(one.getKey()).equals(bar))
                .map(one -> bar + " " + place(one.getValue()))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
