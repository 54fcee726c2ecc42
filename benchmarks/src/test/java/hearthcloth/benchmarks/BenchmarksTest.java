package hearthcloth.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchmarksTest {

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Benchmarks.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void one_row_an_instance_says_joins_and_bound() throws IOException {
        // two bars of 100 out of two strips: 200 without a join, 115 + 100 - 15 with one
        String whole = file("whole.txt", "# by hand\n2 2 15 20 50\n100 100\n100 100\n");
        String joined = file("joined.txt", "1 2 15 20 50\n200\n115 100\n");
        String none = file("none.txt", "1 2 15 20 50\n200\n114 100\n");

        int code = run("join", whole, joined, none, "--warm-up", "0s", "--budget", "20ms");

        assertThat(code).isZero();
        List<String> rows = out.toString().lines().toList();
        assertThat(rows.get(0)).isEqualTo("instance,value,bound,milliseconds");
        assertThat(rows.get(1)).matches("whole\\.txt,0,0,\\d+\\.\\d");
        assertThat(rows.get(2)).matches("joined\\.txt,1,1,\\d+\\.\\d");
        assertThat(rows.get(3)).matches("none\\.txt,,\\d+,\\d+\\.\\d");
    }

    @Test
    void bars_are_cut_out_of_coloured_rectangles() throws IOException {
        // colour 0: a 100 x 90 piece gives two lanes of 40 x 100; the bar of 190 takes both
        String job = file("job.txt", "40 10 30\n2\n90 100 0\n50 50 1\n2\n190 40 0\n50 50 1\n");

        assertThat(run("cut-and-join", job, "--warm-up", "0s", "--budget", "20ms"))
                .isZero();

        assertThat(out.toString()).contains("job.txt,1,1,");
    }

    @Test
    void limited_copies_and_turning_count_on_a_sheet() throws IOException {
        // 4 x 3: one copy of 3 x 3 worth 9; unlimited 3 x 4 fits only when turned
        String limited = file("limited.txt", "4 3\n1\n3 3 9 5\n");
        String free = file("free.txt", "1\n4 3\n3 4 7\n");

        assertThat(run("knapsack", limited, "--warm-up", "0s")).isZero();
        assertThat(run("unconstrained", free, "--warm-up", "0s")).isZero();
        assertThat(run("unconstrained", free, "--turned", "--warm-up", "0s")).isZero();

        assertThat(out.toString()).contains("limited.txt,9,9,", "free.txt,0,0,", "free.txt,7,7,");
    }

    @Test
    void cloths_are_pieced_and_written_down() throws IOException {
        // two scraps of 26 x 20 beside each other: 26 + 26 - 6 = 46 = 38 + 2 x 4 wide, 20 = 12 + 2 x 4 high
        String head =
                "free-piecing 1\nunit 1/8 in\ncloths 1\ntarget 38 12\nallow 2 4 4\nleast 12\nkeep 0 0\npatches 1\n"
                        + "clearance 4\n";
        String two = file("two.txt", head + "scraps 2\n26 20 0 0\n26 20 1 0\n");
        String one = file("one.txt", head + "scraps 1\n26 20 0 0\n");
        String answers = folder.resolve("answers").toString();

        assertThat(run(
                        "piecing",
                        two,
                        one,
                        "--warm-up",
                        "0s",
                        "--budget",
                        "20ms",
                        "--threads",
                        "1",
                        "--answers",
                        answers))
                .isZero();

        assertThat(out.toString()).contains("two.txt,0.0000,0.0000,", "one.txt,short ", ",short 50.0000,");
        assertThat(Files.readString(Path.of(answers, "two.answer")))
                .isIn("cloth (0:26x20 | 1:26x20)\n", "cloth (1:26x20 | 0:26x20)\n");
    }

    @Test
    void a_bad_heap_is_told_with_its_line() throws IOException {
        String bad = file("heap.txt", "free-piecing 1\nunit 1/8 in\ncloths 1\ntarget 38\n");

        assertThat(run("piecing", bad)).isEqualTo(2);

        assertThat(err.toString()).contains("heap.txt, line 4,").contains("target and 2 numbers were expected");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 2 15 20 50;200;114        | line 3, has 1 numbers where 2 were expected",
                "1 1 15 20 50;200;x          | line 3, has \"x\", which is not a whole number",
                "1 1 15 20 50;200            | ends too early",
                "1 1 15 20 50;200;100;7      | line 4, stands after the end",
                "0 1 15 20 50;;100           | line 1, says that 0 follow",
                "1 1 15 20 50;-200;100       | line 2, has -200"
            })
    void a_bad_file_is_told_with_its_line(String text, String complaint) throws IOException {
        String bad = file("bad.txt", text.replace(";", "\n"));

        assertThat(run("join", bad)).isEqualTo(2);

        assertThat(err.toString()).contains("bad.txt").contains(complaint);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void a_missing_file_and_a_bad_budget_are_told() throws IOException {
        assertThat(run("join", folder.resolve("nothing.txt").toString())).isEqualTo(2);
        assertThat(run("join", file("x", "1 1 1 1 1"), "--budget", "soon")).isEqualTo(2);

        assertThat(err.toString()).contains("There is no file").contains("\"soon\" is not a time");
    }

    @Test
    void a_run_beside_the_exact_solver_can_be_taken_up_again() throws IOException {
        String rows = folder.resolve("rows.csv").toString();
        String[] twice = {"against-cpsat", rows, "--count", "2", "--limit", "1s", "--budget", "200ms", "--warm-up", "0s"
        };

        assertThat(run(twice)).isZero();
        List<String> first = Files.readAllLines(Path.of(rows));
        assertThat(run(twice)).isZero();

        assertThat(first).hasSize(3).noneMatch(row -> row.endsWith("MISS") || row.endsWith("DISAGREE"));
        assertThat(Files.readAllLines(Path.of(rows))).isEqualTo(first);
    }

    @Test
    void results_are_counted_against_what_is_known() throws IOException {
        String results = file("results.csv", """
                instance,value,bound,milliseconds
                a,3,3,1.0
                b,5,4,100.0
                c,7,5,100.0
                d,,1,100.0
                """);
        String known = file("known.csv", "# source: none\ninstance,value,bound\na,3,3\nb,6,4\nc,5,5\nd,1,1\n");

        assertThat(run("summary", "joins", "100ms", results, "--known", known)).isZero();

        // 4 instances, 3 answered, a and b as good as known, b better, a proved, a and b within 1, c two off
        assertThat(out.toString()).contains("| joins | 100ms | 4 | 3 | 2 | 1 | 1 | 2 | 2 | 13.333 | 100.0 | 100.0 |");
    }

    @Test
    void profits_below_the_best_known_are_off_by_what_is_missing() throws IOException {
        String results = file("results.csv", "instance,value,bound,milliseconds\na,90,120,5\nb,100,100,1\n");
        String known = file("known.csv", "instance,value,bound\na,100,100\nb,100,100\n");

        assertThat(run("summary", "profit", "2s", results, "--known", known)).isZero();

        assertThat(out.toString()).contains("| profit | 2s | 2 | 2 | 1 | 0 | 1 | 1 | 10 | 5.000 | 5.0 | 5.0 |");
    }
}
