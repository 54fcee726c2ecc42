package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourName;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lines say of one fabric, and the colour it gets where none of them says one. */
class FabricLinesTest {

    private static final Colour RED = Colour.of(0xaa0000);
    private static final Colour BLUE = Colour.of(0x0000aa);

    private final FabricLines lines = new FabricLines("Kelp green");
    private final List<Problem> problems = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();

    @Test
    void a_fabric_of_which_nothing_is_said_looks_alike_both_ways_and_may_lie_any_way() {
        Fabric fabric = lines.fabric(Set.of());

        assertThat(fabric.name()).isEqualTo("Kelp green");
        assertThat(fabric.faces()).isEqualTo(Fabric.Faces.SAME);
        assertThat(fabric.nap()).isEqualTo(Fabric.Nap.ANY);
        assertThat(fabric.colour()).isEqualTo(NamedColours.pick("Kelp green", Set.of()));
        assertThat(lines.colour()).isEmpty();
    }

    @Test
    void one_word_holds_for_all_lines_and_saying_it_again_is_no_fault() {
        lines.colour(RED, 2, warnings);
        lines.faces(Fabric.Faces.RIGHT, 3, problems);
        lines.faces(Fabric.Faces.RIGHT, 4, problems);
        lines.nap(Fabric.Nap.LENGTHWISE, 5, problems);
        lines.nap(Fabric.Nap.LENGTHWISE, 6, problems);
        lines.colour(RED, 7, warnings);

        assertThat(lines.fabric(Set.of(RED)))
                .isEqualTo(new Fabric("Kelp green", RED, Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE));
        assertThat(problems).isEmpty();
        assertThat(warnings).isEmpty();
    }

    @Test
    void of_two_colours_the_first_is_used_and_the_maker_is_told() {
        lines.colour(RED, 2, warnings);
        lines.colour(BLUE, 5, warnings);

        assertThat(lines.colour()).contains(RED);
        assertThat(warnings)
                .extracting(Sentence::english)
                .containsExactly("line 5: \"Kelp green\" is #0000aa here and #aa0000 on line 2; the first one is used");
    }

    @Test
    void two_faces_or_naps_are_a_fault_of_the_later_line_that_names_the_earlier() {
        lines.faces(Fabric.Faces.RIGHT, 2, problems);
        lines.nap(Fabric.Nap.ANY, 3, problems);
        lines.faces(Fabric.Faces.SAME, 4, problems);
        lines.nap(Fabric.Nap.LENGTHWISE, 5, problems);

        assertThat(problems)
                .extracting(Problem::toString)
                .satisfiesExactly(
                        faces -> assertThat(faces)
                                .startsWith("line 4, faces: \"Kelp green\" is same here and right on line 2;"),
                        nap -> assertThat(nap)
                                .startsWith("line 5, nap: \"Kelp green\" is lengthwise here and any on line 3;"));
        assertThat(lines.fabric(Set.of()).faces()).isEqualTo(Fabric.Faces.RIGHT);
    }

    @Test
    void a_name_that_says_no_colour_gets_undyed_cloth_however_many_there_are() {
        assertThat(NamedColours.pick("shirt 501", Set.of())).isEqualTo(Colour.UNDYED);
        assertThat(NamedColours.pick("shirt 502", Set.of(Colour.UNDYED))).isEqualTo(Colour.UNDYED);
    }

    /** Nine shades are kept apart; the tenth fabric shares the plain colour of its name. */
    @ParameterizedTest
    @ValueSource(strings = {"green check", "navy", "wine red", "grey linen"})
    void fabrics_of_one_name_of_a_colour_differ_a_little_and_no_more_than_eight_points(String name) {
        Set<Colour> taken = new HashSet<>();
        Colour plain = NamedColours.pick(name, Set.of());
        assertThat(Colour.named(name)).contains(plain);
        for (int i = 0; i < 9; i++) {
            Colour colour = NamedColours.pick(name, taken);
            assertThat(taken.add(colour)).as("number %s is new", i).isTrue();
            assertThat(Math.abs(colour.lab().lightness() - plain.lab().lightness()))
                    .isLessThan(8.5);
        }
        assertThat(NamedColours.pick(name, taken)).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(strings = {"green", "red", "blue", "grey", "purple"})
    void each_shade_is_still_what_the_fabric_is_called(String word) {
        Set<Colour> taken = new HashSet<>();
        for (int i = 0; i < 9; i++) {
            Colour colour = NamedColours.pick(word + " print", taken);
            taken.add(colour);
            assertThat(ColourName.of(colour)).endsWith(word);
        }
    }
}
