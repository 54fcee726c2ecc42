package hearthcloth.web.cloth;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** The figures beside a cloth's pictures; those of cutting only where there is a plan. */
public record ClothFigures(Cloth cloth, Optional<Plan> plan, Voice voice) {

    /** A name and a value beside it. */
    public record Line(String name, String value) {}

    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        plan.ifPresent(made -> {
            PlanFigures figures = made.figures();
            lines.add(
                    cloth.isFree()
                            ? new Line(
                                    words().figurePatches(),
                                    String.valueOf(cloth.patches().size()))
                            : new Line(words().figureJoins(), joins(figures, made.bound(), words())));
            lines.add(new Line(words().figureCuts(), String.valueOf(figures.cuts())));
            lines.add(
                    new Line(words().figurePieces(), String.valueOf(made.cuts().size())));
            lines.add(new Line(words().figureLost(), percent(figures.areas().lostPercent())));
        });
        lines.add(new Line(words().figureThread(), voice.run(thread(), Rounding.UP)));
        lines.add(new Line(words().figureThickest(), words().figureLayers(Layers.most(cloth))));
        return lines;
    }

    /** How many joins, and how near that is to the fewest there can be. */
    public static String joins(PlanFigures figures, Bound bound, DesigningWords words) {
        int above = figures.joins() - bound.joins();
        return words.figureJoinsFew(Math.max(0, above), String.valueOf(figures.joins()));
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
        figures.add(
                new Figure(size(), words().shortSize(cloth.finished().isSquare() ? "square" : "finished"), was, true));
        plan.ifPresent(made -> {
            Optional<PlanFigures> then = before.flatMap(ClothFigures::plan).map(Plan::figures);
            if (!cloth.isFree()) {
                int joins = made.figures().joins();
                figures.add(counted(joins, words().shortJoins(joins), then.map(PlanFigures::joins)));
            }
            figures.add(counted(
                    made.figures().areas().lostPercent(),
                    words().shortLost(),
                    then.map(old -> old.areas().lostPercent()),
                    this::percent));
        });
        figures.add(new Figure(voice.run(thread(), Rounding.UP), words().shortThread(), "", true));
        int layers = Layers.most(cloth);
        figures.add(counted(layers, words().shortLayers(), before.map(old -> Layers.most(old.cloth()))));
        return List.copyOf(figures);
    }

    private static Figure counted(long now, String word, Optional<? extends Number> then) {
        return counted(now, word, then, String::valueOf);
    }

    private static Figure counted(
            long now, String word, Optional<? extends Number> then, LongFunction<String> written) {
        String was =
                then.filter(old -> old.longValue() != now).map(old -> old + "").orElse("");
        return new Figure(
                written.apply(now),
                word,
                was,
                then.filter(old -> old.longValue() < now).isEmpty());
    }

    private String size() {
        return cloth.finished().isSquare()
                ? voice.write(cloth.finished().width(), Rounding.NEAREST)
                : voice.write(cloth.finished(), Rounding.NEAREST);
    }

    private DesigningWords words() {
        return DesigningWords.in(voice.language());
    }

    private String percent(long number) {
        return voice.measuring().percent(String.valueOf(number));
    }

    private Length thread() {
        return ThreadNeed.of(cloth, Stitch.USUAL).total();
    }
}
