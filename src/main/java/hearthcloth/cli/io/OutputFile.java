package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
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
                throw new BadInputException(RefusingSentences.outEnding(
                        Argument.text(ending), Argument.text(shown), Argument.text(option)));
            }
            if (Files.isDirectory(file)) {
                throw refused(option, shown, "FOLDER");
            }
            if (Files.exists(file) && !replace) {
                throw refused(option, shown, "THERE");
            }
            Path folder = file.resolveSibling("");
            if (!Files.isDirectory(folder)) {
                throw refused(option, shown, "NOWHERE");
            }
            if (!Files.isWritable(folder)) {
                throw refused(option, shown, "LOCKED");
            }
            return new OutputFile(option, shown, file);
        } catch (InvalidPathException e) {
            throw refused(option, shown, "NAME");
        }
    }

    private static BadInputException refused(String option, String shown, String why) {
        return new BadInputException(RefusingSentences.outFile(Argument.text(shown), Argument.text(option), why));
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
            throw refused(option, shown, "UNWRITTEN");
        }
    }
}
