package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.Language;
import hearthcloth.wrap.Placing;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Options read one by one, with everything that is wrong told at once. */
class OptionTextTest {

    private final OptionText text = new OptionText(Door.SHELL, Ruler.MILLIMETRES);

    private List<String> faults() {
        try {
            text.check();
            return List.of();
        } catch (BadInputException e) {
            return e.in(Language.ENGLISH);
        }
    }

    @Test
    void whole_numbers_are_taken_from_the_least_to_the_most() {
        assertThat(text.whole("--n", null, 7, 1, 3)).isEqualTo(7);
        assertThat(text.whole("--n", " 1 ", 7, 1, 3)).isEqualTo(1);
        assertThat(text.whole("--n", "3", 7, 1, 3)).isEqualTo(3);
        assertThat(faults()).isEmpty();
        for (String wrong : List.of("0", "4", "-1", "1.5", "", "one", "9999999999")) {
            assertThat(text.whole("--n", wrong, 7, 1, 3)).isEqualTo(7);
        }
        assertThat(faults())
                .hasSize(7)
                .allMatch(fault -> fault.endsWith("will not do; write a whole number from 1 to 3."));
        assertThat(faults().get(0)).startsWith("--n: \"0\" ");
    }

    @Test
    void words_are_taken_in_any_case_and_the_others_are_named() {
        assertThat(text.word("--fell", "Front ", Face.BACK)).isEqualTo(Face.FRONT);
        assertThat(text.word("--fell", null, Face.BACK)).isEqualTo(Face.BACK);
        assertThat(faults()).isEmpty();
        assertThat(text.word("--fell", "up", Face.BACK)).isEqualTo(Face.BACK);
        assertThat(faults()).containsExactly("--fell: \"up\" will not do; write front or back.");
    }

    @Test
    void text_is_shown_on_one_line_and_cut_short() {
        assertThat(ListWords.plain("a\n\tb\u0007c")).isEqualTo("a b c");
        assertThat(ListWords.plain("x".repeat(400))).isEqualTo("x".repeat(400));
        assertThat(ListWords.plain("x".repeat(401))).isEqualTo("x".repeat(400) + "…");
        assertThat(ListWords.line("x\r\n".repeat(300))).hasSize(600);
    }

    @ParameterizedTest
    @CsvSource({
        "box 30 x 20 x 8 cm, CENTIMETRE",
        "12½ in, INCH",
        "12\" square, INCH",
        "3ft 2in, FOOT",
        "2 by 3 yards, YARD",
        "box of 30, ",
        "in a box, ",
    })
    void the_first_unit_after_a_number_is_found(String written, Unit unit) {
        assertThat(ListWords.unitIn(written).orElse(null)).isEqualTo(unit);
    }

