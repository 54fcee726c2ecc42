package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.BadFileException;
import hearthcloth.benchmarks.sets.Wishes;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.cloth.FacePicture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.words.speech.Voice;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the eye makes of the proposals for the example heaps, in the figures of docs/colour.md. */
@Command(
        name = "colour",
        description = {
            "The colours of four proposals for each example heap, and of the best one scattered evenly, a CSV row each.",
            "meets itself: the share of the edges between bars with one fabric on both sides; stands out: the share of",
            "the hearth's edge that does; amiss: all of it added up, in millimetres of edge; thread ms: all four together;",
            "again ms: the colours of this layout planned again, as on the bench."
        })
final class Colouring implements Callable<Integer> {

    /** The heaps and the finished sides in inches at which they are planned. */
    private static final Map<String, Integer> HEAPS = new LinkedHashMap<>();

    static {
        HEAPS.put("two-lengths", 36);
        HEAPS.put("strips", 38);
        HEAPS.put("scraps", 34);
        HEAPS.put("metric", 28);
        HEAPS.put("two-hundred", 36);
        HEAPS.put("garden", 30);
    }

    /** A front in millimetres, and what lies between two. */
    private static final double SIDE = 45;

    private static final double AIR = 4;
    private static final double DPI = 100;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "the folder of the example heaps")
    private Path folder = Path.of("");

    @Option(
            names = "--pictures",
            paramLabel = "FOLDER",
            description = "write the fronts of the proposals there, a PNG for each heap")
    @Nullable
    private Path pictures;

    @Option(
            names = "--more",
            paramLabel = "FOLDER",
            description = "where heaps lie that are not among the examples")
    @Nullable
    private Path more;

    @Option(names = "--steps", defaultValue = "12000", description = "of the search, each heap (${DEFAULT-VALUE})")
    private long steps = 12_000;

    @Mixin
    private Allowance allowance = new Allowance();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.println("heap,proposal,title,joins,cuts,bars,stands out %,meets itself %,mixed,off centre %,amiss mm,"
                + "thread ms,again ms");
        HEAPS.forEach((heap, side) -> {
            Path file = folder.resolve(heap + ".csv");
            if (!Files.exists(file) && more == null) {
                return;
            }
            Stash stash = stash(Files.exists(file) ? file : more.resolve(heap + ".csv"));
            Wish wish = Wishes.square(side, allowance.seed());
            long begun = now();
            PlanOutcome found = Planner.plan(stash, wish, 1, Budget.steps(steps), progress -> {});
            long work = now() - begun;
            List<Plan> plans = found instanceof PlanOutcome.Proposals made ? made.plans() : List.of();
            for (int i = 0; i < plans.size(); i++) {
                out.println(row(heap, String.valueOf(i + 1), plans.get(i), work, again(stash, plans.get(i))));
            }
            drawn(heap, plans);
            begun = now();
            Idea scattered = new Idea(layout -> true, List.of(), Set.of(Scheme.Kind.SCATTERED), Optional.empty());
            List<Plan> wished = Planner.plans(stash, wish, scattered, 1, Budget.steps(steps), progress -> {});
            long took = now() - begun;
            out.println(
                    wished.isEmpty()
                            ? heap + ",scattered,none,,,,,,,,," + took / 1_000_000 + ","
                            : row(heap, "scattered", wished.get(0), took, again(stash, wished.get(0))));
        });
        return 0;
    }

    /** The middle of five: how long the colours of this layout take once more, each time from another seed. */
    private static long again(Stash stash, Plan plan) {
        Design design = DesignEdits.settled(plan, Order.ROUND);
        DesignFit bench = new DesignFit(stash);
        long[] took = new long[5];
        for (int turn = 0; turn < took.length; turn++) {
            long begun = now();
            bench.again(
                    design,
                    new DesignFit.Stays(Set.of(), false),
                    new DesignFit.Wished(Optional.empty(), Contrast.READS),
                    turn,
                    Budget.steps(Long.MAX_VALUE));
            took[turn] = now() - begun;
        }
        Arrays.sort(took);
        return took[2];
    }

    /** Four fronts beside each other. */
    private void drawn(String heap, List<Plan> plans) {
        if (pictures == null) {
            return;
        }
        Sketch sketch = new Sketch();
        for (int i = 0; i < plans.size(); i++) {
            sketch.place(new FacePicture(plans.get(i), Face.FRONT, Voice.english(Ruler.EIGHTHS)).plain(SIDE), new Point(i * (SIDE + AIR), 0));
        }
        try {
            Files.write(
                    pictures.resolve(heap + ".png"),
                    PngWriter.write(sketch.finished(heap, 4 * SIDE + 3 * AIR, SIDE), DPI));
        } catch (IOException e) {
            throw new BadFileException(pictures + " cannot be written: " + e.getMessage());
        }
    }

    private static String row(String heap, String proposal, Plan plan, long work, long again) {
        ColourFigures figures = ColourFigures.of(plan.cloth(), plan.fabrics());
        return String.format(
                Locale.ROOT,
                "%s,%s,\"%s\",%d,%d,%d,%.0f,%.1f,%d,%.1f,%.0f,%d,%d",
                heap,
                proposal,
                plan.story().title().english(),
                plan.figures().joins(),
                plan.figures().cuts(),
                plan.cloth().patches().size() - 1,
                100 * figures.hearth().standsOut(),
                100 * figures.neighbours().same(),
                figures.mixedBars(),
                100 * figures.offCentre(),
                figures.amissMm(),
                work / 1_000_000,
                again / 1_000_000);
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Stash stash(Path file) {
        try {
            if (StashFile.read(Files.readString(file, StandardCharsets.UTF_8), Optional.of(Unit.INCH))
                    instanceof StashFile.Read read) {
                return read.stash();
            }
            throw new BadFileException(file + " is no stash file");
        } catch (IOException e) {
            throw new BadFileException(file + " cannot be read: " + e.getMessage());
        }
    }
}
