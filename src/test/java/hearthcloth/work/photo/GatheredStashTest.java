package hearthcloth.work.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the pieces of a reading to the lines of a stash. */
class GatheredStashTest {

    private static final Lab GREEN = new Lab(45, -30, 25);
    private static final Lab BLUE = new Lab(35, 5, -40);

    private static ReadPiece piece(int number, double width, double height, Lab colour, boolean figured) {
        PieceAppearance.Pattern pattern = figured ? PieceAppearance.Pattern.FIGURED : PieceAppearance.Pattern.PLAIN;
        return new ReadPiece(
                number,
                new PieceOutline(List.of(), List.of(), List.of()),
                new LargestRectangle.Box(new Point(0, 0), width, height, 0.3),
                new PieceAppearance(colour, colour, colour, pattern, 40),
                List.of());
    }

    /** Green on the whole, of two greens. */
    private static ReadPiece figured(int number, Lab dark, Lab light) {
        ReadPiece plain = green(number, 100, 50);
        PieceAppearance look = new PieceAppearance(GREEN, dark, light, PieceAppearance.Pattern.FIGURED, 40);
        return new ReadPiece(number, plain.outline(), plain.usable(), look, List.of());
    }

    private static ReadPiece green(int number, double width, double height) {
        return piece(number, width, height, GREEN, false);
    }

    @Test
    void pieces_that_look_alike_are_one_fabric_named_by_its_colour_and_figure() {
        List<ReadPiece> read = List.of(
                green(1, 100, 50), piece(2, 100, 50, BLUE, true), green(3, 60, 60), piece(4, 90, 40, BLUE, false));

        List<FabricGroup> groups = FabricGroup.of(read);

        String blue = groups.get(2).fabric().name();
        assertThat(groups)
                .extracting(
                        group -> group.pieces().stream().map(ReadPiece::number).toList())
                .containsExactly(List.of(1, 3), List.of(2), List.of(4));
        assertThat(groups.get(0).fabric())
                .isEqualTo(new Fabric(read.get(0).look().name(), GREEN.toColour(), Fabric.Faces.SAME, Fabric.Nap.ANY));
        assertThat(groups.get(1).fabric().name()).isEqualTo(blue + " print");
    }

    @Test
    void two_fabrics_of_one_name_are_numbered_apart() {
        ReadPiece spotted = figured(1, new Lab(20, -20, 15), new Lab(70, -40, 35));
        ReadPiece fine = figured(2, new Lab(40, -28, 23), new Lab(50, -32, 27));
        List<FabricGroup> groups = FabricGroup.of(List.of(spotted, fine));

        assertThat(groups).hasSize(2);
        String name = groups.get(0).fabric().name();
        assertThat(name).endsWith(" print");
        assertThat(groups.get(1).fabric().name()).isEqualTo(name + " 2");
    }

    /** Rounded down to the ruler's marks, the longer side as the length: by hand, 163.9 mm is 6 3/8 in and some. */
    @ParameterizedTest
    @CsvSource({
        "163.9, 80.2, MILLIMETRES, 80, 163",
        "80.2, 163.9, MILLIMETRES, 80, 163",
        "50, 50, MILLIMETRES, 50, 50",
        "10, 40, MILLIMETRES, 10, 40",
    })
    void what_can_surely_be_cut_is_rounded_down(double one, double other, Ruler ruler, long width, long length) {
        assertThat(GatheredStash.size(green(1, one, other), ruler))
                .contains(new Size(Length.mm(width), Length.mm(length)));
    }

    @Test
    void on_a_ruler_in_inches_it_is_rounded_down_to_eighths_and_less_than_a_centimetre_is_left_out() {
        assertThat(GatheredStash.size(green(1, 163.9, 80.2), Ruler.EIGHTHS))
                .contains(new Size(Length.inches(25, 8), Length.inches(51, 8)));
        assertThat(GatheredStash.size(green(1, 163.9, 9.99), Ruler.MILLIMETRES)).isEmpty();
        assertThat(GatheredStash.size(green(1, 163.9, 10.5), Ruler.EIGHTHS)).isEmpty();
    }

    @Test
    void each_fabric_and_size_is_a_line_the_largest_first_and_says_which_pieces_of_the_picture_it_is() {
        List<ReadPiece> read = List.of(
                green(1, 100, 50),
                piece(2, 200, 90, BLUE, false),
                green(3, 120, 60),
                green(4, 50.9, 100.9),
                green(5, 300, 5),
                green(6, 400, 300));

        GatheredStash gathered =
                GatheredStash.of(FabricGroup.of(read), Voice.english(Ruler.MILLIMETRES), taken -> taken.number() != 6);

        assertThat(gathered.lines()).isEqualTo(3);
        assertThat(gathered.stash().pieces()).extracting(Piece::id).containsExactly("2", "3-1", "3-2", "4");
        assertThat(gathered.stash().pieces())
                .extracting(Piece::size)
                .containsExactly(
                        new Size(Length.mm(60), Length.mm(120)),
                        new Size(Length.mm(50), Length.mm(100)),
                        new Size(Length.mm(50), Length.mm(100)),
                        new Size(Length.mm(90), Length.mm(200)));
        assertThat(gathered.stash().pieces()).extracting(Piece::washed).containsOnly(Piece.Washed.UNKNOWN);
        assertThat(gathered.notes())
                .isEqualTo(Map.of(
                        2, Map.of("note", "in the picture: 3"),
                        3, Map.of("note", "in the picture: 1 4"),
                        4, Map.of("note", "in the picture: 2")));
    }

    @Test
    void written_as_a_file_it_reads_back_as_the_same_stash() {
        GatheredStash gathered = GatheredStash.of(
                FabricGroup.of(List.of(green(1, 100, 50), green(2, 100, 50), piece(3, 80, 70, BLUE, true))),
                Voice.english(Ruler.MILLIMETRES),
                taken -> true);

        StashFile.Reading reading = StashFile.read(gathered.write(Ruler.MILLIMETRES), Optional.empty());

        assertThat(reading).isInstanceOfSatisfying(StashFile.Read.class, read -> {
            assertThat(read.stash()).isEqualTo(gathered.stash());
            assertThat(read.kept()).isEqualTo(gathered.notes());
        });
    }
}
