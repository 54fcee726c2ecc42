package hearthcloth.plan.together;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import java.util.List;
import java.util.Optional;

/** Cloths that are asked for in tests. */
final class Wished {

    private Wished() {}

    static Wish wish(Optional<Size> size, List<String> fabrics) {
        return new Wish(
                new Wish.Target(size, false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(fabrics, 1, 1, Ruler.EIGHTHS));
    }

    static Asked square(String name, int inches) {
        return new Asked(name, wish(Optional.of(Size.square(Length.inches(inches))), List.of()), Optional.empty());
    }
}
