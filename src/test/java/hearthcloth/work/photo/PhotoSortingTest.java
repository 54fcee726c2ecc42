package hearthcloth.work.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What she puts right before the pieces of a photograph come in: {@link PhotoSorting}, {@link SeenTwice}, {@link PieceState}, {@link PiecesTaken}. */
class PhotoSortingTest {

    private static final Lab GREEN = new Lab(45, -30, 25);
    private static final Lab BLUE = new Lab(35, 5, -40);

    private static ReadPiece piece(int number, double width, double height, Lab colour, Doubt.Kind... doubts) {
        List<Point> corners =
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height));
        List<MeasuredLength> sides = List.of(
                MeasuredLength.mm(width, 0.5),
                MeasuredLength.mm(height, 0.5),
                MeasuredLength.mm(width, 0.5),
                MeasuredLength.mm(height, 0.5));
        return new ReadPiece(
                number,
                new PieceOutline(corners, corners, sides),
                new LargestRectangle.Box(new Point(width / 2, height / 2), width, height, 0),
                new PieceAppearance(colour, colour, colour, PieceAppearance.Pattern.PLAIN, 40),
                List.of(doubts).stream()
                        .map(kind -> new Doubt(kind, Sentence.itself(kind.name())))
                        .toList());
    }

    /** Two greens, a blue that is doubted, and a green that runs off the picture. */
    private static PhotoSorting sorted() {
        return PhotoSorting.of(
                List.of(
                        piece(1, 120, 80, GREEN),
                        piece(2, 60, 90, BLUE, Doubt.Kind.FAINT),
                        piece(3, 50, 50, GREEN),
                        piece(4, 70, 30, GREEN, Doubt.Kind.CUT_OFF)),
                Set.of());
    }

    private static List<String> keys(List<SortedPiece> pieces) {
        return pieces.stream().map(SortedPiece::key).toList();
    }

    @Test
    void each_fabric_holds_the_pieces_that_look_like_it_in_reading_order() {
        PhotoSorting sorting = sorted();

        assertThat(keys(sorting.pieces())).containsExactly("1", "2", "3", "4");
        assertThat(sorting.groups()).hasSize(2);
        assertThat(keys(sorting.of(sorting.groups().get(0)))).containsExactly("1", "3", "4");
        assertThat(keys(sorting.of(sorting.groups().get(1)))).containsExactly("2");
    }

    @Test
    void no_name_is_given_that_the_stash_has_however_it_is_written() {
        String name = sorted().groups().get(0).name();
        PhotoSorting again = PhotoSorting.of(
                List.of(piece(1, 120, 80, GREEN)), Set.of(name.toUpperCase(java.util.Locale.ROOT), name + " 2"));

        assertThat(again.groups().get(0).name()).isEqualTo(name + " 3");
    }

    @Test
    void a_piece_that_is_gone_is_told_and_so_is_a_fabric() {
        assertThat(sorted().find("9")).isEmpty();
        assertThatThrownBy(() -> sorted().piece("9"))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("no piece 9 on this photograph");
        assertThatThrownBy(() -> sorted().group("f9")).isInstanceOf(MeasureException.class);
    }

    @Test
    void what_is_doubted_is_open_until_she_has_checked_it() {
        PhotoSorting sorting = sorted();
        assertThat(sorting.piece("1").isSure()).isTrue();
        assertThat(sorting.piece("2").isSure()).isFalse();
        assertThat(sorting.checked("2", true).piece("2").isSure()).isTrue();
        assertThat(sorting.checked("2", true).checked("2", false)).isEqualTo(sorting);
        assertThat(sorting.checked("2", true).piece("4").isSure()).isFalse();
    }

    @Test
    void all_that_is_open_is_confirmed_at_once_but_for_what_is_left_out_or_in_the_stash() {
        PhotoSorting all = sorted().allChecked(Set.of());
        assertThat(all.pieces()).allMatch(SortedPiece::isSure);
        assertThat(all.piece("1").checked()).isFalse();

        assertThat(sorted().allChecked(Set.of("2b")).piece("2").checked()).isFalse();
        assertThat(sorted().dropped("2", true).allChecked(Set.of()).piece("2").checked())
                .isFalse();
    }

    @Test
    void what_runs_off_the_picture_is_left_out_at_once() {
        PhotoSorting without = sorted().withoutRim(Set.of());

        assertThat(without.pieces().stream().filter(SortedPiece::dropped).map(SortedPiece::key))
                .containsExactly("4");
        assertThat(sorted().withoutRim(Set.of("4"))).isEqualTo(sorted());
        assertThat(sorted().checked("4", true).withoutRim(Set.of()).piece("4").dropped())
                .isFalse();
    }

    @Test
    void a_piece_moved_to_another_fabric_leaves_no_empty_one_behind() {
        PhotoSorting sorting = sorted();
        String green = sorting.groups().get(0).id();

        PhotoSorting one = sorting.moved("2", Optional.of(green), Set.of());
        assertThat(one.groups()).hasSize(1);
        assertThat(keys(one.of(one.groups().get(0)))).containsExactly("1", "2", "3", "4");

        PhotoSorting own = one.moved("2", Optional.empty(), Set.of());
        assertThat(own.groups()).hasSize(2);
        assertThat(keys(own.of(own.groups().get(1)))).containsExactly("2");
        assertThat(own.groups().get(1).id()).isNotEqualTo(green);
    }

    @Test
    void what_is_said_of_a_fabric_is_said_of_that_one_alone() {
        PhotoSorting sorting = sorted();
        PieceGroup told = PieceGroup.suggested(sorting.groups().get(1).id(), "Indigo");

        assertThat(sorting.told(told).groups()).containsExactly(sorting.groups().get(0), told);
        assertThatThrownBy(() -> sorting.told(PieceGroup.suggested("f7", "None")))
                .isInstanceOf(MeasureException.class);
    }

    @Test
    void parts_go_to_the_fabric_they_look_like_in_the_place_of_the_whole() {
        PhotoSorting sorting = sorted();
        SortedPiece whole = sorting.piece("1");
        List<SortedPiece> parts = List.of(part("1a", whole, GREEN), part("1b", whole, BLUE));

        PhotoSorting parted = sorting.parted("1", parts, Set.of());

        assertThat(keys(parted.pieces())).containsExactly("1a", "1b", "2", "3", "4");
        assertThat(parted.piece("1a").group()).isEqualTo(whole.group());
        assertThat(parted.piece("1b").group()).isEqualTo(sorting.piece("2").group());
        assertThat(PhotoSorting.isAmong("1", List.of("1b"))).isTrue();
        assertThat(PhotoSorting.isAmong("1ba", List.of("1b"))).isTrue();
        assertThat(PhotoSorting.isAmong("1a", List.of("1b"))).isFalse();
        assertThat(PhotoSorting.isAmong("1", List.of("11"))).isFalse();
    }

    private static SortedPiece part(String key, SortedPiece whole, Lab colour) {
        return new SortedPiece(
                key, piece(1, 60, 80, colour), Optional.empty(), new OutlineOrigin.Read(), false, false, whole.group());
    }

    @Test
    void a_number_that_comes_next_is_beyond_all_pieces_and_all_their_parts() {
        assertThat(sorted().next(Set.of())).isEqualTo(5);
        assertThat(sorted().next(Set.of("7b", "2"))).isEqualTo(8);
        assertThat(new PhotoSorting(List.of(), List.of()).next(Set.of())).isEqualTo(1);
    }

    @Test
    void the_longer_side_is_along_the_grain_where_nobody_marked_it_and_sizes_are_rounded_down() {
        assertThat(sorted().piece("1").size(Ruler.MILLIMETRES)).isEqualTo(new Size(Length.mm(80), Length.mm(120)));
        assertThat(sorted().piece("2").size(Ruler.MILLIMETRES)).isEqualTo(new Size(Length.mm(60), Length.mm(90)));
        assertThat(SortedPiece.size(new LargestRectangle.Box(new Point(0, 0), 50.99, 40.01, 0), Ruler.MILLIMETRES))
                .isEqualTo(new Size(Length.mm(40), Length.mm(50)));
    }

    @Test
    void a_piece_on_two_photographs_is_offered_once_with_the_likest() {
        List<SortedPiece> here = sorted().pieces();
        List<SortedPiece> there = PhotoSorting.of(
                        List.of(
                                piece(1, 50.4, 49.8, GREEN),
                                piece(2, 121, 80.3, GREEN),
                                piece(3, 60, 90, GREEN),
                                piece(4, 119.6, 80, GREEN)),
                        Set.of())
                .pieces();

        // 1 is as large as both 2 and 4 over there, and nearer to 4; blue 2 has its size in green alone
        assertThat(SeenTwice.of(here, there))
                .containsOnly(java.util.Map.entry("1", "4"), java.util.Map.entry("3", "1"));
        assertThat(SeenTwice.of(here, List.of())).isEmpty();
    }

    @Test
    void a_piece_longer_by_more_than_it_may_lie_otherwise_is_another_one() {
        List<SortedPiece> here = List.of(sorted().piece("1"));
        // twice ± 1 mm (1.96 deviations of half a millimetre) and 2 mm: 3.4 mm
        assertThat(SeenTwice.of(
                        here,
                        PhotoSorting.of(List.of(piece(1, 123, 80, GREEN)), Set.of())
                                .pieces()))
                .hasSize(1);
        assertThat(SeenTwice.of(
                        here,
                        PhotoSorting.of(List.of(piece(1, 124, 80, GREEN)), Set.of())
                                .pieces()))
                .isEmpty();
        assertThat(SeenTwice.of(
                        here,
                        PhotoSorting.of(List.of(piece(1, 120, 84, GREEN)), Set.of())
                                .pieces()))
                .isEmpty();
    }

    private static PiecesTaken taking(PhotoSorting sorting, Set<String> taken) {
        return new PiecesTaken(sorting, taken, Ruler.MILLIMETRES);
    }

    @Test
    void a_piece_comes_in_only_where_nothing_is_in_doubt_and_it_is_not_in_already() {
        PhotoSorting sorting = sorted().dropped("3", true);
        assertThat(PieceState.of(sorting.piece("1"), Set.of(), Ruler.MILLIMETRES))
                .isEqualTo(PieceState.READY);
        assertThat(PieceState.of(sorting.piece("1"), Set.of("1"), Ruler.MILLIMETRES))
                .isEqualTo(PieceState.IN);
        assertThat(PieceState.of(sorting.piece("2"), Set.of(), Ruler.MILLIMETRES))
                .isEqualTo(PieceState.LOOK);
        assertThat(PieceState.of(sorting.piece("3"), Set.of(), Ruler.MILLIMETRES))
                .isEqualTo(PieceState.DROPPED);
        PhotoSorting thin = PhotoSorting.of(List.of(piece(1, 40, 0.5, GREEN)), Set.of());
        assertThat(PieceState.of(thin.piece("1"), Set.of(), Ruler.MILLIMETRES)).isEqualTo(PieceState.SMALL);
    }

    @Test
    void what_is_ready_comes_fabric_by_fabric_the_largest_first_and_the_doubted_stays() {
        PiecesTaken taking = taking(sorted().checked("4", true), Set.of());
        List<PiecesTaken.Coming> coming = taking.ready();
        assertThat(coming).hasSize(1);
        assertThat(keys(coming.get(0).pieces())).containsExactly("1", "3", "4");
        assertThat(coming.get(0).best().key()).isEqualTo("1");
        assertThat(taking.left()).containsExactly("2");
        assertThat(taking.isTwice(coming)).isFalse();
        assertThat(taking(sorted(), Set.of("3")).isTwice(coming)).isTrue();
        assertThat(keys(taking(sorted(), Set.of("1")).ready().get(0).pieces())).containsExactly("3");
    }

    @Test
    void pieces_come_in_as_her_ruler_measures_them_in_the_fabric_she_has_of_that_name() {
        PiecesTaken taking = taking(sorted().allChecked(Set.of()), Set.of());
        List<PiecesTaken.Coming> coming = taking.ready();
        PiecesTaken.Arrived arrived = taking.arrived(coming, new Stash(List.of()), 7, name -> "my " + name);
        assertThat(arrived.pieces()).extracting(Piece::id).containsExactly("7", "8", "9", "10");
        assertThat(arrived.keys()).containsExactly("1", "3", "4", "2");
        assertThat(arrived.names()).hasSize(2).allMatch(name -> name.startsWith("my "));
        assertThat(arrived.notes()).isEmpty();
        assertThat(arrived.pieces().get(0).size()).isEqualTo(new Size(Length.mm(80), Length.mm(120)));

        Fabric hers =
                new Fabric("my own", arrived.pieces().get(3).fabric().colour(), Fabric.Faces.RIGHT, Fabric.Nap.ANY);
        Piece there = new Piece("1", hers, new Size(Length.mm(80), Length.mm(80)), Piece.Washed.UNKNOWN, 1);
        PiecesTaken.Arrived joined = taking.arrived(coming, new Stash(List.of(there)), 7, name -> "My Own");
        assertThat(joined.names()).containsExactly("my own", "my own");
        assertThat(joined.pieces()).allMatch(piece -> piece.fabric().equals(hers));
        assertThat(joined.notes()).hasSize(1);
    }
}
