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
import hearthcloth.store.journal.BenchFact;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the work really measures after a step, and the ways on from there; the choice is hers. */
final class SewMeasure {

    private static final long ANSWER_WITHIN_MS = 600;

    /** Between the measures of both ends: a semicolon, or "and" in one of our languages. */
    private static final String BETWEEN = ";|；|\\b(?:and|et|und|y)\\b|와|과|と|、";

    /** As a catalogue calls a side that is as planned. */
    private static final String SAME = "same";

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
        this.number = seam(cloth, steps, context, desk.words());
        this.bars = seams(steps.subList(0, number + 1));
        this.planned = steps.get(number).task().check().orElseThrow().size();
        this.ends = new Ends(ends(context, "width"), ends(context, "height"));
        this.real = real();
        this.seam = SewnSteps.seam(steps.get(number));
        this.last = SewnSteps.isLast(cloth, steps, number);
        this.asSewn = SewnCloth.measured(cloth.document().design(), bars, real);
    }

    /** The step of the form, which sews on a bar and may be measured. */
    static int seam(SavedCloth cloth, List<AtTheMachine> steps, Context context, MakingWords words) {
        if (cloth.document().isFree()) {
            throw new MeasureException(words.measuredScraps());
        }
        int number = SewPage.number(context, words);
        if (number >= steps.size() || steps.get(number).kind() != AtTheMachine.Kind.SEAM) {
            throw new MeasureException(words.measuredOtherStep());
        }
        if (number > cloth.document().bench().sewn()) {
            throw new MeasureException(words.measuredBefore());
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
                    desk.words().measuredSwapped(),
                    desk.words()
                            .measuredSwappedHow(
                                    desk.voice().write(planned, Rounding.NEAREST),
                                    desk.voice().write(measured, Rounding.NEAREST)),
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
        for (String one : written.split(BETWEEN, -1)) {
            ends.add(Measures.length(one.strip(), ruler().unit()));
        }
        if (ends.size() > 2) {
            throw new MeasureException(desk.words().measuredTooMany(written));
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
        throw question(name, measured.reading(), should);
    }

    private MeasureQuestionException question(String name, EndsMeasured.Reading reading, Length should) {
        MakingWords words = desk.words();
        Voice voice = desk.voice();
        String planned = voice.write(should, Rounding.NEAREST);
        if (reading instanceof EndsMeasured.Reading.OutOfSquare crooked) {
            return new MeasureQuestionException(
                    words.measuredSquare(),
                    words.measuredCrooked(
                            voice.write(crooked.by(), Rounding.NEAREST), voice.write(crooked.trimTo(), Rounding.DOWN)),
                    Map.of());
        }
        EndsMeasured.Reading.Doubtful doubtful = (EndsMeasured.Reading.Doubtful) reading;
        String far = voice.write(doubtful.written(), Rounding.NEAREST);
        return doubtful.meant()
                .map(meant -> new MeasureQuestionException(
                        words.measuredIsIt(voice.write(meant, Rounding.NEAREST)),
                        words.measuredFarMeant(voice.write(meant, Rounding.NEAREST), planned, far),
                        Map.of(name, written(meant))))
                .orElseGet(() -> new MeasureQuestionException(
                        words.measuredIsRight(), words.measuredFar(planned, far), Map.of()));
    }

    private Ruler ruler() {
        return desk.ruler();
    }

    /** True where nothing differs by as much as her ruler shows. */
    boolean isAsPlanned() {
        return ruler().write(real, Rounding.NEAREST).equals(ruler().write(planned, Rounding.NEAREST));
    }

    private Planned planned(String key, Design design) {
        return new Planned(key, desk.words().waysMeasured(key), design);
    }

    private List<Planned> planned() {
        List<Planned> ways = new ArrayList<>();
        ways.add(planned("accept", asSewn.design()));
        Size wanted = plan.cloth().finished();
        asSewn.towards(wanted)
                .filter(design -> !design.equals(asSewn.design()))
                .ifPresent(design -> ways.add(planned("keep", design)));
        Size now = asSewn.design().layout().finished();
        if (now.width().isLessThan(wanted.width()) || now.height().isLessThan(wanted.height())) {
            Length width = SewnCloth.narrowRound(asSewn.design().making(), ruler().isMetric());
            ways.add(planned("round", asSewn.another(width)));
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
        return both.stream().map(this::written).collect(Collectors.joining("; "));
    }

    private String written(Length length) {
        return ruler().number(length, Rounding.NEAREST);
    }

    private String told() {
        Length across = real.width().minus(planned.width());
        Length up = real.height().minus(planned.height());
        boolean both = !off(across).equals(SAME) && !off(up).equals(SAME);
        return desk.words()
                .measuredTold(
                        off(across),
                        both ? "yes" : "no",
                        by(up),
                        desk.voice().write(real, Rounding.NEAREST),
                        off(up),
                        by(across));
    }

    private String off(Length by) {
        return !ruler().mark(positive(by), Rounding.NEAREST).isPositive() ? SAME : by.isNegative() ? "less" : "more";
    }

    private String by(Length by) {
        return desk.voice().write(positive(by), Rounding.NEAREST);
    }

    private static Length positive(Length by) {
        return by.isNegative() ? Length.ZERO.minus(by) : by;
    }

    private SewWays.Way way(Planned way) {
        RemainingPlan.Answer answer = fit(way);
        List<String> words = new ArrayList<>();
        Optional<Plan> made = Optional.empty();
        if (answer instanceof RemainingPlan.Answer.Made found) {
            words.add(desk.cutting(found.resewn()));
            made = Optional.of(found.resewn().plan());
        }
        words.addAll(desk.ties(way.design().layout().finished()));
        return new SewWays.Way(
                way.key(),
                way.title(),
                desk.size(way.design()),
                words,
                answer instanceof RemainingPlan.Answer.Lacking lacking ? desk.said(lacking.why()) : List.of(),
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
