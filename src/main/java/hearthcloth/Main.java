package hearthcloth;

import hearthcloth.cli.CommandLineTool;
import hearthcloth.cli.WorkroomDoor;
import hearthcloth.web.Opening;

/** Where the program starts: commands from the shell, or the workroom in the browser. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        CommandLineTool tool =
                new CommandLineTool((asked, shell) -> opening(asked).run(shell.out(), shell.err()));
        System.exit(tool.run(args, System.in, System.out, System.err));
    }

    private static Opening opening(WorkroomDoor.Asked asked) {
        WorkroomDoor.Network network = asked.network();
        return new Opening(
                asked.port(),
                asked.data(),
                asked.browser(),
                new Opening.Start(asked.start().restore(), asked.start().anew()),
                new Opening.Network(network.lan(), network.code(), network.address()));
    }
}
