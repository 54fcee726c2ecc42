package hearthcloth.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Words set in lines ({@link Paragraph}) and labels put beside or on their shapes ({@link Label}, {@link Labels}). */
class ParagraphTest {

    private static final Type TYPE = Type.of(4, Weight.REGULAR, Palette.INK);

    private static String text(Random chance, int words) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < words; i++) {
            text.append(i == 0 ? "" : " ");
            for (int letters = 1 + chance.nextInt(9); letters > 0; letters--) {
                text.append((char) ('a' + chance.nextInt(26)));
            }
        }
        return text.toString();
    }

    /** Seeds 1 to 40, columns of 20 to 80 mm. */
    @Test
    void no_line_is_wider_than_its_column_and_no_letter_is_lost() {
        for (int seed = 1; seed <= 40; seed++) {
            Random chance = new Random(seed);
            String text = text(chance, 30);
            double width = 20 + 60 * chance.nextDouble();
            List<String> lines = Paragraph.lines(text, width, TYPE);
            assertThat(lines).allMatch(line -> TYPE.width(line) <= width);
            assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
            for (int i = 1; i < lines.size(); i++) {
                String word = lines.get(i).split(" ", 2)[0];
                assertThat(TYPE.width(lines.get(i - 1) + " " + word))
                        .as("a word that would have fitted is on the line before")
                        .isGreaterThan(width);
            }
        }
    }

    @Test
    void a_word_too_long_for_its_column_is_broken_and_a_measure_is_not() {
        List<String> broken = Paragraph.lines("w".repeat(60), 30, TYPE);
        assertThat(broken.size()).isGreaterThan(2);
        assertThat(String.join("", broken)).isEqualTo("w".repeat(60));
        for (double width = 12; width < 60; width += 1) {
            assertThat(Paragraph.lines("Cut it 12½ in wide", width, TYPE))
                    .anyMatch(line -> line.contains("12½\u00a0in"));
        }
    }

    /** Seeds 1 to 20. */
    @Test
    void what_is_left_out_is_told_by_three_dots() {
        for (int seed = 1; seed <= 20; seed++) {
            String text = text(new Random(seed), 40);
            List<String> all = Paragraph.lines(text, 50, TYPE);
            List<String> three = Paragraph.lines(text, 50, TYPE, 3);
            assertThat(three).hasSize(3);
            assertThat(three.subList(0, 2)).isEqualTo(all.subList(0, 2));
            assertThat(three.get(2)).endsWith("…");
            assertThat(TYPE.width(three.get(2))).isLessThanOrEqualTo(50);
            assertThat(Paragraph.lines(text, 50, TYPE, 99)).isEqualTo(all);
            assertThat(Paragraph.cut(text, 50, TYPE)).endsWith("…");
        }
        assertThat(Paragraph.cut("oat", 50, TYPE)).isEqualTo("oat");
        assertThat(Paragraph.cut("😀😀", 0.1, TYPE)).as("never half a sign").isEqualTo("😀…");
    }

    /** Seeds 1 to 30: shapes of all sizes on a drawing of 120 by 120 mm. */
    @Test
    void no_two_labels_lie_on_each_other() {
        for (int seed = 1; seed <= 30; seed++) {
            Random chance = new Random(seed);
            List<Label> labels = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                // sixteen cells, so that no two rooms overlap
                double x = 30.0 * (i % 4);
                double y = 30.0 * Math.floorDiv(i, 4);
                Bounds room = new Bounds(x, y, 2 + 28 * chance.nextDouble(), 2 + 28 * chance.nextDouble());
                labels.add(Label.of(room, Colour.WHITE, "1" + (char) ('A' + i)));
            }
            Sketch sketch = new Sketch();
            new Labels(new Bounds(0, 0, 120, 120), 6, 3, labels).draw(sketch);
            List<Mark.Words> words = sketch.marks().stream()
                    .filter(Mark.Words.class::isInstance)
                    .map(Mark.Words.class::cast)
                    .toList();
            assertThat(words).hasSize(16);
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(words.get(i).bounds().overlaps(words.get(j).bounds()))
                            .as(words.get(i).text() + " and " + words.get(j).text() + ", seed " + seed)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void a_label_stands_on_its_shape_where_it_fits_and_in_its_best_wording() {
        Bounds wide = new Bounds(0, 0, 60, 12);
        Label label = new Label(wide, Colour.WHITE, List.of(List.of("1A kelp linen"), List.of("1A")));
        assertThat(label.fits(3)).isTrue();
        assertThat(label.inside(6, 3).orElseThrow().lines()).containsExactly("1A kelp linen");
        Label narrow = new Label(new Bounds(0, 0, 8, 8), Colour.WHITE, label.wordings());
        assertThat(narrow.inside(6, 3).orElseThrow().lines()).containsExactly("1A");
        Label tall = new Label(new Bounds(0, 0, 8, 60), Colour.WHITE, label.wordings());
        assertThat(tall.inside(4, 3).orElseThrow().way()).as("it runs up").isEqualTo(Type.Way.UP);
        assertThat(new Label(new Bounds(0, 0, 2, 2), Colour.WHITE, label.wordings()).inside(6, 3))
                .isEmpty();
    }

    @Test
    void what_stands_outside_takes_room_on_its_own_side_alone() {
        Bounds frame = new Bounds(0, 0, 100, 100);
        Label right = Label.of(new Bounds(98, 50, 1, 1), Colour.WHITE, "1A");
        Labels labels = new Labels(frame, 6, 3, List.of(right));
        assertThat(labels.gutter(Labels.Edge.RIGHT)).isGreaterThan(3);
        assertThat(labels.gutter(Labels.Edge.LEFT)).isZero();
        assertThat(labels.gutter(Labels.Edge.TOP)).isZero();
        assertThat(labels.gutter(Labels.Edge.BOTTOM)).isZero();
    }

    @Test
    void a_row_of_stitches_is_dashed_and_a_trim_line_dotted_evenly() {
        assertThat(Stroke.solid(0.3, Palette.INK).dashes()).isEmpty();
        assertThat(Stroke.stitches(0.3, Palette.INK).dashes()).hasSize(2);
        assertThat(Stroke.dots(0.3, Palette.INK).dashes().get(0))
                .isEqualTo(Stroke.dots(0.3, Palette.INK).dashes().get(1));
    }
}
