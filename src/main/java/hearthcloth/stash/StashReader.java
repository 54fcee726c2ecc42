package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.StashFile.Faulty;
import hearthcloth.stash.StashFile.Read;
import hearthcloth.stash.StashFile.Reading;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads one stash file and collects every problem before it gives up. For one use. */
final class StashReader {

    /**
     * The widest cloth that is accepted; no loom is wider. Source of this and of {@link #LONGEST}:
     * docs/sources.md#input-limits.
     */
    private static final Length WIDEST = Length.of(5, Unit.METRE);

    private static final Length LONGEST = Length.of(100, Unit.METRE);

    /** A line that was understood; its fabric's attributes are still kept apart. */
    private record Line(int row, String fabricKey, Size size, int count, Piece.Washed washed) {}

    private final Optional<Unit> assumed;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();
    private Header header = new Header(Map.of(), Map.of(), 0);
    private final Map<String, FabricLines> fabrics = new LinkedHashMap<>();
    private final Map<Unit, Integer> units = new EnumMap<>(Unit.class);
    private final Map<Integer, Map<String, String>> kept = new LinkedHashMap<>();
    private final List<Integer> bare = new ArrayList<>();

    StashReader(Optional<Unit> assumed) {
        this.assumed = assumed;
    }

    Reading read(String text) {
        List<Csv.Row> rows = Csv.rows(text, StashFile.MOST_PIECES + 2, problems);
        if (rows.isEmpty()) {
            return faulty(0, RefusingSentences.fileEmpty());
        }
        header = Header.of(rows.get(0), problems);
        if (problems.isEmpty() && rows.size() == 1) {
            return faulty(rows.get(0).line(), RefusingSentences.fileNoPieces());
        }
        if (!header.isUsable()) {
            return new Faulty(problems);
        }
        List<Line> lines = new ArrayList<>();
        rows.stream().skip(1).forEach(row -> line(row).ifPresent(lines::add));
        bareNumbers();
        List<Piece> pieces = pieces(lines);
        if (!problems.isEmpty()) {
            problems.sort(Comparator.comparingInt(Problem::line));
            return new Faulty(problems);
        }
        Stash stash = new Stash(pieces);
        stash.washingCaution().ifPresent(warnings::add);
        return new Read(stash, warnings, mostUsedUnit(), kept);
    }

    private Reading faulty(int line, Sentence sentence) {
        problems.add(new Problem(line, "", sentence));
        return new Faulty(problems);
    }

    private void wrong(Csv.Row row, StashColumn column, Sentence sentence) {
        problems.add(new Problem(row.line(), column.word(), sentence));
    }

    private static Argument quoted(String text) {
        return Argument.text(Names.quoted(text));
    }

    private Optional<Line> line(Csv.Row row) {
        int before = problems.size();
        if (row.cells().stream().skip(header.width()).anyMatch(cell -> !cell.isEmpty())) {
            problems.add(new Problem(
                    row.line(),
                    "",
                    RefusingSentences.fileCells(Argument.number(row.cells().size()), Argument.number(header.width()))));
            return Optional.empty();
        }
        String name = name(row);
        Optional<Unit> unit = unit(row);
        Length width = length(row, StashColumn.WIDTH, unit, WIDEST);
        Length length = length(row, StashColumn.LENGTH, unit, LONGEST);
        int count = count(row);
        Piece.Washed washed = choice(row, StashColumn.WASHED, Piece.Washed.class, Piece.Washed.YES, Piece.Washed.NO)
                .orElse(Piece.Washed.UNKNOWN);
        attributes(row, name);
        Map<String, String> unknown = header.kept(row);
        if (!unknown.isEmpty()) {
            kept.put(row.line(), unknown);
        }
        return problems.size() > before
                ? Optional.empty()
                : Optional.of(new Line(row.line(), Names.key(name), new Size(width, length), count, washed));
    }

    private String name(Csv.Row row) {
        String name = header.cell(row, StashColumn.FABRIC);
        if (name.isEmpty()) {
            wrong(row, StashColumn.FABRIC, RefusingSentences.fileNoName());
        } else if (name.codePointCount(0, name.length()) > Names.LONGEST) {
            wrong(
                    row,
                    StashColumn.FABRIC,
                    RefusingSentences.fileLongName(
                            Argument.number(name.codePointCount(0, name.length())),
                            Argument.number(Names.LONGEST),
                            quoted(name)));
        }
        return name;
    }

    private Optional<Unit> unit(Csv.Row row) {
        String word = header.cell(row, StashColumn.UNIT);
        Optional<Unit> unit = Unit.named(word);
        if (unit.isEmpty() && !word.isEmpty()) {
            wrong(row, StashColumn.UNIT, RefusingSentences.fileUnit(quoted(word)));
        }
        return unit.or(() -> word.isEmpty() ? assumed : Optional.of(Unit.CENTIMETRE));
    }

