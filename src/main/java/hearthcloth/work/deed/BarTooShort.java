package hearthcloth.work.deed;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.BenchFact;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bar turns out too short before it is sewn on: the ways on, and the one she takes. */
public final class BarTooShort {

    private final Workbench bench;
    private final int bars;
    private final String bar;
    private final Length measured;

    /**
     * Tells of it.
     *
     * @param bars how many are sewn on; it is the next
     * @param measured its length, raw
     */
    public BarTooShort(Workbench bench, int bars, String bar, Length measured) {
        this.bench = bench;
        this.bars = bars;
        this.bar = bar;
        this.measured = measured;
    }

    /** How long it was cut. */
    public Length planned() {
        return new RemainingPlan(bench.plan(), bars, Map.of()).cutLength(bar);
    }

    /**
     * The ways on, best first.
     *
     * @throws hearthcloth.measure.MeasureException where it is long enough, or shorter than can be
     */
    public List<ShortBar.Way> ways(Budget budget) {
        return new ShortBar(
                        new RemainingPlan(bench.plan(), bars, Map.of(bar, measured)),
                        bar,
                        bench.cloth().design(),
                        bench.table())
                .ways(budget);
    }

    /** Goes on that way. */
    public Deed taken(ShortBar.Way way) {
        int done = bench.cloth().bench().sewn();
        boolean isNew = way.kind() == ShortBar.Kind.ANEW || way.kind() == ShortBar.Kind.PIECED;
        int from = isNew ? Math.min(done, done(way.resewn().plan())) : done;
        Optional<BenchFact> opened =
                from == done ? Optional.empty() : Optional.of(new BenchFact.Unpicked(from, done, List.of(bar), false));
        Sentence label =
                MendingSentences.deedShort(Argument.text(bar), way.kind().name());
        return new SewnOn(way.design(), way.resewn()).of(label, bench.cloth(), opened, Deed.Pieces.NONE);
    }

    /** Steps that are done when so many bars are sewn on: joins of a bar that is made anew are to do again. */
    private int done(Plan now) {
        List<AtTheMachine> steps = SewingSoFar.steps(now, bench.ruler());
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
