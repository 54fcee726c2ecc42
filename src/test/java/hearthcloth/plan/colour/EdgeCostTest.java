package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.plan.model.Contrast;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link EdgeCost}: what each wish for contrast finds dear and cheap. */
class EdgeCostTest {

    /** CIEDE2000 from none to as unlike as black and white. */
    @ParameterizedTest
    @EnumSource(Contrast.class)
    void no_edge_costs_less_than_nothing_and_ones_own_fabric_never_costs_less_than_another(Contrast wanted) {
        EdgeCost cost = EdgeCost.of(wanted);
        for (double apart = 0; apart <= 100; apart += 5) {
            assertThat(cost.ofBars(false, apart)).isGreaterThanOrEqualTo(0);
            assertThat(cost.ofBars(true, 0)).isGreaterThanOrEqualTo(cost.ofBars(false, 0));
            assertThat(cost.ofHearth(false, apart, apart)).isGreaterThanOrEqualTo(0);
            assertThat(cost.ofHearth(true, apart, apart)).isGreaterThanOrEqualTo(cost.ofHearth(false, apart, apart));
        }
    }

    @Test
    void who_wishes_for_most_contrast_pays_for_likeness_and_who_wishes_for_none_for_unlikeness() {
        double before = Double.MAX_VALUE;
        double melts = -1;
        for (double apart = 0; apart <= 40; apart += 4) {
            double most = EdgeCost.of(Contrast.MOST).ofBars(false, apart);
            assertThat(most).isLessThan(before);
            before = most;
            double less = EdgeCost.of(Contrast.MELTS).ofBars(false, apart);
            assertThat(less).isGreaterThan(melts);
            melts = less;
        }
        assertThat(EdgeCost.of(Contrast.MOST).ofBars(false, 40)).isZero();
        assertThat(EdgeCost.of(Contrast.MELTS).ofBars(false, 0)).isZero();
    }

    @Test
    void a_hearth_stands_out_by_colour_and_by_lightness_both() {
        assertThat(EdgeCost.standsOut(20, 15)).isTrue();
        assertThat(EdgeCost.standsOut(19.9, 15)).isFalse();
        assertThat(EdgeCost.standsOut(20, 14.9)).isFalse();
        assertThat(EdgeCost.of(Contrast.READS).ofHearth(false, 20, 15)).isZero();
        assertThat(EdgeCost.of(Contrast.READS).ofHearth(false, 19, 15)).isEqualTo(2);
    }

    @Test
    void likeness_fades_out_and_unlikeness_fades_in() {
        assertThat(EdgeCost.alike(0)).isEqualTo(1);
        assertThat(EdgeCost.alike(15)).isZero();
        assertThat(EdgeCost.alike(99)).isZero();
        assertThat(EdgeCost.unlike(0)).isZero();
        assertThat(EdgeCost.unlike(20)).isEqualTo(0.5);
        assertThat(EdgeCost.unlike(99)).isEqualTo(1);
    }
}
