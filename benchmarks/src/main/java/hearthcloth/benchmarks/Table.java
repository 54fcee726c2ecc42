package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.BadFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A small CSV without quotes: the rows of results and of known answers, each by the names of its columns. */
record Table(List<Map<String, String>> rows) {

    static Table of(Path file) {
        try {
            return of(file.toString(), Files.readAllLines(file));
        } catch (NoSuchFileException missing) {
            throw new BadFileException("There is no file " + file + ".");
        } catch (IOException unreadable) {
            throw new BadFileException(file + " cannot be read: " + unreadable.getMessage() + ".");
        }
    }

    static Table of(String name, List<String> lines) {
        List<String> said = lines.stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        if (said.isEmpty()) {
            throw new BadFileException(name + " is empty.");
        }
        String[] head = said.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : said.subList(1, said.size())) {
            String[] cells = line.split(",", -1);
            if (cells.length != head.length) {
                throw new BadFileException(
                        name + " has a row of " + cells.length + " cells under " + head.length + " names: " + line);
            }
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            rows.add(row);
        }
        return new Table(rows);
    }
}
