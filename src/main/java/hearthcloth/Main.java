package hearthcloth;

import hearthcloth.cli.CommandLineTool;
import hearthcloth.cli.WorkroomDoor;
import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.SentCloth;
import hearthcloth.web.KeptCloths;
import hearthcloth.web.Opening;
import java.util.List;

/** Where the program starts: commands from the shell, or the workroom in the browser. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.exit(new CommandLineTool(new Room()).run(args, System.in, System.out, System.err));
    }

    /** The workroom of this program. */
    private static final class Room implements WorkroomDoor {

        @Override
        public int open(Asked asked, Shell shell) {
            return opening(asked).run(shell.out(), shell.err());
        }

        @Override
        public List<SentCloth> kept() {
            return KeptCloths.all();
        }
    }

    private static Opening opening(WorkroomDoor.Asked asked) {
        WorkroomDoor.Network network = asked.network();
        return new Opening(
                asked.port(),
                asked.data(),
                asked.browser(),
                new Opening.Start(asked.start().restore(), asked.start().anew()),
                new Opening.Network(network.lan(), network.code(), network.address()),
                asked.language());
    }
}
