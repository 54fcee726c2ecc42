package hearthcloth.cli.option;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.wish.ListWords;
import picocli.CommandLine.Option;

/** The folder that a command writes. */
public final class FolderOptions {

    @Option(names = "--out", paramLabel = "FOLDER", required = true)
    private String outName = "";

    /** The folder, which may be there already where it was planned before. */
    public OutputFolder folder() {
        return OutputFolder.of(outName);
    }

    /** The folder's name, fit to be said. */
    public String shown() {
        return ListWords.plain(outName).replaceAll("(?<=.)/+$", "");
    }
}
