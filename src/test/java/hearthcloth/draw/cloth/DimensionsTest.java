package hearthcloth.draw.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.Guide;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Small marks of the drawings of a cloth: {@link Dimensions}, {@link Arrow}, {@link CutNumber}, {@link Dyes}, {@link RawPart}. */
class DimensionsTest {

    private static final Plan PLAN = Planned.plans(Stashes.scraps(40, 3), 18, 1).get(0);

    private static List<Mark.Line> lines(Sketch sketch) {
        return sketch.marks().stream()
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .toList();
    }

    @Test
    void a_dimension_says_its_measure_only_where_there_is_room() {
        Sketch wide = new Sketch();
        Dimensions.across(wide, 10, 60, 5, "12½ in");
        assertThat(wide.finished("", 100, 100).words())
                .extracting(Mark.Words::text)
                .containsExactly("12½ in");
        assertThat(wide.finished("", 100, 100).words().get(0).at().x()).isEqualTo(35);
        Sketch narrow = new Sketch();
        Dimensions.across(narrow, 10, 14, 5, "12½ in");
        Dimensions.down(narrow, 10, 14, 5, "12½ in");
        assertThat(narrow.finished("", 100, 100).words()).isEmpty();
        assertThat(lines(narrow)).as("a line and two ticks each").hasSize(6);
    }

    @Test
    void an_arrow_reaches_as_far_as_it_is_told_and_leaves_room_for_its_word() {
        Sketch both = new Sketch();
        Arrow.draw(both, new Point(50, 50), 20, 6, true);
        assertThat(both.bounds().y()).isCloseTo(30, within(0.2));
        assertThat(both.bounds().bottom()).isCloseTo(70, within(0.2));
        assertThat(lines(both)).hasSize(4);
        assertThat(lines(both).get(0).points().get(0)).isEqualTo(new Point(50, 44));
        Sketch up = new Sketch();
        Arrow.draw(up, new Point(50, 50), 20, 6, false);
        assertThat(lines(up)).hasSize(3);
        Sketch small = new Sketch();
        Arrow.draw(small, new Point(50, 50), 6, 6, true);
        assertThat(lines(small).get(0).points().get(0))
                .as("no gap where there is no room")
                .isEqualTo(new Point(50, 50));
    }

    /** Seeds 1 to 20: a dozen numbers on one line never touch each other, and the last finds no place. */
    @Test
    void numbers_of_cuts_touch_nothing_that_is_taken() {
        CutLine line = Guide.of(PLAN, Ruler.EIGHTHS).cutting().stream()
                .flatMap(task -> task.lines().stream())
                .findFirst()
                .orElseThrow();
        for (int seed = 1; seed <= 20; seed++) {
            Random chance = new Random(seed);
            List<Bounds> taken = new ArrayList<>();
            Bounds run = line.cut().upright()
                    ? new Bounds(20, 0, 0, 40 + 60 * chance.nextDouble())
                    : new Bounds(0, 20, 40 + 60 * chance.nextDouble(), 0);
            Optional<CutNumber> placed = CutNumber.placed(line, run, "3½ in", taken);
            int count = 0;
            while (placed.isPresent()) {
                Bounds room = placed.get().room();
                assertThat(taken).noneMatch(room::overlaps);
                taken.add(room);
                count++;
                placed = CutNumber.placed(line, run, "3½ in", taken);
            }
            assertThat(count).isBetween(2, 40);
        }
    }

    @Test
    void the_thread_drawn_is_the_one_that_shows_best_on_every_fabric() {
        Dyes light = new Dyes(List.of(fabric("white", 0xffffff), fabric("cream", 0xf0e8d8)));
        Dyes dark = new Dyes(List.of(fabric("black", 0x000000), fabric("navy", 0x101830)));
        assertThat(light.thread().lab().lightness()).isLessThan(30);
        assertThat(dark.thread().lab().lightness()).isGreaterThan(80);
        Dyes both = new Dyes(List.of(fabric("white", 0xffffff), fabric("black", 0x000000)));
        assertThat(both.thread().lab().lightness()).as("neither is hidden").isBetween(35.0, 75.0);
        assertThatThrownBy(() -> both.colour("rust")).hasMessage("no piece of the plan is of \"rust\"");
        for (int rgb = 0; rgb < 0xffffff; rgb += 0x111111) {
            Colour ground = Colour.of(rgb);
            assertThat(Dyes.hatch(ground).colour())
                    .as("a hatch is seen on " + ground.hex())
                    .isNotEqualTo(ground);
        }
    }

    private static Fabric fabric(String name, int rgb) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    @Test
    void a_legend_has_a_word_for_each_fabric_and_one_for_fells() {
        Shown shown = Shown.of(PLAN.cloth(), Face.BACK);
        Picture legend = Legend.of(shown, Dyes.of(PLAN), 120, Voice.english(Ruler.EIGHTHS));
        List<String> words = legend.words().stream().map(Mark.Words::text).toList();
        for (Fabric fabric : PLAN.fabrics()) {
            assertThat(words).anyMatch(text -> text.contains(fabric.name()));
        }
        assertThat(words).anyMatch(text -> text.startsWith("Fell"));
        assertThat(legend.width()).isLessThanOrEqualTo(120);
    }

    /** What is read standing at the machine is 11 points at least. */
    @Test
    void no_type_of_a_printed_page_is_smaller_than_eleven_points() {
        for (Type type : List.of(
                PrintSizes.BODY,
                PrintSizes.STRONG,
                PrintSizes.SMALL,
                PrintSizes.TITLE,
                PrintSizes.HEADING,
                PrintSizes.STEP,
                PrintSizes.FIGURE,
                PrintSizes.CARE)) {
            assertThat(type.size() / Type.POINT).isGreaterThan(11 - 1e-9);
        }
    }

    /** Both halves of every seam: what is cut is what finishes, what is open and what is too large. */
    @Test
    void a_part_is_cut_larger_than_it_finishes_by_its_open_edges() {
        for (Step step : PLAN.cloth().steps()) {
            for (var half : List.of(step.added(), step.added().other())) {
                RawPart part = RawPart.of(PLAN, step, half);
                Rect exact = part.exact();
                assertThat(exact.width())
                        .isEqualTo(part.finished()
                                .width()
                                .plus(part.open().left())
                                .plus(part.open().right()));
                assertThat(part.raw().height())
                        .isEqualTo(exact.height()
                                .plus(part.extra().top())
                                .plus(part.extra().bottom()));
                assertThat(Stream.of(Side.values()).map(side -> part.open().on(side)))
                        .as("some edge is open, or it could not be sewn on")
                        .anyMatch(Length::isPositive);
                Rect whole = Rect.at(Length.ZERO, Length.ZERO, part.finished().size());
                assertThat(part.reaching(whole)).isEqualTo(part.raw());
            }
        }
    }
}
