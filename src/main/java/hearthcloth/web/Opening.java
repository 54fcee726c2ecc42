package hearthcloth.web;

import hearthcloth.measure.Ruler;
import hearthcloth.store.SafetyCopies;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import hearthcloth.web.door.Openness;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.words.speech.Voice;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/**
 * Opens the workroom from the shell and keeps it open until it is closed there or on its page.
 *
 * @param port asked for; the next free one is taken where it is in use
 * @param data the maker's file; empty for the usual place
 * @param browser whether to open her browser
 * @param start what is done with her file first
 * @param network who else may come in
 * @param language of what is said in the terminal
 */
public record Opening(
        int port, Optional<String> data, boolean browser, Start start, Network network, Language language) {

    /**
     * How her file is taken up.
     *
     * @param restore a safety copy to put in the file's place first; empty for none
     * @param anew whether an empty one is begun where one used to lie
     */
    public record Start(Optional<String> restore, boolean anew) {}

    /**
     * Who may come in, as typed.
     *
     * @param lan whether other devices on the network may
     * @param code whether a code is asked for on this machine too
     * @param address of a proxy before a studio's workroom; empty for none
     */
    public record Network(boolean lan, boolean code, Optional<String> address) {}

    /**
     * Opens and waits until it is closed.
     *
     * @return 0, or 2 where the workroom cannot be opened, which is said on {@code err}
     */
    public int run(PrintStream out, PrintStream err) {
        return run(new Told(Voice.of(language, Ruler.EIGHTHS), out, err));
    }

    /** What is said in the terminal. */
    private record Told(Voice voice, PrintStream out, PrintStream err) {

        void say(Sentence sentence) {
            out.println(sentence.in(voice));
        }

        void warn(Sentence sentence) {
            err.println(sentence.in(voice));
        }

        /** @return 2, since it cannot be opened */
        int refuse(Sentence sentence) {
            warn(sentence);
            return 2;
        }
    }

    private int run(Told told) {
        Optional<String> place = data.or(() -> Optional.ofNullable(System.getenv("HEARTHCLOTH_DATA")));
        if (place.filter(StudioAddress::isOne).isPresent()) {
            return studio(place.get(), told);
        }
        Path file = place.map(Path::of).orElseGet(Opening::usual).toAbsolutePath();
        try {
            Files.createDirectories(Optional.ofNullable(file.getParent()).orElse(file));
            Optional<OpenMark> mark = OpenMark.set(file);
            return mark.isEmpty() ? openAlready(file, told) : open(file, mark.get(), told);
        } catch (StoreException e) {
            return told.refuse(Refusal.of(e));
        } catch (IOException e) {
            return told.refuse(StoringSentences.openFolder(Argument.text(file.toString())));
        }
    }

    /** Puts back what is asked for, opens and waits; a file that was moved away is not silently begun anew. */
    private int open(Path file, OpenMark mark, Told told) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        start.restore()
                .ifPresent(name -> told.say(StoringSentences.openRestored(Argument.text(
                        String.valueOf(SafetyCopies.putBack(file, name, clock).made())))));
        Optional<Sentence> gone = Store.gone(file, OpenMark.wasOpened(file)).filter(words -> !start.anew());
        if (gone.isPresent()) {
            mark.close();
            return told.refuse(gone.get());
        }
        Workroom room = Workroom.open(file, port, clock, openness());
        mark.say(room.address());
        tell(room, file, told);
        room.careful().ifPresent(told::warn);
        return opened(room, mark::close);
    }

    private void tell(Workroom room, Path file, Told told) {
        Argument address = Argument.text(room.address());
        told.say(StoringSentences.openAt(address));
        told.say(StoringSentences.openKept(Argument.text(file.toString())));
        if (network.lan()) {
            told.say(StoringSentences.openLan(Argument.text(room.address() + "devices")));
            room.toTheCamera().forEach(camera -> told.say(StoringSentences.openCamera(Argument.text(camera))));
        }
        room.code().ifPresent(code -> told.say(StoringSentences.openCode(Argument.text(code))));
        told.out().flush();
    }

    private Openness openness() {
        return Openness.of(network.lan(), network.code(), network.address());
    }

    /** A workroom of a studio; its database's password comes from the address or, better, from the surroundings. */
    private int studio(String place, Told told) {
        if (start.restore().isPresent()) {
            return told.refuse(StoringSentences.openRestoreStudio());
        }
        try {
            StudioAddress address = StudioAddress.parse(place, Optional.ofNullable(System.getenv("PGPASSWORD")));
            Clock clock = Clock.system(ZoneId.systemDefault());
            try (Studio studio = Studio.open(address, clock)) {
                Workroom room = Workroom.open(studio, port, clock, openness());
                told.say(StoringSentences.openAt(Argument.text(room.address())));
                told.say(StoringSentences.openStudio(Argument.text(address.toString())));
                told.out().flush();
                return opened(room, () -> {});
            }
        } catch (StoreException e) {
            return told.refuse(Refusal.of(e));
        }
    }

    /** Another workroom has this file open: that one is shown, for a second one beside it would only be in its way. */
    private int openAlready(Path file, Told told) {
        String where = OpenMark.address(file).orElse("none");
        if (start.restore().isPresent() || network.lan()) {
            return told.refuse(StoringSentences.openClose(where));
        }
        told.say(StoringSentences.openAlready(where));
        if (browser) {
            OpenMark.address(file).ifPresent(Opening::show);
        }
        return 0;
    }

    /** Shows it and waits until she closes it on its page or the program is stopped; then does {@code after}. */
    private int opened(Workroom room, Runnable after) {
        if (browser) {
            show(room.address());
        }
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            room.close();
            after.run();
        }));
        try {
            room.awaitClosing();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return 0;
    }

    /** In the folder where this system keeps programs' data (XDG base directory specification; its likes elsewhere). */
    static Path usual() {
        Path home = Path.of(System.getProperty("user.home", "."));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path folder;
        if (system.contains("mac")) {
            folder = home.resolve("Library/Application Support");
        } else if (system.contains("win")) {
            folder = Optional.ofNullable(System.getenv("LOCALAPPDATA"))
                    .map(Path::of)
                    .orElse(home);
        } else {
            folder = Optional.ofNullable(System.getenv("XDG_DATA_HOME"))
                    .filter(name -> name.startsWith("/"))
                    .map(Path::of)
                    .orElse(home.resolve(".local/share"));
        }
        return folder.resolve("hearthcloth").resolve("workroom.db");
    }

    /** Asks the system for her browser; where there is none, the printed address serves. */
    private static void show(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        String opener = system.contains("mac") ? "open" : system.contains("win") ? "explorer" : "xdg-open";
        try {
            new ProcessBuilder(opener, address)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // No such opener on this system: the address stands in the terminal.
        }
    }
}
