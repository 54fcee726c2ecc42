package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sewing order: what is new at each seam, and how large the work then is. */
class StepTest {

    /** The first bar may have more patches than the hearth has; it is the bar that is laid on and trimmed all the same. */
    @Test
    void a_bar_of_many_parts_is_sewn_to_the_hearth_and_not_the_other_way_round() {
        Cloth cloth = new Cloth(
                Notation.parse("(hearth \"oat\" 120 x 120 same <| ((1A.1 right \"kelp\" 40 x 40 same"
                        + " /> 1A.2 right \"kelp\" 40 x 40 same) /> 1A.3 right \"kelp\" 40 x 40 same))"),
                Made.felledExampleMaking());
        List<Step> steps = cloth.steps();

        assertThat(steps).extracting(step -> step.joinedBar().orElse("")).containsExactly("1A", "1A", "");
        assertThat(steps.get(2).added()).isEqualTo(Half.SECOND);
        assertThat(steps.get(2).patches(Half.SECOND)).hasSize(3);
    }

    /** 100 + 40 finished, hearth open 6 at the left and 6 + 6 at top and bottom, bar open 6 on its outer edge. */
    @Test
    void the_felled_example_grows_as_worked_by_hand() {
        List<Size> running =
                Made.felledExample().steps().stream().map(Step::running).toList();

        assertThat(running.subList(0, 4))
                .containsExactly(size(152, 112), size(192, 112), size(192, 152), size(192, 192));
        assertThat(running.get(11)).isEqualTo(size(380, 380));
    }

    private static Size size(long width, long height) {
        return new Size(Length.mm(width), Length.mm(height));
    }
}
