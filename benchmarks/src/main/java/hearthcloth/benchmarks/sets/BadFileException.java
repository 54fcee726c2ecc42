package hearthcloth.benchmarks.sets;

/** A problem file that cannot be read; the message is a sentence that names the file and, where it can, the line. */
public final class BadFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Something is wrong with a file. */
    public BadFileException(String message) {
        super(message);
    }
}
