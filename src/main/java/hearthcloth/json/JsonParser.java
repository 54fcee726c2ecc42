package hearthcloth.json;

import hearthcloth.json.JsonException.Slip;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON strictly (RFC 8259): one value, no comments, no name twice in an object. Nesting and the length of a number are
 * limited, so that no file overruns the stack or takes long.
 */
public final class JsonParser {

    /** Deeper than any file of ours; ours. */
    private static final int DEEPEST = 64;

    /** Figures of a number; a kilometre in nanometres has 13. */
    private static final int LONGEST_NUMBER = 40;

    private final String text;
    private int at;

    private JsonParser(String text) {
        this.text = text;
    }

    /**
     * The value of a text.
     *
     * @throws JsonException naming the line
     */
    public static JsonValue read(String text) {
        JsonParser parser = new JsonParser(text.startsWith("\ufeff") ? text.substring(1) : text);
        JsonValue value = parser.value(0);
        parser.blanks();
        if (parser.at < parser.text.length()) {
            throw parser.amiss(Slip.AFTER, "");
        }
        return value;
    }

    private JsonException amiss(Slip slip, String text) {
        int line = 1;
        for (int i = 0; i < Math.min(at, this.text.length()); i++) {
            line += this.text.charAt(i) == '\n' ? 1 : 0;
        }
        return new JsonException(line, slip, text);
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char next() {
        blanks();
        if (at == text.length()) {
            throw amiss(Slip.EARLY, "");
        }
        return text.charAt(at);
    }

    private boolean takes(char c) {
        boolean taken = next() == c;
        at += taken ? 1 : 0;
        return taken;
    }

    private void take(char c, Slip otherwise) {
        if (!takes(c)) {
            throw amiss(otherwise, String.valueOf(c));
        }
    }

    private JsonValue value(int depth) {
        if (depth > DEEPEST) {
            throw amiss(Slip.DEEP, "");
        }
        return switch (next()) {
            case '{' -> members(depth);
            case '[' -> items(depth);
            case '"' -> new JsonValue.Text(string());
            case 't' -> word("true", new JsonValue.Truth(true));
            case 'f' -> word("false", new JsonValue.Truth(false));
            case 'n' -> word("null", new JsonValue.Nothing());
            default -> number();
        };
    }

    private JsonValue word(String word, JsonValue meant) {
        if (!text.startsWith(word, at)) {
            throw amiss(Slip.VALUE, "");
        }
        at += word.length();
        return meant;
    }

    private JsonValue members(int depth) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        at++;
        if (takes('}')) {
            return new JsonValue.Members(members);
        }
        do {
            if (next() != '"') {
                throw amiss(Slip.NAME, "");
            }
            String name = string();
            take(':', Slip.COLON);
            if (members.put(name, value(depth + 1)) != null) {
                throw amiss(Slip.TWICE, name);
            }
        } while (takes(','));
        take('}', Slip.COMMA_FIELD);
        return new JsonValue.Members(members);
    }

    private JsonValue items(int depth) {
        List<JsonValue> items = new ArrayList<>();
        at++;
        if (takes(']')) {
            return new JsonValue.Items(items);
        }
        do {
            items.add(value(depth + 1));
        } while (takes(','));
        take(']', Slip.COMMA_LIST);
        return new JsonValue.Items(items);
    }

    private String string() {
        StringBuilder out = new StringBuilder();
        at++;
        while (true) {
            if (at == text.length()) {
                throw amiss(Slip.OPEN_QUOTE, "");
            }
            char c = text.charAt(at++);
            if (c == '"') {
                return out.toString();
            }
            if (c < ' ') {
                throw amiss(Slip.LINE_END, "");
            }
            out.append(c == '\\' ? escaped() : c);
        }
    }

    private char escaped() {
        char c = at < text.length() ? text.charAt(at++) : ' ';
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> coded();
            default -> throw amiss(Slip.ESCAPE, "\\" + c);
        };
    }

    private char coded() {
        int code = 0;
        for (int i = 0; i < 4; i++) {
            int digit = at < text.length() ? Character.digit(text.charAt(at++), 16) : -1;
            if (digit < 0) {
                throw amiss(Slip.CODE, "");
            }
            code = 16 * code + digit;
        }
        return (char) code;
    }

    private JsonValue number() {
        int from = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String written = text.substring(from, at);
        if (written.length() > LONGEST_NUMBER || !written.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,2})?")) {
            throw amiss(Slip.VALUE, "");
        }
        return new JsonValue.Figure(new BigDecimal(written));
    }
}
