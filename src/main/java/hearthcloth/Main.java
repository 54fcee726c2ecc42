package hearthcloth;

import hearthcloth.cli.CommandLineTool;
import hearthcloth.web.Opening;

/** Where the program starts: commands from the shell, or the workroom in the browser. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        CommandLineTool tool = new CommandLineTool(
                (asked, shell) -> new Opening(asked.port(), asked.data(), asked.browser(), asked.restore(), asked.lan())
                        .run(shell.out(), shell.err()));
        System.exit(tool.run(args, System.in, System.out, System.err));
    }
}
