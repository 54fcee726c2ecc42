package hearthcloth.web.gift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.wrap.Gift;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Gifts as the page asks for them ({@link GiftShape}) and the ink they are drawn in ({@link GiftInk}). */
class GiftShapeTest {

    private static final Settings INCHES =
            new Settings(Ruler.EIGHTHS, Paper.LETTER, Optional.empty(), Language.ENGLISH, true);

    @ParameterizedTest
    @EnumSource(GiftShape.class)
    void what_she_typed_is_a_gift_that_can_be_read_once_every_measure_is_there(GiftShape shape) {
        List<String> typed = Collections.nCopies(shape.measures().size(), "10");
        String text = shape.text(typed).orElseThrow();
        assertThat(Gift.parse(text, Unit.CENTIMETRE)).isNotNull();
        assertThat(shape.text(typed.subList(1, typed.size()))).isEmpty();
        List<String> blank = new ArrayList<>(typed);
        blank.set(typed.size() - 1, " ");
        assertThat(shape.text(blank)).isEmpty();
        assertThat(GiftShape.named(shape.word())).isEqualTo(shape);
        assertThat(GiftShape.named("a goose")).isEqualTo(GiftShape.BOX);
    }

    @ParameterizedTest
    @EnumSource(GiftShape.class)
    void what_is_not_typed_yet_is_drawn_in_proportion_to_what_is(GiftShape shape) {
        List<Double> usual = shape.usual();
        assertThat(shape.proportions(List.of(), INCHES)).isEqualTo(usual);
        List<Double> twice = shape.proportions(List.of(String.valueOf(2 * usual.get(0))), INCHES);
        for (int i = 0; i < usual.size(); i++) {
            assertThat(twice.get(i)).isCloseTo(2 * usual.get(i), within(1e-6));
        }
        assertThat(shape.proportions(List.of("wide"), INCHES))
                .as("what cannot be read counts as not there")
                .isEqualTo(usual);
    }

    @Test
    void a_measure_in_another_unit_is_drawn_as_long_as_it_is() {
        assertThat(GiftShape.BOX.proportions(List.of("30.48 cm", "9", "4"), INCHES))
                .containsExactly(12.0, 9.0, 4.0);
    }

    /** Two measures across each other: their fields are parted, and both stay on the drawing. */
    @Test
    void fields_lie_on_the_middle_of_what_they_measure_and_not_on_each_other() {
        GiftInk ink = new GiftInk();
        ink.measure(0, 100, 200, 100);
        ink.measure(90, 90, 110, 110);
        List<GiftDrawing.Place> places = ink.places(200, 200);
        assertThat(places.get(0)).isEqualTo(new GiftDrawing.Place(10, 10));
        assertThat(places.get(1).x()).isEqualTo(10);
        assertThat(places.get(1).y()).isLessThan(7);
        String svg = ink.closed(200, 200);
        assertThat(svg).startsWith("<svg").endsWith("</svg>").contains("M0.0 100.0L200.0 100.0");
    }

    @Test
    void a_field_never_sticks_out_of_the_drawing() {
        GiftInk ink = new GiftInk();
        ink.measure(0, 0, 0, 0);
        ink.measure(300, 300, 300, 300);
        for (GiftDrawing.Place place : ink.places(300, 300)) {
            assertThat(place.x()).isBetween(3, 17);
            assertThat(place.y()).isBetween(2, 18);
        }
    }
}
