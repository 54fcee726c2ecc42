package hearthcloth.work.deed;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.BenchFact;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the work really measures after a bar was sewn on, the ways on from there, and the one she takes. */
public final class WorkMeasured {

    private final Workbench bench;
    private final SewingSoFar sewing;
    private final int step;
    private final int bars;
    private final Taken taken;
    private final SewnCloth asSewn;

    /**
     * What she measured.
     *
     * @param real of the work, from both ends of each side
     * @param width as she wrote it, one end or both; empty where she did not measure it
     * @param height likewise
     */
    public record Taken(Size real, List<Length> width, List<Length> height) {
        public Taken {
            width = List.copyOf(width);
            height = List.copyOf(height);
        }
    }

    /** How she may go on. */
    public enum Way {
        /** As it is: the cloth becomes so much larger or smaller. */
        ACCEPT,
        /** With bars to come cut anew, so that the size stays. */
        KEEP,
        /** With a narrow round more, so that the size is reached. */
        ROUND;

        /** As a form says it. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * Tells of it.
     *
     * @param sewing the steps, of which {@code step} sews on a bar
     */
    public WorkMeasured(Workbench bench, SewingSoFar sewing, int step, Taken taken) {
        this.bench = bench;
        this.sewing = sewing;
        this.step = step;
        this.bars = sewing.bars(step + 1);
        this.taken = taken;
        this.asSewn = SewnCloth.measured(bench.cloth().design(), bars, taken.real());
    }

    /** What the work should measure after the step. */
    public Size planned() {
        return sewing.steps().get(step).task().check().orElseThrow().size();
    }

    /** True where nothing differs by as much as her ruler shows. */
    public boolean isAsPlanned() {
        return written(taken.real()).equals(written(planned()));
    }

    private String written(Size size) {
        return bench.ruler().write(size, Rounding.NEAREST);
    }

    /** The ways on, each with the design that it is. */
    public Map<Way, Design> ways() {
        Map<Way, Design> ways = new java.util.EnumMap<>(Way.class);
        ways.put(Way.ACCEPT, asSewn.design());
        Size wanted = new SewnCloth(bench.cloth().design(), bars - 1).meant();
        asSewn.towards(wanted)
                .filter(design -> !design.equals(asSewn.design()))
                .ifPresent(design -> ways.put(Way.KEEP, design));
        Size now = asSewn.design().layout().finished();
        if (now.width().isLessThan(wanted.width()) || now.height().isLessThan(wanted.height())) {
            Length narrow = SewnCloth.narrowRound(
                    asSewn.design().making(), bench.ruler().isMetric());
            ways.put(Way.ROUND, asSewn.another(narrow));
        }
        return ways;
    }

    /** The rest planned so. */
    public RemainingPlan.Answer fit(Design design, Budget budget) {
        return new RemainingPlan(bench.plan(), bars, Map.of()).fit(design, bench.table(), budget);
    }

    /** Goes on as it was planned by {@link #fit}. */
    public Deed taken(Design design, RemainingPlan.Resewn resewn, Instant now) {
        return new SewnOn(design, resewn).of(label(), bench.cloth(), Optional.of(fact(now)), Deed.Pieces.NONE);
    }

    /** Records a measure that changes nothing. */
    public Deed noted(Instant now) {
        return Deed.of(label(), fact(now));
    }

    /** What she measured, under the name of its bar: {@code sewed 2B on, 41.2 × 30 cm}. */
    private Sentence label() {
        return MendingSentences.deedSewn(
                Argument.text(slot().place().bar()), Argument.of(taken.real(), Rounding.NEAREST), "measured");
    }

    private BenchFact fact(Instant now) {
        boolean upright = slot().place().side().isUpright();
        Size planned = planned();
        BenchFact.Measured measured = new BenchFact.Measured(
                upright ? planned.width() : planned.height(),
                upright ? taken.real().width() : taken.real().height(),
                taken.width(),
                taken.height());
        boolean isSewn = step < bench.cloth().bench().sewn();
        return new BenchFact.Sewn(
                step, sewing.seam(step), isSewn ? null : now.toString(), measured, sewing.isLast(step) && !isSewn);
    }

    private Layout.Slot slot() {
        return bench.cloth().design().layout().slots().get(bars - 1);
    }
}
