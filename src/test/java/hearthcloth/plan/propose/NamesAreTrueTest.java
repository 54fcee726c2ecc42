package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Of random heaps, each by its seed: what a proposal is called is true of it, by rules read once more straight off the cloth;
 * colour costs no join, and a cut only where that is said; the four differ to the eye.
 */
class NamesAreTrueTest {

    private static final int HEAPS_EACH = 4;

    /** Scraps of three to nine fabrics in any colours, and a larger piece of each. */
    private static Stash heap(long seed) {
        Random random = new Random(seed);
        int fabrics = 3 + random.nextInt(7);
        List<Piece> pieces = new ArrayList<>();
        for (int kind = 0; kind < fabrics; kind++) {
            Fabric fabric = new Fabric(
                    "Fabric " + kind, Colour.of(random.nextInt(0x1000000)), Fabric.Faces.SAME, Fabric.Nap.ANY);
            pieces.add(Stashes.piece(pieces.size() + 2, fabric, new Size(Length.inches(14), Length.inches(16))));
            for (int i = 0; i < 24 / fabrics; i++) {
                Size size =
                        new Size(Length.inches(24 + random.nextInt(73), 8), Length.inches(64 + random.nextInt(193), 8));
                pieces.add(Stashes.piece(pieces.size() + 2, fabric, size));
            }
        }
        return new Stash(pieces);
    }

    private static Wish wish() {
        return ChoiceTest.wish(Optional.of(Size.square(Length.inches(26))));
    }

    @ParameterizedTest
    @ValueSource(longs = {100, 200, 300, 400})
    void every_name_is_true_and_the_first_has_fewest_joins(long seeds) {
        for (long seed = seeds; seed < seeds + HEAPS_EACH; seed++) {
            Stash heap = heap(seed);
            if (Planner.plan(heap, wish(), 1, Budget.steps(2000), seen -> {})
                    instanceof PlanOutcome.Proposals proposals) {
                List<Plan> plans = proposals.plans();
                plans.forEach(plan -> assertThat(isTrue(plan))
                        .as("%s, of %s", plan.story().title().english(), heap.fabrics())
                        .isTrue());
                int fewest = plans.stream()
                        .mapToInt(plan -> plan.figures().joins())
                        .min()
                        .orElseThrow();
                assertThat(plans.get(0).figures().joins()).isEqualTo(fewest);
            }
        }
    }

    /** Without colour the first is the best by joins, middle and cuts of all that was found. */
    @ParameterizedTest
    @ValueSource(longs = {500, 600})
    void colour_costs_no_join_and_a_cut_only_where_that_is_said(long seeds) {
        for (long seed = seeds; seed < seeds + HEAPS_EACH; seed++) {
            Stash heap = heap(seed);
            SearchWork work = new SearchWork(1, Budget.steps(2000), seen -> {});
            TrialSearch search = new TrialSearch(heap, wish(), List.of(), work, Idea.none());
            List<DraftTrial> found =
                    search.tryAt(wish().target().size(), work.parameters().tries());
            if (found.isEmpty()) {
                continue;
            }
            DraftTrial plain = found.stream().min(DraftTrial.BEST).orElseThrow();
            DraftTrial first = found.get(0);
            assertThat(first.figures().joins()).isEqualTo(plain.figures().joins());
            int more = first.figures().cuts() - plain.figures().cuts();
            String said = TrialColours.told(List.of(ProposalSelection.plan(first)), found, search.goal())
                    .get(0)
                    .story()
                    .goodAt()
                    .english();
            assertThat(said.contains("than the least that was found, for its colours"))
                    .as("%d more cuts; said: %s", more, said)
                    .isEqualTo(more > 0);
        }
    }

    private static boolean isTrue(Plan plan) {
        String title = plan.story().title().english();
        ColourFigures figures = ColourFigures.of(plan.cloth(), plan.fabrics());
        Predicate<Place.Bar> light = bar -> bar.side() == Side.RIGHT || bar.side() == Side.BOTTOM;
        if (title.startsWith("Two halves")) {
            return isApart(plan, light);
        } else if (title.startsWith("Turn and turn about")) {
            return isApart(plan, bar -> (bar.order() + bar.round()) % 2 == 0);
        } else if (title.startsWith("Spiral")) {
            return isApart(plan, bar -> (4 * (bar.round() - 1) + bar.order()) / 5 % 2 == 0);
        } else if (title.startsWith("Ring by ring") || title.startsWith("Frames")) {
            return rings(plan).allMatch(ring -> ring.distinct().count() == 1);
        } else if (title.startsWith("Light to dark")) {
            double[] rings = rings(plan)
                    .mapToDouble(ring -> ring.mapToDouble(name -> lightness(plan, name))
                            .max()
                            .orElse(0))
                    .toArray();
            return DoubleStream.of(rings).distinct().count() == rings.length
                    && isFalling(rings)
                    && rings(plan).allMatch(ring -> ring.distinct().count() == 1);
        } else if (title.startsWith("One field")) {
            return bars(plan).map(Patch::fabric).distinct().count() == 1;
        } else if (title.startsWith("Scattered evenly")) {
            return figures.neighbours().same() <= 0.03
                    && figures.mixedBars() == 0
                    && figures.hearth().ownMm() == 0;
        } else if (title.startsWith("One bright scrap")) {
            return isBrightScrap(plan);
        }
        return true;
    }

    private static boolean isFalling(double[] rings) {
        for (int i = 1; i < rings.length; i++) {
            if (rings[i] >= rings[i - 1]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBrightScrap(Plan plan) {
        List<String> names = bars(plan).map(Patch::fabric).distinct().toList();
        String bright = names.stream()
                .max(java.util.Comparator.comparingDouble(name -> chroma(plan, name)))
                .orElseThrow();
        double area = bars(plan)
                .filter(patch -> patch.fabric().equals(bright))
                .mapToDouble(patch -> patch.size().areaMm2())
                .sum();
        double share = area / plan.cloth().finished().areaMm2();
        return chroma(plan, bright) >= 30 && share >= 0.02 && share <= 0.09;
    }

    private static boolean isApart(Plan plan, Predicate<Place.Bar> light) {
        double lights = bars(plan)
                .filter(patch -> light.test((Place.Bar) patch.place()))
                .mapToDouble(patch -> lightness(plan, patch.fabric()))
                .min()
                .orElseThrow();
        double darks = bars(plan)
                .filter(patch -> !light.test((Place.Bar) patch.place()))
                .mapToDouble(patch -> lightness(plan, patch.fabric()))
                .max()
                .orElseThrow();
        return lights - darks >= 10;
    }

    private static Stream<Patch> bars(Plan plan) {
        return plan.cloth().patches().stream().filter(patch -> patch.place() instanceof Place.Bar);
    }

    /** The fabrics of each round, the innermost first. */
    private static Stream<Stream<String>> rings(Plan plan) {
        int rounds = bars(plan)
                .mapToInt(patch -> ((Place.Bar) patch.place()).round())
                .max()
                .orElse(0);
        return java.util.stream.IntStream.rangeClosed(1, rounds)
                .mapToObj(round -> bars(plan)
                        .filter(patch -> ((Place.Bar) patch.place()).round() == round)
                        .map(Patch::fabric));
    }

    private static double lightness(Plan plan, String name) {
        return fabric(plan, name).colour().lab().lightness();
    }

    private static double chroma(Plan plan, String name) {
        return fabric(plan, name).colour().lab().chroma();
    }

    private static Fabric fabric(Plan plan, String name) {
        return plan.fabrics().stream()
                .filter(fabric -> fabric.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
