package hearthcloth.web.make;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.journal.BenchFact;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bar that turns out too short before it is sewn on: the ways on, and the one she takes. */
final class SewBar {

    private static final long ANSWER_WITHIN_MS = 600;

    private final SewWays.Desk desk;
    private final int number;
    private final int bars;
    private final String bar;
    private final Length measured;
    private final RemainingPlan rest;

    SewBar(PageContext room, SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        this.desk = new SewWays.Desk(room, cloth);
        this.number = SewMeasure.seam(cloth, steps, context, desk.words());
        this.bar = SewSide.bar(steps.get(number)).orElseThrow();
        if (number < cloth.document().bench().sewn()) {
            throw new MeasureException(desk.words().amissBarSewn(bar));
        }
        this.bars = SewMeasure.seams(steps.subList(0, number));
        this.measured =
                Measures.length(PageContext.field(context, "bar"), desk.ruler().unit());
        this.rest = new RemainingPlan(plan(), bars, Map.of(bar, measured));
    }

    private Plan plan() {
        return desk.cloth().document().plan().orElseThrow();
    }

    private List<ShortBar.Way> found() {
        return new ShortBar(rest, bar, desk.cloth().document().design(), desk.table())
                .ways(TimeLimit.within(ANSWER_WITHIN_MS));
    }

    private String written(Length length) {
        return desk.voice().write(length, Rounding.NEAREST);
    }

    /** The ways on, each planned through. */
    SewWays ways() {
        List<ShortBar.Way> found = found();
        Length planned = new RemainingPlan(plan(), bars, Map.of()).cutLength(bar);
        String told = desk.words().amissBarTold(bar, written(measured), written(planned));
        if (found.isEmpty()) {
            throw new MeasureException(desk.words().amissBarNoWay(told));
        }
        SewWays.Asked asked = new SewWays.Asked("", "", desk.ruler().number(measured, Rounding.NEAREST));
        return new SewWays(
                desk.cloth(), number, asked, told, found.stream().map(this::way).toList());
    }

    private SewWays.Way way(ShortBar.Way way) {
        List<String> words = new ArrayList<>(way.told());
        words.addAll(desk.ties(way.design().layout().finished()));
        return new SewWays.Way(
                way.kind().name(),
                desk.words().waysShortBar(way.kind().name()),
                desk.size(way.design()),
                words,
                List.of(),
                desk.picture(Optional.of(way.resewn().plan()), way.design()));
    }

    /** Goes on the way that is called so; where to look next. */
    String choose(String key) {
        ShortBar.Way way = found().stream()
                .filter(one -> one.kind().name().equals(key))
                .findFirst()
                .orElseThrow(() -> new MeasureException(desk.words().waysGone()));
        int done = desk.cloth().document().bench().sewn();
        boolean isNew = way.kind() == ShortBar.Kind.ANEW || way.kind() == ShortBar.Kind.PIECED;
        int from = isNew ? Math.min(done, sewn(way.resewn().plan())) : done;
        Optional<BenchFact> opened =
                from == done ? Optional.empty() : Optional.of(new BenchFact.Unpicked(from, done, List.of(bar), false));
        String label = "bar " + bar + " too short: "
                + way.kind().words().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                + way.kind().words().substring(1);
        return desk.book(new SewWays.Taken(label, way.design(), way.resewn()), opened);
    }

    /** Steps that are done when so many bars are sewn on: joins of a bar that is made anew are to do again. */
    private int sewn(Plan now) {
        List<AtTheMachine> steps = AtTheMachine.of(
                Guide.of(now, desk.ruler()), Voice.english(desk.ruler()).sewing());
        int seams = 0;
        for (int i = 0; i < steps.size(); i++) {
            AtTheMachine.Kind kind = steps.get(i).kind();
            if (seams == bars && (kind == AtTheMachine.Kind.SEAM || kind == AtTheMachine.Kind.JOIN)) {
                return i;
            }
            seams += kind == AtTheMachine.Kind.SEAM ? 1 : 0;
        }
        return steps.size();
    }
}
