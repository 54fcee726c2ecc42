package hearthcloth.guideline.file;

import hearthcloth.json.JsonValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads the fields of one object and collects what is wrong with any, each named by its way from the top. */
final class FieldReader {

    private final String way;
    private final Map<String, JsonValue> members;
    private final List<String> faults;
    private final Set<String> known = new LinkedHashSet<>();

    private FieldReader(String way, Map<String, JsonValue> members, List<String> faults) {
        this.way = way;
        this.members = members;
        this.faults = faults;
    }

    static FieldReader of(JsonValue value, List<String> faults) {
        if (value instanceof JsonValue.Members members) {
            return new FieldReader("", members.all(), faults);
        }
        faults.add("The file holds no object; its first sign is {.");
        return new FieldReader("", Map.of(), faults);
    }

    private void fault(String name, String sentence) {
        String line = sentence.replaceAll("\\p{Cntrl}+", " ");
        faults.add("\"" + way + name + "\": " + (line.length() > 300 ? line.substring(0, 300) + "…" : line) + ".");
    }

    /** The object in a field; one without fields where it is missing. */
    FieldReader inside(String name) {
        known.add(name);
        JsonValue value = members.get(name);
        if (value instanceof JsonValue.Members inside) {
            return new FieldReader(way + name + ".", inside.all(), faults);
        }
        if (value != null) {
            fault(name, "this is to be an object with fields, in { }");
        }
        return new FieldReader(way + name + ".", Map.of(), faults);
    }

    boolean has(String name) {
        return members.containsKey(name);
    }

    /** The objects in a list; none where it is missing. */
    List<FieldReader> each(String name) {
        known.add(name);
        JsonValue value = members.get(name);
        List<FieldReader> each = new ArrayList<>();
        if (value instanceof JsonValue.Items items) {
            for (int i = 0; i < items.all().size(); i++) {
                String at = way + name + "[" + i + "].";
                if (items.all().get(i) instanceof JsonValue.Members inside) {
                    each.add(new FieldReader(at, inside.all(), faults));
                } else {
                    fault(name + "[" + i + "]", "this is to be an object with fields, in { }");
                }
            }
        } else {
            fault(name, value == null ? "it is missing" : "this is to be a list, in [ ]");
        }
        return each;
    }

    Optional<String> text(String name) {
        known.add(name);
        JsonValue value = members.get(name);
        if (value instanceof JsonValue.Text text) {
            return Optional.of(text.text());
        }
        if (value instanceof JsonValue.Figure figure) {
            return Optional.of(figure.number().toPlainString());
        }
        if (value != null && !(value instanceof JsonValue.Nothing)) {
            fault(name, "this is to be words in quotes");
        }
        return Optional.empty();
    }

    /** What {@code reader} makes of a field's words; {@code otherwise} where there are none or they cannot be read. */
    <T> T read(String name, T otherwise, Function<String, T> reader) {
        Optional<String> text = text(name);
        try {
            return text.isPresent() ? reader.apply(text.get()) : otherwise;
        } catch (IllegalArgumentException e) {
            fault(name, String.valueOf(e.getMessage()));
            return otherwise;
        }
    }

    /** The same, for a field that must be there. */
    <T> T need(String name, T otherwise, Function<String, T> reader) {
        if (!members.containsKey(name)) {
            fault(name, "it is missing");
        }
        return read(name, otherwise, reader);
    }

    /** A whole number from {@code least} to {@code most}. */
    long whole(String name, long otherwise, long least, long most) {
        known.add(name);
        JsonValue value = members.get(name);
        if (value == null) {
            fault(name, "it is missing; write a whole number from " + least + " to " + most);
            return otherwise;
        }
        if (value instanceof JsonValue.Figure figure) {
            BigDecimal number = figure.number();
            boolean whole = number.stripTrailingZeros().scale() <= 0;
            if (whole
                    && number.compareTo(BigDecimal.valueOf(least)) >= 0
                    && number.compareTo(BigDecimal.valueOf(most)) <= 0) {
                return number.longValueExact();
            }
        }
        fault(name, "this will not do; write a whole number from " + least + " to " + most);
        return otherwise;
    }

    /** As {@link #noOthers}, with one more that may be there and is read later or not at all. */
    void noOthersBut(String name) {
        known.add(name);
        noOthers();
    }

    /** Refuses fields that nobody reads: a misspelt rule is not silently lost. */
    void noOthers() {
        for (String name : members.keySet()) {
            if (!known.contains(name)) {
                fault(name, "this field is not known here; there are " + String.join(", ", known));
            }
        }
    }
}
