package hearthcloth.web;

import hearthcloth.web.make.CutPageTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Work that many tests begin from, made once in a process by a workroom of its own and copied to each of them. */
public final class BegunWork {

    private static final String FILE = "work.db";

    /** The workroom's file when the work was begun, and the page of what was begun. */
    private record Begun(ByteBuffer file, String page) {}

    private static final Map<ByteBuffer, Begun> READ = new ConcurrentHashMap<>();

    private static final Map<String, Begun> NAMED = new ConcurrentHashMap<>();

    private BegunWork() {}

    /**
     * Lays a workroom's file whose only work is this photograph beside a sheet of A4, read and not yet sorted; in millimetres.
     *
     * @return the photograph's page
     */
    public static String photographRead(Path file, byte[] photograph) {
        return laid(
                READ.computeIfAbsent(
                        ByteBuffer.wrap(photograph),
                        key -> begun(visit -> {
                            visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
                            return visit.untilRead(
                                    Visit.onward(visit.send("/stash/photo", "picture", photograph, "sheet", "a4")));
                        })),
                file);
    }

    /**
     * Lays a workroom's file in which the example lies; in eighths of an inch and on letter paper.
     *
     * @param folder where {@link Visit#Visit(Path)} looks for its file
     * @return the page of the example's cloth
     */
    public static String example(Path folder) {
        return of(folder, "example", visit -> {
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/example");
            return CutPageTest.all("href=\"(/cloth/ex[\\w-]+)\"", visit.page("/cloths"))
                    .get(0);
        });
    }

    /** The same, in which the first proposal that was found was taken; its page. */
    public static String exampleTaken(Path folder) {
        return of(folder, "example taken", visit -> {
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/example");
            return CutPageTest.taken(visit);
        });
    }

    /**
     * Lays a workroom's file with work of this name.
     *
     * @param work begins it and tells a page, in a workroom of its own and once in a process
     */
    public static String of(Path folder, String name, Function<Visit, String> work) {
        return laid(NAMED.computeIfAbsent(name, key -> begun(work)), folder.resolve(FILE));
    }

    private static String laid(Begun begun, Path file) {
        try {
            Files.write(file, begun.file().array());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return begun.page();
    }

    private static Begun begun(Function<Visit, String> work) {
        try {
            Path folder = Files.createTempDirectory("begun");
            try {
                String page;
                try (Visit visit = new Visit(folder)) {
                    page = work.apply(visit);
                }
                return new Begun(ByteBuffer.wrap(Files.readAllBytes(folder.resolve(FILE))), page);
            } finally {
                gone(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void gone(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }
}
