package hearthcloth.cli.report;

import hearthcloth.cli.help.Columns;
import hearthcloth.measure.Rounding;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.wish.ListWords;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.FabricGroup;
import hearthcloth.work.photo.GatheredStash;
import hearthcloth.work.photo.ShapeWords;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Reports what was read from a photograph: a table of the pieces, every doubt, what was written and what was not. */
public final class ReadReport {

    private static final List<String> COLUMNS = List.of("usable", "shape", "colour", "look", "fabric", "sides");

    private final PrintStream out;
    private final Voice voice;

    public ReadReport(PrintStream out, Voice voice) {
        this.out = out;
        this.voice = voice;
    }

    private ReportingWords words() {
        return voice.rooms().reporting();
    }

    public void line(String sentence) {
        out.println(sentence);
    }

    public void found(Reading.Read read, List<FabricGroup> groups) {
        if (read.pieces().isEmpty()) {
            out.println(words().readNone());
            return;
        }
        out.println(words().readFound(groups.size(), read.pieces().size()));
        out.println();
        List<String> head = new ArrayList<>(List.of(""));
        COLUMNS.forEach(column -> head.add(words().readColumn(column)));
        List<List<String>> rows = new ArrayList<>();
        rows.add(head);
        for (ReadPiece piece : read.pieces()) {
            rows.add(row(piece, groups));
        }
        table(rows);
    }

    private List<String> row(ReadPiece piece, List<FabricGroup> groups) {
        String fabric = groups.stream()
                .filter(group -> group.pieces().contains(piece))
                .map(group -> group.fabric().name())
                .findFirst()
                .orElse("");
        return List.of(
                piece.number() + (piece.isDoubted() ? " ?" : ""),
                GatheredStash.size(piece, voice.ruler())
                        .map(size -> voice.write(size, Rounding.DOWN))
                        .orElseGet(words()::readLittle),
                ShapeWords.of(piece.outline(), voice),
                piece.look().name(),
                words().readLook(piece.look().pattern() == PieceAppearance.Pattern.FIGURED ? "yes" : "no"),
                fabric,
                sides(piece.outline().sides()));
    }

    private String sides(List<MeasuredLength> sides) {
        return String.join(
                        ", ",
                        sides.stream()
                                .map(side -> voice.number(side.length(), Rounding.NEAREST) + " ± "
                                        + voice.number(side.giveOrTake(), Rounding.UP))
                                .toList())
                + " " + voice.unit();
    }

    private void table(List<List<String>> rows) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int column = i;
                int wide = rows.stream()
                        .mapToInt(other -> Columns.of(other.get(column)))
                        .max()
                        .orElse(0);
                line.append("  ").append(Columns.padded(row.get(i), wide));
            }
            out.println(line.toString().stripTrailing());
        }
    }

    /** Reports every doubt in its own words, then which pieces are left out of the file and why. */
    public void doubts(Reading.Read read, Predicate<ReadPiece> taken) {
        List<ReadPiece> pieces = read.pieces();
        said(read, words().readDoubts(), Doubt::isOpen);
        said(read, words().readKnow(), doubt -> !doubt.isOpen());
        out.println();
        List<ReadPiece> left = pieces.stream().filter(taken.negate()).toList();
        if (!left.isEmpty()) {
            out.println(words().readLeft(left.size(), numbers(left)));
        }
        List<ReadPiece> little = pieces.stream()
                .filter(taken)
                .filter(piece -> GatheredStash.size(piece, voice.ruler()).isEmpty())
                .toList();
        if (!little.isEmpty()) {
            out.println(words().readNarrow(little.size(), numbers(little)));
        }
    }

    private void said(Reading.Read read, String title, Predicate<Doubt> which) {
        List<String> lines = new ArrayList<>();
        read.sharedDoubts().stream().filter(which).forEach(doubt -> lines.add("  " + words().readAll(said(doubt))));
        for (ReadPiece piece : read.pieces()) {
            piece.ownDoubts().stream()
                    .filter(which)
                    .forEach(doubt -> lines.add("  " + words().readPiece(said(doubt), String.valueOf(piece.number()))));
        }
        if (!lines.isEmpty()) {
            out.println();
            out.println(title);
            lines.forEach(out::println);
        }
    }

    public void wrote(String file, GatheredStash gathered) {
        out.println(words().readWrote(
                        gathered.stash().fabrics().size(),
                        file,
                        gathered.lines(),
                        gathered.stash().pieces().size()));
    }

    private String said(Doubt doubt) {
        return ListWords.line(doubt.sentence().in(voice));
    }

    private static String numbers(List<ReadPiece> pieces) {
        return pieces.stream().map(piece -> String.valueOf(piece.number())).collect(Collectors.joining(", "));
    }
}
