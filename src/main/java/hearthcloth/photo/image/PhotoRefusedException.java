package hearthcloth.photo.image;

/** A photograph that cannot be read; the message is a sentence for the maker. It never leaves {@link PhotoReader}. */
public class PhotoRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public PhotoRefusedException(String message) {
        super(message);
    }

    public PhotoRefusedException(String message, Throwable cause) {
        super(message, cause);
    }
}
