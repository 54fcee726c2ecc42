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

/** {@code plan --gift}: what shows is said, the cloth can be turned, shifted and turned over, and folded in paper. */
class TiedCommandTest {

    private static final byte[] STASH =
            "fabric,width,length\nkelp,44 in,2 yd\nfog,44 in,2 yd\nrust,20 in,20 in".getBytes(StandardCharsets.UTF_8);

    private static final String BOX = "box 8 x 6 x 3 in";

    @TempDir
    private Path folder = Path.of("");

    private Typed plan(String... wishes) {
        List<String> words = new ArrayList<>(List.of(
                "plan", "-", "--out", folder.resolve("out").toString(), "--proposals", "1", "--budget", "200ms"));
        words.addAll(List.of(wishes));
        return Typed.withInput(STASH, words.toArray(String[]::new)).plain();
    }

    private static String tied(Typed typed) {
        return typed.out()
                .lines()
                .filter(line -> line.contains("Tied: "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void it_is_said_what_shows_and_how_sure_the_size_is() {
        Typed typed = plan("--gift", BOX);
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(typed.out())
                .containsPattern("Gift: .* at least [^ ]+ in \\([^ ]+–[^ ]+ in with thin or thick cloth");
        assertThat(tied(typed)).containsIgnoringCase("your hearth").contains("of what shows");
        assertThat(folder.resolve("out/1/net.pdf")).doesNotExist();
    }

    @Test
    void a_shift_asks_for_a_larger_cloth_and_changes_what_shows() throws IOException {
        Typed still = plan("--gift", BOX, "--size", "30 in");
        assertThat(still.code()).isEqualTo(2);
        Typed middle = plan("--gift", BOX);
        String before = Files.readString(folder.resolve("out/1/tied.svg"));
        Typed moved =
                plan("--gift", BOX, "--off-middle", "2 in right, 1 in near", "--turned", "1", "--outside", "back");
        assertThat(moved.code()).as(moved.err()).isZero();
        assertThat(least(moved)).isGreaterThan(least(middle));
        assertThat(Files.readString(folder.resolve("out/1/tied.svg"))).isNotEqualTo(before);
    }

    /** Whole inches. */
    private static int least(Typed typed) {
        return Integer.parseInt(typed.out().replaceFirst("(?s).*at least (\\d+)[^ ]* in .*", "$1"));
    }

    @Test
    void the_net_is_written_on_one_sheet() throws IOException {
        Typed typed = plan("--gift", BOX, "--net");
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(Files.readAllBytes(folder.resolve("out/1/net.pdf"))).startsWith('%', 'P', 'D', 'F');
        assertThat(Files.readString(folder.resolve("out/1/net.svg"))).contains("215.9", "1 : ", "of card");
        assertThat(plan("--gift", BOX).code()).isZero();
    }

    @Test
    void a_fabric_wished_to_the_outside_is_told_with_its_share() {
        Typed typed = plan("--gift", BOX, "--show", "fog");
        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(typed.out())
                .containsPattern("fog( shows however you tie it)?: \\d+ %( to \\d+ %)? of what shows once tied");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--outside | inside | write front or back",
                "--turned | 4 | from 0 to 3",
                "--off-middle | 3 in | write a length and right",
                "--off-middle | 3 in up | write a length and right",
                "--off-middle | 3 km right | is not a unit",
                "--off-middle | 10 m right | out of reach",
                "--show | velvet | no fabric of the stash",
                "--show | kelp, fog | more than one fabric"
            })
    void what_cannot_be_used_is_refused_by_name(String option, String written, String said) {
        Typed.withInput(STASH, "plan", "-", "--out", folder.resolve("out").toString(), "--gift", BOX, option, written)
                .refused(option, said);
    }

    @ParameterizedTest
    @CsvSource({"--outside, back", "--turned, 1", "--off-middle, 1 in right", "--show, kelp"})
    void without_a_gift_there_is_nothing_to_tie(String option, String written) {
        Typed.withInput(STASH, "plan", "-", "--out", folder.resolve("out").toString(), option, written)
                .refused(option, "add --gift");
    }

    @Test
    void sizes_that_are_sold_stand_beside_ours() {
        Typed typed = Typed.words("size", "--gift", "bottle 7.5 x 30 cm").plain();
        assertThat(typed.out()).contains("Ready-made sizes", "45 cm", "68 cm", "90 cm", "one wine bottle");
        assertThat(typed.out()).containsPattern("68 cm +fits").containsPattern("50 cm +small");
    }
}
