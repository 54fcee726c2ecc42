package hearthcloth.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where seams run into a bar, against the places of the patches in the finished cloth. */
class SeamCrossingsTest {

    private static Layout layout(Random random) {
        List<Layout.Course> courses = new ArrayList<>();
        List<Side> sides = List.of(Order.ROUND, Order.PAIRS, Order.TWO_SIDES)
                .get(random.nextInt(3))
                .sides();
        for (int i = 0; i < sides.size() * (1 + random.nextInt(3)); i++) {
            courses.add(new Layout.Course(sides.get(i % sides.size()), Length.mm(10 + random.nextInt(30))));
        }
        return new Layout(new Size(Length.mm(50 + random.nextInt(50)), Length.mm(50 + random.nextInt(50))), courses);
    }

    /** The hearth first, then the bars in sewing order, each at its place. */
    private static List<Rect> places(Layout layout) {
        List<List<Layout.Part>> parts = new ArrayList<>();
        layout.slots().forEach(slot -> parts.add(List.of(new Layout.Part("a", Showing.SAME, slot.length()))));
        Cloth cloth = new Cloth(layout.sewn("a", Showing.SAME, parts), Making.metric());
        List<Rect> places = new ArrayList<>();
        places.add(at(cloth, "hearth"));
        layout.slots().forEach(slot -> places.add(at(cloth, slot.place().id())));
        return places;
    }

    private static Rect at(Cloth cloth, String id) {
        return cloth.laid().stream()
                .filter(laid -> laid.patch().place().id().equals(id))
                .map(Laid::at)
                .findFirst()
                .orElseThrow();
    }

    private static boolean touches(Rect bar, Rect other, Side side) {
        return switch (side) {
            case LEFT -> bar.right().equals(other.x());
            case RIGHT -> bar.x().equals(other.right());
            case TOP -> bar.bottom().equals(other.y());
            case BOTTOM -> bar.y().equals(other.bottom());
        };
    }

    private static Length start(Rect at, Side side) {
        return side.isUpright() ? at.y() : at.x();
    }

    @Test
    void every_seam_that_ends_at_a_bar_is_found_and_every_bar_it_lies_along() {
        Random random = new Random(31);
        int crossed = 0;
        int along = 0;
        for (int i = 0; i < 200; i++) {
            Layout layout = layout(random);
            List<Rect> places = places(layout);
            SeamCrossings found = SeamCrossings.of(layout);
            List<SeamCrossings.Touch> touches = new ArrayList<>();
            for (int bar = 0; bar < layout.slots().size(); bar++) {
                Side side = layout.slots().get(bar).place().side();
                Rect here = places.get(bar + 1);
                List<Length> ends = new ArrayList<>();
                for (int work = 0; work <= bar; work++) {
                    Rect there = places.get(work);
                    if (touches(here, there, side)) {
                        Length from = start(there, side).minus(start(here, side));
                        if (from.isPositive()) {
                            ends.add(from);
                        }
                        if (work > 0 && layout.slots().get(work - 1).place().side() == side) {
                            touches.add(new SeamCrossings.Touch(work - 1, bar, from));
                        }
                    }
                }
                ends.sort(Comparator.naturalOrder());
                assertThat(found.crossed().get(bar).stream().sorted())
                        .as("%s bar %s", layout, bar)
                        .isEqualTo(ends);
                crossed += ends.size();
            }
            assertThat(found.touches()).as("%s", layout).isEqualTo(touches);
            along += touches.size();
        }
        assertThat(crossed).isGreaterThan(500);
        assertThat(along).isGreaterThan(300);
    }
}
