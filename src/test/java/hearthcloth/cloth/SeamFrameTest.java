package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** {@link SeamFrame}s with the {@link Edges} they are closed by, and the tree {@link TurnedOver}. */
class SeamFrameTest {

    private static final SeamKind FELLED = SeamKind.felled(Length.mm(6), Length.mm(12));
    private static final Edges EDGES = new Edges(Length.mm(1), Length.mm(2), Length.mm(3), Length.mm(4));

    private static Size size(long width, long height) {
        return new Size(Length.mm(width), Length.mm(height));
    }

    private static Patch patch(int number, long width, long height, Showing showing) {
        return new Patch(new Place.Free(number), "oat", size(width, height), showing);
    }

    @Test
    void edges_hold_a_length_for_each_side() {
        assertThat(EDGES.on(Side.LEFT)).isEqualTo(Length.mm(1));
        assertThat(EDGES.on(Side.TOP)).isEqualTo(Length.mm(2));
        assertThat(EDGES.on(Side.RIGHT)).isEqualTo(Length.mm(3));
        assertThat(EDGES.on(Side.BOTTOM)).isEqualTo(Length.mm(4));
        for (Side changed : Side.values()) {
            Edges other = EDGES.with(changed, Length.mm(9));
            for (Side side : Side.values()) {
                assertThat(other.on(side)).isEqualTo(side == changed ? Length.mm(9) : EDGES.on(side));
            }
        }
    }

    @Test
    void a_size_grows_by_the_edges_on_its_sides() {
        assertThat(EDGES.around(size(100, 50))).isEqualTo(size(104, 56));
        assertThat(Edges.NONE.around(size(100, 50))).isEqualTo(size(100, 50));
        assertThat(Edges.all(Length.mm(5)).around(size(100, 50))).isEqualTo(size(110, 60));
    }

    @Test
    void a_half_lies_past_the_other_and_is_closed_by_the_seam_where_it_is_sewn() {
        Seam beside = Seam.of(Join.BESIDE, Half.SECOND, patch(1, 30, 50, Showing.SAME), patch(2, 20, 50, Showing.SAME));
        SeamFrame frame = new SeamFrame(Length.mm(100), Length.mm(200), EDGES);

        SeamFrame first = frame.half(beside, Half.FIRST, FELLED);
        SeamFrame second = frame.half(beside, Half.SECOND, FELLED);

        // the second wraps: its edge is cut wide, the first one's narrow
        assertThat(first)
                .isEqualTo(new SeamFrame(
                        Length.mm(100),
                        Length.mm(200),
                        new Edges(Length.mm(1), Length.mm(2), Length.mm(6), Length.mm(4))));
        assertThat(second)
                .isEqualTo(new SeamFrame(
                        Length.mm(130),
                        Length.mm(200),
                        new Edges(Length.mm(12), Length.mm(2), Length.mm(3), Length.mm(4))));
        Seam below = Seam.of(Join.BELOW, Half.FIRST, patch(1, 30, 50, Showing.SAME), patch(2, 30, 10, Showing.SAME));
        assertThat(frame.half(below, Half.SECOND, FELLED))
                .isEqualTo(new SeamFrame(
                        Length.mm(100),
                        Length.mm(250),
                        new Edges(Length.mm(1), Length.mm(6), Length.mm(3), Length.mm(4))));
        assertThat(frame.half(below, Half.FIRST, FELLED).closed().bottom()).isEqualTo(Length.mm(12));
    }

    @Test
    void the_joining_line_runs_between_the_halves_and_has_no_thickness() {
        SeamFrame frame = new SeamFrame(Length.mm(100), Length.mm(200), Edges.NONE);
        Seam beside = Seam.of(Join.BESIDE, Half.FIRST, patch(1, 30, 50, Showing.SAME), patch(2, 20, 50, Showing.SAME));
        Seam below = Seam.of(Join.BELOW, Half.FIRST, patch(1, 30, 50, Showing.SAME), patch(2, 30, 10, Showing.SAME));

        assertThat(frame.line(beside)).isEqualTo(new Rect(Length.mm(130), Length.mm(200), size(0, 50)));
        assertThat(frame.line(below)).isEqualTo(new Rect(Length.mm(100), Length.mm(250), size(30, 0)));
    }

