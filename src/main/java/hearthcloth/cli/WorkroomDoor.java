package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import java.util.Optional;

/** Opens the workroom in the browser. */
@FunctionalInterface
public interface WorkroomDoor {

    /**
     * How the workroom is to be opened.
     *
     * @param port to listen on
     * @param data the maker's file or a studio's database, as typed; empty for the usual place
     * @param browser whether to open her browser
     * @param restore the safety copy to restore first; empty for none
     * @param lan whether other devices on the network may connect
     */
    record Asked(int port, Optional<String> data, boolean browser, Optional<String> restore, boolean lan) {}

    /**
     * Opens it and returns when it is closed.
     *
     * @return 0, or 2 where it cannot be opened
     */
    int open(Asked asked, Shell shell);
}
