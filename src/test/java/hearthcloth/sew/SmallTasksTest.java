package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Free patchwork in small tasks: A of three patches, B of two, C of one. */
class SmallTasksTest {

    private static final Cloth CLOTH = new Cloth(
            Notation.parse("((((A1 \"a\" 40 x 60 same |> A2 \"b\" 40 x 60 same) |> A3 \"a\" 40 x 60 same)"
                    + " /> (B1 \"a\" 60 x 50 same |> B2 \"b\" 60 x 50 same)) /> C1 \"a\" 120 x 30 same)"),
            Making.metric());

    private final SmallTasks tasks =
            new SmallTasks(CLOTH, Voice.english(Ruler.MILLIMETRES).sewing());

    private static List<Laid> patches(Cloth cloth, String ids) {
        List<String> wanted = Arrays.asList(ids.split(" "));
        return cloth.laid().stream()
                .filter(laid -> wanted.contains(laid.patch().place().id()))
                .toList();
    }

    private static List<Laid> patches(String ids) {
        return patches(CLOTH, ids);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            A1 A2             | the pair A1 and A2
            A2 A3             | the pair A2 and A3
            A1 A2 A3          | block A
            B1 B2             | block B
            A1 A2 A3 B1 B2    | the work A to B
            A1 A2 A3 B1       | the work A1 to B1
            A2 A3 B1 B2       | the part A2 to B2
            B1 B2 C1          | the part B to C
            B2 C1             | the part B2 to C1
            """)
    void a_part_of_the_work_is_a_run_of_names(String ids, String name) {
        assertThat(tasks.name(patches(ids))).contains(name);
    }

    @Test
    void a_run_inside_a_large_task_is_called_a_part_of_it() {
        Cloth four = new Cloth(
                Notation.parse("(((A1 \"a\" 40 x 60 same |> A2 \"b\" 40 x 60 same) |> A3 \"a\" 40 x 60 same)"
                        + " |> A4 \"a\" 40 x 60 same)"),
                Making.metric());

        assertThat(new SmallTasks(four, Voice.english(Ruler.MILLIMETRES).sewing()).name(patches(four, "A1 A2 A3")))
                .contains("the part A1 to A3");
    }

    @Test
    void a_task_begins_once_and_ends_when_all_its_patches_are_together() {
        assertThat(tasks.begins(patches("A1 A2")))
                .contains(
                        "Block A begins. Lay out A1 to A3 as in the picture of the front. You need nothing else for it.");
        assertThat(tasks.ends(patches("A1 A2"))).isEmpty();
        assertThat(tasks.begins(patches("A1 A2 A3"))).isEmpty();
        assertThat(tasks.ends(patches("A1 A2 A3"))).contains("Block A is done.");
        assertThat(tasks.begins(patches("B1 B2")))
                .hasValueSatisfying(said -> assertThat(said).startsWith("Block B begins. Lay out B1 to B2 "));
        assertThat(tasks.ends(patches("B1 B2"))).contains("Block B is done.");
    }

    @Test
    void a_seam_between_two_tasks_begins_and_ends_neither() {
        assertThat(tasks.begins(patches("A1 A2 A3 B1 B2"))).isEmpty();
        assertThat(tasks.ends(patches("A1 A2 A3 B1 B2"))).isEmpty();
    }

    @Test
    void patches_without_a_task_are_not_spoken_of() {
        Cloth plain =
                new Cloth(Notation.parse("(patch1 \"a\" 40 x 60 same |> A1 \"b\" 40 x 60 same)"), Making.metric());
        SmallTasks none = new SmallTasks(plain, Voice.english(Ruler.MILLIMETRES).sewing());

        assertThat(none.name(plain.laid())).isEmpty();
        assertThat(none.begins(plain.laid())).isEmpty();
        assertThat(none.ends(plain.laid())).isEmpty();
    }

    @Test
    void the_few_words_of_a_seam_tell_where_a_task_begins_and_ends_as_its_whole_task_does() {
        for (SeamTask seam : SeamTasks.of(CLOTH, new MakerWords(Voice.english(Ruler.MILLIMETRES)))) {
            assertThat(bounds(seam.brief()))
                    .as(seam.task().title())
                    .isEqualTo(bounds(seam.task().lines()));
        }
        assertThat(bounds(SeamTasks.of(CLOTH, new MakerWords(Voice.english(Ruler.MILLIMETRES)))
                        .get(0)
                        .brief()))
                .hasSize(1);
    }

    private static List<String> bounds(List<String> lines) {
        return lines.stream()
                .filter(line -> line.matches("Block [A-Z] (begins|is done)\\..*"))
                .toList();
    }
}
