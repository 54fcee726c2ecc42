package hearthcloth.web.make;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.EndsMeasured;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.work.BenchFact;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the work really measures after a step, and the ways on from there; the choice is hers. */
final class SewMeasure {

    private static final long ANSWER_WITHIN_MS = 600;

    private record Planned(String key, String title, Design design) {}

    /** What she wrote, at one end of a side or both; empty where she left a side out. */
    private record Ends(List<Length> width, List<Length> height) {}

    private final SewWays.Desk desk;
    private final Plan plan;
    private final int number;
    private final int bars;
    private final Size planned;
    private final Size real;
    private final Ends ends;
    private final BenchFact.Seam seam;
    private final boolean last;
    private final SewnCloth asSewn;

    SewMeasure(PageContext room, SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        this.desk = new SewWays.Desk(room, cloth);
        this.plan = cloth.document().plan().orElseThrow();
        this.number = seam(cloth, steps, context);
        this.bars = seams(steps.subList(0, number + 1));
        this.planned = steps.get(number).task().check().orElseThrow().size();
        this.ends = new Ends(ends(context, "width"), ends(context, "height"));
        this.real = real();
        this.seam = SewnSteps.seam(steps.get(number));
        this.last = SewnSteps.isLast(cloth, steps, number);
        this.asSewn = SewnCloth.measured(cloth.document().design(), bars, real);
    }

    /** The step of the form, which sews on a bar and may be measured. */
    static int seam(SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        if (cloth.document().isFree()) {
            throw new MeasureException(
                    "a cloth of scraps has no bars to cut anew: unpick a seam that is off by more than a thread"
                            + " or two");
        }
        int number = SewPage.number(context);
        if (number >= steps.size() || steps.get(number).kind() != AtTheMachine.Kind.SEAM) {
            throw new MeasureException("measure after a bar is sewn on; this step is another");
        }
        if (number > cloth.document().bench().sewn()) {
            throw new MeasureException("the steps before this one are not done yet");
        }
        return number;
    }

    static int seams(List<AtTheMachine> steps) {
        return (int) steps.stream()
                .filter(one -> one.kind() == AtTheMachine.Kind.SEAM)
                .count();
    }

    private Size real() {
        Size measured = new Size(
                ends.width().stream().findFirst().orElse(planned.width()),
                ends.height().stream().findFirst().orElse(planned.height()));
        if (EndsMeasured.isSwapped(measured, planned)) {
            throw new MeasureQuestionException(
                    "Is it the other way round?",
                    ruler().write(measured, Rounding.NEAREST) + " is the wrong way round: it should be about "
                            + ruler().write(planned, Rounding.NEAREST) + ", width first, front up",
                    Map.of("width", written(measured.height()), "height", written(measured.width())));
        }
        return new Size(side("width", ends.width(), planned.width()), side("height", ends.height(), planned.height()));
    }

    private List<Length> ends(Context context, String name) {
        String written = PageContext.field(context, name);
        if (written.isEmpty()) {
            return List.of();
        }
        List<Length> ends = new ArrayList<>();
        for (String one : written.split(";|\\band\\b", -1)) {
            ends.add(Measures.length(one.strip(), ruler().unit()));
        }
        if (ends.size() > 2) {
            throw new MeasureException("\"" + written + "\" is more than two measures; write one, or both ends");
        }
        return ends;
    }

    /** Where she left a field empty, that side is as planned; of both ends a small difference is averaged. */
    private Length side(String name, List<Length> both, Length should) {
        if (both.isEmpty()) {
            return should;
        }
        EndsMeasured measured = new EndsMeasured(both.get(0), both.get(both.size() - 1), should);
        if (measured.reading() instanceof EndsMeasured.Reading.Agreed agreed) {
            return agreed.side();
        }
        String sentence = measured.sentence(ruler());
        if (measured.reading() instanceof EndsMeasured.Reading.Doubtful doubtful) {
            throw new MeasureQuestionException(
                    doubtful.meant()
                            .map(meant -> "Is it " + ruler().write(meant, Rounding.NEAREST) + "?")
                            .orElse("Is that right?"),
                    sentence,
                    doubtful.meant().map(meant -> Map.of(name, written(meant))).orElse(Map.of()));
        }
        throw new MeasureQuestionException(
                "Square it first", sentence.substring(0, sentence.length() - 1) + "; then measure again", Map.of());
    }

    private Ruler ruler() {
        return desk.ruler();
    }