    @Test
    void the_whole_cloth_is_closed_by_its_hem_all_round() {
        Making making = Made.felledExampleMaking();

        // a hem of 10 and 10
        assertThat(SeamFrame.whole(making))
                .isEqualTo(new SeamFrame(Length.ZERO, Length.ZERO, Edges.all(Length.mm(20))));
    }

    @Test
    void a_pair_turned_over_trades_places_and_sides() {
        Seam pair = Seam.of(Join.BESIDE, Half.FIRST, patch(1, 30, 50, Showing.RIGHT), patch(2, 20, 50, Showing.SAME));
        Seam stack = Seam.of(Join.BELOW, Half.FIRST, patch(1, 30, 50, Showing.RIGHT), patch(2, 30, 10, Showing.WRONG));

        assertThat(pair.fold(new TurnedOver()))
                .isEqualTo(Seam.of(
                        Join.BESIDE, Half.SECOND, patch(2, 20, 50, Showing.SAME), patch(1, 30, 50, Showing.WRONG)));
        assertThat(stack.fold(new TurnedOver()))
                .isEqualTo(Seam.of(
                        Join.BELOW, Half.FIRST, patch(1, 30, 50, Showing.WRONG), patch(2, 30, 10, Showing.RIGHT)));
    }

    @Test
    void every_patch_of_a_cloth_turned_over_lies_mirrored_with_its_allowances() {
        RandomCloths.many(20).forEach(cloth -> {
            Assembly over = cloth.work().fold(new TurnedOver());
            assertThat(over.fold(new TurnedOver())).isEqualTo(cloth.work());
            Map<String, Laid> front = byPlace(Laid.of(cloth));
            List<Laid> back = Laid.of(new Cloth(over, cloth.making()));
            assertThat(back).hasSameSizeAs(front.values());
            for (Laid laid : back) {
                Laid before =
                        Objects.requireNonNull(front.get(laid.patch().place().id()));
                assertThat(laid.at())
                        .isEqualTo(before.at().turnedOver(cloth.work().size().width()));
                for (Side side : Side.values()) {
                    assertThat(laid.allowances().on(side.turnedOver()))
                            .isEqualTo(before.allowances().on(side));
                }
            }
        });
    }

    private static Map<String, Laid> byPlace(List<Laid> laid) {
        return laid.stream()
                .sorted(Comparator.comparing(one -> one.patch().place().id()))
                .collect(Collectors.toMap(one -> one.patch().place().id(), Function.identity()));
    }

    @Test
    void frames_handed_down_a_tree_cover_the_cloth_once() {
        RandomCloths.many(8).forEach(cloth -> {
            List<Rect> places = new ArrayList<>();
            down(cloth.work(), SeamFrame.whole(cloth.making()), cloth.making().seam(), places);
            double whole = Jts.of(Rect.at(Length.ZERO, Length.ZERO, cloth.work().size()))
                    .getArea();
            assertThat(Jts.union(places).getArea()).isCloseTo(whole, within(1e-6 * whole));
            assertThat(places.stream()
                            .mapToDouble(place -> Jts.of(place).getArea())
                            .sum())
                    .isCloseTo(whole, within(1e-6 * whole));
        });
    }

    private static void down(Assembly work, SeamFrame frame, SeamKind kind, List<Rect> out) {
        if (work instanceof Seam seam) {
            down(seam.first(), frame.half(seam, Half.FIRST, kind), kind, out);
            down(seam.second(), frame.half(seam, Half.SECOND, kind), kind, out);
        } else {
            out.add(Rect.at(frame.x(), frame.y(), work.size()));
        }
    }
}
