package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourName;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpokenPiecesTest {

    private static SpokenPieces heard(String line) {
        SpokenLine said = SpokenPieces.hear(line, Unit.INCH);
        assertThat(said).as(line).isInstanceOf(SpokenPieces.class);
        return (SpokenPieces) said;
    }

    /** Sides in eighths of an inch. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 green print 4 x 8                            | 12 | 32 | 64 | green print
            4 x 8 in, 12 of them, green print               | 12 | 32 | 64 | green print
            green print, 4" x 8", 12                        | 12 | 32 | 64 | green print
            kelp linen 1 1/2 yd of 44 in                    | 1 | 352 | 432 | kelp linen
            kelp linen, ½ yd of 44" wide                    | 1 | 352 | 144 | kelp linen
            half a dozen scraps of oat 6½ by 10 1/4 in.     | 6 | 52 | 82 | oat
            two dozen 2 1/2-inch squares of red check       | 24 | 20 | 20 | red check
            12 squares of 6 in, madder                      | 12 | 48 | 48 | madder
            oat 6 in square                                 | 1 | 48 | 48 | oat
            3 fat quarters, sky blue                        | 3 | 144 | 176 | sky blue
            navy 44 in wide, 2 yd long                      | 1 | 352 | 576 | navy
            navy 2 yd long x 44 in wide                     | 1 | 352 | 576 | navy
            12 x 4 x 8 in moss                              | 12 | 32 | 64 | moss
            moss 4 × 8 in ×12                               | 12 | 32 | 64 | moss
            12 1/2 x 8 moss                                 | 1 | 100 | 64 | moss
            12 4 1/2 x 8 moss                               | 12 | 36 | 64 | moss
            shirt 501 denim, 4 x 8, 3 of them               | 3 | 32 | 64 | shirt 501 denim
            Oat 8in x 1ft                                   | 1 | 64 | 96 | Oat
            a strip of linen 2x30                           | 1 | 16 | 240 | strip of linen
            two yards of 44 in pale linen                   | 1 | 352 | 576 | pale linen
            half a yard of 44" oat                          | 1 | 352 | 144 | oat
            a yard and a half of 44 in moss                 | 1 | 352 | 432 | moss
            Two and a half yards of 44 in two-tone silk     | 1 | 352 | 720 | two-tone silk
            half yard rust linen 22 in                      | 1 | 176 | 144 | rust linen
            rust linen 22", half a yard                     | 1 | 176 | 144 | rust linen
            ½ yard navy 44 wide                             | 1 | 352 | 144 | navy
            ½ yard x 44 wide moss                           | 1 | 352 | 144 | moss
            1/2 yd x 44 moss                                | 1 | 352 | 144 | moss
            a quarter yard of oat 44 in wide                | 1 | 352 | 72 | oat
            three quarters of a yard oat, 44 in             | 1 | 352 | 216 | oat
            moss 36 wide, 2 yd                              | 1 | 288 | 576 | moss
            five pieces of Grandma's curtain 10x12          | 5 | 80 | 96 | Grandma's curtain
            """)
    void a_line_says_how_many_how_large_and_of_what(String line, int count, long width, long length, String name) {
        SpokenPieces said = heard(line);

        assertThat(said.count()).isEqualTo(count);
        assertThat(said.size()).isEqualTo(new Size(Length.inches(width, 8), Length.inches(length, 8)));
        assertThat(said.name()).isEqualTo(name);
    }

    @Test
    void what_is_said_of_the_fabric_is_heard_and_is_no_part_of_its_name() {
        SpokenPieces said = heard("12 green print 4 x 8, right side, nap, not washed, #8a9a5b");
        assertThat(said.name()).isEqualTo("green print");
        assertThat(said.faces()).contains(Fabric.Faces.RIGHT);
        assertThat(said.nap()).contains(Fabric.Nap.LENGTHWISE);
        assertThat(said.washed()).isEqualTo(Piece.Washed.NO);
        assertThat(said.colour()).contains(Colour.of(0x8a9a5b));

        SpokenPieces plain = heard("oat 4 x 8, same both sides, no nap, washed");
        assertThat(plain.name()).isEqualTo("oat");
        assertThat(plain.faces()).contains(Fabric.Faces.SAME);
        assertThat(plain.nap()).contains(Fabric.Nap.ANY);
        assertThat(plain.washed()).isEqualTo(Piece.Washed.YES);

        SpokenPieces silent = heard("oat 4 x 8");
        assertThat(silent.faces()).isEmpty();
        assertThat(silent.nap()).isEmpty();
        assertThat(silent.washed()).isEqualTo(Piece.Washed.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"green", "red", "blue", "brown", "grey", "purple", "yellow", "pink"})
    void a_colour_in_the_name_gives_the_fabric_that_colour(String word) {
        Fabric fabric = heard("12 " + word + " print 4 x 8").fabric(Set.of());

        assertThat(ColourName.of(fabric.colour())).endsWith(word);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 green print           | how large is it
            green print 4 in         | 4 in is one side
            4 x 8 in                 | what is the fabric called
            0 of them, oat 4 x 8     | how many of them
            999999 oat 4 x 8         | how many of them
            oat 0 x 8                | one side is nothing
            oat 4 x 1/0              | parts by zero
            oat 6 m x 7 m            | more than any bolt holds
            oat 1,200 x 8            | can be read two ways
            """)
    void what_is_unclear_is_asked_for_in_words(String line, String asked) {
        assertThat(SpokenPieces.hear(line, Unit.INCH))
                .isInstanceOfSatisfying(
                        SpokenLine.Unclear.class,
                        unclear -> assertThat(unclear.said().english()).contains(asked));
    }

    @Test
    void without_a_usual_unit_one_must_be_written() {
        assertThat(SpokenPieces.hear("oat 4 x 8", null))
                .isInstanceOfSatisfying(
                        SpokenLine.Unclear.class,
                        unclear -> assertThat(unclear.said().english()).contains("has no unit"));
        assertThat(SpokenPieces.hear("oat 16,5 x 20 cm", null)).isInstanceOf(SpokenPieces.class);
    }

    /** A side in the units and spellings of makers, with its exact length. */
    private record Side(String said, Length length) {}

    private static Side side(Random random) {
        int whole = 1 + random.nextInt(30);
        int eighths = random.nextInt(8);
        String glyph = List.of("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞").get(eighths);
        String slash =
                List.of("", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8").get(eighths);
        String unit = pick(random, " in", "in", " inches", "\"", "″", " inch", " IN", " in.");
        Length inches = Length.inches(8L * whole + eighths, 8);
        return switch (random.nextInt(6)) {
            case 0 -> new Side(whole + glyph + unit, inches);
            case 1 -> new Side((whole + " " + slash).strip() + unit, inches);
            case 2 -> new Side((eighths == 0 ? whole : whole + "-" + slash) + unit, inches);
            case 3 ->
                new Side(whole + "." + random(random, 5) + pick(random, " cm", "cm", " centimetres"), Length.ZERO);
            case 4 -> new Side(whole + pick(random, " mm", "mm"), Length.mm(whole));
            default ->
                new Side(whole % 15 + 1 + pick(random, " ft", "'", " feet"), Length.of(whole % 15 + 1, Unit.FOOT));
        };
    }

    /** The digit five only, so that the length of the decimal spelling is told by {@link #exact}. */
    private static String random(Random random, int digit) {
        return random.nextBoolean() ? String.valueOf(digit) : "0" + digit;
    }

    private static Length exact(Side side) {
        if (side.length().isPositive()) {
            return side.length();
        }
        String number = side.said().replaceAll("[^\\d.]", "");
        return new Length(new java.math.BigDecimal(number).movePointRight(7).longValueExact());
    }

    private static String pick(Random random, String... words) {
        return words[random.nextInt(words.length)];
    }

    @Test
    void however_it_is_put_the_same_is_understood() {
        Random random = new Random(5);
        List<String> counts = List.of("%d of them", "%d pieces", "%d", "x%d", "%d pcs", "× %d", "%d scraps");
        for (int i = 0; i < 1_500; i++) {
            Side across = side(random);
            Side along = side(random);
            int count = 1 + random.nextInt(400);
            String name =
                    pick(random, "oat", "kelp linen", "Harbour slate", "red check", "mum's old shirt", "blé d'été");
            String size = across.said() + pick(random, " x ", "x", " × ", " by ", "*") + along.said();
            if (size.contains("by") && !size.contains(" by ")) {
                continue;
            }
            Optional<Fabric.Faces> faces = pick(random, "a", "b").equals("a")
                    ? Optional.empty()
                    : Optional.of(random.nextBoolean() ? Fabric.Faces.RIGHT : Fabric.Faces.SAME);
            List<String> parts = new ArrayList<>(List.of(
                    size, String.format(pick(random, counts.toArray(String[]::new)), count), name));
            faces.ifPresent(face -> parts.add(
                    face == Fabric.Faces.RIGHT
                            ? pick(random, "right side", "with a right side", "one-sided")
                            : pick(random, "same both sides", "reversible", "no right side")));
            Collections.shuffle(parts, random);
            String line = String.join(pick(random, ", ", "; ", " , "), parts);

            assertThat(SpokenPieces.hear(line, Unit.YARD))
                    .as(line)
                    .isEqualTo(new SpokenPieces(
                            name,
                            new Size(exact(across), exact(along)),
                            count,
                            Optional.empty(),
                            faces,
                            Optional.empty(),
                            Piece.Washed.UNKNOWN));
        }
    }

    @Test
    void no_line_whatever_breaks_the_reader() {
        Random random = new Random(9);
        String letters = "0123456789 x×,./½in\"'cmyd#of ab-;*\u00a0\t√";
        for (int i = 0; i < 4_000; i++) {
            StringBuilder line = new StringBuilder();
            for (int k = random.nextInt(40); k >= 0; k--) {
                line.append(letters.charAt(random.nextInt(letters.length())));
            }
            if (SpokenPieces.hear(line.toString(), Unit.INCH) instanceof SpokenPieces pieces) {
                assertThat(pieces.size().width().isPositive()
                                && pieces.size().height().isPositive()
                                && pieces.count() >= 1
                                && !pieces.name().isBlank())
                        .as(line.toString())
                        .isTrue();
            }
        }
    }

    @Test
    void a_whole_page_pasted_into_one_line_is_refused() {
        assertThat(SpokenPieces.hear("oat 4 x 8 ".repeat(100_000), Unit.INCH)).isInstanceOf(SpokenLine.Unclear.class);
    }
}
