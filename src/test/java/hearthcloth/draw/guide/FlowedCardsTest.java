package hearthcloth.draw.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.face.Layers;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.Polygons;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.words.speech.Voice;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What flows down a page: {@link Cards}, the {@link ShoppingPage}; and the {@link SmallCloth} on a cover. */
class FlowedCardsTest {

    private static Flow flow() {
        return new Flow(Paper.A4, "running", Voice.english(Ruler.EIGHTHS).printing());
    }

    private static Picture card(double width, double height) {
        Sketch sketch = new Sketch();
        sketch.outline(new Bounds(0, 0, width, height), Stroke.solid(0.2, Palette.INK));
        return sketch.finished("card", width, height);
    }

    private static String words(Flow flow) {
        StringBuilder all = new StringBuilder();
        flow.pages()
                .forEach(page ->
                        page.words().forEach(word -> all.append(word.text()).append(' ')));
        return all.toString();
    }

    @Test
    void cards_and_the_room_between_them_fill_the_width() {
        Flow flow = flow();
        for (int columns = 1; columns <= 4; columns++) {
            assertThat(columns * Cards.width(flow, columns) + 6 * (columns - 1)).isCloseTo(flow.width(), within(1e-9));
        }
    }

    /** A page holds rows of 60 mm and 3.5 mm above each; so many rows of two as fit, the rest on the next page. */
    @Test
    void a_row_is_never_divided_and_no_card_is_lost() {
        Flow flow = flow();
        Picture card = card(Cards.width(flow, 2), 60);

        Cards.flow(flow, Collections.nCopies(11, card), 2);

        int rows = (int) ((flow.height() + 3.5) / 63.5);
        assertThat(flow.pages()).hasSize((6 + rows - 1) / rows);
        long outlines = flow.pages().stream()
                .flatMap(page -> page.marks().stream())
                .filter(Mark.Line.class::isInstance)
                .filter(mark -> ((Mark.Line) mark).stroke().equals(Stroke.solid(0.2, Palette.INK)))
                .count();
        assertThat(outlines).isGreaterThanOrEqualTo(11);
    }

    @Test
    void nothing_to_buy_is_said_and_so_are_lacks_without_a_way() {
        Flow nothing = flow();
        new ShoppingPage(Voice.english(Ruler.EIGHTHS).printing(), nothing).flow(List.of(), List.of());
        assertThat(words(nothing)).contains("Nothing: every cloth can be cut from what you have");

        Flow none = flow();
        new ShoppingPage(Voice.english(Ruler.EIGHTHS).printing(), none)
                .flow(List.of("Anna's cloth lacks a bar."), List.of());
        assertThat(words(none)).contains("Anna's cloth lacks a bar.", "no way was found");

        Flow ways = flow();
        new ShoppingPage(Voice.english(Ruler.EIGHTHS).printing(), ways)
                .flow(
                        List.of("Anna's cloth lacks a bar."),
                        List.of(
                                new ShoppingPage.Way("By the yard", List.of("½ yd of Oat")),
                                new ShoppingPage.Way("Fat quarters", List.of("1 of Oat"))));
        assertThat(words(ways))
                .containsSubsequence("Any one of these ways", "By the yard", "of Oat", "Fat quarters", "of Oat");
    }

    @Test
    void the_small_cloth_is_covered_by_its_patches_and_dots_lie_where_it_is_thickest() {
        Plan plan = Planned.plans(Stashes.yardage(), 20, 1).get(0);

        Picture small = SmallCloth.of(plan, 60);
        double covered = small.marks().stream()
                .filter(Mark.Area.class::isInstance)
                .mapToDouble(mark -> Math.abs(Polygons.signedArea(((Mark.Area) mark).outline())))
                .sum();
        assertThat(Math.max(small.width(), small.height())).isCloseTo(60, within(1e-9));
        assertThat(covered).isCloseTo(small.width() * small.height(), within(1e-6));

        List<Layers.Spot> thickest = SmallCloth.thickest(plan);
        assertThat(thickest)
                .isNotEmpty()
                .extracting(Layers.Spot::plies)
                .containsOnly(thickest.get(0).plies());
        long discs = SmallCloth.withThickest(plan, 60).marks().stream()
                .filter(Mark.Disc.class::isInstance)
                .count();
        assertThat(discs).isEqualTo(2L * thickest.size());
    }
}
