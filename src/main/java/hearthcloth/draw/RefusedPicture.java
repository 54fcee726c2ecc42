package hearthcloth.draw;

/** A picture cannot be taken; the message is a sentence for the maker. */
public final class RefusedPicture extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RefusedPicture(String message) {
        super(message);
    }

    RefusedPicture(String message, Throwable cause) {
        super(message, cause);
    }
}
