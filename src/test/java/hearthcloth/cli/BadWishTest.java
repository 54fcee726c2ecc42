package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every wish that cannot be used is refused by name, with a mend, and nothing is written. */
class BadWishTest {

    private static final byte[] STASH =
            "fabric,width,length\nkelp,44 in,2 yd\n\"fog, pale\",44 in,1 yd".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder = Path.of("");

    private Typed plan(String... wishes) {
        List<String> words = new ArrayList<>(
                List.of("plan", "-", "--out", folder.resolve("out").toString()));
        words.addAll(List.of(wishes));
        return Typed.withInput(STASH, words.toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "--size | 10 km | is not a unit",
                "--size | 10000 m | longer than a kilometre",
                "--size | 10 m | 196",
                "--size | 1 cm | out of reach",
                "--size | -30 in | below zero",
                "--size | 0 in | out of reach",
                "--size | 30 x 20 x 10 in | a size has one",
                "--size | wide | write in, cm, mm",
                "--size | `` | a length is missing",
                "--size | 1,200 mm | write 1200 or 1.200",
                "--gift | box 30 x 20 cm | three measures",
                "--gift | box 30 x 0 x 8 cm | more than zero",
                "--gift | box 30 x -20 x 8 cm | below zero",
                "--gift | box 3 x 3 x 3 km | write the kind",
                "--gift | box 3000 x 20 x 8 cm | more than two metres",
                "--gift | wombat | write the kind",
                "--hearth | 1/4 in | too narrow",
                "--hearth | 10 m | out of reach",
                "--hearth | 9 parsec | is not a unit",
                "--bars | 1 in | too narrow",
                "--bars | 1/4 in finished | too narrow",
                "--bars | 5 in, -4 in | below zero",
                "--bars | 5 in, | a length is missing",
                "--bars | 0 in | out of reach",
                "--rounds | 0 | from 1 to 40",
                "--rounds | 41 | from 1 to 40",
                "--rounds | two | from 1 to 40",
                "--order | spiral | write round, pairs or two-sides",
                "--seam | 1/2 in | write its narrow and wide allowance",
                "--seam | 1/2 + 1/4 in | wider",
                "--seam | 0 + 1/2 in | more than nothing",
                "--seam | 1/4 + 1/2 + 1/2 in | a narrow and a wide allowance",
                "--seam | superglue | \"french\"",
                "--hem | 1/4 in | a first and a second fold",
                "--hem | 0 + 1/4 in | more than nothing",
                "--hem | 1 + 90 in | at most",
                "--corner | round | write square or mitred",
                "--fell | middle | write front or back",
                "--leeway | -1 in | below zero",
                "--leeway | 3 m | leaves no cloth",
                "--trim | 3 m | leaves no cloth",
                "--least-piece | 0 in | cannot be sewn",
                "--clearance | lots | is not a unit",
                "--most-joins | -1 | from 0 to 40",
                "--fabrics | silk | there are kelp, fog, pale",
                "--proposals | 0 | from 1 to 12",
                "--proposals | 99999999999 | from 1 to 12",
                "--budget | 2 weeks | 2s, 500ms",
                "--budget | 0.5ms | between 1ms and 10min",
                "--budget | 0s | between 1ms and 10min",
                "--budget | 11min | between 1ms and 10min",
                "--seed | lucky | whole number",
                "--unit | ell | write in or cm",
                "--paper | papyrus | write a4 or letter",
                "--language | martian | write one of en, ko, ja, fr, de, es",
                "--tie | four-corner tie | add --gift"
            })
    void each_names_its_option_and_a_mend(String option, String wish, String mend) {
        plan(option, wish).refused(option, mend);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void several_faults_are_told_at_once() {
        Typed typed = plan("--size", "10 m", "--rounds", "0", "--seed", "x");
        typed.refused("--size", "--rounds", "--seed");
        assertThat(typed.err().lines()).hasSize(3);
    }

    @Test
    void wishes_that_contradict_each_other() {
        plan("--size", "30 in", "--gift", "box 30 x 20 x 8 cm").refused("--size", "leave out the size or the gift");
        plan("--gift", "box 30 x 20 x 8 cm", "--tie", "one-bottle wrap").refused("--tie", "four-corner tie");
        plan("--gift", "box 30 x 20 x 8 cm", "--tie", "bow").refused("--tie", "errand wrap");
        plan("--bars", "5 in, 4 in", "--rounds", "1").refused("--bars", "more rounds");
        plan("--gift", "box 190 x 190 x 190 cm").refused("--gift", "something smaller");
    }

    @Test
    void what_the_shell_itself_got_wrong() {
        plan("--sise", "30 in").refused("no option --sise", "--help");
        plan("30", "in").refused("one word too many", "quotes");
        plan("--size").refused("--size");
        Typed.words("plan", "--out", "x").refused("STASH.csv");
        Typed.words("plan", "x").refused("--out FOLDER");
        Typed.words("plam")
                .refused("no command plam; there are help, plan, kits, read, size, guideline, idea and sheet");
        Typed.words("plan", "@/etc/hostname", "--out", folder.resolve("out").toString())
                .refused("There is no file @/etc/hostname");
        Typed.words("plan", "a\0b", "--out", folder.resolve("out").toString()).refused("is not the name of a file");
        Typed.words("size").refused("--gift", "--cloth");
        Typed.words("size", "--gift", "ball 9 in", "--cloth", "9 in").refused("either");
        Typed.words("size", "--cloth", "10 km").refused("--cloth", "is not a unit");
        Typed.words("size", "--cloth", "10 m").refused("--cloth", "5 cm to 5 m");
        Typed.words("size", "--cloth", "38").refused("--cloth", "has no unit");
        Typed.words("size", "--cloth", "38 in", "--tie", "bow").refused("--tie", "four-corner tie");
    }

    @Test
    void a_place_for_the_output_that_cannot_be_used() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Typed.withInput(STASH, "plan", "-", "--out", file.toString()).refused("--out", "is a file");
        Typed.withInput(STASH, "plan", "-", "--out", " ").refused("--out", "a folder is missing");
        Path full = Files.createDirectories(folder.resolve("full"));
        Files.writeString(full.resolve("letter.txt"), "mine");
        Typed.withInput(STASH, "plan", "-", "--out", full.toString()).refused("--out", "letter.txt", "new folder");
        Path mine = Files.createDirectories(folder.resolve("mine").resolve("1"));
        Typed.withInput(STASH, "plan", "-", "--out", folder.resolve("mine").toString())
                .refused("holds other things (1)");
        assertThat(mine).exists();
        assertThat(file).hasContent("mine");
    }
}
