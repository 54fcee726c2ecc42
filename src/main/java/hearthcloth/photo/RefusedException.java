package hearthcloth.photo;

/** A photograph cannot be read; the message is a sentence for the maker. Never leaves {@link PhotoReader}. */
final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RefusedException(String message) {
        super(message);
    }

    RefusedException(String message, Throwable cause) {
        super(message, cause);
    }
}
