package hearthcloth.wrap;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Rows of a check table under src/test/resources/sources, by column name; lines with # are its source. */
public final class SourceTable {

    /** One row, by column name. */
    public record Row(Map<String, String> cells) {

        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    private SourceTable() {}

    public static List<Row> rows(String file) {
        InputStream in = SourceTable.class.getResourceAsStream("/sources/" + file);
        try (var reader =
                new BufferedReader(new InputStreamReader(Objects.requireNonNull(in, file), StandardCharsets.UTF_8))) {
            List<String> lines =
                    reader.lines().filter(line -> !line.startsWith("#")).toList();
            List<String> names = cells(lines.get(0));
            List<Row> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = cells(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < names.size(); i++) {
                    row.put(names.get(i), cells.get(i));
                }
                rows.add(new Row(row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
