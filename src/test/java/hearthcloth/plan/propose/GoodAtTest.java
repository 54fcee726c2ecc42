package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import org.junit.jupiter.api.Test;

class GoodAtTest {

    private static final Argument IDEA = Argument.capital(PlanningSentences.schemeIdea("FRAMES"));

    private static String reason(Sentence... points) {
        return GoodAt.reason(PlanningSentences.good(IDEA, Argument.row(Joined.COMMAS, List.of(points))))
                .english();
    }

    @Test
    void the_reason_is_what_sets_it_apart() {
        assertThat(reason(PlanningSentences.pointNoJoin(), PlanningSentences.pointLeavesMost()))
                .isEqualTo("Leaves most of the stash whole.");
    }

    @Test
    void where_only_the_figures_tell_something_it_is_the_plan_of_colour() {
        assertThat(reason(PlanningSentences.pointNoJoin())).isEqualTo("Two fabrics take turns, round by round.");
    }
}
