package hearthcloth.benchmarks.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import hearthcloth.cutstock.search.Budget;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutSheetTest {

    private static final long PLENTY = 50_000_000;

    @ParameterizedTest
    @ValueSource(strings = {"A3", "A5", "CHL2", "CHL5", "cgcut2", "cgcut3", "gcut2", "gcut4", "OF1"})
    void limited_sets_with_a_proven_optimum_reach_and_prove_it(String name) {
        Scanner in = read("limited-" + name);
        long optimum = in.nextLong();
        SheetJob job = limitedJob(in);

        SheetPlan plan = SheetCutting.limited(job, Budget.steps(PLENTY), better -> {});

        SlicingCheck.check(job, plan);
        assertThat(plan.worth()).isEqualTo(optimum);
        assertThat(plan.bound()).isEqualTo(optimum);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void unlimited_sets_come_out_exactly_fixed_and_turned(int number) {
        Scanner in = read("unlimited-gcut" + number);
        long fixed = in.nextLong();
        long turned = in.nextLong();
        int kinds = in.nextInt();
        long width = in.nextLong();
        long height = in.nextLong();
        List<Wanted> wanted = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            wanted.add(new Wanted(in.nextLong(), in.nextLong(), in.nextLong(), Wanted.UNLIMITED));
        }
        for (boolean turning : new boolean[] {false, true}) {
            SheetJob job = new SheetJob(width, height, wanted, turning);
            SheetPlan plan = SheetCutting.unlimited(job);
            SlicingCheck.check(job, plan);
            assertThat(plan.worth()).isEqualTo(turning ? turned : fixed);
        }
    }

    @Test
    void tiny_jobs_agree_with_trying_every_cut() {
        Random random = new Random(7);
        for (int round = 0; round < 40; round++) {
            SheetJob job = randomJob(random, 5 + random.nextInt(3), 4 + random.nextInt(3), 4, 2);
            SheetPlan plan = SheetCutting.limited(job, Budget.steps(PLENTY), better -> {});
            SlicingCheck.check(job, plan);
            assertThat(plan.worth()).as("%s", job).isEqualTo(new EveryCut(job).best());
            assertThat(plan.proven()).as("%s", job).isTrue();
        }
    }

    @Test
    void at_any_budget_the_plan_is_sound_and_the_bound_not_below_the_optimum() {
        Random random = new Random(11);
        for (int round = 0; round < 10; round++) {
            SheetJob job = randomJob(random, 20 + random.nextInt(20), 20 + random.nextInt(20), 8, 3);
            long optimum = SheetCutting.limited(job, Budget.steps(PLENTY), better -> {})
                    .worth();
            for (long steps : new long[] {0, 3, 50, 1_000}) {
                SheetPlan plan = SheetCutting.limited(job, Budget.steps(steps), better -> {});
                SlicingCheck.check(job, plan);
                assertThat(plan.worth()).isLessThanOrEqualTo(optimum);
                assertThat(plan.bound()).isGreaterThanOrEqualTo(optimum);
            }
        }
    }

    @Test
    void improvements_rise_and_repeat_exactly() {
        SheetJob job = limitedJob(after(read("limited-CHL6")));
        List<SheetPlan> first = new ArrayList<>();
        List<SheetPlan> second = new ArrayList<>();
        SheetCutting.limited(job, Budget.steps(30_000), first::add);
        SheetCutting.limited(job, Budget.steps(30_000), second::add);
        assertThat(first).isNotEmpty().isEqualTo(second);
        for (int i = 1; i < first.size(); i++) {
            assertThat(first.get(i).worth()).isGreaterThan(first.get(i - 1).worth());
        }
        first.forEach(plan -> SlicingCheck.check(job, plan));
    }

    @Test
    void sheets_cut_up_at_random_nanometres_get_sound_plans_and_bounds_above_the_known_cutting() {
        Random random = new Random(5);
        for (int round = 0; round < 3; round++) {
            List<Wanted> wanted = new ArrayList<>();
            split(random, 1_400_000_003L, 910_000_001L, 5, wanted);
            SheetJob job = new SheetJob(1_400_000_003L, 910_000_001L, wanted, round == 0);
            SheetPlan plan =
                    SheetCutting.limited(job, Budget.steps(1_000_000), better -> SlicingCheck.check(job, better));
            SlicingCheck.check(job, plan);
            long known = wanted.stream().mapToLong(Wanted::worth).sum();
            assertThat(plan.bound()).isGreaterThanOrEqualTo(known);
            assertThat(plan.worth()).isGreaterThan(known / 3);
        }
    }

    /** Pieces that fill the sheet exactly, worth their area in square millimetres. */
    private static void split(Random random, long width, long height, int depth, List<Wanted> pieces) {
        if (depth == 0) {
            pieces.add(new Wanted(width, height, 1 + width * height / 1_000_000_000_000L, 1));
        } else if (width >= height) {
            long at = width / 3 + random.nextLong(width / 3);
            split(random, at, height, depth - 1, pieces);
            split(random, width - at, height, depth - 1, pieces);
        } else {
            long at = height / 3 + random.nextLong(height / 3);
            split(random, width, at, depth - 1, pieces);
            split(random, width, height - at, depth - 1, pieces);
        }
    }

    @Test
    void a_piece_larger_than_the_sheet_leaves_one_rest() {
        SheetJob job = new SheetJob(10, 10, List.of(new Wanted(11, 2, 5, 1)), true);
        SheetPlan plan = SheetCutting.limited(job, Budget.steps(PLENTY), better -> {});
        assertThat(plan).isEqualTo(new SheetPlan(0, 0, new Slicing.Rest(10, 10)));
    }

    @Test
    void a_cut_that_does_not_reach_the_edge_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Slicing.Beside(new Slicing.Rest(1, 2), new Slicing.Rest(1, 3)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Slicing.Above(new Slicing.Rest(1, 2), new Slicing.Rest(2, 2)));
    }

    static SheetJob randomJob(Random random, int width, int height, int kinds, int copies) {
        List<Wanted> wanted = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            long w = 1L + random.nextInt(width);
            long h = 1L + random.nextInt(Math.max(1, height * 2 / 3));
            wanted.add(new Wanted(w, h, w * h + random.nextInt(5), 1 + random.nextInt(copies)));
        }
        return new SheetJob(width, height, wanted, random.nextBoolean());
    }

    private static Scanner after(Scanner in) {
        in.nextLong();
        return in;
    }

    private static SheetJob limitedJob(Scanner in) {
        long width = in.nextLong();
        long height = in.nextLong();
        int kinds = in.nextInt();
        List<Wanted> wanted = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            wanted.add(new Wanted(in.nextLong(), in.nextLong(), in.nextLong(), in.nextLong()));
        }
        return new SheetJob(width, height, wanted, false);
    }

    private static Scanner read(String name) {
        try (InputStream in = CutSheetTest.class.getResourceAsStream("/bench/" + name + ".txt")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return new Scanner(text.replaceAll("(?m)^#.*$", ""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
