package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.SentCloth;
import hearthcloth.words.Language;
import java.util.List;
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
     * @param start what is done with the file first
     * @param network who else may connect
     * @param language of what is said in the terminal
     */
    record Asked(int port, Optional<String> data, boolean browser, Start start, Network network, Language language) {}

    /**
     * How the file is taken up.
     *
     * @param restore the safety copy to restore first; empty for none
     * @param anew whether an empty one is begun where one used to lie
     */
    record Start(Optional<String> restore, boolean anew) {}

    /**
     * Who may connect.
     *
     * @param lan whether other devices on the network may
     * @param code whether a code is asked for on this machine too
     * @param address of a proxy before a studio's workroom; empty for none
     */
    record Network(boolean lan, boolean code, Optional<String> address) {}

    /**
     * Opens it and returns when it is closed.
     *
     * @return 0, or 2 where it cannot be opened
     */
    int open(Asked asked, Shell shell);

    /** The cloths she keeps in her usual file, each of which can be made, the last changed first; for an idea to be taken from. */
    default List<SentCloth> kept() {
        return List.of();
    }
}
