package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The colours of the five example heaps, as docs/colour.md tells them; run it to print its table. */
class ExampleColoursTest {

    @ParameterizedTest
    @CsvSource({"two-lengths, 36", "strips, 38", "scraps, 34", "metric, 28", "two-hundred, 36"})
    void the_first_proposal_has_a_hearth_that_stands_out_and_every_name_is_true(String heap, int inches)
            throws IOException {
        Stash stash = ((StashFile.Read)
                        StashFile.read(Files.readString(Path.of("examples/" + heap + ".csv")), Optional.of(Unit.INCH)))
                .stash();
        List<Plan> plans =
                ChoiceTest.proposals(stash, ChoiceTest.wish(Optional.of(Size.square(Length.inches(inches)))));
        Plan first = plans.get(0);
        assertThat(figures(first).hearth().standsOut()).isGreaterThan(0.999);
        assertThat(first.figures().joins())
                .isEqualTo(plans.stream()
                        .mapToInt(plan -> plan.figures().joins())
                        .min()
                        .orElseThrow());
        for (Plan plan : plans) {
            System.out.printf(
                    "%-12s %-42s joins %d, cuts %2d, hearth %3.0f %%, meets itself %3.0f %%, mixed %d, off centre %.1f %%%n",
                    heap,
                    plan.story().title(),
                    plan.figures().joins(),
                    plan.figures().cuts(),
                    100 * figures(plan).hearth().standsOut(),
                    100 * figures(plan).neighbours().same(),
                    figures(plan).mixedBars(),
                    100 * figures(plan).offCentre());
            isTrue(plan);
        }
    }

    /** Whatever is proposed beside it with no more joins and no smaller: its hearth stands out no better than the first's. */
    @ParameterizedTest
    @CsvSource({"scraps, 93", "scraps, 80", "strips, 88", "metric, 80", "two-hundred, 97", "two-hundred, 72"})
    void no_later_proposal_has_a_hearth_that_stands_out_all_round_where_the_first_has_not(String heap, int quarters)
            throws IOException {
        Stash stash = ((StashFile.Read)
                        StashFile.read(Files.readString(Path.of("examples/" + heap + ".csv")), Optional.of(Unit.INCH)))
                .stash();
        List<Plan> plans = ChoiceTest.proposals(
                stash,
                ChoiceTest.wish(Optional.of(
                        Size.square(new Length(Length.inches(quarters).nm() / 4)))));
        Plan first = plans.get(0);
        if (figures(first).hearth().standsOut() < 0.999) {
            assertThat(plans)
                    .filteredOn(
                            plan -> plan.figures().joins() <= first.figures().joins())
                    .extracting(plan -> figures(plan).hearth().standsOut())
                    .allMatch(share -> share < 0.999);
        }
    }

    private static ColourFigures figures(Plan plan) {
        return ColourFigures.of(plan.cloth(), plan.fabrics());
    }

    /** The rules read once more, straight off the cloth. */
    private static void isTrue(Plan plan) {
        String title = plan.story().title().english();
        if (title.startsWith("Scattered evenly")) {
            assertThat(figures(plan).neighbours().same()).isLessThanOrEqualTo(0.03);
            assertThat(figures(plan).mixedBars()).isZero();
        } else if (title.startsWith("Two halves")) {
            Predicate<Place.Bar> light = bar -> bar.side() == Side.RIGHT || bar.side() == Side.BOTTOM;
            assertThat(lightness(plan, light).min(Comparator.naturalOrder()).orElseThrow())
                    .isGreaterThanOrEqualTo(lightness(plan, light.negate())
                                    .max(Comparator.naturalOrder())
                                    .orElseThrow()
                            + 10);
        } else if (title.startsWith("Ring by ring")) {
            for (int round = 1; round <= 2; round++) {
                int ring = round;
                assertThat(lightness(plan, bar -> bar.round() == ring).distinct())
                        .hasSize(1);
            }
        }
    }

    private static java.util.stream.Stream<Double> lightness(Plan plan, Predicate<Place.Bar> which) {
        return plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Bar bar && which.test(bar))
                .map(Patch::fabric)
                .map(name -> plan.fabrics().stream()
                        .filter(fabric -> fabric.name().equals(name))
                        .map(Fabric::colour)
                        .findFirst()
                        .orElseThrow()
                        .lab()
                        .lightness());
    }
}
