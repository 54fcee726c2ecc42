package hearthcloth.benchmarks.sets;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import java.util.List;
import java.util.Optional;

/** Wishes and cloths to measure with. */
public final class Wishes {

    private Wishes() {}

    /** A square cloth of so many inches finished, everything else left open. */
    public static Wish square(int inches, long seed) {
        return new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty()),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 4, seed, Ruler.EIGHTHS));
    }

    /** A log cabin of so many rounds, four bars each, none of them joined. */
    public static Cloth cloth(int rounds) {
        Layout layout = new Layout(
                Size.square(Length.inches(10)), Layout.courses(Order.ROUND, rounds, List.of(Length.inches(3))));
        List<List<Layout.Part>> bars = layout.slots().stream()
                .map(slot -> List.of(new Layout.Part("Oat", Showing.SAME, slot.length())))
                .toList();
        return new Cloth(layout.sewn("Oat", Showing.SAME, bars), Making.inches());
    }
}
