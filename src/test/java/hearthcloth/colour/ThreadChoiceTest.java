package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class ThreadChoiceTest {

    private static final Map<String, Colour> THREADS = Map.of(
            "black", Colour.BLACK, "white", Colour.WHITE, "mid grey", Colour.parse("#777"), "red", Colour.parse("red"));

    private static final List<String> NAMES = List.of("black", "white", "mid grey", "red");

    private static Colour thread(String name) {
        return THREADS.getOrDefault(name, Colour.BLACK);
    }

    @Test
    void a_middle_grey_hides_on_light_and_dark_at_once() {
        List<Colour> fabrics = List.of(Colour.parse("#333"), Colour.parse("#ccc"));
        assertThat(ThreadChoice.showingLeast(NAMES, ThreadChoiceTest::thread, fabrics)
                        .thread())
                .isEqualTo("mid grey");
        assertThat(ThreadChoice.showingMost(NAMES, ThreadChoiceTest::thread, fabrics)
                        .thread())
                .isEqualTo("red");
    }

    @Test
    void says_how_it_shows_where_it_is_weakest() {
        Colour dark = Colour.parse("#333");
        Colour light = Colour.parse("#ccc");
        ThreadChoice<Colour> hidden =
                ThreadChoice.showingLeast(List.of(Colour.BLACK), Function.identity(), List.of(dark, light));
        assertThat(hidden.difference()).isEqualTo(Colour.BLACK.lab().difference(light.lab()));
        ThreadChoice<Colour> shown =
                ThreadChoice.showingMost(List.of(Colour.BLACK), Function.identity(), List.of(dark, light));
        assertThat(shown.difference()).isEqualTo(Colour.BLACK.lab().difference(dark.lab()));
    }

    @Test
    void no_other_thread_does_better() {
        Random random = new Random(3);
        for (int round = 0; round < 100; round++) {
            List<Colour> threads =
                    random.ints(8, 0, 1 << 24).mapToObj(Colour::of).toList();
            List<Colour> fabrics =
                    random.ints(5, 0, 1 << 24).mapToObj(Colour::of).toList();
            ThreadChoice<Colour> least = ThreadChoice.showingLeast(threads, Function.identity(), fabrics);
            ThreadChoice<Colour> most = ThreadChoice.showingMost(threads, Function.identity(), fabrics);
            assertThat(threads).allSatisfy(thread -> {
                assertThat(fabrics)
                        .anySatisfy(f -> assertThat(difference(thread, f)).isGreaterThanOrEqualTo(least.difference()));
                assertThat(fabrics)
                        .anySatisfy(f -> assertThat(difference(thread, f)).isLessThanOrEqualTo(most.difference()));
            });
            assertThat(fabrics).allSatisfy(f -> {
                assertThat(difference(least.thread(), f)).isLessThanOrEqualTo(least.difference());
                assertThat(difference(most.thread(), f)).isGreaterThanOrEqualTo(most.difference());
            });
        }
    }

    private static double difference(Colour one, Colour two) {
        return one.lab().difference(two.lab());
    }

    @Test
    void the_earlier_of_equals_is_taken() {
        Function<String, Colour> alike = name -> Colour.BLACK;
        List<Colour> fabrics = List.of(Colour.WHITE);
        assertThat(ThreadChoice.showingLeast(NAMES, alike, fabrics).thread()).isEqualTo("black");
        ThreadChoice<String> most = ThreadChoice.showingMost(NAMES, alike, fabrics);
        assertThat(most.thread()).isEqualTo("black");
        assertThat(most.difference()).isCloseTo(100, within(1e-9)); // black to white, by the formula
    }

    @Test
    void needs_a_thread_and_a_fabric() {
        assertThatThrownBy(() -> ThreadChoice.showingLeast(NAMES, ThreadChoiceTest::thread, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> ThreadChoice.showingMost(List.<Colour>of(), Function.identity(), List.of(Colour.WHITE)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
