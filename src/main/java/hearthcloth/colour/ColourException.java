package hearthcloth.colour;

/** A text that names no colour; the message is that text. Who asked for it says so, with the mend. */
public final class ColourException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    ColourException(String text) {
        super(text);
    }
}
