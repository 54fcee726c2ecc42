package hearthcloth.guideline.file;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.json.JsonParser;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link FieldReader}: every fault is told once, by the field's way from the top, and nothing stops the reading. */
class FieldReaderTest {

    private final List<Sentence> said = new ArrayList<>();

    private List<String> faults() {
        return said.stream().map(Sentence::english).toList();
    }

    private FieldReader fields(String json) {
        return FieldReader.of(JsonParser.read(json), said);
    }

    @Test
    void what_is_no_object_is_told_and_read_as_one_without_fields() {
        FieldReader fields = fields("[1]");
        assertThat(fields.has("size")).isFalse();
        assertThat(fields.text("size")).isEmpty();
        assertThat(faults()).containsExactly("The file holds no object; its first sign is {.");
    }

    @Test
    void words_and_numbers_are_text_and_null_is_nothing() {
        FieldReader fields = fields("{\"a\":\"two\",\"b\":2.50,\"c\":null,\"d\":[],\"e\":true}");
        assertThat(fields.text("a")).contains("two");
        assertThat(fields.text("b")).contains("2.50");
        assertThat(fields.text("c")).isEmpty();
        assertThat(faults()).isEmpty();
        assertThat(fields.text("d")).isEmpty();
        assertThat(fields.text("e")).isEmpty();
        assertThat(faults())
                .containsExactly("\"d\": this is to be words in quotes.", "\"e\": this is to be words in quotes.");
    }

    @Test
    void a_fault_deep_inside_is_named_by_its_way() {
        FieldReader file = fields("{\"seam\":{\"wide\":\"x\"},\"cloths\":[{\"n\":1},7,{\"n\":\"y\"}],\"hem\":3}");
        file.inside("seam").read("wide", 0, Integer::valueOf);
        List<FieldReader> each = file.each("cloths");
        assertThat(each).hasSize(2);
        each.forEach(one -> one.whole("n", 0, 1, 9));
        assertThat(file.inside("hem").has("first")).isFalse();
        assertThat(faults()).hasSize(4);
        assertThat(faults().get(0)).startsWith("\"seam.wide\": For input string");
        assertThat(faults().get(1)).isEqualTo("\"cloths[1]\": this is to be an object with fields, in { }.");
        assertThat(faults().get(2)).isEqualTo("\"cloths[2].n\": this will not do; write a whole number from 1 to 9.");
        assertThat(faults().get(3)).isEqualTo("\"hem\": this is to be an object with fields, in { }.");
    }

    @Test
    void whole_numbers_are_held_to_their_ends() {
        FieldReader fields = fields("{\"a\":1,\"b\":9.0,\"c\":10,\"d\":2.5}");
        assertThat(fields.whole("a", 7, 1, 9)).isEqualTo(1);
        assertThat(fields.whole("b", 7, 1, 9)).isEqualTo(9);
        assertThat(faults()).isEmpty();
        for (String name : List.of("c", "d", "f")) {
            assertThat(fields.whole(name, 7, 1, 9)).isEqualTo(7);
        }
        assertThat(faults()).hasSize(3);
        assertThat(faults().get(2)).isEqualTo("\"f\": it is missing; write a whole number from 1 to 9.");
    }

    @Test
    void what_must_be_there_is_asked_for() {
        FieldReader fields = fields("{\"a\":\"3\"}");
        assertThat(fields.need("a", 0, Integer::valueOf)).isEqualTo(3);
        assertThat(fields.need("b", 5, Integer::valueOf)).isEqualTo(5);
        assertThat(fields.each("c")).isEmpty();
        assertThat(faults()).containsExactly("\"b\": it is missing.", "\"c\": it is missing.");
    }

    @Test
    void a_field_that_nobody_reads_is_not_lost_silently() {
        FieldReader fields = fields("{\"size\":\"3\",\"sise\":\"4\",\"later\":1}");
        fields.text("size");
        fields.noOthersBut("later");
        assertThat(faults()).containsExactly("\"sise\": this field is not known here; there are size, later.");
    }

    @Test
    void a_fault_is_one_line_of_no_more_than_three_hundred_signs() {
        fields("{\"a\":\"x\"}").read("a", 0, words -> {
            throw new IllegalArgumentException("one\n\ttwo" + "x".repeat(400));
        });
        assertThat(faults().get(0))
                .startsWith("\"a\": one twoxx")
                .endsWith("x….")
                .hasSize("\"a\": ".length() + 302);
    }
}
