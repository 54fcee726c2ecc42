package hearthcloth.guideline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Scheme;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link ColourRule}: ways of colour and what lies in the middle. */
class ColourRuleTest {

    /** Seed 2: two hundred choices of ways, each in an order of its own. */
    @Test
    void ways_are_read_back_in_the_order_of_liking() {
        Random chance = new Random(2);
        for (int i = 0; i < 200; i++) {
            List<Scheme.Kind> ways = new ArrayList<>(ColourRule.WAYS);
            Collections.shuffle(ways, chance);
            ColourRule rule = new ColourRule(ways.subList(0, chance.nextInt(ways.size() + 1)), ColourRule.Middle.ANY);
            assertThat(ColourRule.parse(rule.written())).as(rule.written()).isEqualTo(rule.ways());
        }
    }

    @Test
    void a_way_said_twice_counts_once_and_commas_serve_too() {
        assertThat(ColourRule.parse("Frames, two  halves or frames"))
                .containsExactly(Scheme.Kind.FRAMES, Scheme.Kind.HALVES);
        assertThat(ColourRule.parse(" Open")).isEmpty();
    }

    @Test
    void what_only_says_how_a_cloth_came_about_is_no_way() {
        for (Scheme.Kind kind : Scheme.Kind.values()) {
            if (!ColourRule.WAYS.contains(kind)) {
                assertThatThrownBy(() -> ColourRule.parse(kind.title()))
                        .isInstanceOf(MeasureException.class)
                        .hasMessageContaining("is no way of colour; write open, two halves");
            }
        }
        assertThatThrownBy(() -> ColourRule.parse("frames or ")).isInstanceOf(MeasureException.class);
    }

    @Test
    void the_middle_is_read_by_its_word() {
        for (ColourRule.Middle middle : ColourRule.Middle.values()) {
            assertThat(ColourRule.Middle.parse(" " + middle.word() + " ")).isEqualTo(middle);
        }
        assertThat(ColourRule.Middle.parse("open")).isEqualTo(ColourRule.Middle.ANY);
        assertThatThrownBy(() -> ColourRule.Middle.parse("brightest"))
                .hasMessage("\"brightest\" will not do; write any, favourite, lightest or darkest");
    }

    @Test
    void a_reader_hears_what_each_way_means() {
        ColourRule rule = new ColourRule(List.of(Scheme.Kind.FIELD, Scheme.Kind.FRAMES), ColourRule.Middle.ANY);
        assertThat(rule.said().english())
                .isEqualTo("One field (the hearth sits alone in one fabric) or Frames (two fabrics take turns, round by"
                        + " round)");
        assertThat(new ColourRule(List.of(), ColourRule.Middle.ANY).said().english())
                .isEqualTo("as your heap has them");
    }
}
