package hearthcloth.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cli.help.Columns;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.FabricGroup;
import hearthcloth.work.photo.GatheredStash;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class ReadReportTest {

    private static final Lab GREEN = new Lab(45, -30, 25);

    private static final Doubt TURNED = new Doubt(Doubt.Kind.SHEET, Sentence.itself("The sheet is\nbent."));
    private static final Doubt THREADS = new Doubt(Doubt.Kind.FRAYED, Sentence.itself("It is frayed."));
    private static final Doubt FAINT = new Doubt(Doubt.Kind.FAINT, Sentence.itself("It is faint."));

    /** A rectangle lying along the axes, in millimetres, each side known to half a millimetre. */
    private static ReadPiece piece(
            int number, double width, double height, PieceAppearance.Pattern look, Doubt... doubts) {
        MeasuredLength wide = new MeasuredLength(Length.mm(Math.round(width)), new Length(500_001));
        MeasuredLength high = new MeasuredLength(Length.mm(Math.round(height)), new Length(500_001));
        return new ReadPiece(
                number,
                new PieceOutline(
                        List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)),
                        List.of(),
                        List.of(wide, high, wide, high)),
                new LargestRectangle.Box(new Point(0, 0), width, height, 0),
                new PieceAppearance(GREEN, GREEN, GREEN, look, 40),
                List.of(doubts));
    }

    private static Reading.Read read(ReadPiece... pieces) {
        return new Reading.Read(List.of(pieces), new KeptScale(100, 100, 210, 297, List.of(), 0, List.of()).scale());
    }

    private static List<String> said(Consumer<ReadReport> asked) {
        return said(Voice.english(Ruler.MILLIMETRES), asked);
    }

    private static List<String> said(Voice voice, Consumer<ReadReport> asked) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        asked.accept(new ReadReport(new PrintStream(bytes, true, StandardCharsets.UTF_8), voice));
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private static final Reading.Read THREE = read(
            piece(1, 100.9, 50.4, PieceAppearance.Pattern.PLAIN),
            piece(2, 60, 60, PieceAppearance.Pattern.PLAIN, TURNED, FAINT),
            piece(3, 300, 9, PieceAppearance.Pattern.FIGURED));

    @Test
    void each_piece_is_a_row_of_a_table_whose_columns_stand_in_line() {
        List<FabricGroup> groups = FabricGroup.of(THREE.pieces());
        List<String> lines = said(report -> report.found(THREE, groups));

        assertThat(lines.get(0)).isEqualTo("Found 3 pieces, by the look of them of 2 fabrics.");
        assertThat(lines.get(1)).isEmpty();
        String head = lines.get(2);
        assertThat(head.strip().split(" +")).containsExactly("usable", "shape", "colour", "look", "fabric", "sides");
        String[] first = lines.get(3).strip().split("  +", -1);
        // rounded down to whole millimetres, the longer side second; sides as they are, give or take what is rounded up
        assertThat(first[0]).isEqualTo("1");
        assertThat(first[1]).isEqualTo("5 × 10 cm");
        assertThat(first[2]).isEqualTo("rectangle");
        assertThat(first[3]).isEqualTo(THREE.pieces().get(0).look().name());
        assertThat(first[4]).isEqualTo("plain");
        assertThat(first[5]).isEqualTo(groups.get(0).fabric().name());
        assertThat(first[6]).isEqualTo("10.1 ± 0.1, 5 ± 0.1, 10.1 ± 0.1, 5 ± 0.1 cm");
        assertThat(lines.get(4).strip().split("  +")).startsWith("2 ?", "6 × 6 cm", "square");
        assertThat(lines.get(5).strip().split("  +"))
                .startsWith("3", "too little", "strip")
                .contains("figured");
        for (String line : lines.subList(3, 6)) {
            assertThat(line.charAt(head.indexOf("shape") - 1)).isEqualTo(' ');
            assertThat(line.charAt(head.indexOf("shape"))).isNotEqualTo(' ');
            assertThat(line.charAt(head.indexOf("sides"))).isBetween('0', '9');
            assertThat(line).doesNotEndWith(" ");
        }
    }

    @Test
    void a_picture_without_pieces_is_said_so() {
        assertThat(said(report -> report.found(read(), List.of())))
                .singleElement()
                .asString()
                .startsWith("No piece of cloth was found beside the sheet.");
    }

    @Test
    void a_doubt_that_all_share_is_told_once_and_every_other_with_its_piece() {
        assertThat(said(report -> report.doubts(THREE, piece -> piece.doubts().isEmpty())))
                .containsExactly(
                        "",
                        "In doubt:",
                        "  All pieces: The sheet is bent.",
                        "  Piece 2: It is faint.",
                        "",
                        "Left out of the file because of a doubt: 1 piece (2). Take the picture again as said, or add"
                                + " --keep-doubtful to write it too.",
                        "Left out because no rectangle a centimetre wide can be cut from it: 1 piece (3).");
        // with all kept there is nothing to be left out for a doubt
        assertThat(said(report -> report.doubts(THREE, piece -> true)))
                .noneMatch(line -> line.contains("because of a doubt"))
                .anyMatch(line -> line.contains("1 piece (3)"));
        assertThat(said(report -> report.doubts(THREE, piece -> false)))
                .anyMatch(line -> line.contains("3 pieces (1, 2, 3)") && line.contains("to write them too"))
                .noneMatch(line -> line.contains("centimetre wide"));
        Reading.Read sure = read(THREE.pieces().get(0));
        assertThat(said(report -> report.doubts(sure, piece -> true))).containsExactly("");
    }

    @Test
    void threads_are_told_and_leave_the_piece_in() {
        ReadPiece frayed = piece(1, 100, 50, PieceAppearance.Pattern.PLAIN, THREADS);
        assertThat(frayed.isDoubted()).isFalse();
        assertThat(said(report -> report.doubts(read(frayed), piece -> !piece.isDoubted())))
                .containsExactly("", "Good to know:", "  Piece 1: It is frayed.", "");
        ReadPiece both = piece(1, 100, 50, PieceAppearance.Pattern.PLAIN, THREADS, FAINT);
        assertThat(said(report -> report.doubts(read(both), piece -> !piece.isDoubted())))
                .containsSubsequence(
                        "In doubt:", "  Piece 1: It is faint.", "Good to know:", "  Piece 1: It is frayed.");
    }

    @Test
    void what_was_written_is_counted_in_pieces_fabrics_and_lines() {
        ReadPiece one = piece(1, 100, 50, PieceAppearance.Pattern.PLAIN);
        ReadPiece same = piece(2, 100, 50, PieceAppearance.Pattern.PLAIN);
        ReadPiece other = piece(3, 80, 50, PieceAppearance.Pattern.PLAIN);
        GatheredStash gathered = GatheredStash.of(
                FabricGroup.of(List.of(one, same, other)), Voice.english(Ruler.MILLIMETRES), piece -> true);
        assertThat(said(report -> report.wrote("a.csv", gathered)))
                .singleElement()
                .asString()
                .startsWith("Wrote a.csv: 3 pieces of 1 fabric in 2 lines. ");
        assertThat(said(report -> report.line("Drawn."))).containsExactly("Drawn.");
    }

    /** Hangul stands two columns wide (docs/sources.md#wide-letters). */
    @Test
    void the_table_stands_in_line_in_wide_letters_too() {
        Voice korean = Voice.of(Language.KOREAN, Ruler.MILLIMETRES);
        List<String> lines = said(korean, report -> report.found(THREE, FabricGroup.of(THREE.pieces())));

        assertThat(lines.get(0)).isEqualTo("천 3장을 찾았습니다. 겉모습으로 보아 2가지입니다.");
        int head = Columns.of(lines.get(2).substring(0, lines.get(2).indexOf("변")));
        int first = Columns.of(lines.get(3).substring(0, lines.get(3).indexOf("10.1 ±")));
        assertThat(first).isEqualTo(head);
        assertThat(lines.get(3)).contains("직사각형", "민무늬");
    }
}
