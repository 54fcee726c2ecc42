package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.sew.Guide;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** After a patch was cut too small there are ways on, and each of them tells the whole story. */
class MiscutWaysTest {

    private static final Stash STASH = Stashes.scraps(40, 3);
    private static final Plan PLAN = Planned.plans(STASH, 28, 1).get(0);

    private static Set<String> all(PieceCut cut) {
        Set<String> made = new HashSet<>();
        for (int i = 1; i <= cut.tree().cuts().size(); i++) {
            made.add(cut.piece().id() + ":" + i);
        }
        return made;
    }

    /** The patch cut {@code by} too small across, and the pieces before its own all cut. */
    private static Miscut miscut(String patch, Length by) {
        Plan.Source source = Objects.requireNonNull(PLAN.sources().get(patch));
        Set<String> made = new HashSet<>();
        for (PieceCut cut : PLAN.cuts()) {
            if (cut.equals(source.from())) {
                break;
            }
            made.addAll(all(cut));
        }
        Size planned = source.kept().at().size();
        return Miscut.of(PLAN, made, patch, new Size(planned.width().minus(by), planned.height()));
    }

    private static List<WayOn> ways(Miscut miscut) {
        return new MiscutWays(miscut, DesignEdits.settled(PLAN, Order.ROUND), STASH).ways(Budget.steps(100), way -> {});
    }

    private static Map<String, CutTree.Kept> cut(Plan plan, Set<String> made) {
        Map<String, CutTree.Kept> cut = new TreeMap<>();
        plan.sources().forEach((patch, source) -> {
            if (!source.from().tree().cuts().isEmpty() && made.containsAll(Miscut.path(source.from(), patch))) {
                cut.put(patch + " of " + source.from().piece().id(), source.kept());
            }
        });
        return cut;
    }

    @Test
    void a_hearth_half_an_inch_short_is_told_to_be_half_an_inch_short() {
        Miscut miscut = miscut("hearth", Length.inches(1, 2));
        String told = new MiscutWays(miscut, DesignEdits.settled(PLAN, Order.ROUND), STASH)
                .told()
                .english();
        assertThat(told).startsWith("The hearth is too small by ½ in across: it measures ");
    }

    @Test
    void a_short_hearth_has_a_way_that_keeps_the_size_and_one_that_does_not() {
        List<WayOn> ways = ways(miscut("hearth", Length.inches(1, 2)));
        assertThat(ways).hasSizeBetween(2, 4);
        assertThat(ways).extracting(WayOn::kind).contains(WayOn.Kind.WIDER_NEIGHBOURS, WayOn.Kind.SMALLER_CLOTH);
        for (WayOn way : ways) {
            Length smaller = PLAN.cloth()
                    .finished()
                    .width()
                    .minus(way.plan().cloth().finished().width())
                    .max(PLAN.cloth()
                            .finished()
                            .height()
                            .minus(way.plan().cloth().finished().height()));
            assertThat(smaller)
                    .as(way.told().get(0).english())
                    .isEqualTo(way.kind() == WayOn.Kind.SMALLER_CLOTH ? Length.inches(1, 2) : Length.ZERO);
        }
    }

    @Test
    void what_is_cut_stays_cut_from_the_same_piece_and_every_piece_is_real() {
        Random random = new Random(31);
        List<String> patches = List.copyOf(PLAN.sources().keySet());
        int ways = 0;
        for (int i = 0; i < 12; i++) {
            String patch = patches.get(random.nextInt(patches.size()));
            Plan.Source source = Objects.requireNonNull(PLAN.sources().get(patch));
            if (source.from().tree().cuts().isEmpty()) {
                continue;
            }
            Miscut miscut = miscut(patch, Length.inches(1 + random.nextInt(8), 8));
            Map<String, CutTree.Kept> before = cut(PLAN, miscut.made());
            before.remove(patch + " of " + source.from().piece().id());
            for (WayOn way : ways(miscut)) {
                ways++;
                List<Piece> used =
                        way.plan().cuts().stream().map(PieceCut::piece).toList();
                assertThat(STASH.pieces()).as("seed 31, " + patch).containsAll(used);
                assertThat(pieces(before.keySet()))
                        .as("seed 31, " + patch + ", " + way.told())
                        .isSubsetOf(pieces(sources(way.plan())));
                assertThat(way.plan().checked().laid().keySet().stream().map(MiscutWaysTest::bar))
                        .containsAll(PLAN.laid().keySet().stream()
                                .map(MiscutWaysTest::bar)
                                .toList());
            }
        }
        assertThat(ways).isGreaterThan(12);
    }

    private static Set<String> sources(Plan plan) {
        Set<String> all = new HashSet<>();
        plan.sources()
                .forEach((patch, source) ->
                        all.add(patch + " of " + source.from().piece().id()));
        return all;
    }

    private static Set<String> pieces(Set<String> cut) {
        Set<String> pieces = new HashSet<>();
        cut.forEach(one -> pieces.add(bar(one.replaceFirst(" of .*", "")) + one.replaceFirst(".* of ", " ")));
        return pieces;
    }

    private static String bar(String patch) {
        return patch.replaceFirst("\\..*", "");
    }

    @Test
    void the_guide_still_says_what_was_cut_from_what() {
        Miscut miscut = miscut("hearth", Length.inches(1, 2));
        for (WayOn way : ways(miscut)) {
            Guide guide = Guide.of(way.plan(), Ruler.EIGHTHS);
            PieceCut from = Objects.requireNonNull(PLAN.sources().get("hearth")).from();
            assertThat(guide.cutting())
                    .anySatisfy(piece -> assertThat(piece.title())
                            .startsWith("Piece " + from.piece().id() + ":"));
            assertThat(way.made()).as(way.told().get(0).english()).isNotEmpty();
            assertThat(way.plan().figures().areas().touched())
                    .isGreaterThanOrEqualTo(from.piece().areaMm2());
        }
    }

    @Test
    void no_other_fabric_changes_unless_the_way_says_so() {
        for (WayOn way : ways(miscut("hearth", Length.inches(1, 2)))) {
            Map<String, Set<String>> before = fabrics(PLAN);
            fabrics(way.plan()).forEach((bar, fabrics) -> {
                if (!fabrics.equals(before.get(bar))) {
                    assertThat(Sentence.row(way.told().subList(1, way.told().size()))
                                    .english())
                            .contains(bar);
                }
            });
        }
    }

    private static Map<String, Set<String>> fabrics(Plan plan) {
        Map<String, Set<String>> fabrics = new TreeMap<>();
        plan.laid()
                .forEach((patch, laid) -> fabrics.computeIfAbsent(bar(patch), none -> new HashSet<>())
                        .add(laid.patch().fabric()));
        return fabrics;
    }

    @Test
    void a_patch_as_large_as_it_should_be_is_no_slip() {
        assertThatThrownBy(() -> miscut("hearth", Length.ZERO)).isInstanceOf(MeasureException.class);
    }
}
