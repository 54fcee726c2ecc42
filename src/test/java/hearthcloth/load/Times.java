package hearthcloth.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How long each kind of request took, and how each was answered. Thread-safe. */
final class Times {

    private final Map<String, List<Double>> milliseconds = new TreeMap<>();
    private final Map<Integer, Integer> answers = new TreeMap<>();

    synchronized void took(String kind, double ms, int status) {
        milliseconds.computeIfAbsent(kind, key -> new ArrayList<>()).add(ms);
        answers.merge(status, 1, Integer::sum);
    }

    /** How many were answered so. */
    synchronized int answered(int status) {
        return answers.getOrDefault(status, 0);
    }

    /** Answers that say the workroom itself failed. */
    synchronized int failed() {
        return answers.entrySet().stream()
                .filter(each -> each.getKey() >= 500 && each.getKey() != 503)
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** A line for each kind, and one for the answers. */
    synchronized String told() {
        StringBuilder told = new StringBuilder();
        milliseconds.forEach((kind, all) -> {
            List<Double> sorted = new ArrayList<>(all);
            Collections.sort(sorted);
            told.append(String.format(
                    "  %s: %d, median %.0f ms, 95th percentile %.0f ms, longest %.0f ms%n",
                    kind, sorted.size(), at(sorted, 0.5), at(sorted, 0.95), sorted.get(sorted.size() - 1)));
        });
        return told.append("  answers: ").append(answers).append('\n').toString();
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.get((int) (share * (sorted.size() - 1)));
    }
}
