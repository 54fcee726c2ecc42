package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SizeCommandTest {

    private static String said(String... words) {
        Typed typed = Typed.words(words).plain();
        assertThat(typed.code()).isZero();
        assertThat(typed.err()).isEmpty();
        return typed.out();
    }

    @Test
    void a_gift_gives_the_cloth_of_each_tie_and_the_published_rule() {
        String said = said("size", "--gift", "box 30 x 20 x 8 cm");
        // design: S >= √2 (max(l, w) + h + t) = √2 (30 + 8 + 12) cm = 70.71 cm, up to the next millimetre
        assertThat(said).containsPattern("four-corner tie \\(yotsu-musubi\\) +70\\.8 cm +with 12 cm");
        // the rule of three: 3 · 30 / √2 = 63.64 cm
        assertThat(said).contains("errand wrap", "The usual rule of thumb", "63.7 cm", "7.1 cm too small");
    }

    @Test
    void one_tie_only_and_another_unit() {
        String said = said("size", "--gift", "box 30 x 20 x 8 cm", "--tie", "errand wrap", "--unit", "in");
        assertThat(said).contains("errand wrap", " in").doesNotContain("four-corner tie", " cm");
    }

    @Test
    void bare_numbers_are_in_the_unit_asked_for() {
        assertThat(said("size", "--gift", "box 30 x 20 x 8", "--unit", "cm"))
                .isEqualTo(said("size", "--gift", "box 30 x 20 x 8 cm"));
    }

    @Test
    void a_cloth_gives_what_it_ties_round_and_the_two_agree() {
        String said = said("size", "--cloth", "70.8 cm", "--tie", "four-corner tie");
        assertThat(said).contains("a cube", "70.8 cm square");
        // a cube of side a needs S = √2 (2a + 12), so a = (70.8/√2 - 12)/2 = 19.03 cm
        assertThat(said).contains("a box 19 × 19 × 19 cm");
        assertThat(said("size", "--gift", "box 19 x 19 x 19 cm", "--tie", "four-corner tie"))
                .contains("70.8 cm");
    }

    @Test
    void steps_are_told_with_the_knot_and_what_to_mind() {
        String said = said("size", "--gift", "box 30 x 20 x 8 cm", "--tie", "errand wrap", "--steps");
        assertThat(said).contains("How to tie the errand wrap", "  1  Lay the cloth", "reef knot", "granny");
        assertThat(said).contains("do not reach", "children").doesNotContain("two-knot wrap is tied");
        assertThat(said("size", "--gift", "box 30 x 20 x 3 cm", "--tie", "flat wrap", "--steps"))
                .doesNotContain("granny");
    }

    @Test
    void help_teaches_with_examples() {
        assertThat(said("size", "--help")).contains("--cloth \"38 1/2 in\"", "--gift \"box 30 x 20 x 8 cm\"");
        assertThat(said("plan", "--help"))
                .contains("--hearth", "fabric,width,length", "finished", "It ends with:")
                .doesNotContain("@|");
        assertThat(said("help", "plan")).contains("--bars");
        assertThat(said("--help")).contains("plan", "size");
        assertThat(said("--help")).contains("examples/scraps.csv");
    }
}
