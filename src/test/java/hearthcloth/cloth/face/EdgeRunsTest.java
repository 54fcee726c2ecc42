package hearthcloth.cloth.face;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.face.EdgeRuns.Span;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** {@link EdgeRuns} beside the same told millimetre by millimetre. */
class EdgeRunsTest {

    private static Span<String> span(long from, long to, String value) {
        return new Span<>(Length.mm(from), Length.mm(to), value);
    }

    private static Patch patch(long width, long height) {
        return new Patch(new Place.Free(1), "oat", new Size(Length.mm(width), Length.mm(height)), Showing.SAME);
    }

    private static <T> List<Span<T>> endToEnd(List<Span<T>> first, List<Span<T>> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    @Test
    void a_patch_has_one_span_along_each_side() {
        EdgeRuns<String> rim = EdgeRuns.around(patch(30, 50), "a");

        for (Side side : Side.values()) {
            assertThat(rim.on(side)).containsExactly(span(0, side.isUpright() ? 50 : 30, "a"));
        }
    }

    @Test
    void beside_each_other_the_tops_and_bottoms_are_put_end_to_end() {
        Seam seam = Seam.of(Join.BESIDE, Half.FIRST, patch(30, 50), patch(20, 50));
        List<Side> met = new ArrayList<>();

        EdgeRuns<String> rim = EdgeRuns.joined(
                seam,
                EdgeRuns.around(patch(30, 50), "a"),
                EdgeRuns.around(patch(20, 50), "b"),
                (first, second, at, side) -> {
                    assertThat(at).isEqualTo(Length.mm(30));
                    met.add(side);
                    return endToEnd(first, second);
                });

        assertThat(met).containsExactlyInAnyOrder(Side.TOP, Side.BOTTOM);
        assertThat(rim.left()).containsExactly(span(0, 50, "a"));
        assertThat(rim.right()).containsExactly(span(0, 50, "b"));
        assertThat(rim.top()).containsExactly(span(0, 30, "a"), span(30, 50, "b"));
        assertThat(rim.bottom()).isEqualTo(rim.top());
    }

    @Test
    void below_each_other_the_lefts_and_rights_are_put_end_to_end() {
        Seam seam = Seam.of(Join.BELOW, Half.FIRST, patch(30, 50), patch(30, 10));
        List<Side> met = new ArrayList<>();

        EdgeRuns<String> rim = EdgeRuns.joined(
                seam,
                EdgeRuns.around(patch(30, 50), "a"),
                EdgeRuns.around(patch(30, 10), "b"),
                (first, second, at, side) -> {
                    met.add(side);
                    return endToEnd(first, second);
                });

        assertThat(met).containsExactlyInAnyOrder(Side.LEFT, Side.RIGHT);
        assertThat(rim.top()).containsExactly(span(0, 30, "a"));
        assertThat(rim.bottom()).containsExactly(span(0, 30, "b"));
        assertThat(rim.left()).containsExactly(span(0, 50, "a"), span(50, 60, "b"));
        assertThat(rim.right()).isEqualTo(rim.left());
    }

    /** The value at each millimetre's middle. */
    private static List<String> told(List<Span<String>> spans, int length) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            Length at = Length.mm(i).plus(new Length(500_000));
            told.add(spans.stream()
                    .filter(span -> span.from().isLessThan(at) && at.isLessThan(span.to()))
                    .map(Span::value)
                    .reduce("", String::concat));
        }
        return told;
    }

    private static List<Span<String>> random(SplittableRandom chance, int length) {
        List<Span<String>> spans = new ArrayList<>();
        int from = 0;
        while (from < length) {
            int to = Math.min(length, from + 1 + chance.nextInt(6));
            spans.add(span(from, to, String.valueOf((char) ('a' + chance.nextInt(5)))));
            from = to;
        }
        return spans;
    }

    private static void noneEmpty(List<Span<String>> spans) {
        assertThat(spans).allMatch(span -> span.from().isLessThan(span.to()));
        for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.get(i).from()).isEqualTo(spans.get(i - 1).to());
        }
    }

    @Test
    void what_lies_between_two_places_is_changed_and_nothing_else() {
        SplittableRandom chance = new SplittableRandom(29);
        for (int round = 0; round < 200; round++) {
            List<Span<String>> spans = random(chance, 20);
            int from = chance.nextInt(20);
            int to = from + chance.nextInt(20 - from + 1);
            List<String> wanted = told(spans, 20);
            for (int i = from; i < to; i++) {
                wanted.set(i, wanted.get(i) + "!");
            }

            List<Span<String>> changed = EdgeRuns.changed(spans, Length.mm(from), Length.mm(to), was -> was + "!");

            assertThat(told(changed, 20)).isEqualTo(wanted);
            noneEmpty(changed);
        }
    }

    @Test
    void two_runs_are_one_divided_at_the_ends_of_both() {
        SplittableRandom chance = new SplittableRandom(30);
        for (int round = 0; round < 200; round++) {
            List<Span<String>> one = random(chance, 20);
            List<Span<String>> other = random(chance, 20);
            List<String> first = told(one, 20);
            List<String> second = told(other, 20);

            List<Span<String>> merged = EdgeRuns.merged(one, other, (a, b) -> a + b);

            List<String> both = told(merged, 20);
            for (int i = 0; i < 20; i++) {
                assertThat(both.get(i)).isEqualTo(first.get(i) + second.get(i));
            }
            noneEmpty(merged);
        }
    }

    @Test
    void spans_move_together() {
        assertThat(EdgeRuns.moved(List.of(span(0, 3, "a"), span(3, 5, "b")), Length.mm(10)))
                .containsExactly(span(10, 13, "a"), span(13, 15, "b"));
    }
}
