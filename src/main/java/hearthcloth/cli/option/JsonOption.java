package hearthcloth.cli.option;

import picocli.CommandLine.Option;

/** Whether a program listens. */
public final class JsonOption {

    @Option(names = "--json")
    private boolean json;

    public boolean isWished() {
        return json;
    }
}
