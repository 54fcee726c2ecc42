package hearthcloth.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Reading and writing JSON, held to an independent library and to RFC 8259. */
class JsonTest {

    /** Seed 7. */
    @Test
    void what_is_written_is_read_the_same_by_another_library_and_by_us() throws IOException {
        Random random = new Random(7);
        ObjectMapper other = new ObjectMapper();
        for (int i = 0; i < 200; i++) {
            JsonValue value = any(random, 0);
            for (String text : List.of(JsonWriter.write(value), JsonWriter.tight(value))) {
                assertThat(JsonParser.read(text)).isEqualTo(value);
                assertThat(JsonParser.read(other.readTree(text).toString())).isEqualTo(value);
            }
        }
    }

    private static JsonValue any(Random random, int depth) {
        return switch (random.nextInt(depth > 3 ? 5 : 7)) {
            case 0 -> JsonValue.of(text(random));
            case 1 -> JsonValue.of(random.nextInt(2_000_000) - 1_000_000L);
            case 2 -> JsonValue.of(new BigDecimal(random.nextInt(1000) + ".25"));
            case 3 -> JsonValue.of(random.nextBoolean());
            case 4 -> new JsonValue.Nothing();
            case 5 -> {
                List<JsonValue> items = new ArrayList<>();
                for (int i = random.nextInt(4); i > 0; i--) {
                    items.add(any(random, depth + 1));
                }
                yield JsonValue.of(items);
            }
            default -> {
                JsonValue.Building object = JsonValue.object();
                for (int i = random.nextInt(4); i > 0; i--) {
                    object.with(i + text(random), any(random, depth + 1));
                }
                yield object.done();
            }
        };
    }

    private static String text(Random random) {
        String[] letters = {"a", "\"", "\\", "\n", "é", "😀", "</script>", "\u0001", " ", "/"};
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            text.append(letters[random.nextInt(letters.length)]);
        }
        return text.toString();
    }

    @Test
    void a_text_that_is_no_json_is_refused_with_its_line() {
        for (String wrong : List.of(
                "",
                "{",
                "{\"a\":1,}",
                "[1 2]",
                "{\"a\" 1}",
                "nul",
                "01",
                "1.",
                "\"\\x\"",
                "\"a\nb\"",
                "{} {}",
                "'a'",
                "{a:1}",
                "\"\\u12\"",
                "[1,]",
                "// no")) {
            assertThatThrownBy(() -> JsonParser.read(wrong)).isInstanceOf(JsonException.class);
        }
        JsonException twice =
                catchThrowableOfType(JsonException.class, () -> JsonParser.read("{\n\"a\": 1,\n\"a\": 2}"));
        assertThat(twice.line()).isEqualTo(3);
        assertThat(twice.slip()).isEqualTo(JsonException.Slip.TWICE);
        assertThat(twice.text()).isEqualTo("a");
        assertThat(catchThrowableOfType(JsonException.class, () -> JsonParser.read("[".repeat(100_000)))
                        .slip())
                .isEqualTo(JsonException.Slip.DEEP);
        assertThatThrownBy(() -> JsonParser.read("1".repeat(100_000))).isInstanceOf(JsonException.class);
    }
}
