package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import org.junit.jupiter.api.Test;

class ChangedTest {

    private static final ReadingParameters ALL = ReadingParameters.standard();

    @Test
    void one_value_is_changed_and_all_others_stay() {
        ReadingParameters changed = Changed.with(ALL, "segment.figures.body.half=7");

        assertThat(changed.segment().figures().body().half()).isEqualTo(7);
        assertThat(Changed.with(changed, "segment.figures.body.half=3")).isEqualTo(ALL);
    }

    @Test
    void several_are_changed_and_a_list_may_be_left_empty() {
        EdgeParameters edge = Changed.with(ALL.edge(), "colours.shades=", "colours.inShade=0", "lens.spreads=1,2.5");

        assertThat(edge.colours().shades()).isEmpty();
        assertThat(edge.colours().inShade()).isZero();
        assertThat(edge.lens().spreads()).containsExactly(1.0, 2.5);
    }

    @Test
    void a_name_that_is_none_is_told_with_those_there_are() {
        assertThatThrownBy(() -> Changed.with(ALL, "segment.rugs=1"))
                .hasMessageContaining("has no rugs; it has foreground");
        assertThatThrownBy(() -> Changed.with(ALL, "segment.rug.figures.more=1"))
                .hasMessageContaining("is one value");
        assertThatThrownBy(() -> Changed.with(ALL, "segment.rug=1")).hasMessageContaining("name one of them");
        assertThatThrownBy(() -> Changed.with(ALL, "segment")).hasMessageContaining("a name and a value");
    }
}