    private Length length(Csv.Row row, StashColumn column, Optional<Unit> unit, Length most) {
        String text = header.cell(row, column);
        try {
            if (unit.isEmpty() && text.matches("[\\d.,/ ½¼¾⅛⅜⅝⅞]*\\d|[\\d ]*[½¼¾⅛⅜⅝⅞]")) {
                bare.add(row.line());
                return Length.ZERO;
            }
            Length length = Measures.length(text, unit.orElse(null));
            if (!length.isPositive()) {
                wrong(row, column, RefusingSentences.fileNothing(quoted(text)));
            } else if (length.isMoreThan(most)) {
                wrong(
                        row,
                        column,
                        RefusingSentences.fileMost(Argument.number(most.nm() / Unit.METRE.nanometres()), quoted(text)));
            }
            countUnit(text, unit);
            return length;
        } catch (MeasureException e) {
            wrong(row, column, RefusedException.sentence(e));
            return Length.ZERO;
        }
    }

    private void countUnit(String text, Optional<Unit> unit) {
        Unit.named(text.replaceFirst("^[\\d\\s.,/½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⁄-]*", ""))
                .or(() -> header.has(StashColumn.UNIT) ? unit : Optional.empty())
                .ifPresent(used -> units.merge(used, 1, Integer::sum));
    }

    private Optional<Unit> mostUsedUnit() {
        return units.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** Reports numbers without a unit as one fault of the file, and not as one of each line. */
    private void bareNumbers() {
        if (!bare.isEmpty()) {
            long lines = bare.stream().distinct().count();
            problems.add(new Problem(
                    bare.get(0), "", RefusingSentences.fileNoUnit(Math.toIntExact(Math.max(0, lines - 1)))));
        }
    }

    private int count(Csv.Row row) {
        String text = header.cell(row, StashColumn.COUNT);
        if (text.isEmpty()) {
            return 1;
        }
        OptionalInt count = text.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
        if (count.isEmpty() || count.getAsInt() == 0 || count.getAsInt() > StashFile.MOST_PIECES) {
            wrong(
                    row,
                    StashColumn.COUNT,
                    RefusingSentences.fileCount(Argument.number(StashFile.MOST_PIECES), quoted(text)));
        }
        return count.orElse(1);
    }

    private void attributes(Csv.Row row, String name) {
        FabricLines lines = fabrics.computeIfAbsent(Names.key(name), key -> new FabricLines(name));
        choice(row, StashColumn.FACES, Fabric.Faces.class, Fabric.Faces.SAME, Fabric.Faces.RIGHT)
                .ifPresent(faces -> lines.faces(faces, row.line(), problems));
        choice(row, StashColumn.NAP, Fabric.Nap.class, Fabric.Nap.ANY, Fabric.Nap.LENGTHWISE)
                .ifPresent(nap -> lines.nap(nap, row.line(), problems));
        colour(row, StashColumn.COLOUR).ifPresent(said -> lines.colour(said, row.line(), warnings));
        colour(row, StashColumn.WRONG).ifPresent(said -> lines.wrong(said, row.line(), warnings));
    }

    private Optional<Colour> colour(Csv.Row row, StashColumn column) {
        String text = header.cell(row, column);
        Optional<Colour> colour = text.isEmpty() ? Optional.empty() : colour(text);
        if (!text.isEmpty() && colour.isEmpty()) {
            wrong(row, column, RefusingSentences.fileColour(quoted(text)));
        }
        return colour;
    }

    /** A number or a name of a screen's colours, otherwise everyday words such as "pale green". */
    private static Optional<Colour> colour(String text) {
        try {
            return Optional.of(Colour.parse(text));
        } catch (ColourException e) {
            return Colour.named(text);
        }
    }

    private <T extends Enum<T>> Optional<T> choice(Csv.Row row, StashColumn column, Class<T> type, T one, T other) {
        String text = header.cell(row, column).toUpperCase(Locale.ROOT);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.equals(one.name()) || text.equals(other.name())) {
            return Optional.of(Enum.valueOf(type, text));
        }
        wrong(
                row,
                column,
                RefusingSentences.fileChoice(
                        Argument.text(one.name().toLowerCase(Locale.ROOT)),
                        Argument.text(other.name().toLowerCase(Locale.ROOT)),
                        quoted(header.cell(row, column))));
        return Optional.empty();
    }

    private List<Piece> pieces(List<Line> lines) {
        Set<Colour> taken = new HashSet<>();
        fabrics.values().forEach(fabric -> fabric.colour().ifPresent(taken::add));
        Map<String, Fabric> made = new LinkedHashMap<>();
        List<Piece> pieces = new ArrayList<>();
        for (Line line : lines) {
            Fabric fabric = made.computeIfAbsent(line.fabricKey(), key -> fabricOf(key, taken));
            if (pieces.size() + line.count() > StashFile.MOST_PIECES) {
                problems.add(new Problem(
                        line.row(),
                        StashColumn.COUNT.word(),
                        RefusingSentences.fileTooMany(Argument.number(StashFile.MOST_PIECES))));
                break;
            }
            for (int n = 1; n <= line.count(); n++) {
                String id = line.count() == 1 ? "" + line.row() : line.row() + "-" + n;
                pieces.add(new Piece(id, fabric, line.size(), line.washed(), line.row()));
            }
        }
        return pieces;
    }

    private Fabric fabricOf(String key, Set<Colour> taken) {
        FabricLines lines = fabrics.get(key);
        if (lines == null) {
            throw new IllegalStateException("no line names the fabric " + key);
        }
        Fabric fabric = lines.fabric(taken);
        taken.add(fabric.colour());
        return fabric;
    }
}
