package hearthcloth.draw;

/** A picture cannot be taken; the message is a sentence for the maker. */
public final class RefusedPictureException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RefusedPictureException(String message) {
        super(message);
    }

    RefusedPictureException(String message, Throwable cause) {
        super(message, cause);
    }
}
