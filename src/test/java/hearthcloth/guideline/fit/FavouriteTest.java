package hearthcloth.guideline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.guideline.ColourRule;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link Favourite}: a heap whose lightest and darkest fabrics are too small to lie in the middle. */
class FavouriteTest {

    private static final Fabric WHITE = fabric("White", 0xffffff);
    private static final Fabric CREAM = fabric("Cream", 0xeee0c0);
    private static final Fabric GREY = fabric("Grey", 0x707070);
    private static final Fabric NAVY = fabric("Navy", 0x101840);
    private static final Fabric BLACK = fabric("Black", 0x000000);

    /** The largest square is 40 cm, so what is large enough is 20 cm and more. */
    private static final Stash HEAP = new Stash(List.of(
            piece(2, WHITE, 199, 900),
            piece(3, CREAM, 900, 200),
            piece(4, GREY, 403, 400),
            piece(5, NAVY, 250, 260),
            piece(6, BLACK, 100, 100),
            piece(7, BLACK, 30, 800)));

    private static Fabric fabric(String name, int rgb) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    private static Piece piece(int row, Fabric fabric, long widthMm, long heightMm) {
        Size size = new Size(Length.mm(widthMm), Length.mm(heightMm));
        return new Piece(String.valueOf(row), fabric, size, Piece.Washed.UNKNOWN, row);
    }

    private static Optional<Fabric> fabric(ColourRule.Middle rule, Optional<String> named) {
        return new Favourite(HEAP, rule).fabric(named);
    }

    @Test
    void the_lightest_and_the_darkest_are_those_that_are_large_enough() {
        assertThat(fabric(ColourRule.Middle.LIGHTEST, Optional.empty())).contains(CREAM);
        assertThat(fabric(ColourRule.Middle.DARKEST, Optional.of("Grey"))).contains(NAVY);
    }

    @Test
    void the_favourite_is_hers_and_where_she_named_none_or_has_it_no_more_it_is_open() {
        assertThat(fabric(ColourRule.Middle.FAVOURITE, Optional.of("Black"))).contains(BLACK);
        assertThat(fabric(ColourRule.Middle.FAVOURITE, Optional.of("Rust"))).isEmpty();
        assertThat(fabric(ColourRule.Middle.FAVOURITE, Optional.empty())).isEmpty();
        assertThat(fabric(ColourRule.Middle.ANY, Optional.of("Black"))).isEmpty();
    }

    @Test
    void it_comes_first_and_the_others_follow_once_each() {
        assertThat(new Favourite(HEAP, ColourRule.Middle.ANY).first(NAVY))
                .startsWith("Navy")
                .containsExactlyInAnyOrder("White", "Cream", "Grey", "Navy", "Black");
    }

    @Test
    void the_largest_square_is_measured_down_to_the_rulers_marks() {
        Favourite favourite = new Favourite(HEAP, ColourRule.Middle.ANY);
        assertThat(favourite.largestSquare(Optional.empty(), Ruler.MILLIMETRES)).isEqualTo(Length.cm(40));
        assertThat(favourite.largestSquare(Optional.of(BLACK), Ruler.MILLIMETRES))
                .isEqualTo(Length.cm(10));
        // 199 mm are 7.83 in
        assertThat(favourite.largestSquare(Optional.of(WHITE), Ruler.QUARTERS)).isEqualTo(Length.inches(31, 4));
    }
}
