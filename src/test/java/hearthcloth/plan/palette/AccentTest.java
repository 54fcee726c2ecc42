package hearthcloth.plan.palette;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.Greys;
import hearthcloth.stash.Fabric;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where one bright scrap goes. */
class AccentTest {

    private static Layout layout(long hearthMm, long barMm) {
        return new Layout(Size.square(Length.mm(hearthMm)), Layout.courses(Order.ROUND, 2, List.of(Length.mm(barMm))));
    }

    @Test
    void the_brightest_fabric_is_in_one_to_three_bars_of_three_to_eight_hundredths_of_the_cloth() {
        Layout layout = layout(200, 20);
        List<List<Fabric>> bars =
                Accent.of(layout, List.of(Greys.GREY, Greys.RED, Greys.DARK)).orElseThrow();
        double share = 0;
        int places = 0;
        for (int i = 0; i < bars.size(); i++) {
            boolean bright = bars.get(i).equals(List.of(Greys.RED));
            share += bright ? layout.slots().get(i).size().areaMm2() : 0;
            places += bright ? 1 : 0;
            assertThat(bright || bars.get(i).equals(List.of(Greys.GREY, Greys.DARK)))
                    .isTrue();
        }
        assertThat(share / layout.finished().areaMm2()).isBetween(0.03, 0.08);
        assertThat(places).isBetween(1, 3);
    }

    @Test
    void greys_have_no_bright_scrap_and_bars_too_narrow_no_place_for_one() {
        assertThat(Accent.of(layout(200, 20), List.of(Greys.GREY, Greys.PALE))).isEmpty();
        assertThat(Accent.of(layout(200, 1), List.of(Greys.GREY, Greys.RED))).isEmpty();
        assertThat(Accent.of(layout(200, 20), List.of(Greys.RED))).isEmpty();
        assertThat(Accent.of(layout(200, 20), List.of())).isEmpty();
    }
}
