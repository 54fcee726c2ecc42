package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The figures of the work: how long opening five years of it takes, and a way on after a slip. Held is the time this thread
 * spent working, which another program on the machine does not change; the time that passed is told beside it.
 */
@Tag("long")
class WorkFiguresTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final int CLOTHS = 300;

    @TempDir
    Path folder;

    private record Took(double workedMs, double passedMs, long fromDisk) {

        Took(double workedMs, double passedMs) {
            this(workedMs, passedMs, 0);
        }

        static Took of(Runnable work) {
            long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long from = System.nanoTime();
            long before = bytesRead();
            work.run();
            return new Took(
                    (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6,
                    (System.nanoTime() - from) / 1e6,
                    bytesRead() - before);
        }

        /** Bytes this program has had read from a disk, where the system counts them; what lay in memory is not among them. */
        private static long bytesRead() {
            try {
                return Files.readAllLines(Path.of("/proc/self/io")).stream()
                        .filter(line -> line.startsWith("read_bytes: "))
                        .mapToLong(line -> Long.parseLong(line.substring("read_bytes: ".length())))
                        .findFirst()
                        .orElse(0);
            } catch (IOException e) {
                return 0;
            }
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%.0f ms of work (%.0f ms passed, %d kB read from the disk)",
                    workedMs,
                    passedMs,
                    fromDisk / 1_000);
        }
    }

    private static int changes() {
        return Integer.getInteger("hearthcloth.changes", 50_000);
    }

    /** Cloths are kept, then cut, sewn and unpicked, and pieces come and go in between. */
    private static void fiveYears(Store store, Plan plan) {
        Piece like = Stashes.scraps(1, 3).pieces().get(0);
        for (int i = 0; i < changes(); i++) {
            String id = "c" + i % CLOTHS;
            int turn = i / CLOTHS;
            if (turn == 0) {
                Project kept = Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING);
                store.cloths().keep(id, "Cloth " + id, kept.with(kept.life().at(Stage.CUT)));
            } else if (turn % 3 == 0) {
                Piece piece = like.part(store.stash().nextPiece(), like.size());
                store.stash().edit(new StashEdit("received " + piece.id(), List.of(), List.of(piece)));
            } else {
                SavedCloth cloth = store.cloths().find(id).orElseThrow();
                int sewn = cloth.document().bench().sewn();
                BenchFact.Seam seam = new BenchFact.Seam("seam", "1A", "SAME");
                store.cloths()
                        .happened(
                                cloth,
                                "step " + sewn,
                                sewn < 30
                                        ? new BenchFact.Sewn(sewn, seam, "2026-05-04T10:00:00Z", null, false)
                                        : new BenchFact.Unpicked(0, sewn, List.of("1A"), false));
            }
        }
    }

    @Test
    void five_years_of_work_are_opened_in_a_second_and_a_half() throws IOException {
        Path file = folder.resolve("work.db");
        Plan plan = Planned.plans(Stashes.scraps(60, 3), 27, 1).get(0);
        try (Store store = Store.open(file, CLOCK)) {
            store.atOnce(() -> {
                fiveYears(store, plan);
                return true;
            });
        }
        List<Took> all = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Path copy = folder.resolve("copy" + i + ".db");
            Files.copy(file, copy);
            all.add(Took.of(() -> Store.open(copy, CLOCK).close()));
        }
        System.out.println("Opening " + changes() + " changes of " + CLOTHS + " cloths, " + Files.size(file) / 1_000
                + " kB: " + all);
        assertThat(all.get(0).workedMs()).isLessThan(1_500);
    }

    @Test
    void ways_on_after_a_slip_are_found_at_once() {
        Stash heap = Stashes.scraps(40, 5);
        List<Took> first = new ArrayList<>();
        List<Took> whole = new ArrayList<>();
        for (Plan plan : Planned.plans(heap, 24, 3)) {
            for (String patch : plan.sources().keySet()) {
                Size size = Objects.requireNonNull(plan.sources().get(patch))
                        .kept()
                        .at()
                        .size();
                Size real = new Size(size.width().minus(Length.inches(1, 2)), size.height());
                MiscutWays ways = new MiscutWays(
                        Miscut.of(plan, Set.of(), patch, real), DesignEdits.settled(plan, Order.ROUND), heap);
                Took[] one = {new Took(0, 0)};
                long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                long from = System.nanoTime();
                whole.add(Took.of(() -> ways.ways(Budget.steps(4_000), way -> {
                    if (one[0].passedMs() == 0) {
                        one[0] = new Took(
                                (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6,
                                (System.nanoTime() - from) / 1e6);
                    }
                })));
                if (one[0].passedMs() > 0) {
                    first.add(one[0]);
                }
            }
        }
        told("A patch cut too small, first way of " + first.size(), first, 300);
        told("A patch cut too small, all ways of " + whole.size(), whole, 2_000);
    }

    @Test
    void ways_on_for_a_bar_too_short_are_found_at_once() {
        Stash heap = Stashes.scraps(40, 5);
        List<Took> whole = new ArrayList<>();
        for (Plan plan : Planned.plans(heap, 24, 3)) {
            var design = DesignEdits.settled(plan, Order.ROUND);
            Stash left = new Stash(heap.pieces().stream()
                    .filter(piece ->
                            plan.cuts().stream().noneMatch(cut -> cut.piece().equals(piece)))
                    .toList());
            for (int sewn = 0; sewn < design.layout().slots().size(); sewn++) {
                String bar = design.layout().slots().get(sewn).place().bar();
                Length cut = new RemainingPlan(plan, sewn, Map.of()).cutLength(bar);
                ShortBar slip = new ShortBar(
                        new RemainingPlan(plan, sewn, Map.of(bar, cut.minus(Length.inches(2)))),
                        bar,
                        design,
                        new RemainingPlan.Table(left, 1_000, Ruler.EIGHTHS));
                if (slip.missing().isPositive()) {
                    whole.add(Took.of(() -> slip.ways(Budget.steps(4_000))));
                }
            }
        }
        told("A bar too short, all ways of " + whole.size(), whole, 2_000);
    }

    private static void told(String what, List<Took> all, double mostMs) {
        List<Took> sorted = all.stream()
                .sorted(java.util.Comparator.comparingDouble(Took::workedMs))
                .toList();
        Took middle = sorted.get(sorted.size() / 2);
        Took late = sorted.get(Math.max(0, (int) Math.ceil(sorted.size() * 0.95) - 1));
        Took last = sorted.get(sorted.size() - 1);
        System.out.println(what + ": median " + middle + ", p95 " + late + ", longest " + last);
        assertThat(last.workedMs()).as(what).isLessThan(mostMs);
    }
}
