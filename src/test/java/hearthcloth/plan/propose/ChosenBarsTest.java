package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link ChosenBars}: one fabric for each bar, and each plan of colour only under a name that is true of it. */
class ChosenBarsTest {

    private static final List<Fabric> REST = List.of(
            Trials.GREY,
            Trials.BLACK,
            Trials.fabric("Rust", 0xa6502f),
            Trials.fabric("Moss", 0x2f6b2a),
            Trials.fabric("Sky", 0x8fb4e0));

    private static final Design DESIGN = Trials.draft(
                    Trials.shape(Order.ROUND, 3, 48, 16), Scheme.Kind.ALL, Trials.WHITE, slot -> REST)
            .design();

    private static ChosenBars bars(Contrast contrast) {
        return new ChosenBars(
                Trials.plenty(Trials.WHITE, REST.get(0), REST.get(1), REST.get(2), REST.get(3), REST.get(4)),
                ColourGoal.flat(contrast));
    }

    @ParameterizedTest
    @EnumSource(Contrast.class)
    void each_bar_is_of_one_fabric_and_each_name_is_true(Contrast contrast) {
        for (Design design : bars(contrast).of(DESIGN, kind -> true)) {
            assertThat(design.layout()).isEqualTo(DESIGN.layout());
            assertThat(design.scheme().hearth()).isEqualTo(DESIGN.scheme().hearth());
            assertThat(design.scheme().bars()).allMatch(bar -> bar.size() == 1 && REST.contains(bar.get(0)));
            assertThat(SchemeRule.holds(design.scheme().kind(), design.whole(), design.fabrics()))
                    .isTrue();
        }
    }

    @Test
    void only_what_is_asked_for_is_looked_for() {
        assertThat(bars(Contrast.READS).of(DESIGN, kind -> false)).isEmpty();
        assertThat(bars(Contrast.READS).of(DESIGN, kind -> kind.equals(Scheme.Kind.SCATTERED)))
                .isNotEmpty()
                .allMatch(design -> design.scheme().kind().equals(Scheme.Kind.SCATTERED));
        assertThat(ChosenBars.areAsked(kind -> kind.equals(Scheme.Kind.ACCENT))).isTrue();
        assertThat(ChosenBars.areAsked(kind -> kind.equals(Scheme.Kind.FIELD))).isFalse();
    }
}
