package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.Greys;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Fabrics for wished colours. */
class NearestFabricsTest {

    private static Piece piece(int row, Fabric fabric, long cm) {
        return new Piece(String.valueOf(row), fabric, Size.square(Length.cm(cm)), Piece.Washed.UNKNOWN, row);
    }

    @Test
    void each_colour_has_the_nearest_fabric_that_is_left_or_none() {
        Stash stash = new Stash(List.of(
                piece(2, Greys.DARK, 20),
                piece(3, Greys.NEAR, 40),
                piece(4, Greys.RED, 30),
                piece(5, Greys.WHITE, 10)));
        Colour blue = Colour.of(0x1030c0);
        List<NearestFabrics.Match> found =
                NearestFabrics.of(List.of(Greys.GREY.colour(), Greys.GREY.colour(), blue, Greys.RED.colour()), stash);
        assertThat(found).extracting(match -> match.fabric().name()).containsExactly("Near", "Dark", "Red");
        assertThat(found.get(2).apart()).isZero();
        assertThat(NearestFabrics.names(found, stash)).containsExactly("Near", "Red", "Dark");
    }
}
