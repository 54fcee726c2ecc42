package hearthcloth.web.cloth;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures beside a cloth's pictures; those of cutting only where there is a plan. */
public record ClothFigures(Cloth cloth, Optional<Plan> plan, Ruler ruler) {

    /** A name and a value beside it. */
    public record Line(String name, String value) {}

    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        plan.ifPresent(made -> {
            PlanFigures figures = made.figures();
            lines.add(
                    cloth.isFree()
                            ? new Line("Patches", String.valueOf(cloth.patches().size()))
                            : new Line("Joins", joins(figures, made.bound())));
            lines.add(new Line("Cuts", String.valueOf(figures.cuts())));
            lines.add(new Line("Pieces cut into", String.valueOf(made.cuts().size())));
            lines.add(new Line("Lost fabric", figures.areas().lostPercent() + " %"));
        });
        Length thread = ThreadNeed.of(cloth, Stitch.USUAL).total();
        lines.add(new Line("Thread", ruler.run(thread, Rounding.UP)));
        lines.add(new Line("Thickest place", Layers.most(cloth) + " layers"));
        return lines;
    }

    /** How many joins, and how near that is to the fewest there can be. */
    public static String joins(PlanFigures figures, Bound bound) {
        int above = figures.joins() - bound.joins();
        return figures.joins()
                + (above <= 0 ? ", the fewest possible" : ", at most " + above + " above the fewest possible");
    }
}
