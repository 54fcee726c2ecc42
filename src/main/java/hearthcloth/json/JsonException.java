package hearthcloth.json;

/** A text that is no JSON: on which line and what is amiss. Who reads the file tells it to a maker; its message is for programmers. */
public final class JsonException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What is amiss. */
    public enum Slip {
        /** Something stands after the end of the value. */
        AFTER,
        /** The text ends within the value. */
        EARLY,
        /** The sign between a name and its value is missing. */
        COLON,
        /** An object neither goes on nor ends. */
        COMMA_FIELD,
        /** A list neither goes on nor ends. */
        COMMA_LIST,
        /** More values lie within each other than any file of ours has. */
        DEEP,
        /** A field has no name. */
        NAME,
        /** An object has a name twice. */
        TWICE,
        OPEN_QUOTE,
        /** A line ends within quotes. */
        LINE_END,
        /** A backslash before a letter that has no meaning. */
        ESCAPE,
        /** A letter's number is not four figures. */
        CODE,
        /** What stands there is no value. */
        VALUE
    }

    private final int line;
    private final Slip slip;
    private final String text;

    JsonException(int line, Slip slip, String text) {
        super(line + ": " + slip + " " + text, null, false, false);
        this.line = line;
        this.slip = slip;
        this.text = text;
    }

    /** The line, counted from 1. */
    public int line() {
        return line;
    }

    public Slip slip() {
        return slip;
    }

    /** The sign that is missing or the letters that are wrong; empty where nothing is to be named. */
    public String text() {
        return text;
    }
}
