package hearthcloth.colour;

/** A colour that cannot be read; the message is one sentence for the maker, with the mend. */
public final class ColourException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public ColourException(String message) {
        super(message);
    }
}
