package hearthcloth.idea;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Any bytes come back from their text, which is five signs for four bytes and never ends a script. */
class DenseTextTest {

    private static final long SEED = 85;

    /** As the page reads it, written anew. */
    private static byte[] read(String text) {
        byte[] bytes = new byte[text.length() / 5 * 4 + Math.max(0, text.length() % 5 - 1)];
        for (int at = 0, to = 0; at < text.length(); at += 5) {
            long group = 0;
            for (int i = 0; i < 5; i++) {
                int code = at + i < text.length() ? text.charAt(at + i) : '~';
                group = group * 85 + code - 40 - (code > '<' ? 1 : 0) - (code > 92 ? 1 : 0);
            }
            for (int shift = 24; shift >= 0 && to < bytes.length; shift -= 8) {
                bytes[to++] = (byte) (group >> shift);
            }
        }
        return bytes;
    }

    @Test
    void bytes_come_back() {
        Random random = new Random(SEED);
        for (int length = 0; length < 300; length++) {
            byte[] bytes = new byte[length];
            random.nextBytes(bytes);
            if (length % 7 == 0) {
                Arrays.fill(bytes, (byte) (length % 2 == 0 ? 0 : -1));
            }
            String text = DenseText.of(bytes);
            assertThat(text).doesNotContain("<", "&", "\\", "\"").hasSizeLessThanOrEqualTo(length * 5 / 4 + 2);
            assertThat(read(text)).isEqualTo(bytes);
        }
    }
}
