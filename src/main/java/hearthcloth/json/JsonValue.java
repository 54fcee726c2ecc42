package hearthcloth.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of JSON. Immutable; the members of an object keep their order. */
public sealed interface JsonValue {

    /** An object; names in the order written. */
    record Members(Map<String, JsonValue> all) implements JsonValue {
        public Members {
            all = Collections.unmodifiableMap(new LinkedHashMap<>(all));
        }
    }

    /** An array. */
    record Items(List<JsonValue> all) implements JsonValue {
        public Items {
            all = List.copyOf(all);
        }
    }

    /** A string. */
    record Text(String text) implements JsonValue {}

    /** A number, exactly as written. */
    record Figure(BigDecimal number) implements JsonValue {}

    /** true or false. */
    record Truth(boolean isTrue) implements JsonValue {}

    /** null. */
    record Nothing() implements JsonValue {}

    static JsonValue of(String text) {
        return new Text(text);
    }

    static JsonValue of(long number) {
        return new Figure(BigDecimal.valueOf(number));
    }

    static JsonValue of(BigDecimal number) {
        return new Figure(number);
    }

    static JsonValue of(boolean isTrue) {
        return new Truth(isTrue);
    }

    static JsonValue of(List<? extends JsonValue> items) {
        return new Items(new ArrayList<>(items));
    }

    /** An object that is written member by member. */
    final class Building {

        private final Map<String, JsonValue> members = new LinkedHashMap<>();

        public Building with(String name, JsonValue value) {
            members.put(name, value);
            return this;
        }

        public Building with(String name, String text) {
            return with(name, of(text));
        }

        public Building with(String name, long number) {
            return with(name, of(number));
        }

        public JsonValue done() {
            return new Members(members);
        }
    }

    /** Begins an object. */
    static Building object() {
        return new Building();
    }
}
