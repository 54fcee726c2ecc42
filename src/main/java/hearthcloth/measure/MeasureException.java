package hearthcloth.measure;

/** A measure that cannot be read; the message is one sentence for the maker, with the mend. */
public class MeasureException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public MeasureException(String message) {
        super(message);
    }
}
