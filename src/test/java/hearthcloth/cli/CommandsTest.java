package hearthcloth.cli;

import static hearthcloth.cli.Called.call;
import static hearthcloth.cli.Called.refused;
import static hearthcloth.cli.Called.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.SizeRule;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands themselves, each asked with words as they are typed. */
class CommandsTest {

    private final Called called = new Called();

    private final Shell shell = called.shell;

    @TempDir
    private Path folder = Path.of("");

    private String said() {
        return called.said();
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void a_cloth_is_from_five_centimetres_to_five_metres_and_never_a_gift_as_well() {
        SizeCommand size = new SizeCommand(shell);
        assertThat(call(size, "--cloth", "5 cm")).isZero();
        assertThat(call(size, "--cloth", "5 m")).isZero();
        refused(() -> call(size, "--cloth", "4.9 cm"), "\"4.9 cm\" is out of reach");
        refused(() -> call(size, "--cloth", "50 x 501 cm"), "out of reach");
        refused(() -> call(size, "--cloth", "50 cm", "--gift", "box 30 x 20 x 8 cm"), "Say either");
        refused(() -> call(size), "Say either");
    }

    @Test
    void sizes_are_said_as_they_were_written_or_as_was_wished() {
        call(new SizeCommand(shell), "--gift", "box 12 x 8 x 3 in", "--tie", "flat wrap");
        assertThat(said()).contains("box 12 × 8 × 3 in").doesNotContain(" cm");
        call(new SizeCommand(shell), "--gift", "box 30 x 20 x 8", "--unit", "cm");
        assertThat(said()).contains("box 30 × 20 × 8 cm").doesNotContainPattern("\\d in\\b");
        call(new SizeCommand(shell), "--gift", "box 30 x 20 x 8 cm", "--steps", "--tie", "four-corner tie");
        assertThat(said()).contains("  1  ", "The reef knot:");
    }

    @Test
    void a_sheet_is_not_written_over_unless_that_was_said() throws IOException {
        assertThat(call(new SheetCommand(shell), "--out", at("a.pdf"))).isZero();
        byte[] a4 = Files.readAllBytes(folder.resolve("a.pdf"));
        refused(() -> call(new SheetCommand(shell), "--out", at("a.pdf"), "--paper", "letter"), "--replace");
        assertThat(folder.resolve("a.pdf")).hasBinaryContent(a4);
        call(new SheetCommand(shell), "--out", at("a.pdf"), "--paper", "letter", "--replace");
        assertThat(Files.readAllBytes(folder.resolve("a.pdf"))).isNotEqualTo(a4);
    }

    /** Found out before the photograph or the stash is read, so that nobody waits for a refusal. */
    @Test
    void what_is_typed_wrongly_is_refused_before_anything_is_read() {
        refused(() -> call(new ReadCommand(shell), "none.jpg", "--sheet", "kelp", "--out", at("a.csv")), "--sheet");
        refused(
                () -> call(new ReadCommand(shell), "none.jpg", "--sheet", "a4", "--out", at("a.txt")),
                "ends with .csv");
        refused(
                () -> call(new ReadCommand(shell), "none.jpg", "--sheet", "a4", "--out", at("a.csv")),
                "no file none.jpg");
        refused(() -> call(new PlanCommand(shell), "none.csv", "--out", " "), "--out: a folder is missing");
        refused(() -> call(new PlanCommand(shell), "none.csv", "--out", at("out")), "no file none.csv");
        String stash = "examples/two-lengths.csv";
        refused(() -> call(new PlanCommand(shell), stash, "--out", at("out"), "--budget", "soon"), "--budget");
        refused(() -> call(new PlanCommand(shell), stash, "--out", at("out"), "--paper", "a3"), "--paper");
        refused(() -> call(new PlanCommand(shell), stash, "--out", at("out"), "--guide", "long"), "--guide");
        assertThat(folder).isEmptyDirectory();
    }

    /** The one list of faults of a file is cut after twenty, and says how many more there are. */
    @Test
    void of_a_stash_full_of_faults_twenty_are_told() throws IOException {
        Path file = Files.writeString(folder.resolve("a.csv"), "fabric,width,length\n" + "Kelp,x in,2 in\n".repeat(25));
        assertThatThrownBy(() -> call(new PlanCommand(shell), file.toString(), "--out", at("out")))
                .isInstanceOfSatisfying(BadInputException.class, refused -> {
                    assertThat(refused.in(Language.ENGLISH).get(0)).isEqualTo(file + " cannot be used as it is:");
                    assertThat(refused.in(Language.ENGLISH))
                            .filteredOn(line -> line.contains("\"x in\""))
                            .hasSize(20);
                });
    }

    /** A guideline says what a wish would say; the two together would have to be weighed against each other. */
    @Test
    void a_guideline_leaves_no_room_for_wishes_of_ones_own() {
        String[] words = {"examples/two-lengths.csv", "--out", at("out"), "--guideline", "examples/idea.json"};
        refused(
                () -> call(new PlanCommand(shell), with(words, "--size", "20 in", "--order", "pairs")),
                "--size: the guideline says this",
                "--order: the guideline says this");
        refused(
                () -> call(new PlanCommand(shell), with(words, "--favourite", "Kelp")),
                "--favourite: no fabric",
                "Kelp");
        refused(() -> call(new PlanCommand(shell), with(words, "--proposals", "13")), "--proposals");
        refused(() -> GuidelineWish.guideline(at("none.json"), shell), "There is no file");
        refused(() -> GuidelineWish.cloth("examples/idea.json", shell), "examples/idea.json cannot be used as it is:");
        Guideline idea = GuidelineWish.guideline("examples/idea.json", shell);
        assertThat(GuidelineWish.ruler(idea)).isEqualTo(Ruler.EIGHTHS);
        assertThat(GuidelineWish.gift(idea)).isEmpty();
        SizeRule box = SizeRule.parse("for box 30 x 20 x 8 cm, errand wrap", Ruler.EIGHTHS.unit());
        Guideline forGift = new Guideline(idea.told(), box, idea.shape(), idea.colours(), idea.sewing());
        assertThat(GuidelineWish.gift(forGift).map(GiftWish::tie).map(tie -> tie.words()))
                .hasValue("errand wrap");
    }
}
