package hearthcloth.guideline.file;

import hearthcloth.json.JsonValue;
import hearthcloth.measure.MeasureException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
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

    /** Signs of what a reader says of a field. */
    private static final int LONGEST = 300;

    private final String way;
    private final Map<String, JsonValue> members;
    private final List<Sentence> faults;
    private final Set<String> known = new LinkedHashSet<>();

    private FieldReader(String way, Map<String, JsonValue> members, List<Sentence> faults) {
        this.way = way;
        this.members = members;
        this.faults = faults;
    }

    static FieldReader of(JsonValue value, List<Sentence> faults) {
        if (value instanceof JsonValue.Members members) {
            return new FieldReader("", members.all(), faults);
        }
        faults.add(RulingSentences.fileObject(Argument.text("{")));
        return new FieldReader("", Map.of(), faults);
    }

    private void fault(String name, Sentence what) {
        faults.add(RulingSentences.fileField(Argument.text(way + name), what));
    }

    /** What is said of a reader's refusal; one that has no sentence says its own words, on one line. */
    private static Sentence told(IllegalArgumentException thrown) {
        if (thrown instanceof MeasureException) {
            return Refusal.of(thrown);
        }
        String line = String.valueOf(thrown.getMessage()).replaceAll("\\p{Cntrl}+", " ");
        return Sentence.itself(line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line);
    }

    /** The object in a field; one without fields where it is missing. */
    FieldReader inside(String name) {
        known.add(name);
        JsonValue value = members.get(name);
        if (value instanceof JsonValue.Members inside) {
            return new FieldReader(way + name + ".", inside.all(), faults);
        }
        if (value != null) {
            fault(name, RulingSentences.fileKind("OBJECT", Argument.text("{ }")));
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
                    fault(name + "[" + i + "]", RulingSentences.fileKind("OBJECT", Argument.text("{ }")));
                }
            }
        } else {
            fault(
                    name,
                    value == null
                            ? RulingSentences.fileMissing()
                            : RulingSentences.fileKind("LIST", Argument.text("[ ]")));
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
            fault(name, RulingSentences.fileKind("WORDS", Argument.text("")));
        }
        return Optional.empty();
    }

    /** What {@code reader} makes of a field's words; {@code otherwise} where there are none or they cannot be read. */
    <T> T read(String name, T otherwise, Function<String, T> reader) {
        Optional<String> text = text(name);
        try {
            return text.isPresent() ? reader.apply(text.get()) : otherwise;
        } catch (IllegalArgumentException e) {
            fault(name, told(e));
            return otherwise;
        }
    }

    /** The same, for a field that must be there. */
    <T> T need(String name, T otherwise, Function<String, T> reader) {
        if (!members.containsKey(name)) {
            fault(name, RulingSentences.fileMissing());
        }
        return read(name, otherwise, reader);
    }

    /** A whole number from {@code least} to {@code most}. */
    long whole(String name, long otherwise, long least, long most) {
        known.add(name);
        JsonValue value = members.get(name);
        if (value == null) {
            fault(name, RulingSentences.fileWhole(Argument.number(least), Argument.number(most), "no"));
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
        fault(name, RulingSentences.fileWhole(Argument.number(least), Argument.number(most), "yes"));
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
                fault(name, RulingSentences.fileUnknown(Argument.names(Argument.Joined.COMMAS, List.copyOf(known))));
            }
        }
    }
}
