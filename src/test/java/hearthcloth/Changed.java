package hearthcloth;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Records of parameters with other values, by the names of their components, such as {@code segment.rug.figures}. */
public final class Changed {

    private Changed() {}

    /** The record with each of the changes made, each {@code path=value}; the values of a list are parted by commas. */
    public static <T extends Record> T with(T all, String... changes) {
        T changed = all;
        for (String change : changes) {
            String[] parts = change.split("=", 2);
            if (parts.length < 2) {
                throw new IllegalArgumentException("\"" + change + "\" is not a name and a value, such as a.b=3.");
            }
            changed = with(changed, List.of(parts[0].split("\\.", -1)), parts[1]);
        }
        return changed;
    }

    @SuppressWarnings("unchecked")
    private static <T extends Record> T with(T record, List<String> path, String value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        List<Object> values = new ArrayList<>();
        boolean found = false;
        try {
            for (RecordComponent component : components) {
                Object own = component.getAccessor().invoke(record);
                boolean here = component.getName().equals(path.get(0));
                found |= here;
                values.add(!here ? own : path.size() == 1 ? read(component, value) : inner(own, path, value));
            }
            if (!found) {
                throw new IllegalArgumentException(record.getClass().getSimpleName() + " has no " + path.get(0)
                        + "; it has "
                        + String.join(
                                ", ",
                                Stream.of(components)
                                        .map(RecordComponent::getName)
                                        .toList())
                        + ".");
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> made = record.getClass().getDeclaredConstructor(types);
            return (T) made.newInstance(values.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object inner(Object own, List<String> path, String value) {
        if (own instanceof Record record) {
            return with(record, path.subList(1, path.size()), value);
        }
        throw new IllegalArgumentException(path.get(0) + " is one value and has no " + path.get(1) + ".");
    }

    private static Object read(RecordComponent component, String value) {
        Class<?> type = component.getType();
        if (type == int.class) {
            return Integer.valueOf(value);
        }
        if (type == long.class) {
            return Long.valueOf(value);
        }
        if (type == float.class) {
            return Float.valueOf(value);
        }
        if (type == double.class) {
            return Double.valueOf(value);
        }
        if (type == List.class) {
            return value.isEmpty()
                    ? List.of()
                    : Stream.of(value.split(",", -1)).map(Double::valueOf).toList();
        }
        throw new IllegalArgumentException(component.getName() + " holds several values; name one of them.");
    }
}
