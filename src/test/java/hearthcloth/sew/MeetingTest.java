package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two halves under the needle. Felled 5 + 10 mm with 12 mm of leeway and a hem of 7 + 7 mm, so that each number tells
 * where it comes from.
 */
class MeetingTest {

    private static final Making MAKING = Making.metric().withHem(Hem.square(Length.mm(7), Length.mm(7)));

    private static final MakerWords WORDS = new MakerWords(Voice.english(Ruler.MILLIMETRES));

    private static final String BESIDE = "(hearth \"a\" 80 x 80 same <| 1A right \"b\" 40 x 80 same)";

    @Test
    void the_wrapping_half_reaches_beyond_the_wrapped_one_by_the_difference_of_the_allowances() {
        Meeting bar = SewnHalves.of(BESIDE, MAKING).meeting(1, "the hearth", "bar 1A");
        assertThat(bar.addedWraps()).isTrue();
        assertThat(bar.wrapping().name()).isEqualTo("bar 1A");
        assertThat(bar.wrapped().name()).isEqualTo("the hearth");
        assertThat(bar.offset()).isEqualTo(Length.mm(5));

        Meeting hearth = SewnHalves.of(BESIDE.replace("<|", "|>"), MAKING).meeting(1, "the hearth", "bar 1A");
        assertThat(hearth.addedWraps()).isFalse();
        assertThat(hearth.wrapping().name()).isEqualTo("the hearth");
        assertThat(hearth.wrapped().name()).isEqualTo("bar 1A");
    }

    /** A bar beside one patch that it touches and another that it does not: a right-side-out one, then a wrong one. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            LEFT;   RIGHT;  TOP;  TOP;  (1A left "b" 40 x 80 right |> (hearth "a" 50 x 80 right |> 1B right "c" 30 x 80 wrong))
            RIGHT;  LEFT;   TOP;  TOP;  ((1B left "c" 30 x 80 wrong |> hearth "a" 50 x 80 right) |> 1A right "b" 40 x 80 right)
            TOP;    TOP;    LEFT; RIGHT; (1A top "b" 80 x 40 right /> (hearth "a" 80 x 50 right /> 1B bottom "c" 80 x 30 wrong))
            BOTTOM; BOTTOM; LEFT; RIGHT; ((1B top "c" 80 x 30 wrong /> hearth "a" 80 x 50 right) /> 1A bottom "b" 80 x 40 right)
            """)
    void on_every_side_the_edge_the_starting_end_and_what_touches_are_named(
            Side side, Side fromBehind, Side start, Side startBehind, String notation) {
        Meeting meeting = SewnHalves.of(notation, MAKING).meeting(2, "the work", "bar 1A");

        assertThat(meeting.side()).isEqualTo(side);
        assertThat(meeting.sideSeen(Face.FRONT)).isEqualTo(side);
        assertThat(meeting.sideSeen(Face.BACK)).isEqualTo(fromBehind);
        assertThat(meeting.start(Face.FRONT)).isEqualTo(start);
        assertThat(meeting.start(Face.BACK)).isEqualTo(startBehind);
        assertThat(WORDS.touching(meeting, Face.FRONT)).isEqualTo("Right sides together.");
        assertThat(WORDS.touching(meeting, Face.BACK)).isEqualTo("Wrong sides together.");
        assertThat(meeting.isBar()).isTrue();
        assertThat(meeting.isJoin()).isFalse();
    }

    @Test
    void where_right_and_wrong_sides_touch_one_bar_the_picture_has_to_say_which() {
        String notation =
                "((1A top \"a\" 80 x 30 wrong /> hearth \"a\" 80 x 50 right) |> 1B right \"b\" 40 x 80 right)";
        Meeting meeting = SewnHalves.of(notation, MAKING).meeting(2, "the work", "bar 1B");

        assertThat(WORDS.touching(meeting, Face.FRONT))
                .isEqualTo("Some patches right side in and some wrong side in, as in the picture.");
        Meeting alike = SewnHalves.of(notation.replace("wrong", "same"), MAKING).meeting(2, "the work", "bar 1B");
        assertThat(WORDS.touching(alike, Face.FRONT)).isEqualTo("Right sides together.");
    }

    @Test
    void one_half_that_looks_alike_both_ways_leaves_the_other_to_be_turned() {
        String notation = BESIDE.replace("40 x 80 same", "40 x 80 wrong");
        Meeting bar = SewnHalves.of(notation, MAKING).meeting(1, "the hearth", "bar 1A");
        assertThat(WORDS.touching(bar, Face.FRONT)).isEqualTo("The wrong side of bar 1A facing the hearth.");

        Meeting hearth = SewnHalves.of(BESIDE.replace("80 x 80 same", "80 x 80 right"), MAKING)
                .meeting(1, "the hearth", "bar 1A");
        assertThat(WORDS.touching(hearth, Face.BACK)).isEqualTo("The wrong side of the hearth facing bar 1A.");
        Meeting neither = SewnHalves.of(BESIDE, MAKING).meeting(1, "the hearth", "bar 1A");
        assertThat(WORDS.touching(neither, Face.FRONT)).isEmpty();
    }

    @Test
    void a_bar_is_cut_too_long_by_its_leeway_and_too_wide_by_the_trim() {
        Making trimmed = MAKING.withTrim(Length.mm(3));
        Meeting upright = SewnHalves.of(BESIDE, trimmed).meeting(1, "the hearth", "bar 1A");
        assertThat(upright.tooLong()).isEqualTo(Length.mm(12));
        assertThat(upright.tooWide()).isEqualTo(Length.mm(3));

        Meeting level = SewnHalves.of("(hearth \"a\" 80 x 80 same </ 1A bottom \"b\" 80 x 40 same)", trimmed)
                .meeting(1, "the hearth", "bar 1A");
        assertThat(level.tooLong()).isEqualTo(Length.mm(12));
        assertThat(level.tooWide()).isEqualTo(Length.mm(3));
    }

    /** Only the last part of a joined bar has the leeway, and every part has the trim. */
    @Test
    void the_parts_of_a_joined_bar_are_no_bar_until_they_are_joined() {
        SewnHalves cloth = SewnHalves.of(
                "(hearth \"a\" 80 x 80 same </ (1A.1 bottom \"b\" 30 x 40 same |> 1A.2 bottom \"b\" 50 x 40 same))",
                MAKING.withTrim(Length.mm(3)));
        Meeting join = cloth.meeting(1, "part 1A·1", "part 1A·2");
        assertThat(join.isJoin()).isTrue();
        assertThat(join.isBar()).isFalse();
        assertThat(join.side()).isEqualTo(Side.RIGHT);

        Meeting bar = cloth.meeting(2, "the hearth", "bar 1A");
        assertThat(bar.isJoin()).isFalse();
        assertThat(bar.isBar()).isTrue();
        assertThat(bar.tooLong()).isEqualTo(Length.mm(12));
        assertThat(bar.tooWide()).isEqualTo(Length.mm(3));
    }

