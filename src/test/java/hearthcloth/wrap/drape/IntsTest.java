package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link Ints} holds what a list of the language holds. */
class IntsTest {

    /** Seeds 1 to 20; far more numbers than there is room for at first. */
    @Test
    void numbers_come_back_in_the_order_they_were_added() {
        for (int seed = 1; seed <= 20; seed++) {
            Random chance = new Random(seed);
            Ints row = new Ints();
            List<Integer> expected = new ArrayList<>();
            for (int i = 0; i < 900; i++) {
                int each = chance.nextInt();
                if (i % 3 == 0) {
                    row.add(each, 1, 2, 3);
                    expected.addAll(List.of(each, 1, 2, 3));
                } else {
                    row.add(each);
                    expected.add(each);
                }
            }
            assertThat(row.count()).isEqualTo(expected.size());
            assertThat(row.all()).containsExactly(expected.toArray(new Integer[0]));
            assertThat(row.held()).startsWith(row.all());
        }
    }

    @Test
    void one_row_is_added_after_another_and_a_cleared_one_is_empty() {
        Ints first = new Ints();
        first.add(1, 2, 3);
        Ints second = new Ints();
        for (int i = 0; i < 3000; i++) {
            second.add(i);
        }
        first.addAll(second);
        assertThat(first.count()).isEqualTo(3003);
        assertThat(first.all()).startsWith(1, 2, 3, 0, 1).endsWith(2998, 2999);
        first.clear();
        assertThat(first.all()).isEmpty();
        first.add(8);
        assertThat(first.all()).containsExactly(8);
        assertThat(second.count()).isEqualTo(3000);
    }
}
