package hearthcloth.web.make;

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
import hearthcloth.plan.rework.WayOn;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.WorkMeasured;
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

    /** What she wrote, at one end of a side or both; empty where she left a side out. */
    private record Ends(List<Length> width, List<Length> height) {}

    private final SewWays.Desk desk;
    private final int number;
    private final Size planned;
    private final Size real;
    private final Ends ends;
    private final WorkMeasured work;

    SewMeasure(PageContext room, SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        this.desk = new SewWays.Desk(room, cloth);
        this.number = seam(cloth, steps, context, desk.words());
        this.planned = steps.get(number).task().check().orElseThrow().size();
        this.ends = new Ends(ends(context, "width"), ends(context, "height"));
        this.real = real();
        this.work = new WorkMeasured(
                desk.bench(),
                new SewingSoFar(cloth.document(), steps),
                number,
                new WorkMeasured.Taken(real, ends.width(), ends.height()));
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
        return work.isAsPlanned();
    }

    /** The ways on, each planned through. */
    SewWays ways() {
        List<SewWays.Way> ways = new ArrayList<>();
        work.ways().forEach((way, design) -> ways.add(way(way, design)));
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

    private SewWays.Way way(WorkMeasured.Way way, Design design) {
        RemainingPlan.Answer answer = fit(design);
        List<String> words = new ArrayList<>();
        Optional<Plan> made = Optional.empty();
        if (answer instanceof RemainingPlan.Answer.Made found) {
            words.add(desk.cutting(found.resewn()));
            made = Optional.of(found.resewn().plan());
            words.addAll(changed(found.resewn().plan()));
        }
        words.addAll(desk.ties(design.layout().finished()));
        return new SewWays.Way(
                way.key(),
                desk.words().waysMeasured(way.key()),
                desk.size(design),
                words,
                answer instanceof RemainingPlan.Answer.Lacking lacking ? desk.said(lacking.why()) : List.of(),
                desk.picture(made, design));
    }

    /** What else is different: bars of another fabric, joins that come. */
    private List<String> changed(Plan now) {
        Plan was = desk.cloth().document().plan().orElseThrow();
        List<String> words = new ArrayList<>(WayOn.otherFabrics(was, now).stream()
                .map(one -> one.in(desk.voice()))
                .toList());
        int more = now.figures().joins() - was.figures().joins();
        if (more > 0) {
            words.add(desk.words().wrongMoreJoins(more));
        }
        return words;
    }

    private RemainingPlan.Answer fit(Design design) {
        return work.fit(design, TimeLimit.within(ANSWER_WITHIN_MS));
    }

    /** Goes on the way that is called so; where to look next. */
    String choose(String key) {
        Design design = work.ways().entrySet().stream()
                .filter(one -> one.getKey().key().equals(key))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new MeasureException(desk.words().waysGone()));
        if (!(fit(design) instanceof RemainingPlan.Answer.Made made)) {
            throw new RefusedException(MendingSentences.noLeft());
        }
        return desk.book(work.taken(design, made.resewn(), desk.room().store().now()));
    }

    /** Records a measure that changes nothing. */
    Deed noted() {
        return work.noted(desk.room().store().now());
    }
}
