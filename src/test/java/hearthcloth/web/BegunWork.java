package hearthcloth.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Work that many tests begin from, made once in a process by a workroom of its own and copied to each of them. */
public final class BegunWork {

    /** A photograph that was sent and read, as the workroom's file keeps it, and its page. */
    private record PhotoRead(ByteBuffer file, String page) {}

    private static final Map<ByteBuffer, PhotoRead> READ = new ConcurrentHashMap<>();

    private BegunWork() {}

    /**
     * Lays a workroom's file whose only work is this photograph beside a sheet of A4, read and not yet sorted; in millimetres.
     *
     * @return the photograph's page
     */
    public static String photographRead(Path file, byte[] photograph) {
        PhotoRead read = READ.computeIfAbsent(ByteBuffer.wrap(photograph), key -> read(photograph));
        try {
            Files.write(file, read.file().array());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read.page();
    }

    private static PhotoRead read(byte[] photograph) {
        try {
            Path folder = Files.createTempDirectory("begun");
            try {
                String page;
                try (Visit visit = new Visit(folder)) {
                    visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
                    page = visit.untilRead(
                            Visit.onward(visit.send("/stash/photo", "picture", photograph, "sheet", "a4")));
                }
                return new PhotoRead(ByteBuffer.wrap(Files.readAllBytes(folder.resolve("work.db"))), page);
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