    /** At the rim the hem's 14 mm are open; where a bar is still to come, its seam's 5 or 10 mm. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            14; (hearth "a" 80 x 80 same <| 1A right "b" 40 x 80 same)
            14; (hearth "a" 80 x 80 same </ 1A bottom "b" 80 x 40 same)
            5;  (1B top "b" 120 x 30 same /> (hearth "a" 80 x 80 same <| 1A right "b" 40 x 80 same))
            10; (1B top "b" 120 x 30 same </ (hearth "a" 80 x 80 same <| 1A right "b" 40 x 80 same))
            5;  (1B left "b" 30 x 120 same |> (hearth "a" 80 x 80 same </ 1A bottom "b" 80 x 40 same))
            10; (1B left "b" 30 x 120 same <| (hearth "a" 80 x 80 same </ 1A bottom "b" 80 x 40 same))
            """)
    void distances_begin_at_the_raw_end_of_the_work(long open, String notation) {
        assertThat(SewnHalves.of(notation, MAKING).meeting(1, "", "").openAtStart())
                .isEqualTo(Length.mm(open));
    }

    @Test
    void the_raw_end_is_that_of_the_patch_at_the_start_whichever_is_named_first() {
        SewnHalves cloth = SewnHalves.of(
                "((hearth \"a\" 80 x 50 same /> 1A bottom \"a\" 80 x 30 same) |> 1B right \"b\" 40 x 80 same)", MAKING);
        Meeting meeting = cloth.meeting(2, "", "");
        List<Laid> turned = List.of(cloth.laid("1A"), cloth.laid("hearth"));
        Meeting other = new Meeting(meeting.step(), MAKING, new Meeting.Party("", turned), meeting.added());

        assertThat(other.openAtStart()).isEqualTo(Length.mm(14));
        assertThat(cloth.laid("1A").allowances().on(Side.TOP)).isEqualTo(Length.mm(5));
    }

    @Test
    void what_lies_inside_is_the_face_without_fells() {
        assertThat(SewnHalves.of(BESIDE, MAKING).meeting(1, "", "").plain()).isEqualTo(Face.FRONT);
        assertThat(SewnHalves.of(BESIDE, MAKING.felledOn(Face.FRONT))
                        .meeting(1, "", "")
                        .plain())
                .isEqualTo(Face.BACK);
    }

    /** The few words for whoever has sewn the first seam, for each build. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            felled; (hearth "a" 80 x 80 right <| 1A right "b" 40 x 80 right); \
            Turn bar 1A over onto the right edge of the hearth. Lay them right sides together.|Line up the ends at the top.|\
            Bar 1A wraps: let its edge stick out 0.5 cm. Stitch 1 cm from the edge on top. Finish as in step 1.
            felled; (hearth "a" 80 x 80 same |> 1A right "b" 40 x 80 right); \
            Turn bar 1A over onto the right edge of the hearth. Lay them with the right side of bar 1A facing the hearth.|\
            Line up the ends at the top.|\
            The hearth wraps: let its edge stick out 0.5 cm. Stitch 0.5 cm from the edge on top. Finish as in step 1.
            felled; (hearth "a" 80 x 80 same </ 1A bottom "b" 80 x 40 same); \
            Flip bar 1A up onto the bottom edge of the hearth.|Line up the ends at the left.|\
            Bar 1A wraps: let its edge stick out 0.5 cm. Stitch 1 cm from the edge on top. Finish as in step 1.
            felled; (1A top "b" 80 x 40 same /> hearth "a" 80 x 80 same); \
            Flip bar 1A down onto the top edge of the hearth.|Line up the ends at the left.|\
            Bar 1A wraps: let its edge stick out 0.5 cm. Stitch 1 cm from the edge on top. Finish as in step 1.
            french; (hearth "a" 80 x 80 right <| 1A right "b" 40 x 80 right); \
            Turn bar 1A over onto the left edge of the hearth. Lay them wrong sides together.|Line up the ends at the top.|\
            Bar 1A wraps. Stitch 0.6 cm from the edge on top. Finish as in step 1.
            lapped; (hearth "a" 80 x 80 same <| 1A right "b" 40 x 80 same); \
            Sew bar 1A to the right edge of the hearth, as in step 1. Bar 1A wraps.
            gamchimjil; (hearth "a" 80 x 80 same |> 1A right "b" 40 x 80 same); \
            Sew bar 1A to the right edge of the hearth, as in step 1. The hearth wraps.
            """)
    void a_later_seam_is_told_in_what_is_its_own(String seam, String notation, String said) {
        SeamKind kind = switch (seam) {
            case "felled" -> MAKING.seam();
            case "french" -> new SeamKind("french", SeamKind.Build.FRENCH, Length.mm(15), Length.mm(15), Length.mm(9));
            default -> SeamKind.named(seam).orElseThrow();
        };
        Cloth cloth = new Cloth(Notation.parse(notation), MAKING.withSeam(kind));
        Meeting meeting = new SewnHalves(cloth).meeting(1, "the hearth", "bar 1A");

        assertThat(SeamWords.brief(meeting, new MakerWords(Voice.english(Ruler.MILLIMETRES))))
                .containsExactly(said.split("\\|"));
    }

    @Test
    void parts_of_a_bar_are_joined_at_their_ends_and_have_no_ends_to_line_up() {
        Meeting join = SewnHalves.of(
                        "(hearth \"a\" 80 x 80 same </ (1A.1 bottom \"b\" 30 x 40 same |> 1A.2 bottom \"b\" 50 x 40 same))",
                        MAKING)
                .meeting(1, "part 1A·1", "part 1A·2");

        assertThat(SeamWords.brief(join, new MakerWords(Voice.english(Ruler.MILLIMETRES))))
                .containsExactly(
                        "Turn part 1A·2 over onto the right end of part 1A·1.",
                        "Part 1A·1 wraps: let its edge stick out 0.5 cm. Stitch 0.5 cm from the edge on top. Finish as in"
                                + " step 1.");
    }
}
