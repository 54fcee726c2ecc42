package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.work.Project.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a change of a cloth leaves as it was: {@link Project}, {@link Keepsake}, {@link Thing}, {@link Turn}. */
class ProjectTest {

    private static final Keepsake.Measured REAL =
            new Keepsake.Measured(Length.inches(24), Length.inches(25), List.of(Length.inches(34)));

    @Test
    void a_life_changed_in_one_thing_is_the_same_in_all_others() {
        Purpose box = new Purpose("box 30 x 20 x 8 cm", "", "");
        Project.Life begun = Project.Life.begun(box);
        Project.Life life = begun.noted("in May", "a box", "Ada")
                .noted(Optional.of(REAL), "mine")
                .usedAgain(new Keepsake.Use("", "a book", "Bo"))
                .onPaper("a4");
        assertThat(life.at(Stage.SEWN).stage()).isEqualTo(Stage.SEWN);
        assertThat(life.at(Stage.SEWN).at(Stage.DESIGNED)).isEqualTo(life);
        assertThat(life.meantFor(Purpose.NOTHING).meantFor(box)).isEqualTo(life);
        assertThat(life.onPaper("letter").onPaper("a4")).isEqualTo(life);
        assertThat(life.uses()).isEqualTo(1);
        assertThat(life.kept().measured()).contains(REAL);
        assertThat(begun.kept()).isEqualTo(Keepsake.NOTHING);
        assertThat(begun.noted(Optional.empty(), "").keepsake())
                .as("nothing was written")
                .isNull();
    }

    @Test
    void a_bench_changed_in_one_thing_is_the_same_in_all_others() {
        Project cloth = Worked.ticked("2:1");
        Project.Bench bench = cloth.bench().withLocked(Set.of("1A"));
        assertThat(bench.ticked()).containsExactly("2:1");
        assertThat(bench.withTicked(Set.of()).locked()).containsExactly("1A");
        assertThat(cloth.with(bench).design()).isEqualTo(cloth.design());
        assertThat(cloth.with(bench).with(cloth.bench())).isEqualTo(cloth);
        assertThat(cloth.onPaper("a4").life().paper()).isEqualTo("a4");
        assertThat(cloth.isFree()).isFalse();
    }

    @Test
    void cuts_are_to_be_made_before_all_is_cut_and_where_one_is_asked_for_later() {
        assertThat(Stage.DESIGNED.isToCut()).isTrue();
        assertThat(Stage.RECUT.isToCut()).isTrue();
        assertThat(Stage.CUT.isToCut()).isFalse();
        assertThat(Stage.SEWN.isToCut()).isFalse();
    }

    @Test
    void what_is_longer_than_she_could_have_written_is_no_keepsake() {
        String longest = "x".repeat(Keepsake.LONGEST_NOTE);
        assertThat(new Keepsake(REAL, longest, List.of(new Keepsake.Use(longest, longest, longest))).isReadable())
                .isTrue();
        assertThat(new Keepsake(REAL, longest + "x", List.of()).isReadable()).isFalse();
        assertThat(new Keepsake(null, "", List.of(new Keepsake.Use("", longest + "x", ""))).isReadable())
                .isFalse();
        Length metre = Length.cm(100);
        assertThat(new Keepsake(new Keepsake.Measured(metre.times(101), metre, List.of()), "", List.of()).isReadable())
                .isFalse();
        assertThat(new Keepsake(new Keepsake.Measured(metre, Length.ZERO, List.of()), "", List.of()).isReadable())
                .isFalse();
        assertThat(new Keepsake(new Keepsake.Measured(metre, metre, List.of(metre, metre, metre)), "", List.of())
                        .isReadable())
                .isFalse();
    }

    @Test
    void a_thing_is_read_as_it_was_written() {
        for (Thing thing : List.of(
                Thing.STASH,
                Thing.SHELF,
                Thing.ANY_PIECE,
                Thing.piece("30"),
                Thing.cloth("c:1"),
                Thing.photograph("p"))) {
            assertThat(Thing.read(thing.word())).isEqualTo(thing);
        }
        assertThat(Thing.piece("30").word()).isEqualTo("piece:30");
        assertThatThrownBy(() -> Thing.read("kelp:1")).isInstanceOf(IllegalArgumentException.class);
    }

    private static Change change(long number) {
        return new Change(number, "change " + number, Set.of(Thing.cloth("c")), 0);
    }

    @Test
    void what_goes_with_an_undo_is_named_three_times_and_then_counted() {
        Change meant = change(1);
        assertThat(new Turn(meant, List.of(meant)).label()).isEqualTo("change 1");
        assertThat(new Turn(meant, List.of(meant, change(2))).label()).isEqualTo("change 1 (change 2)");
        assertThat(new Turn(meant, List.of(meant, change(2), change(3), change(4))).label())
                .isEqualTo("change 1 (change 2, change 3, change 4)");
        assertThat(new Turn(meant, List.of(meant, change(2), change(3), change(4), change(5), change(6))).label())
                .isEqualTo("change 1 (change 2, change 3, change 4, +2)");
    }
}