    @Test
    void inches_are_measured_in_eighths_and_the_rest_in_millimetres() {
        assertThat(List.of(Rulers.of(Unit.INCH), Rulers.of(Unit.FOOT), Rulers.of(Unit.YARD)))
                .containsOnly(Ruler.EIGHTHS);
        assertThat(List.of(Rulers.of(Unit.MILLIMETRE), Rulers.of(Unit.CENTIMETRE), Rulers.of(Unit.METRE)))
                .containsOnly(Ruler.MILLIMETRES);
        assertThat(Rulers.wished(null)).isEmpty();
        assertThat(Rulers.wished("Inches")).contains(Ruler.EIGHTHS);
        assertThat(Rulers.wished("cm")).contains(Ruler.MILLIMETRES);
        assertThatThrownBy(() -> Rulers.wished("mm"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("--unit: \"mm\" is not a unit we measure in; write in or cm.");
    }

    private static Stash stash(String... names) {
        List<Piece> pieces = new ArrayList<>();
        for (String name : names) {
            Fabric fabric = new Fabric(name, Colour.BLACK, Fabric.Faces.SAME, Fabric.Nap.ANY);
            pieces.add(
                    new Piece("" + pieces.size(), fabric, Size.square(Length.cm(5)), Piece.Washed.NO, pieces.size()));
        }
        return new Stash(pieces);
    }

    @Test
    void of_fabrics_whose_names_hold_commas_the_longest_that_fits_is_meant() {
        Stash stash = stash("Kelp", "Kelp, dark", "Oat", "dark");
        assertThat(FabricChoice.parse("oat,kelp, DARK", stash)).containsExactly("Oat", "Kelp, dark");
        assertThat(FabricChoice.parse("kelp, oat", stash)).containsExactly("Kelp", "Oat");
        assertThat(FabricChoice.parse("kelp,oat,kelp", stash)).containsExactly("Kelp", "Oat");
        assertThatThrownBy(() -> FabricChoice.parse("oat, rust, kelp", stash))
                .hasMessage("no fabric of the stash is called \"rust\"; there are Kelp, Kelp, dark, Oat, dark");
        assertThatThrownBy(() -> FabricChoice.parse("", stash))
                .hasMessageStartingWith("no fabric of the stash is called \"\"");
        String[] many =
                java.util.stream.IntStream.range(0, 14).mapToObj(i -> "f" + i).toArray(String[]::new);
        assertThatThrownBy(() -> FabricChoice.parse("x", stash(many))).hasMessageEndingWith(", f11 and 2 more");
    }

    private WishWords words = WishWords.NOTHING;

    private MakingReader making(Ruler ruler) {
        return new MakingReader(words, text, Usual.of(ruler));
    }

    @Test
    void what_is_left_out_is_what_is_usual_in_the_unit() {
        assertThat(making(Ruler.EIGHTHS).making()).isEqualTo(Making.inches());
        assertThat(making(Ruler.MILLIMETRES).making()).isEqualTo(Making.metric());
        assertThat(making(Ruler.EIGHTHS).rules()).isEqualTo(PiecingRules.inches());
        assertThat(making(Ruler.MILLIMETRES).rules()).isEqualTo(PiecingRules.metric());
        assertThat(faults()).isEmpty();
    }

    @Test
    void every_option_of_making_is_read() {
        words = words.with(WishField.SEAM, "1/4 + 5/8");
        words = words.with(WishField.HEM, "3/8 + 1/2 in");
        words = words.with(WishField.CORNER, "mitred");
        words = words.with(WishField.LEEWAY, "1");
        words = words.with(WishField.TRIM, "1/8");
        words = words.with(WishField.FELL, "front");
        words = words.with(WishField.LEAST_PIECE, "3 in");
        words = words.with(WishField.CLEARANCE, "1/2");
        words = words.with(WishField.MOST_JOINS, "0");

        Making making = making(Ruler.EIGHTHS).making();
        assertThat(making.seam()).isEqualTo(SeamKind.felled(Length.inches(1, 4), Length.inches(5, 8)));
        assertThat(making.hem()).isEqualTo(new Hem(Length.inches(3, 8), Length.inches(1, 2), Hem.Corner.MITRED));
        assertThat(making.leeway()).isEqualTo(Length.inches(1));
        assertThat(making.trim()).isEqualTo(Length.inches(1, 8));
        assertThat(making.fell()).isEqualTo(Face.FRONT);
        assertThat(making(Ruler.EIGHTHS).rules()).isEqualTo(new PiecingRules(Length.inches(3), Length.inches(1, 2), 0));
        assertThat(faults()).isEmpty();
        words = words.with(WishField.SEAM, "French");
        assertThat(making(Ruler.EIGHTHS).making().seam())
                .isEqualTo(SeamKind.named("french").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            zigzag      | "zigzag" is not a seam; write its narrow and wide allowance
            1 + 2 + 3   | has 3 numbers; a felled seam has a narrow and a wide allowance
            1 + 1 cm    | leaves no fell: the second allowance wraps round the first
            2 + 1 cm    | leaves no fell
            0 + 1 cm    | will not do: each part is more than nothing and at most 10 cm
            1 + 10.1 cm | will not do: each part is more than nothing and at most 10 cm
            """)
    void a_seam_that_cannot_be_is_said_with_its_rule(String seam, String sentence) {
        words = words.with(WishField.SEAM, seam);
        making(Ruler.MILLIMETRES).making();
        assertThat(faults()).singleElement().asString().startsWith("--seam: ").contains(sentence);
    }

    @Test
    void slips_of_the_unit_are_refused_and_all_told_at_once() {
        words = words.with(WishField.HEM, "1 cm");
        words = words.with(WishField.LEEWAY, "10.1 cm");
        words = words.with(WishField.TRIM, "10 cm");
        making(Ruler.MILLIMETRES).making();
        words = words.with(WishField.LEAST_PIECE, "0 cm");
        words = words.with(WishField.CLEARANCE, "101 cm");
        words = words.with(WishField.MOST_JOINS, "41");
        making(Ruler.MILLIMETRES).rules();
        assertThat(faults())
                .satisfiesExactly(
                        fault -> assertThat(fault).startsWith("--hem: \"1 cm\" has 1 number; a hem has a first"),
                        fault -> assertThat(fault).startsWith("--leeway: \"10.1 cm\" is more than 10 cm, which leaves"),
                        fault -> assertThat(fault).startsWith("--least-piece: a piece of nothing cannot be sewn;"),
                        fault -> assertThat(fault).startsWith("--clearance: \"101 cm\" is more than 100 cm"),
                        fault -> assertThat(fault).endsWith("write a whole number from 0 to 40."));
    }

    private Placing placed(boolean gift) {
        return PlacingReader.read(words, gift, Unit.CENTIMETRE);
    }

    @Test
    void how_the_cloth_lies_under_the_gift_is_read() {
        assertThat(placed(true)).isEqualTo(Placing.CENTRED);
        words = words.with(WishField.OUTSIDE, "back");
        words = words.with(WishField.TURNED, "3");
        words = words.with(WishField.OFF_MIDDLE, "2,5 cm left, 3 away; 1 cm right");
        assertThat(placed(true)).isEqualTo(new Placing(Length.mm(-15), Length.cm(3), 3, Face.BACK));
        words = words.with(WishField.OFF_MIDDLE, "2 near");
        assertThat(placed(true).away()).isEqualTo(Length.cm(-2));
        words = words.with(WishField.OFF_MIDDLE, "2 m right");
        assertThat(placed(true).right()).isEqualTo(Length.of(2, Unit.METRE));
    }

    @Test
    void a_way_that_is_none_and_one_out_of_reach_are_refused() {
        for (String wrong : List.of("2 cm up", "left", "2 cm", "")) {
            words = words.with(WishField.OFF_MIDDLE, wrong);
            assertThatThrownBy(() -> placed(true)).as(wrong).hasMessageContaining("is not a way off the middle");
        }
        words = words.with(WishField.OFF_MIDDLE, "2001 mm right");
        assertThatThrownBy(() -> placed(true)).hasMessageContaining("is out of reach");
    }

    @Test
    void without_a_gift_there_is_nothing_to_place() {
        words = words.with(WishField.OUTSIDE, "back");
        words = words.with(WishField.TURNED, "1");
        words = words.with(WishField.OFF_MIDDLE, "2 cm left");
        words = words.with(WishField.SHOW, "Oat");
        assertThatThrownBy(() -> placed(false))
                .isInstanceOfSatisfying(
                        BadInputException.class,
                        e -> assertThat(e.in(Language.ENGLISH))
                                .hasSize(4)
                                .allMatch(fault -> fault.contains("this is about a tied gift")));
        assertThat(PlacingReader.read(WishWords.NOTHING, false, null)).isEqualTo(Placing.CENTRED);
    }
}
