package hearthcloth.sew.thread;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Step;
import hearthcloth.colour.Colour;
import hearthcloth.plan.colour.Greys;
import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** {@link SeamThread}: what a seam crosses decides, not what else there is in the cloth. */
class SeamThreadTest {

    private static final List<Colour> THREADS =
            List.of(Greys.WHITE.colour(), Greys.GREY.colour(), Greys.BLACK.colour(), Greys.RED.colour());

    /** A white hearth, a black first round, a red second one. */
    private static final Cloth CLOTH =
            Greys.cloth(100, 30, 2, Greys.WHITE, slot -> slot.place().round() == 1 ? Greys.BLACK : Greys.RED);

    private static SeamThread<Colour> at(int number, List<Fabric> fabrics) {
        Step step = CLOTH.steps().get(number - 1);
        return SeamThread.of(CLOTH, step, fabrics, THREADS, Function.identity());
    }

    @Test
    void the_thread_that_shows_least_lies_between_the_fabrics_the_seam_crosses() {
        SeamThread<Colour> hearth = at(1, Greys.ALL);
        assertThat(hearth.step().number()).isEqualTo(1);
        assertThat(hearth.least()).isEqualTo(Greys.GREY.colour());
        SeamThread<Colour> outer = at(8, Greys.ALL);
        assertThat(outer.most()).isEqualTo(Greys.WHITE.colour());
    }

    private static Fabric two(Fabric right, Fabric wrong) {
        return new Fabric(
                right.name(), right.colour(), Fabric.Faces.RIGHT, Fabric.Nap.ANY, Optional.of(wrong.colour()));
    }

    @Test
    void the_wrong_side_counts_too() {
        List<Fabric> fabrics = List.of(two(Greys.WHITE, Greys.BLACK), two(Greys.BLACK, Greys.WHITE), Greys.RED);
        assertThat(at(1, fabrics).least()).isEqualTo(Greys.GREY.colour());
        assertThat(at(1, fabrics).most()).isEqualTo(Greys.RED.colour());
    }
}
