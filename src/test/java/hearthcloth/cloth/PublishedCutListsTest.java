package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.SourceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Cut lists that others have printed, and the worked felled example. Sources: docs/sources.md#cut-lists. */
class PublishedCutListsTest {

    private static final Length QUARTER = Length.inches(1, 4);

    @TestFactory
    List<DynamicTest> a_published_list_comes_out_as_printed() {
        return SourceTable.rows("logcabin_examples.csv").stream()
                .map(row -> DynamicTest.dynamicTest(row.text("id") + " " + row.text("source"), () -> comesOut(row)))
                .toList();
    }

    private static void comesOut(SourceTable.Row row) {
        Order order = row.text("order").equals("spiral") ? Order.ROUND : Order.PAIRS;
        Length bar = inches(row.text("finished_log_in"));
        int rounds = (int) row.number("rounds");
        Layout layout = new Layout(
                Size.square(inches(row.text("finished_center_in"))), Layout.courses(order, rounds, List.of(bar)));
        Cloth cloth = Made.cloth(layout, Made.plain(QUARTER));

        assertThat(cloth.finished()).isEqualTo(Size.square(inches(row.text("finished_block_in"))));
        assertThat(hearth(cloth).cut()).isEqualTo(Size.square(inches(row.text("cut_center_in"))));
        assertThat(barLengths(cloth))
                .isEqualTo(Arrays.stream(
                                row.text("cut_log_lengths_in_sewing_order").split(" "))
                        .map(PublishedCutListsTest::inches)
                        .toList());
        assertThat(barWidths(cloth)).containsOnly(inches(row.text("cut_log_width_in")));
    }

    /** F: a quarter log cabin (a tutorial, 2018; common practice). */
    @Test
    void bars_on_two_sides_come_out_as_printed() {
        Layout layout =
                new Layout(Size.square(inches("3")), Layout.courses(Order.TWO_SIDES, 3, List.of(inches("1.5"))));
        Cloth cloth = Made.cloth(layout, Made.plain(QUARTER));

        assertThat(cloth.finished()).isEqualTo(Size.square(inches("7.5")));
        assertThat(barLengths(cloth)).isEqualTo(lengths("3.5 5 5 6.5 6.5 8"));
    }

    /** G: narrow bars on two sides, wide ones on the others (a tutorial, 2016; common practice). */
    @Test
    void two_widths_of_bar_come_out_as_printed() {
        List<Layout.Course> courses = new ArrayList<>();
        for (int round = 0; round < 3; round++) {
            courses.add(new Layout.Course(Side.RIGHT, inches("0.75")));
            courses.add(new Layout.Course(Side.BOTTOM, inches("0.75")));
            courses.add(new Layout.Course(Side.LEFT, inches("1.5")));
            courses.add(new Layout.Course(Side.TOP, inches("1.5")));
        }
        Cloth cloth = Made.cloth(new Layout(Size.square(inches("1.5")), courses), Made.plain(QUARTER));

        assertThat(cloth.finished()).isEqualTo(Size.square(inches("8.25")));
        assertThat(barLengths(cloth)).endsWith(inches("8.75"));
    }

    /** H: half-inch seams, strips cut 3 in wide (a tutorial; common practice). */
    @Test
    void half_inch_seams_come_out_as_printed() {
        Layout layout = new Layout(Size.square(inches("4")), Layout.courses(Order.ROUND, 2, List.of(inches("2"))));
        Cloth cloth = Made.cloth(layout, Made.plain(Length.inches(1, 2)));

        assertThat(cloth.finished()).isEqualTo(Size.square(inches("12")));
        assertThat(hearth(cloth).cut()).isEqualTo(Size.square(inches("5")));
        assertThat(barLengths(cloth)).isEqualTo(lengths("5 7 7 9 9 11 11 13"));
        assertThat(barWidths(cloth)).containsOnly(inches("3"));
    }

    /** logcabin_felled_example.csv, derived by hand: docs/sources.md#felled-example. */
    @Test
    void the_felled_example_is_cut_as_worked_by_hand() {
        Cloth cloth = Made.felledExample();
        List<String> worked = new ArrayList<>();
        for (SourceTable.Row row : SourceTable.rows("logcabin_felled_example.csv")) {
            for (int i = 0; i < (int) row.number("count"); i++) {
                worked.add(row.text("cut_length_mm") + " x " + row.text("cut_width_mm"));
            }
        }
        List<String> cut = cloth.laid().stream()
                .map(Laid::cut)
                .map(size -> mm(size.width().max(size.height())) + " x "
                        + mm(size.width().min(size.height())))
                .toList();

        assertThat(cut).containsExactlyInAnyOrderElementsOf(worked);
        assertThat(cloth.finished()).isEqualTo(Size.square(Length.mm(340)));
        assertThat(cloth.patches()).hasSize(13);
        assertThat(cloth.steps()).hasSize(12);
    }

    /** docs/sources.md#felled-example: 195 520 mm² cut for 115 600, 2 640 mm of seam. */
    @Test
    void the_felled_example_uses_the_area_and_seam_length_worked_by_hand() {
        Cloth cloth = Made.felledExample();

        assertThat(cloth.laid().stream()
                        .mapToDouble(laid -> laid.cut().areaMm2())
                        .sum())
                .isEqualTo(195_520);
        assertThat(cloth.finished().areaMm2()).isEqualTo(115_600);
        assertThat(cloth.steps().stream().map(Step::length).reduce(Length.ZERO, Length::plus))
                .isEqualTo(Length.mm(2_640));
    }

    private static Laid hearth(Cloth cloth) {
        return cloth.laid().stream()
                .filter(laid -> laid.patch().place() instanceof Place.Hearth)
                .findFirst()
                .orElseThrow();
    }

    /** Cut lengths of the bars in sewing order. */
    private static List<Length> barLengths(Cloth cloth) {
        return cloth.steps().stream()
                .map(step -> cutOf(cloth, step.patches(step.added()).get(0)))
                .map(size -> size.width().max(size.height()))
                .toList();
    }

    private static List<Length> barWidths(Cloth cloth) {
        return cloth.steps().stream()
                .map(step -> cutOf(cloth, step.patches(step.added()).get(0)))
                .map(size -> size.width().min(size.height()))
                .toList();
    }

    private static Size cutOf(Cloth cloth, Patch patch) {
        return cloth.laid().stream()
                .filter(laid -> laid.patch().equals(patch))
                .findFirst()
                .orElseThrow()
                .cut();
    }

    private static List<Length> lengths(String text) {
        return Arrays.stream(text.split(" ")).map(PublishedCutListsTest::inches).toList();
    }

    private static Length inches(String text) {
        return Length.parse(text + " in");
    }

    private static String mm(Length length) {
        return length.toString().replace(" mm", "");
    }
}
