package hearthcloth.web.make;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.web.gift.HeldGift;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Capacity;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a step really measured, and the ways on from there; the choice is hers. */
public final class SewMeasure {

    private static final long ANSWER_WITHIN_MS = 600;

    private static final int MOST_TIES = 2;

    /** Farther off than this is a slip of the unit or the wrong side of the tape. */
    private static final Length FARTHEST = Length.cm(10);

    /**
     * One way on.
     *
     * @param key what is posted to choose it
     * @param words what it means, one sentence each
     * @param lacking what is short; then it cannot be chosen
     */
    public record Way(String key, String title, String size, List<String> words, List<String> lacking) {
        public boolean isOpen() {
            return lacking.isEmpty();
        }
    }

    /** What she measured, beside what was planned, and the ways on. */
    public record Ways(
            SavedCloth cloth, int step, String width, String height, String bar, String told, List<Way> ways) {}

    private record Planned(String key, String title, Design design) {}

    private final PageContext room;
    private final SavedCloth cloth;
    private final Plan plan;
    private final AtTheMachine step;
    private final int number;
    private final int bars;
    private final Size planned;
    private final Size real;
    private final SewnCloth asSewn;
    private final Map<String, Length> tooShort;

    SewMeasure(PageContext room, SavedCloth cloth, List<AtTheMachine> steps, Context context) {
        if (cloth.document().isFree()) {
            throw new MeasureException(
                    "a cloth of scraps has no bars to cut anew: unpick a seam that is off by more than a thread"
                            + " or two");
        }
        this.room = room;
        this.cloth = cloth;
        this.plan = cloth.document().plan().orElseThrow();
        this.number = SewPage.number(context);
        if (number >= steps.size() || steps.get(number).kind() != AtTheMachine.Kind.SEAM) {
            throw new MeasureException("measure after a bar is sewn on; this step is another");
        }
        if (number > cloth.document().bench().sewn()) {
            throw new MeasureException("the steps before this one are not done yet");
        }
        this.step = steps.get(number);
        this.bars = (int) steps.subList(0, number + 1).stream()
                        .filter(one -> one.kind() == AtTheMachine.Kind.SEAM)
                        .count()
                - (PageContext.field(context, "bar").isEmpty() ? 0 : 1);
        this.planned = step.task().check().orElseThrow().size();
        this.real = new Size(side(context, "width", planned.width()), side(context, "height", planned.height()));
        String bar = SewSide.bar(step).orElseThrow();
        String length = PageContext.field(context, "bar");
        this.tooShort = length.isEmpty()
                ? Map.of()
                : Map.of(bar, Measures.length(length, room.settings().bare()));
        this.asSewn = tooShort.isEmpty()
                ? SewnCloth.measured(cloth.document().design(), bars, real)
                : new SewnCloth(cloth.document().design(), bars);
    }

    /** Where she left a field empty, that side is as planned; of two numbers the smaller counts. */
    private Length side(Context context, String name, Length planned) {
        String written = PageContext.field(context, name);
        if (written.isEmpty()) {
            return planned;
        }
        Length least = planned.plus(FARTHEST);
        for (String one : written.split(";|\\band\\b", -1)) {
            Length length = Measures.length(one.strip(), room.settings().bare());
            if (length.isLessThan(planned.minus(FARTHEST)) || length.isMoreThan(planned.plus(FARTHEST))) {
                throw new MeasureException("\"" + written + "\" is far from the "
                        + ruler().write(planned, Rounding.NEAREST) + " it should be; check the number and its unit");
            }
            least = least.min(length);
        }
        return least;
    }

    private Ruler ruler() {
        return room.settings().ruler();
    }

    /** True where nothing differs by as much as her ruler shows. */
    boolean isAsPlanned() {
        return tooShort.isEmpty()
                && ruler().write(real, Rounding.NEAREST).equals(ruler().write(planned, Rounding.NEAREST));
    }

