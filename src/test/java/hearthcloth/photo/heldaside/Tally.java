package hearthcloth.photo.heldaside;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Adds judged pieces up into a table. */
final class Tally {

    private static final String HEAD = String.format(
            Locale.ROOT,
            "%-24s %5s %6s | %5s %5s | %5s %5s %5s %5s | %5s %5s | %5s %5s %6s %5s%n",
            "",
            "clear",
            "found",
            "sides",
            "corn%",
            "p50",
            "p90",
            "p95",
            "max",
            "mm95",
            "held%",
            "large",
            "p95mm",
            "maxmm",
            "area%");

    private Tally() {}

    static String table(List<Judged> all, Map<String, Function<TruePiece, String>> ways) {
        StringBuilder text = new StringBuilder(HEAD);
        text.append(line("all", all));
        ways.forEach((name, way) -> {
            Map<String, List<Judged>> groups = new TreeMap<>();
            all.forEach(j -> groups.computeIfAbsent(way.apply(j.truth()), k -> new ArrayList<>())
                    .add(j));
            groups.forEach((kind, some) -> text.append(line(name + " " + kind, some)));
        });
        return text.toString();
    }

    private static String line(String name, List<Judged> all) {
        List<Judged> clear = all.stream().filter(Judged::isClear).toList();
        List<Judged> found = clear.stream().filter(Judged::found).toList();
        List<Judged.SideError> sides =
                found.stream().flatMap(j -> j.sides().stream()).toList();
        long large = found.stream().filter(j -> j.usable().tooLarge()).count();
        return String.format(
                Locale.ROOT,
                "%-24s %5d %5.1f%% | %5d %4.0f%% | %5.2f %5.2f %5.2f %5.2f | %5.2f %4.0f%% | %5d %5.2f %6.2f %4.0f%%%n",
                name,
                clear.size(),
                share(found.size(), clear.size()),
                sides.size(),
                share(found.stream().filter(Judged::corresponds).count(), found.size()),
                part(sides, 0.5, Judged.SideError::ofAllowed),
                part(sides, 0.9, Judged.SideError::ofAllowed),
                part(sides, 0.95, Judged.SideError::ofAllowed),
                part(sides, 1, Judged.SideError::ofAllowed),
                part(sides, 0.95, Judged.SideError::mm),
                share(sides.stream().filter(Judged.SideError::holds).count(), sides.size()),
                large,
                part(found, 0.95, j -> j.usable().overhang()),
                part(found, 1, j -> j.usable().overhang()),
                100 * part(found, 0.5, j -> j.usable().share()));
    }

    private static double share(long of, long all) {
        return all == 0 ? 0 : 100.0 * of / all;
    }

    /** The value that a share of all does not pass. */
    static <T> double part(List<T> all, double share, ToDoubleFunction<T> value) {
        double[] sorted = all.stream().mapToDouble(value).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }
}