    /** True where nothing differs by as much as her ruler shows. */
    boolean isAsPlanned() {
        return ruler().write(real, Rounding.NEAREST).equals(ruler().write(planned, Rounding.NEAREST));
    }

    private List<Planned> planned() {
        List<Planned> ways = new ArrayList<>();
        ways.add(new Planned("accept", "Sew on as it is", asSewn.design()));
        Size wanted = plan.cloth().finished();
        asSewn.towards(wanted)
                .filter(design -> !design.equals(asSewn.design()))
                .ifPresent(design -> ways.add(new Planned("keep", "Keep the size: cut the bars to come anew", design)));
        Size now = asSewn.design().layout().finished();
        if (now.width().isLessThan(wanted.width()) || now.height().isLessThan(wanted.height())) {
            Length width = SewnCloth.narrowRound(asSewn.design().making(), ruler().isMetric());
            ways.add(new Planned("round", "Add a narrow round", asSewn.another(width)));
        }
        return ways;
    }

    /** The ways on, each planned through. */
    SewWays ways() {
        List<SewWays.Way> ways = planned().stream().map(this::way).toList();
        SewWays.Asked asked = new SewWays.Asked(written(ends.width()), written(ends.height()), "");
        return new SewWays(desk.cloth(), number, asked, told(), ways);
    }

    /** One end or both, as she wrote them. */
    private String written(List<Length> both) {
        return both.stream().map(this::written).collect(Collectors.joining(" and "));
    }

    private String written(Length length) {
        return ruler().number(length, Rounding.NEAREST);
    }

    private String told() {
        List<String> told = new ArrayList<>();
        told(told, real.width().minus(planned.width()), "narrower", "wider");
        told(told, real.height().minus(planned.height()), "lower", "higher");
        return "It measures " + ruler().write(real, Rounding.NEAREST) + ": " + String.join(" and ", told)
                + " than planned.";
    }

    private void told(List<String> told, Length by, String less, String more) {
        Length off = by.isNegative() ? Length.ZERO.minus(by) : by;
        if (ruler().mark(off, Rounding.NEAREST).isPositive()) {
            told.add(ruler().write(off, Rounding.NEAREST) + " " + (by.isNegative() ? less : more));
        }
    }

    private SewWays.Way way(Planned way) {
        RemainingPlan.Answer answer = fit(way);
        List<String> words = new ArrayList<>();
        Optional<Plan> made = Optional.empty();
        if (answer instanceof RemainingPlan.Answer.Made found) {
            words.add(SewWays.Desk.cutting(found.resewn()));
            made = Optional.of(found.resewn().plan());
        }
        words.addAll(desk.ties(way.design().layout().finished()));
        return new SewWays.Way(
                way.key(),
                way.title(),
                desk.size(way.design()),
                words,
                answer instanceof RemainingPlan.Answer.Lacking lacking ? lacking.why() : List.of(),
                desk.picture(made, way.design()));
    }

    private RemainingPlan.Answer fit(Planned way) {
        return new RemainingPlan(plan, bars, Map.of())
                .fit(way.design(), desk.table(), TimeLimit.within(ANSWER_WITHIN_MS));
    }

    /** Goes on the way that is called so; where to look next. */
    String choose(String key) {
        Planned way = planned().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new MeasureException("there is no such way on; measure again"));
        if (!(fit(way) instanceof RemainingPlan.Answer.Made made)) {
            throw new MeasureException("you don't have enough fabric left for that; choose another way");
        }
        return desk.book(new SewWays.Taken(label(), way.design(), made.resewn()), Optional.of(fact()));
    }

    /** What she measured, under the name of its bar: {@code sewed 2B on, 41.2 × 30 cm}. */
    private String label() {
        return "sewed " + slot().place().bar() + " on, " + ruler().write(real, Rounding.NEAREST);
    }

    /** Records a measure that changes nothing. */
    void note() {
        desk.room().store().cloths().happened(desk.cloth(), label(), fact());
    }

    private BenchFact fact() {
        boolean upright = slot().place().side().isUpright();
        BenchFact.Measured measured = new BenchFact.Measured(
                upright ? planned.width() : planned.height(),
                upright ? real.width() : real.height(),
                ends.width(),
                ends.height());
        boolean isSewn = number < desk.cloth().document().bench().sewn();
        return new BenchFact.Sewn(
                number, seam, isSewn ? null : desk.room().store().now().toString(), measured, last && !isSewn);
    }

    private Layout.Slot slot() {
        return desk.cloth().document().design().layout().slots().get(bars - 1);
    }
}
