package hearthcloth.cli.report;

import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.wish.ListWords;
import hearthcloth.work.photo.FabricGroup;
import hearthcloth.work.photo.GatheredStash;
import hearthcloth.work.photo.ShapeWords;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Reports what was read from a photograph: a table of the pieces, every doubt, what was written and what was not. */
public final class ReadReport {

    private static final List<String> HEAD = List.of("", "usable", "shape", "colour", "look", "fabric", "sides");

    private final PrintStream out;
    private final Ruler ruler;

    public ReadReport(PrintStream out, Ruler ruler) {
        this.out = out;
        this.ruler = ruler;
    }

    public void line(String sentence) {
        out.println(sentence);
    }

    public void found(Reading.Read read, List<FabricGroup> groups) {
        if (read.pieces().isEmpty()) {
            out.println(
                    "No piece of cloth was found beside the sheet. Lay the pieces on ground they stand out from, with"
                            + " some of it showing round each.");
            return;
        }
        out.println("Found " + ListWords.count(read.pieces().size(), "piece") + ", by the look of them of "
                + ListWords.count(groups.size(), "fabric") + ".");
        out.println();
        List<List<String>> rows = new ArrayList<>(List.of(HEAD));
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
                GatheredStash.size(piece, ruler)
                        .map(size -> ruler.write(size, Rounding.DOWN))
                        .orElse("too little"),
                ShapeWords.of(piece.outline()),
                piece.look().name(),
                piece.look().pattern() == PieceAppearance.Pattern.FIGURED ? "figured" : "plain",
                fabric,
                sides(piece.outline().sides()));
    }

    private String sides(List<MeasuredLength> sides) {
        return String.join(
                        ", ",
                        sides.stream()
                                .map(side -> ruler.number(side.length(), Rounding.NEAREST) + " ± "
                                        + ruler.number(side.giveOrTake(), Rounding.UP))
                                .toList())
                + " " + ruler.unit().symbol();
    }

    private void table(List<List<String>> rows) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int column = i;
                int wide = rows.stream()
                        .mapToInt(other -> other.get(column).length())
                        .max()
                        .orElse(0);
                line.append("  ")
                        .append(row.get(i))
                        .append(" ".repeat(wide - row.get(i).length()));
            }
            out.println(line.toString().stripTrailing());
        }
    }

    /** Reports every doubt in its own words, then which pieces are left out of the file and why. */
    public void doubts(Reading.Read read, Predicate<ReadPiece> taken) {
        List<ReadPiece> pieces = read.pieces();
        said(read, "In doubt:", Doubt::isOpen);
        said(read, "Good to know:", doubt -> !doubt.isOpen());
        out.println();
        List<ReadPiece> left = pieces.stream().filter(taken.negate()).toList();
        if (!left.isEmpty()) {
            out.println("Left out of the file because of a doubt: " + numbers(left)
                    + ". Take the picture again as said, or add --keep-doubtful to write "
                    + (left.size() == 1 ? "it" : "them") + " too.");
        }
        List<ReadPiece> little = pieces.stream()
                .filter(taken)
                .filter(piece -> GatheredStash.size(piece, ruler).isEmpty())
                .toList();
        if (!little.isEmpty()) {
            out.println("Left out because no rectangle a centimetre wide can be cut from it: " + numbers(little) + ".");
        }
    }

    private void said(Reading.Read read, String title, Predicate<Doubt> which) {
        List<String> lines = new ArrayList<>();
        read.sharedDoubts().stream().filter(which).forEach(doubt -> lines.add("  All pieces: " + line(doubt)));
        for (ReadPiece piece : read.pieces()) {
            piece.ownDoubts().stream()
                    .filter(which)
                    .forEach(doubt -> lines.add("  Piece " + piece.number() + ": " + line(doubt)));
        }
        if (!lines.isEmpty()) {
            out.println();
            out.println(title);
            lines.forEach(out::println);
        }
    }

    private static String line(Doubt doubt) {
        return ListWords.line(doubt.sentence().english());
    }

    public void wrote(String file, GatheredStash gathered) {
        out.println("Wrote " + file + ": "
                + ListWords.count(gathered.stash().pieces().size(), "piece") + " of "
                + ListWords.count(gathered.stash().fabrics().size(), "fabric") + " in "
                + ListWords.count(gathered.lines(), "line")
                + ". A picture does not show which side is the right one, or the selvage: both faces are written as the"
                + " same, and the longer side as the length. Change the file where that is not so.");
    }

    private static String numbers(List<ReadPiece> pieces) {
        return ListWords.count(pieces.size(), "piece") + " ("
                + String.join(
                        ", ",
                        pieces.stream()
                                .map(piece -> String.valueOf(piece.number()))
                                .toList())
                + ")";
    }
}
