package hearthcloth.json;

/** A text that is no JSON; the message says on which line and what is amiss, without a full stop. */
public final class JsonException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    JsonException(int line, String amiss) {
        super("line " + line + ": " + amiss, null, false, false);
    }
}
