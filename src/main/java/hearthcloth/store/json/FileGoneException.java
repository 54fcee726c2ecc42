package hearthcloth.store.json;

import java.nio.file.Path;
import java.sql.SQLException;

/** The maker's file was moved or deleted, or another put in its place, while the workroom is open on it. */
public final class FileGoneException extends SQLException {

    private static final long serialVersionUID = 1L;

    public FileGoneException(Path file) {
        super("Your work is not in its place any more: " + file + " was moved or deleted. Nothing was changed.");
    }
}
