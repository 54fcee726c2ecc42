package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** One file to write, wholly or not at all; a file that is already there is replaced only where the maker said so. */
public final class OutputFile {

    private final String option;
    private final String shown;
    private final Path file;

    private OutputFile(String option, String shown, Path file) {
        this.option = option;
        this.shown = shown;
        this.file = file;
    }

    /**
     * The file with this name.
     *
     * @param ending the ending its name must have
     * @throws BadInputException when it cannot be written, or is there already and may not be replaced
     */
    public static OutputFile of(String option, String name, String ending, boolean replace) {
        String shown = ListWords.plain(name);
        try {
            Path file = Path.of(name).toAbsolutePath().normalize();
            if (!name.endsWith(ending)) {
                throw new BadInputException(
                        option + ": \"" + shown + "\" will not do; write a file name that ends with " + ending + ".");
            }
            if (Files.isDirectory(file)) {
                throw new BadInputException(option + ": " + shown + " is a folder; give a file name.");
            }
            if (Files.exists(file) && !replace) {
                throw new BadInputException(option + ": there is a file " + shown
                        + " already; give another name, or add --replace to write over it.");
            }
            Path folder = file.resolveSibling("");
            if (!Files.isDirectory(folder)) {
                throw new BadInputException(
                        option + ": there is no folder for " + shown + "; make it first, or check the name.");
            }
            if (!Files.isWritable(folder)) {
                throw new BadInputException(option + ": the folder of " + shown
                        + " may not be written to by you; change its permissions or give another.");
            }
            return new OutputFile(option, shown, file);
        } catch (InvalidPathException e) {
            throw new BadInputException(
                    option + ": \"" + shown + "\" is not the name of a file; check how it is written.");
        }
    }

    public String shown() {
        return shown;
    }

    public void write(byte[] bytes) {
        try {
            try (HiddenFolder hidden = HiddenFolder.in(file.resolveSibling(""))) {
                Files.write(hidden.made(), bytes);
                hidden.wholly(() -> Files.move(hidden.made(), file, StandardCopyOption.REPLACE_EXISTING));
            }
        } catch (IOException e) {
            throw new BadInputException(
                    option + ": " + shown + " could not be written; check its permissions and the room on the disk.");
        }
    }
}
