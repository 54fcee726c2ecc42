package hearthcloth.benchmarks;

import hearthcloth.benchmarks.cpsat.ExactJoins.Solved;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;

/** CP-SAT's answers as an earlier run of {@code against-cpsat} wrote them down, by seed. */
final class EarlierRows {

    private EarlierRows() {}

    static Map<Long, Solved> read(Path file) throws IOException {
        Map<Long, Solved> rows = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            String[] cells = line.split(",", -1);
            if (cells[0].matches("\\d+")) {
                rows.put(Long.parseLong(cells[0]), solved(cells));
            }
        }
        return rows;
    }

    private static Solved solved(String[] cells) {
        OptionalLong joins = cells[6].isEmpty() ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(cells[6]));
        boolean impossible = cells[11].equals("none exists");
        return new Solved(joins, Long.parseLong(cells[7]), impossible, nanos(cells[8]), nanos(cells[9]));
    }

    private static long nanos(String milliseconds) {
        return milliseconds.isEmpty() ? 0 : Math.round(Double.parseDouble(milliseconds) * 1_000_000);
    }
}
