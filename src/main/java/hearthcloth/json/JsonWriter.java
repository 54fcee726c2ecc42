package hearthcloth.json;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Writes JSON to be read by people as well: two blanks for each level, a line for each field. An unpaired surrogate becomes
 * U+FFFD.
 */
public final class JsonWriter {

    private final StringBuilder out = new StringBuilder();
    private final boolean lined;

    private JsonWriter(boolean lined) {
        this.lined = lined;
    }

    /** The text of a value, ended by a line break. */
    public static String write(JsonValue value) {
        JsonWriter writer = new JsonWriter(true);
        writer.value(value, 0);
        return writer.out.append('\n').toString();
    }

    /** The text on one line, without blanks. */
    public static String tight(JsonValue value) {
        JsonWriter writer = new JsonWriter(false);
        writer.value(value, 0);
        return writer.out.toString();
    }

    private void value(JsonValue value, int depth) {
        if (value instanceof JsonValue.Members members) {
            members(members.all(), depth);
        } else if (value instanceof JsonValue.Items items) {
            items(items.all(), depth);
        } else if (value instanceof JsonValue.Text text) {
            quoted(text.text());
        } else if (value instanceof JsonValue.Figure figure) {
            out.append(figure.number().toPlainString());
        } else if (value instanceof JsonValue.Truth truth) {
            out.append(truth.isTrue());
        } else {
            out.append("null");
        }
    }

    private void members(Map<String, JsonValue> members, int depth) {
        if (members.isEmpty()) {
            out.append(lined ? "{ }" : "{}");
            return;
        }
        out.append('{');
        for (Iterator<Map.Entry<String, JsonValue>> rest = members.entrySet().iterator(); rest.hasNext(); ) {
            Map.Entry<String, JsonValue> member = rest.next();
            line(depth + 1);
            quoted(member.getKey());
            out.append(lined ? " : " : ":");
            value(member.getValue(), depth + 1);
            out.append(rest.hasNext() ? "," : "");
        }
        line(depth);
        out.append('}');
    }

    private void line(int depth) {
        if (lined) {
            out.append('\n').append("  ".repeat(depth));
        }
    }

    private void items(List<JsonValue> items, int depth) {
        String air = lined ? " " : "";
        out.append('[').append(air);
        for (int i = 0; i < items.size(); i++) {
            value(items.get(i), depth);
            out.append(i + 1 < items.size() ? "," : "").append(i + 1 < items.size() ? air : "");
        }
        out.append(items.isEmpty() ? "" : air).append(']');
    }

    private void quoted(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean paired = Character.isHighSurrogate(c)
                    ? i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))
                    : Character.isLowSurrogate(c) && i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
            letter(Character.isSurrogate(c) && !paired ? '\ufffd' : c);
        }
        out.append('"');
    }

    private void letter(char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            case '\b' -> out.append("\\b");
            case '\f' -> out.append("\\f");
            default -> {
                if (c < ' ') {
                    String code = Integer.toHexString(c);
                    out.append("\\u")
                            .append("0000".substring(code.length()))
                            .append(code.toUpperCase(java.util.Locale.ROOT));
                } else {
                    out.append(c);
                }
            }
        }
    }
}
