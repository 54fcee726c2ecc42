package hearthcloth.cutstock.piecing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Problems of free piecing that lie beside the tests. */
final class PiecingSets {

    private PiecingSets() {}

    static PiecingJob read(String name) {
        List<WishedCloth> cloths = new ArrayList<>();
        List<Scrap> scraps = new ArrayList<>();
        Map<String, long[]> head = new HashMap<>();
        for (String line : lines("/bench/piecing/" + name + ".txt")) {
            String[] words = line.split(" ");
            if (Character.isDigit(line.charAt(0))) {
                long[] row = numbers(words, 0);
                scraps.add(new Scrap(row[0], row[1], (int) row[2], row[3] == 1));
            } else if (words[0].equals("target")) {
                long[] row = numbers(words, 1);
                cloths.add(new WishedCloth(row[0], row[1]));
            } else if (!words[0].equals("unit")) {
                head.put(words[0], numbers(words, 1));
            }
        }
        long[] allow = Objects.requireNonNull(head.get("allow"));
        long[] keep = Objects.requireNonNull(head.get("keep"));
        return new PiecingJob(
                cloths,
                scraps,
                new Allowances(allow[0], allow[1], allow[2]),
                new Terms(one(head, "least"), keep[0], keep[1], (int) one(head, "patches"), one(head, "clearance")));
    }

    private static long one(Map<String, long[]> head, String name) {
        return Objects.requireNonNull(head.get(name))[0];
    }

    private static long[] numbers(String[] words, int from) {
        long[] numbers = new long[words.length - from];
        for (int i = from; i < words.length; i++) {
            numbers[i - from] = Long.parseLong(words[i]);
        }
        return numbers;
    }

    private static List<String> lines(String resource) {
        try (InputStream in = Objects.requireNonNull(PiecingSets.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
