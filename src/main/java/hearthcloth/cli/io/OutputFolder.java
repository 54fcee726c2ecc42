package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The folder that receives the proposals, each in a numbered folder of its own. Everything is first written to a hidden
 * folder and moved into place when it is complete, so that a failure leaves what was there. Planning again into the
 * same folder replaces its numbered folders and nothing else.
 */
public final class OutputFolder {

    /** Writes one proposal into a folder of its own. */
    public interface Proposal {
        void into(Path folder) throws IOException;
    }

    static final String NUMBER = "[1-9]\\d?";
    /** What may lie beside the numbered folders. */
    private static final List<String> BESIDE = List.of("kits.json", "kits.pdf");

    /** A numbered folder that holds this file is one of ours. */
    private static final String PLAN_FILE = "plan.json";

    private static final List<String> OURS = List.of(
            PLAN_FILE,
            "front.png",
            "front.svg",
            "back.png",
            "back.svg",
            "cut.png",
            "cut.svg",
            "net.pdf",
            "net.svg",
            "tied.png",
            "tied.svg",
            "guide.pdf",
            "slips.pdf");

    private final String shown;
    private final Path folder;

    private OutputFolder(String shown, Path folder) {
        this.shown = shown;
        this.folder = folder;
    }

    /**
     * The folder with this name, which need not exist yet.
     *
     * @throws BadInputException when it is a file, or holds things that are not ours
     */
    public static OutputFolder of(String name) {
        String shown = ListWords.plain(name);
        try {
            Path folder = Path.of(name).toAbsolutePath().normalize();
            if (name.isBlank()) {
                throw refused(shown, "MISSING");
            }
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw refused(shown, "FILE");
            }
            if (Files.exists(folder)) {
                checkOurs(shown, folder);
            }
            return new OutputFolder(shown, folder);
        } catch (InvalidPathException e) {
            throw refused(shown, "NAME");
        } catch (IOException e) {
            throw refused(shown, "CLOSED");
        }
    }

    private static BadInputException refused(String shown, String why) {
        return new BadInputException(RefusingSentences.outFolder(Argument.text(shown), why));
    }

    private static void checkOurs(String shown, Path folder) throws IOException {
        for (Path entry : HiddenFolder.listed(folder)) {
            String name = String.valueOf(entry.getFileName());
            boolean aside = name.startsWith(HiddenFolder.NAME) || name.equals(".DS_Store");
            if (!aside && !isOurs(entry, name)) {
                throw new BadInputException(
                        RefusingSentences.outHolds(Argument.text(shown), Argument.text(ListWords.plain(name))));
            }
        }
    }

    /** Whether it is one of the numbered folders or of the files beside them, by its name. */
    static boolean isNamedLikeOurs(Path entry) {
        String name = String.valueOf(entry.getFileName());
        return name.matches(NUMBER) || BESIDE.contains(name);
    }

    private static boolean isOurs(Path entry, String name) throws IOException {
        if (BESIDE.contains(name)) {
            return Files.isRegularFile(entry);
        }
        if (!name.matches(NUMBER) || !Files.isDirectory(entry) || !Files.exists(entry.resolve(PLAN_FILE))) {
            return false;
        }
        for (Path file : HiddenFolder.listed(entry)) {
            if (!OURS.contains(String.valueOf(file.getFileName()))) {
                return false;
            }
        }
        return true;
    }

    /** Writes all proposals, or none. */
    public void write(List<Proposal> proposals) {
        write(proposals, into -> {});
    }

    /**
     * Writes all proposals and what lies beside them, or nothing.
     *
     * @param beside writes {@code kits.pdf} and {@code kits.json}
     */
    public void write(List<Proposal> proposals, Proposal beside) {
        try {
            Path parent = Files.isDirectory(folder) ? folder : folder.resolveSibling("");
            Files.createDirectories(parent);
            HiddenFolder hidden = HiddenFolder.in(parent);
            try (hidden) {
                draw(proposals, Files.createDirectory(hidden.made()));
                beside.into(hidden.made());
                Files.createDirectory(hidden.old());
                hidden.wholly(() -> place(hidden.made(), hidden.old()));
            } catch (IOException e) {
                if (hidden.isStopped()) {
                    throw new BadInputException(RefusingSentences.outStopped(Argument.text(shown)));
                }
                throw e;
            }
        } catch (FileAlreadyExistsException e) {
            throw new BadInputException(RefusingSentences.outInWay(
                    Argument.text(shown), Argument.text(ListWords.plain(String.valueOf(e.getFile())))));
        } catch (IOException e) {
            throw refused(shown, "UNWRITTEN");
        }
    }

    /**
     * Draws the proposals, which are independent of each other, in parallel. All are waited for, even when one fails,
     * since none may still be writing when the folder is removed.
     */
    private static void draw(List<Proposal> proposals, Path made) throws IOException {
        List<IOException> failed = IntStream.range(0, proposals.size())
                .parallel()
                .mapToObj(i -> drawn(proposals.get(i), made.resolve(Integer.toString(i + 1))))
                .flatMap(Optional::stream)
                .toList();
        if (!failed.isEmpty()) {
            throw failed.get(0);
        }
    }

    private static Optional<IOException> drawn(Proposal proposal, Path into) {
        try {
            proposal.into(Files.createDirectory(into));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(e);
        }
    }

    private void place(Path made, Path old) throws IOException {
        if (!Files.exists(folder)) {
            Files.move(made, folder);
            return;
        }
        List<Path> moved = new ArrayList<>();
        try {
            for (Path entry : numbered(folder)) {
                Files.move(entry, old.resolve(entry.getFileName()));
            }
            for (Path entry : numbered(made)) {
                Path to = folder.resolve(entry.getFileName());
                Files.move(entry, to);
                moved.add(to);
            }
        } catch (IOException e) {
            for (Path to : moved) {
                HiddenFolder.delete(to);
            }
            for (Path entry : numbered(old)) {
                Files.move(entry, folder.resolve(entry.getFileName()));
            }
            throw e;
        }
    }

    private static List<Path> numbered(Path folder) throws IOException {
        return HiddenFolder.listed(folder).stream()
                .filter(OutputFolder::isNamedLikeOurs)
                .toList();
    }
}
