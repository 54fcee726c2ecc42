package hearthcloth.wish;

import hearthcloth.measure.MeasureException;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a list of fabric names. A name may itself hold commas, so the longest name that fits is taken. */
final class FabricChoice {

    private static final int LISTED = 12;

    private FabricChoice() {}

    /** @param written names parted by commas, or by ends of lines where they were chosen from a list */
    static List<String> parse(String written, Stash stash) {
        if (written.contains("\n")) {
            return written.lines()
                    .map(name -> stash.fabric(name)
                            .orElseThrow(() -> unknown(name, stash))
                            .name())
                    .distinct()
                    .toList();
        }
        String[] words = written.split(",", -1);
        List<String> names = new ArrayList<>();
        int from = 0;
        while (from < words.length) {
            int to = words.length;
            Optional<Fabric> fabric = Optional.empty();
            while (to > from && fabric.isEmpty()) {
                fabric = stash.fabric(joined(words, from, to));
                to -= fabric.isEmpty() ? 1 : 0;
            }
            if (fabric.isEmpty()) {
                throw unknown(words[from].strip(), stash);
            }
            if (!names.contains(fabric.get().name())) {
                names.add(fabric.get().name());
            }
            from = to;
        }
        return List.copyOf(names);
    }

    private static String joined(String[] words, int from, int to) {
        return String.join(",", List.of(words).subList(from, to)).strip();
    }

    private static MeasureException unknown(String name, Stash stash) {
        List<Fabric> fabrics = stash.fabrics();
        String listed = fabrics.stream().limit(LISTED).map(Fabric::name).collect(Collectors.joining(", "));
        return new RefusedException(RefusingSentences.wishFabric(
                Math.max(0, fabrics.size() - LISTED), Argument.text(name), Argument.text(listed)));
    }
}
