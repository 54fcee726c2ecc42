package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The stash as comma-separated text: one line for each piece, or for several pieces alike.
 *
 * <p>Columns, in any order: {@code fabric}, {@code width} and {@code length} (along the selvage) are required; {@code
 * unit}, {@code count} (1), {@code colour}, {@code faces} (same), {@code nap} (any), {@code washed} and any others may
 * follow. Colour, faces and nap belong to the fabric: given on one of its lines they hold for all. It reads and writes
 * text only; files are the caller's.
 */
public final class StashFile {

    /** More physical pieces than this are a slip of the count (docs/sources.md#input-limits). */
    public static final int MOST_PIECES = 20_000;

    private StashFile() {}

    /** The result of reading. */
    public sealed interface Reading permits Read, Faulty {}

    /**
     * A stash file that was understood.
     *
     * @param warnings what the maker should know, a sentence each
     * @param unit in which the file gives most sizes; empty when no unit is written in it
     * @param kept by line, the contents of other columns
     */
    public record Read(
            Stash stash, List<Sentence> warnings, Optional<Unit> unit, Map<Integer, Map<String, String>> kept)
            implements Reading {
        public Read {
            warnings = List.copyOf(warnings);
            kept = Map.copyOf(kept);
        }
    }

    /** A stash file with something wrong in it; every problem, in the order of lines. Never empty. */
    public record Faulty(List<Problem> problems) implements Reading {
        public Faulty {
            problems = List.copyOf(problems);
        }

        /** The first {@code most} problems, and how many more there are. */
        public List<String> lines(int most, Voice voice) {
            List<String> lines = new ArrayList<>();
            problems.stream().limit(most).forEach(problem -> lines.add(problem.in(voice)));
            if (problems.size() > most) {
                lines.add(RefusingSentences.fileMore(Argument.number(problems.size() - (long) most))
                        .in(voice));
            }
            return List.copyOf(lines);
        }
    }

    /**
     * Reads a stash file.
     *
     * @param assumed the unit of bare numbers where the file has no {@code unit} column
     */
    public static Reading read(String text, Optional<Unit> assumed) {
        return new StashReader(assumed).read(text);
    }

    /**
     * Writes {@code stash}: pieces from one line with one size become one line again. Sizes that lie on the ruler's
     * marks are written in its unit, others in exact millimetres, so that nothing is lost.
     *
     * @param kept what {@link Read#kept} held, or an empty map
     */
    public static String write(Stash stash, Ruler ruler, Map<Integer, Map<String, String>> kept) {
        Map<Piece, Integer> counts = new LinkedHashMap<>();
        for (Piece piece : stash.pieces()) {
            counts.merge(new Piece("", piece.fabric(), piece.size(), piece.washed(), piece.row()), 1, Integer::sum);
        }
        Set<String> others = new LinkedHashSet<>();
        counts.keySet()
                .forEach(piece ->
                        others.addAll(kept.getOrDefault(piece.row(), Map.of()).keySet()));
        boolean isTwoFaced = counts.keySet().stream()
                .anyMatch(piece -> piece.fabric().wrong().isPresent());
        StringBuilder out = new StringBuilder("fabric,width,length,count,colour,faces,nap,washed");
        out.append(isTwoFaced ? ",wrong" : "");
        others.forEach(header -> out.append(',').append(Names.cell(header)));
        out.append("\r\n");
        counts.forEach((piece, count) -> {
            List<String> cells = cells(piece, count, ruler);
            if (isTwoFaced) {
                cells.add(piece.fabric().wrong().map(Colour::hex).orElse(""));
            }
            others.forEach(
                    header -> cells.add(kept.getOrDefault(piece.row(), Map.of()).getOrDefault(header, "")));
            out.append(String.join(",", cells.stream().map(Names::cell).toList()))
                    .append("\r\n");
        });
        return out.toString();
    }

    private static List<String> cells(Piece piece, int count, Ruler ruler) {
        Fabric fabric = piece.fabric();
        return new ArrayList<>(List.of(
                fabric.name(),
                written(piece.size().width(), ruler),
                written(piece.size().height(), ruler),
                Integer.toString(count),
                fabric.colour().isKnown() ? fabric.colour().hex() : "",
                fabric.faces().name().toLowerCase(Locale.ROOT),
                fabric.nap().name().toLowerCase(Locale.ROOT),
                piece.washed() == Piece.Washed.UNKNOWN
                        ? ""
                        : piece.washed().name().toLowerCase(Locale.ROOT)));
    }

    private static String written(Length length, Ruler ruler) {
        boolean onMark = ruler.mark(length, Rounding.NEAREST).equals(length) && ruler != Ruler.SIXTEENTHS;
        return onMark ? ruler.write(length, Rounding.NEAREST) : length.toString();
    }
}
