package hearthcloth.web.make;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.work.deed.BarTooShort;
import hearthcloth.work.deed.SewingSoFar;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A bar that turns out too short before it is sewn on: the ways on, and the one she takes. */
final class SewBar {

    private static final long ANSWER_WITHIN_MS = 600;

    private final SewWays.Desk desk;
    private final int number;
    private final String bar;
    private final Length measured;
    private final BarTooShort slip;

    SewBar(PageContext room, SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        this.desk = new SewWays.Desk(room, cloth);
        this.number = SewMeasure.seam(cloth, steps, context, desk.words());
        this.bar = SewingSoFar.bar(steps.get(number)).orElseThrow();
        if (number < cloth.document().bench().sewn()) {
            throw new MeasureException(desk.words().amissBarSewn(bar));
        }
        this.measured =
                Measures.length(PageContext.field(context, "bar"), desk.ruler().unit());
        int bars = new SewingSoFar(cloth.document(), steps).bars(number);
        this.slip = new BarTooShort(desk.bench(), bars, bar, measured);
    }

    private List<ShortBar.Way> found() {
        return slip.ways(TimeLimit.within(ANSWER_WITHIN_MS));
    }

    private String written(Length length) {
        return desk.voice().write(length, Rounding.NEAREST);
    }

    /** The ways on, each planned through. */
    SewWays ways() {
        List<ShortBar.Way> found = found();
        String told = desk.words().amissBarTold(bar, written(measured), written(slip.planned()));
        if (found.isEmpty()) {
            throw new MeasureException(desk.words().amissBarNoWay(told));
        }
        SewWays.Asked asked = new SewWays.Asked("", "", desk.ruler().number(measured, Rounding.NEAREST));
        return new SewWays(
                desk.cloth(), number, asked, told, found.stream().map(this::way).toList());
    }

    private SewWays.Way way(ShortBar.Way way) {
        List<String> words = new ArrayList<>(
                way.told().stream().map(one -> one.in(desk.voice())).toList());
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
        return desk.book(slip.taken(way));
    }
}
