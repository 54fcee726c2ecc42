package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Laws that hold for every cloth, over thousands of seeded random ones. */
class ClothLawsTest {

    private static final int MANY = 3_000;
    private static final int SOME = 1_000;
    private static final int FEW = 40;

    @Test
    void patches_lie_side_by_side_and_fill_the_cloth() {
        each(MANY, cloth -> {
            List<Envelope> boxes = cloth.laid().stream()
                    .map(laid -> Jts.of(laid.at()).getEnvelopeInternal())
                    .toList();
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(boxes.get(i).intersection(boxes.get(j)).getArea())
                            .isZero();
                }
            }
            assertThat(boxes.stream().mapToDouble(Envelope::getArea).sum())
                    .isCloseTo(Jts.of(whole(cloth)).getArea(), within(1e-6));
        });
    }

    @Test
    void patches_together_are_the_cloth() {
        each(FEW, cloth -> {
            Geometry union = Jts.union(cloth.laid().stream().map(Laid::at).toList());
            assertThat(union.symDifference(Jts.of(whole(cloth))).getArea()).isCloseTo(0, within(1e-6));
        });
    }

    @Test
    void there_is_one_seam_less_than_there_are_patches() {
        each(MANY, cloth -> assertThat(cloth.steps()).hasSize(cloth.patches().size() - 1));
    }

    @Test
    void a_cloth_turned_over_twice_is_the_same() {
        each(MANY, cloth -> assertThat(cloth.turnedOver().turnedOver()).isEqualTo(cloth));
    }

    /** Also the ruler's mark, which decides the cut. */
    @Test
    void turning_over_keeps_how_it_is_made_up_but_for_the_face_of_the_fells() {
        Making making = Making.inches();

        assertThat(Made.felledExample().turnedOver().making())
                .isEqualTo(Made.felledExampleMaking().felledOn(Face.FRONT));
        assertThat(new Cloth(Made.felledExample().work(), making).turnedOver().making())
                .isEqualTo(making.felledOn(Face.FRONT));
    }

    @Test
    void turning_over_keeps_every_patch_in_its_place() {
        each(SOME, cloth -> {
            Length width = cloth.finished().width();
            assertThat(cloth.turnedOver().laid().stream()
                            .map(laid -> laid.at().turnedOver(width))
                            .toList())
                    .containsExactlyInAnyOrderElementsOf(
                            cloth.laid().stream().map(Laid::at).toList());
        });
    }

    @Test
    void the_notation_reads_back_what_it_wrote() {
        each(
                MANY,
                cloth ->
                        assertThat(Notation.parse(Notation.print(cloth.work()))).isEqualTo(cloth.work()));
    }

    /** Allowances found from the picture alone: rim or joining line beside an edge, and who wraps there. */
    @Test
    void a_patch_is_cut_to_its_finished_size_and_its_four_allowances_and_margins() {
        each(SOME, cloth -> {
            for (Laid laid : cloth.laid()) {
                for (Side side : Side.values()) {
                    assertThat(laid.allowances().on(side)).isEqualTo(allowanceSeen(cloth, laid, side));
                }
                assertThat(laid.exact().width())
                        .isEqualTo(laid.at()
                                .width()
                                .plus(laid.allowances().left())
                                .plus(laid.allowances().right()));
                isCutAtTheNextMark(cloth, laid);
            }
        });
    }

    private static void isCutAtTheNextMark(Cloth cloth, Laid laid) {
        Making making = cloth.making();
        Length mark = making.margins().mark();
        boolean bar = laid.patch().place() instanceof Place.Bar;
        boolean upright =
                laid.patch().place() instanceof Place.Bar place && place.side().isUpright();
        Set<Length> across = Set.of(bar ? making.trim() : Length.ZERO);
        Set<Length> along = new HashSet<>(Set.of(Length.ZERO));
        if (bar) {
            along.add(making.leeway());
        }
        assertThat(reached(upright ? across : along, laid.exact().width(), mark))
                .contains(laid.cut().width());
        assertThat(reached(upright ? along : across, laid.exact().height(), mark))
                .contains(laid.cut().height());
    }

    private static List<Length> reached(Set<Length> margins, Length exact, Length mark) {
        return margins.stream()
                .map(margin -> exact.plus(margin).roundedTo(mark, Rounding.UP))
                .toList();
    }

    private static Length allowanceSeen(Cloth cloth, Laid laid, Side side) {
        Rect edge = edge(laid.at(), side);
        if (edge(whole(cloth), side).equals(edgeLine(whole(cloth), edge, side))) {
            return cloth.making().hem().allowance();
        }
        List<Length> seen = new ArrayList<>();
        for (Step step : cloth.steps()) {
            if (Jts.of(step.line()).getEnvelopeInternal().covers(Jts.of(edge).getEnvelopeInternal())) {
                for (Half half : Half.values()) {
                    if (step.patches(half).contains(laid.patch())) {
                        boolean wraps = step.seam().wraps() == half;
                        seen.add(
                                wraps
                                        ? cloth.making().seam().wide()
                                        : cloth.making().seam().narrow());
                    }
                }
            }
        }
        assertThat(seen).hasSize(1);
        return seen.get(0);
    }

    /** The running size is the bounding box of what is sewn, and what its outermost patches still have open. */
    @Test
    void running_sizes_agree_with_the_patches_sewn_so_far() {
        each(SOME, cloth -> {
            List<Laid> laid = cloth.laid();
            for (Step step : cloth.steps()) {
                Set<Patch> sewn = new HashSet<>(step.patches(Half.FIRST));
                sewn.addAll(step.patches(Half.SECOND));
                List<Laid> parts =
                        laid.stream().filter(one -> sewn.contains(one.patch())).toList();
                assertThat(step.running()).isEqualTo(raw(parts));
            }
        });
    }

    private static Size raw(List<Laid> parts) {
        Length left = parts.stream().map(p -> p.at().x()).reduce(Length::min).orElseThrow();
        Length top = parts.stream().map(p -> p.at().y()).reduce(Length::min).orElseThrow();
        Length right =
                parts.stream().map(p -> p.at().right()).reduce(Length::max).orElseThrow();
        Length bottom =
                parts.stream().map(p -> p.at().bottom()).reduce(Length::max).orElseThrow();
        Length width = right.minus(left).plus(open(parts, Side.LEFT, left)).plus(open(parts, Side.RIGHT, right));
        Length height = bottom.minus(top).plus(open(parts, Side.TOP, top)).plus(open(parts, Side.BOTTOM, bottom));
        return new Size(width, height);
    }

    private static Length open(List<Laid> parts, Side side, Length at) {
        List<Length> open = parts.stream()
                .filter(part -> place(part.at(), side).equals(at))
                .map(part -> part.allowances().on(side))
                .distinct()
                .toList();
        assertThat(open).as("one allowance along the whole %s", side).hasSize(1);
        return open.get(0);
    }

    @Test
    void parts_are_made_before_they_are_sewn_on_and_the_last_step_is_the_whole_cloth() {
        each(SOME, cloth -> {
            Set<Assembly> made = new HashSet<>(cloth.patches());
            for (Step step : cloth.steps()) {
                assertThat(made).contains(step.seam().first(), step.seam().second());
                made.add(step.seam());
            }
            assertThat(made).contains(cloth.work());
        });
    }

    @Test
    void a_joined_bar_is_joined_just_before_it_is_sewn_on() {
        each(MANY, cloth -> {
            List<Step> steps = cloth.steps();
            for (int i = 0; i + 1 < steps.size(); i++) {
                if (steps.get(i).joinedBar().isPresent()) {
                    Step next = steps.get(i + 1);
                    assertThat(next.seam()
                                            .half(next.added())
                                            .equals(steps.get(i).seam())
                                    || next.joinedBar().equals(steps.get(i).joinedBar()))
                            .isTrue();
                }
            }
        });
    }

    @Test
    void both_faces_cover_the_cloth() {
        each(FEW, cloth -> {
            for (Face face : Face.values()) {
                Geometry union = Jts.union(rects(cloth, face));
                assertThat(union.symDifference(Jts.of(whole(cloth))).getArea()).isCloseTo(0, within(1e-6));
            }
        });
    }

    @Test
    void nothing_on_either_face_lies_beside_the_cloth() {
        each(MANY, cloth -> {
            Envelope whole = Jts.of(whole(cloth)).getEnvelopeInternal();
            for (Face face : Face.values()) {
                assertThat(rects(cloth, face))
                        .allMatch(rect -> whole.covers(Jts.of(rect).getEnvelopeInternal()));
            }
        });
    }

    private static List<Rect> rects(Cloth cloth, Face face) {
        return Shown.of(cloth, face).fields().stream().map(Shown.Field::at).toList();
    }

    @Test
    void no_thick_place_is_thinner_than_a_plain_seam_and_all_lie_on_the_cloth() {
        each(SOME, cloth -> {
            int band = Layers.band(cloth);
            for (Layers.Spot spot : Layers.spots(cloth)) {
                assertThat(spot.plies()).isGreaterThan(band);
                assertThat(spot.at().x().isNegative() || spot.at().y().isNegative())
                        .isFalse();
                assertThat(spot.at().right())
                        .isLessThanOrEqualTo(cloth.finished().width());
                assertThat(spot.at().bottom())
                        .isLessThanOrEqualTo(cloth.finished().height());
            }
            assertThat(Layers.most(cloth)).isGreaterThanOrEqualTo(cloth.steps().isEmpty() ? 1 : band);
        });
    }

    /** Runs {@code law} over cloths of seeds 1 to {@code count}; a failure names its seed. */
    private static void each(int count, Consumer<Cloth> law) {
        for (int seed = 1; seed <= count; seed++) {
            Cloth cloth = RandomCloths.of(seed);
            try {
                law.accept(cloth);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed + ": " + Notation.print(cloth.work()), e);
            }
        }
    }

    private static Rect whole(Cloth cloth) {
        return Rect.at(Length.ZERO, Length.ZERO, cloth.finished());
    }

    private static Length place(Rect rect, Side side) {
        return switch (side) {
            case LEFT -> rect.x();
            case TOP -> rect.y();
            case RIGHT -> rect.right();
            case BOTTOM -> rect.bottom();
        };
    }

    private static Rect edge(Rect rect, Side side) {
        return switch (side) {
            case LEFT -> Rect.at(rect.x(), rect.y(), new Size(Length.ZERO, rect.height()));
            case RIGHT -> Rect.at(rect.right(), rect.y(), new Size(Length.ZERO, rect.height()));
            case TOP -> Rect.at(rect.x(), rect.y(), new Size(rect.width(), Length.ZERO));
            case BOTTOM -> Rect.at(rect.x(), rect.bottom(), new Size(rect.width(), Length.ZERO));
        };
    }

    /** {@code edge} stretched over the whole of {@code rect}, so that two edges on one line are equal. */
    private static Rect edgeLine(Rect rect, Rect edge, Side side) {
        return side.isUpright()
                ? Rect.at(edge.x(), rect.y(), new Size(Length.ZERO, rect.height()))
                : Rect.at(rect.x(), edge.y(), new Size(rect.width(), Length.ZERO));
    }
}
