package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the colours of a cloth are to do: how much contrast is wished, and round which gift it is tied. */
public final class ColourGoal {

    private final ColourParameters parameters;
    private final Contrast contrast;
    private final Optional<Wish.Tied> gift;
    private final Map<Size, Optional<Visible>> ties = new LinkedHashMap<>();
    private final Map<Size, Optional<Visible>> falls = new LinkedHashMap<>();

    private ColourGoal(ColourParameters parameters, Contrast contrast, Optional<Wish.Tied> gift) {
        this.parameters = parameters;
        this.contrast = contrast;
        this.gift = gift;
    }

    /** As it is wished. */
    public static ColourGoal of(Wish.Looks looks) {
        return new ColourGoal(ColourParameters.standard(), looks.contrast(), looks.tied());
    }

    /** A cloth that is looked at flat. */
    public static ColourGoal flat(Contrast contrast) {
        return new ColourGoal(ColourParameters.standard(), contrast, Optional.empty());
    }

    public Contrast contrast() {
        return contrast;
    }

    /** By which values colours are laid. */
    public ColourParameters parameters() {
        return parameters;
    }

    /** The same with another contrast. */
    public ColourGoal with(Contrast other) {
        return other == contrast ? this : new ColourGoal(parameters, other, gift);
    }

    /** What shows of a cloth of this size once tied, its spare corners tucked in; empty where there is no gift or it does not fit. */
    public Optional<Visible> tied(Size cloth) {
        return gift.flatMap(wish -> ties.computeIfAbsent(cloth, size -> {
            Fit fit = wish.tie().fit(wish.gift(), size, wish.tail().usual(), wish.placing());
            return fit.holds() ? Optional.of(Visible.of(TiedFold.of(fit))) : Optional.empty();
        }));
    }

    /** The same with the spare corners outside; what shows tucked in, where the tie leaves none. */
    public Optional<Visible> falling(Size cloth) {
        return falls.computeIfAbsent(
                cloth,
                size -> tied(size)
                        .map(tucked -> TiedFold.asItFalls(tucked.fold())
                                .map(Visible::of)
                                .orElse(tucked)));
    }

    EdgeBill bill(FabricDifferences front, Size cloth) {
        return new EdgeBill(front, contrast, tied(cloth));
    }

    /** All that is amiss in a cloth, in millimetres of edge: on the front, half of it on the back, half of it tied. */
    public double amissMm(Cloth cloth, List<Fabric> fabrics) {
        FabricDifferences front = new FabricDifferences(fabrics);
        EdgeMap map = EdgeMap.of(cloth, front);
        double back = front.isTwoFaced() ? EdgeCost.of(contrast).of(map.figures(front.back())) : 0;
        double seen = tied(cloth.finished())
                .map(visible -> EdgeCost.of(contrast).of(map.figures(front, edge -> TiedColours.share(edge, visible))))
                .orElse(0.0);
        return map.figures(front).amissMm(contrast) + EdgeBill.LESS * (back + seen);
    }
}
