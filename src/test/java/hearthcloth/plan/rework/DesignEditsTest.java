package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Laws of changes by hand: what is typed is what is cut, what is not touched stays, and a change taken back is gone. */
class DesignEditsTest {

    private static final List<Fabric> FABRICS = IntStream.range(0, 5)
            .mapToObj(i -> new Fabric("fabric " + i, Colour.of(40 * i), Fabric.Faces.SAME, Fabric.Nap.ANY))
            .toList();

    private static Design random(Random random) {
        Order order = List.of(Order.ROUND, Order.PAIRS, Order.TWO_SIDES).get(random.nextInt(3));
        int rounds = 1 + random.nextInt(5);
        List<Length> widths = new ArrayList<>();
        List<List<Fabric>> bars = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            widths.add(Length.inches(12 + random.nextInt(30), 8));
        }
        List<Layout.Course> courses = Layout.courses(order, rounds, widths);
        courses.forEach(course -> bars.add(List.of(FABRICS.get(random.nextInt(FABRICS.size())))));
        Size hearth = new Size(Length.inches(24 + random.nextInt(60), 8), Length.inches(24 + random.nextInt(60), 8));
        Scheme scheme = new Scheme(Scheme.Kind.OWN, List.of(FABRICS.get(0)), bars);
        return new Design(order, new Layout(hearth, courses), scheme, Making.inches(), PiecingRules.inches());
    }

    @Test
    void a_bar_is_cut_as_wide_as_was_typed() {
        Random random = new Random(1);
        for (int i = 0; i < 500; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            int bar = random.nextInt(rework.design().layout().courses().size());
            Length cut = Length.inches(16 + random.nextInt(40), 8);
            Design changed = rework.bars(List.of(bar), cut);
            assertThat(new DesignEdits(changed).barCut(bar)).isEqualTo(cut);
            Laid laid = laid(changed, bar);
            assertThat(laid.cut().width().equals(cut) || laid.cut().height().equals(cut))
                    .as("the ordinary fold cuts it so too")
                    .isTrue();
            assertThat(new DesignEdits(changed).hearthCut()).isEqualTo(rework.hearthCut());
        }
    }

    private static Laid laid(Design design, int bar) {
        String name = design.layout().slots().get(bar).place().bar();
        return design.whole().laid().stream()
                .filter(laid -> laid.patch().place() instanceof Place.Bar place
                        && place.bar().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_hearth_is_cut_as_typed_and_the_bars_keep_their_widths() {
        Random random = new Random(2);
        for (int i = 0; i < 300; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            Size cut = new Size(Length.inches(40 + random.nextInt(80), 8), Length.inches(40 + random.nextInt(80), 8));
            DesignEdits changed = new DesignEdits(rework.hearth(cut));
            assertThat(changed.hearthCut()).isEqualTo(cut);
            assertThat(widths(changed)).isEqualTo(widths(rework));
        }
    }

    private static List<Length> widths(DesignEdits rework) {
        return IntStream.range(0, rework.design().layout().courses().size())
                .mapToObj(rework::barCut)
                .toList();
    }

    @Test
    void a_round_added_and_taken_off_again_leaves_the_design_as_it_was() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            DesignEdits more = new DesignEdits(rework.rounds(rework.rounds() + 1));
            assertThat(more.rounds()).isEqualTo(rework.rounds() + 1);
            assertThat(widths(more).subList(0, widths(rework).size())).isEqualTo(widths(rework));
            assertThat(more.rounds(rework.rounds())).isEqualTo(rework.design());
        }
    }

    @Test
    void another_making_changes_what_finishes_and_not_what_is_cut() {
        Random random = new Random(4);
        Making other = Making.inches()
                .withSeam(SeamKind.felled(Length.inches(1, 8), Length.inches(3, 8)))
                .withHem(Hem.square(Length.inches(1, 8), Length.inches(3, 8)))
                .felledOn(Face.FRONT);
        for (int i = 0; i < 300; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            DesignEdits changed = new DesignEdits(rework.making(other));
            assertThat(widths(changed)).isEqualTo(widths(rework));
            assertThat(changed.hearthCut()).isEqualTo(rework.hearthCut());
            assertThat(new DesignEdits(changed.making(rework.design().making())).design())
                    .isEqualTo(rework.design());
        }
    }

    @Test
    void swapping_twice_changes_nothing_and_once_every_place() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            DesignEdits once = new DesignEdits(rework.swapped(FABRICS.get(0), FABRICS.get(1)));
            assertThat(once.design().scheme().hearth()).containsExactly(FABRICS.get(1));
            assertThat(once.swapped(FABRICS.get(0), FABRICS.get(1))).isEqualTo(rework.design());
        }
    }

    @Test
    void another_order_keeps_the_widths_of_each_round() {
        Random random = new Random(6);
        for (int i = 0; i < 200; i++) {
            DesignEdits rework = new DesignEdits(random(random));
            for (Order order : Order.values()) {
                DesignEdits changed = new DesignEdits(rework.order(order));
                assertThat(changed.rounds()).isEqualTo(rework.rounds());
                for (int round = 1; round <= rework.rounds(); round++) {
                    Length width = rework.barCut(rework.barsOf(round).get(0));
                    assertThat(changed.barsOf(round))
                            .hasSize(order.sides().size())
                            .allSatisfy(bar -> assertThat(changed.barCut(bar)).isEqualTo(width));
                }
            }
        }
    }

    @Test
    void what_leaves_nothing_of_a_bar_is_refused() {
        DesignEdits rework = new DesignEdits(random(new Random(7)));
        assertThatThrownBy(() -> rework.bars(List.of(0), Length.inches(1, 2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing would be left of a bar");
        assertThatThrownBy(() -> rework.hearth(Size.square(Length.inches(1, 4))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hearth");
    }
}