    private List<Planned> planned() {
        List<Planned> ways = new ArrayList<>();
        if (!tooShort.isEmpty()) {
            return List.of(new Planned("bar", "Make the bar anew or piece it", asSewn.design()));
        }
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
    Ways ways() {
        RemainingPlan resewing = new RemainingPlan(plan, bars, tooShort);
        List<Way> ways = planned().stream().map(way -> way(way, resewing)).toList();
        String bar = tooShort.values().stream().findFirst().map(this::written).orElse("");
        return new Ways(cloth, number, written(real.width()), written(real.height()), bar, told(), ways);
    }

    private String written(Length length) {
        return ruler().number(length, Rounding.NEAREST);
    }

    private String told() {
        if (!tooShort.isEmpty()) {
            String bar = tooShort.keySet().iterator().next();
            return "Bar " + bar + " measures "
                    + ruler().write(tooShort.getOrDefault(bar, Length.ZERO), Rounding.NEAREST)
                    + ", planned was "
                    + ruler().write(new RemainingPlan(plan, bars, Map.of()).cutLength(bar), Rounding.NEAREST)
                    + ".";
        }
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

    private Way way(Planned way, RemainingPlan resewing) {
        Size size = way.design().layout().finished();
        RemainingPlan.Answer answer = fit(way, resewing);
        List<String> words = new ArrayList<>();
        if (answer instanceof RemainingPlan.Answer.Made made) {
            words.add(cutting(made.resewn()));
        }
        words.addAll(ties(size));
        return new Way(
                way.key(),
                way.title(),
                ruler().write(size, Rounding.NEAREST),
                words,
                answer instanceof RemainingPlan.Answer.Lacking lacking ? lacking.why() : List.of());
    }

    /** Whether it ties what she wants to wrap; where she said nothing, what it ties at most. */
    private List<String> ties(Size size) {
        String fits = Wished.of(room.store(), cloth).fits(size, ruler());
        if (!fits.isEmpty()) {
            return List.of(fits);
        }
        return Capacity.of(size, Purpose.tail(ruler()).usual()).stream()
                .map(capacity -> HeldGift.of(capacity, ruler()))
                .filter(HeldGift::fits)
                .limit(MOST_TIES)
                .map(holds -> "With the " + holds.tie() + " it ties round " + holds.largest() + ".")
                .toList();
    }

    private RemainingPlan.Answer fit(Planned way, RemainingPlan resewing) {
        return resewing.fit(
                way.design(),
                room.store().atHand().freeFor(cloth.id()),
                room.store().stash().nextPiece(),
                ruler(),
                TimeLimit.within(ANSWER_WITHIN_MS));
    }

    private static String cutting(RemainingPlan.Resewn resewn) {
        if (resewn.cuts().isEmpty()) {
            return "Every bar you have cut is long enough: nothing to cut, only a little more or less to trim.";
        }
        List<String> bars = resewn.cuts().stream()
                .flatMap(cut -> cut.tree().kept().stream())
                .map(kept -> kept.patch().replaceFirst("\\..*", ""))
                .distinct()
                .sorted()
                .toList();
        return "To cut now: " + (bars.size() == 1 ? "bar " : "bars ") + String.join(", ", bars) + ", from "
                + (resewn.cuts().size() == 1 ? "one piece." : resewn.cuts().size() + " pieces.");
    }

    /** Goes on the way that is called so; where to look next. */
    String choose(String key) {
        Planned way = planned().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new MeasureException("there is no such way on; measure again"));
        RemainingPlan.Answer answer = fit(way, new RemainingPlan(plan, bars, tooShort));
        if (!(answer instanceof RemainingPlan.Answer.Made made)) {
            throw new MeasureException("you don't have enough fabric left for that; choose another way");
        }
        RemainingPlan.Resewn resewn = made.resewn();
        ClothDocument was = cloth.document();
        ClothDocument now = new ClothDocument(
                way.design(), Optional.of(resewn.plan()), List.of(), bench(resewn.plan()), was.life());
        room.store().asOneChange("planned again while sewing " + cloth.name(), () -> {
            if (!resewn.gone().isEmpty() || !resewn.come().isEmpty()) {
                room.store()
                        .stash()
                        .edit(new StashEdit(
                                "planned again while sewing " + cloth.name(), resewn.gone(), resewn.come()));
            }
            return room.store().cloths().save(cloth, "measured at step " + (number + 1), now);
        });
        return resewn.cuts().isEmpty() ? "/sew/" + cloth.id() : "/cut/" + cloth.id() + "?piece=" + first(resewn);
    }

    /** Records a measure that changes nothing. */
    void note() {
        room.store()
                .cloths()
                .save(
                        cloth,
                        "measured at step " + (number + 1),
                        cloth.document().with(bench(plan)));
    }

    private ClothDocument.Bench bench(Plan now) {
        ClothDocument.Bench bench = cloth.document().bench();
        if (!tooShort.isEmpty()) {
            return bench.withSewn(sewn(now));
        }
        boolean upright = side().isUpright();
        ClothDocument.Measure measure = new ClothDocument.Measure(
                number, upright ? planned.width() : planned.height(), upright ? real.width() : real.height());
        ClothDocument.Bench more = bench.and(measure);
        return number < bench.sewn()
                ? more
                : more.withSewn(number + 1)
                        .and(new ClothDocument.Done("seam", room.store().now()));
    }

    /** Steps that are done when so many bars are sewn on: joins of a bar that is made anew are to do again. */
    private int sewn(Plan now) {
        List<AtTheMachine> steps = AtTheMachine.of(Guide.of(now, ruler()));
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

    private Side side() {
        Layout.Slot slot = cloth.document().design().layout().slots().get(bars - 1);
        return slot.place().side();
    }

    private static int first(RemainingPlan.Resewn resewn) {
        PieceCut cut = resewn.cuts().get(0);
        return resewn.plan().cuts().indexOf(cut);
    }
}
