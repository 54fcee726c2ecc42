package hearthcloth.cli;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the workroom in the browser. */
@FunctionalInterface
public interface WorkroomDoor {

    /**
     * Opens it and returns when it is closed.
     *
     * @param port asked for
     * @param data the maker's file; empty for the usual place
     * @param browser whether to open her browser
     * @return 0, or 2 where it cannot be opened
     */
    int open(int port, Optional<Path> data, boolean browser, Shell shell);
}
