import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongBiFunction;

/**
 * Four proposals from a stash file; compiled against either version. Answers in one number, since only the language is common
 * to both versions: the thread time in microseconds times a million, joins of the first proposal times a thousand, its cuts.
 * 999 joins where there are no proposals.
 */
public final class PlanOnce implements ToLongBiFunction<String, Integer> {

    @Override
    public long applyAsLong(String file, Integer inches) {
        Stash stash = stash(Path.of(file));
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(inches))), false),
                new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty()),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 4, 1, Ruler.EIGHTHS));
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        PlanOutcome found = Planner.plan(stash, wish, 1, Budget.steps(12_000), progress -> {});
        long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun;
        if (found instanceof PlanOutcome.Proposals made) {
            PlanFigures figures = made.plans().get(0).figures();
            return took / 1000 * 1_000_000 + 1000L * figures.joins() + figures.cuts();
        }
        return took / 1000 * 1_000_000 + 999_000;
    }

    private static Stash stash(Path file) {
        try {
            if (StashFile.read(Files.readString(file, StandardCharsets.UTF_8), Optional.of(Unit.INCH))
                    instanceof StashFile.Read read) {
                return read.stash();
            }
            throw new IllegalStateException(file + " is no stash file");
        } catch (IOException e) {
            throw new IllegalStateException(file + " cannot be read", e);
        }
    }
}
