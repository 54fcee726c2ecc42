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
        lines.add(new Line("Thread", ruler.run(thread(), Rounding.UP)));
        lines.add(new Line("Thickest place", Layers.most(cloth) + " layers"));
        return lines;
    }

    /** How many joins, and how near that is to the fewest there can be. */
    public static String joins(PlanFigures figures, Bound bound) {
        int above = figures.joins() - bound.joins();
        return figures.joins()
                + (above <= 0 ? ", the fewest possible" : ", at most " + above + " above the fewest possible");
    }

    /**
     * A figure in few words.
     *
     * @param was what it was before the last change; empty where it is the same
     * @param isBetter whether it is better now than it was
     */
    public record Figure(String value, String word, String was, boolean isBetter) {}

    /** The figures under a cloth's picture, and what they were before the last change. */
    List<Figure> inShort(Optional<ClothFigures> before) {
        List<Figure> figures = new ArrayList<>();
        String was = before.map(ClothFigures::size)
                .filter(size -> !size.equals(size()))
                .orElse("");
        figures.add(new Figure(size(), cloth.finished().isSquare() ? "square" : "finished", was, true));
        plan.ifPresent(made -> {
            Optional<PlanFigures> then = before.flatMap(ClothFigures::plan).map(Plan::figures);
            if (!cloth.isFree()) {
                int joins = made.figures().joins();
                figures.add(counted(joins, joins == 1 ? "join" : "joins", "", then.map(PlanFigures::joins)));
            }
            figures.add(counted(
                    made.figures().areas().lostPercent(),
                    "lost",
                    " %",
                    then.map(old -> old.areas().lostPercent())));
        });
        figures.add(new Figure(ruler.run(thread(), Rounding.UP), "thread", "", true));
        int layers = Layers.most(cloth);
        figures.add(counted(layers, "layers at most", "", before.map(old -> Layers.most(old.cloth()))));
        return List.copyOf(figures);
    }

    private static Figure counted(long now, String word, String unit, Optional<? extends Number> then) {
        String was =
                then.filter(old -> old.longValue() != now).map(old -> old + "").orElse("");
        return new Figure(
                now + unit, word, was, then.filter(old -> old.longValue() < now).isEmpty());
    }

    private String size() {
        return cloth.finished().isSquare()
                ? ruler.write(cloth.finished().width(), Rounding.NEAREST)
                : ruler.write(cloth.finished(), Rounding.NEAREST);
    }

    private Length thread() {
        return ThreadNeed.of(cloth, Stitch.USUAL).total();
    }
}
