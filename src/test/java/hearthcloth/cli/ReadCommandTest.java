package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.photo.heldaside.HeldAside;
import hearthcloth.photo.heldaside.Shot;
import hearthcloth.photo.heldaside.TruePiece;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadCommandTest {

    /** Ten scraps on concrete beside a sheet of Letter. */
    private static final Shot TABLE = HeldAside.scene(3);

    private static final Pattern FOUND = Pattern.compile("Found (\\d+) pieces");
    private static final Pattern LEFT_OUT = Pattern.compile("Left out of the file because of a doubt: (\\d+) piece");

    private static byte[] photograph = new byte[0];

    @TempDir
    private Path folder = Path.of("");

    @BeforeAll
    static void takeThePhotograph() {
        photograph = TABLE.jpeg();
    }

    private Path csv() {
        return folder.resolve("scraps.csv");
    }

    private Typed read(String... more) {
        List<String> words = new ArrayList<>(List.of("read", "-", "--sheet", "letter", "--out", csv().toString()));
        words.addAll(List.of(more));
        return Typed.withInput(photograph, words.toArray(String[]::new)).plain();
    }

    private List<Piece> written() throws IOException {
        StashFile.Reading reading = StashFile.read(Files.readString(csv()), Optional.empty());
        assertThat(reading).isInstanceOf(StashFile.Read.class);
        return ((StashFile.Read) reading).stash().pieces();
    }

    private static int number(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .findFirst()
                .map((MatchResult result) -> Integer.parseInt(result.group(1)))
                .orElse(0);
    }

    @Test
    void a_photograph_becomes_a_stash_file_that_plan_reads() throws IOException {
        Typed typed = read();
        assertThat(typed.code()).as(typed.err()).isZero();
        int found = number(FOUND, typed.out());
        int left = number(LEFT_OUT, typed.out());
        assertThat(found).isBetween(9, 11);
        assertThat(written()).hasSize(found - left).hasSizeGreaterThan(3);
        assertThat(typed.err()).isEmpty();
        Path out = folder.resolve("out");
        Typed planned = Typed.words(
                        "plan", csv().toString(), "--out", out.toString(), "--size", "6 in", "--proposals", "1")
                .plain();
        assertThat(planned.code()).as(planned.err()).isZero();
        assertThat(out.resolve("1/plan.json")).exists();
    }

    @Test
    void what_is_written_can_be_cut_from_what_lay_there() throws IOException {
        read("--keep-doubtful");
        List<Double> there = TABLE.truth().pieces().stream()
                .map(TruePiece::rim)
                .map(rim -> LargestRectangle.inside(rim).area())
                .sorted()
                .toList();
        List<Double> said = written().stream().map(Piece::areaMm2).sorted().toList();
        assertThat(said).hasSameSizeAs(there);
        for (int i = 0; i < said.size(); i++) {
            assertThat(said.get(i)).isBetween(0.7 * there.get(i), there.get(i) * 1.005);
        }
    }

    @Test
    void sizes_lie_on_the_marks_of_the_ruler_she_has() throws IOException {
        read();
        assertThat(written()).allSatisfy(piece -> {
            assertThat(piece.size().width().nm() % Ruler.EIGHTHS.step().nm()).isZero();
            assertThat(piece.size().height())
                    .isGreaterThanOrEqualTo(piece.size().width());
        });
        Typed metric = read("--unit", "cm", "--replace");
        assertThat(metric.out()).contains(" cm").doesNotContain(" in\n");
        assertThat(written())
                .allSatisfy(piece -> assertThat(piece.size().width().nm()
                                % Ruler.MILLIMETRES.step().nm())
                        .isZero());
    }

    @Test
    void each_line_has_a_fabric_a_colour_and_the_numbers_in_the_picture() throws IOException {
        Typed typed = read("--keep-doubtful");
        String file = Files.readString(csv());
        assertThat(file).startsWith("fabric,width,length,count,colour,faces,nap,washed,note\r\n");
        assertThat(file.lines().skip(1)).allMatch(line -> line.contains(",#") && line.contains("in the picture: "));
        assertThat(typed.out()).contains("usable", "strip", "L-shape", "triangle", "plain", "figured", " ± ");
        assertThat(written().stream()
                        .map(piece -> piece.fabric().name())
                        .distinct()
                        .count())
                .isBetween(3L, 6L);
    }

    @Test
    void the_picture_is_drawn_where_asked_and_nothing_is_written_over_unasked() throws IOException {
        Path picture = folder.resolve("read.png");
        assertThat(read("--picture", picture.toString()).out()).contains("Drawn on the picture", "read.png");
        assertThat(Files.readAllBytes(picture)).startsWith(0x89, 'P', 'N', 'G');
        String before = Files.readString(csv());
        read().refused("there is a file", "--replace");
        assertThat(csv()).hasContent(before);
        Files.delete(csv());
        read("--picture", picture.toString()).refused("--picture", "there is a file");
        assertThat(csv()).doesNotExist();
        assertThat(read("--replace", "--picture", picture.toString()).code()).isZero();
        try (var held = Files.list(folder)) {
            assertThat(held.map(path -> String.valueOf(path.getFileName())))
                    .containsExactlyInAnyOrder("scraps.csv", "read.png");
        }
    }

    @Test
    void a_piece_in_doubt_is_said_and_left_out_unless_wanted() throws IOException {
        Shot shot = HeldAside.awkward(3);
        byte[] awkward = shot.jpeg();
        String sheet = shot.truth().sheet().name().toLowerCase(Locale.ROOT);
        Typed without = Typed.withInput(awkward, "read", "-", "--sheet", sheet, "--out", csv().toString())
                .plain();
        assertThat(without.out()).contains("In doubt:", "Left out of the file because of a doubt", "--keep-doubtful");
        int sure = written().size();
        int left = number(LEFT_OUT, without.out());
        Typed with = Typed.withInput(
                        awkward,
                        "read",
                        "-",
                        "--sheet",
                        sheet,
                        "--out",
                        csv().toString(),
                        "--keep-doubtful",
                        "--replace")
                .plain();
        assertThat(with.out()).contains("In doubt:").doesNotContain("Left out of the file because of a doubt");
        assertThat(written()).hasSizeBetween(sure + 1, sure + left);
    }
}
