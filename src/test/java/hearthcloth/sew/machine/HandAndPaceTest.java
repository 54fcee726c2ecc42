package hearthcloth.sew.machine;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.sew.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What is learnt from a maker's own work is the middle of it, never one slip, and never more than she did. */
class HandAndPaceTest {

    private static Length sixteenths(long count) {
        return Length.inches(count, 16);
    }

    private static List<Length> seams(long... sixteenths) {
        return java.util.Arrays.stream(sixteenths)
                .mapToObj(HandAndPaceTest::sixteenths)
                .toList();
    }

    @Test
    void too_few_seams_say_nothing() {
        assertThat(SewingHand.of(seams(13, 13, 13, 13, 13))).isEmpty();
        assertThat(SewingHand.of(seams(13, 13, 13, 13, 13, 13))).isPresent();
    }

    @Test
    void one_slip_moves_neither_the_median_nor_the_spread() {
        SewingHand clean = SewingHand.of(seams(12, 13, 13, 14, 13, 12, 14)).orElseThrow();
        SewingHand slipped = SewingHand.of(seams(12, 13, 13, 14, 13, 12, 90)).orElseThrow();
        assertThat(clean.eats()).isEqualTo(sixteenths(13));
        assertThat(slipped.eats()).isEqualTo(clean.eats());
        assertThat(slipped.spread()).isEqualTo(clean.spread()).isEqualTo(sixteenths(1));
    }

    @Test
    void the_seam_offered_eats_just_what_hers_do() {
        SeamKind usual = SeamKind.felledInches();
        SewingHand hand = SewingHand.of(seams(14, 14, 14, 14, 13, 15)).orElseThrow();
        assertThat(hand.differsFrom(usual)).isTrue();
        SeamKind own = hand.applied(usual).orElseThrow();
        assertThat(own.loss()).isEqualTo(hand.eats());
        assertThat(own.wide()).isGreaterThan(own.narrow());
        assertThat(hand.differsFrom(own)).isFalse();
        SewingHand scattered = SewingHand.of(seams(8, 10, 12, 13, 17, 20)).orElseThrow();
        assertThat(scattered.differsFrom(usual)).isFalse();
        assertThat(SewingHand.of(seams(1, 1, 1, 1, 1, 1)).orElseThrow().applied(usual))
                .isEqualTo(Optional.empty());
    }

    private static List<SewingPace.Step> sewing(AtTheMachine.Kind kind, long... seconds) {
        List<SewingPace.Step> steps = new ArrayList<>();
        for (long second : seconds) {
            steps.add(new SewingPace.Step(kind, second));
        }
        return steps;
    }

    @Test
    void pace_is_the_middle_of_her_own_steps_without_pauses_and_slips() {
        SewingPace pace = SewingPace.of(List.of(
                sewing(AtTheMachine.Kind.SEAM, 0, 300, 900, 901, 1_261, 90_000, 90_360),
                sewing(AtTheMachine.Kind.HEM, 0, 600, 1_200)));
        assertThat(pace.middle()).isEqualTo(Map.of(AtTheMachine.Kind.SEAM, 360L));
        AtTheMachine seam = new AtTheMachine(AtTheMachine.Kind.SEAM, Task.of("a", List.of()), Optional.empty(), "");
        AtTheMachine hem = new AtTheMachine(AtTheMachine.Kind.HEM, Task.of("b", List.of()), Optional.empty(), "");
        assertThat(pace.of(List.of(seam, seam))).isEqualTo(OptionalLong.of(720));
        assertThat(pace.of(List.of(seam, hem))).isEmpty();
    }
}
