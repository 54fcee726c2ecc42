package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import org.junit.jupiter.api.Test;

/** The text form of a tree; that it reads back what it wrote is a law, see {@link ClothLawsTest}. */
class NotationTest {

    @Test
    void a_tree_is_written_with_arrows_from_the_half_that_wraps() {
        String text = "((hearth \"oat\" 342.9 x 342.9 same <| 1A right \"kelp\" 101.6 x 342.9 right) </"
                + " (1B.1 bottom \"a \\\"b\\\"\" 200 x 50 wrong |> 1B.2 bottom \"oat\" 244.5 x 50 same))";

        assertThat(Notation.print(Notation.parse(text))).isEqualTo(text);
    }

    /** A stash file may hold anything for a name. */
    @Test
    void a_name_of_any_length_and_any_letters_is_read_back() {
        String name = "\"\\ \n(|>) ".repeat(20_000);
        Patch patch = new Patch(new Place.Hearth(), name, Size.square(Length.mm(50)), Showing.SAME);

        assertThat(Notation.parse(Notation.print(patch))).isEqualTo(patch);
    }

    @Test
    void what_cannot_be_read_is_named_with_its_place() {
        assertThatThrownBy(() -> Notation.parse("(hearth \"oat\" 50 x 50 same <| nonsense)"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at letter 31")
                .hasMessageContaining("nonsense");
        assertThatThrownBy(() -> Notation.parse("(patch1 \"a\" 50 x 50 same <| patch2 \"a\" 50 x 60 same)"))
                .isInstanceOf(EdgeMismatchException.class)
                .hasMessageContaining("50 mm x 50 mm / 50 mm x 60 mm");
    }
}
