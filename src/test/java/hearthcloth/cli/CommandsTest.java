package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.cli.io.Shell;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.HearthRule;
import hearthcloth.guideline.RoundsRule;
import hearthcloth.guideline.SizeRule;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The commands themselves, each asked with words as they are typed. */
class CommandsTest {

    private static final Plan PLAN = Planned.plans(Stashes.yardage(), 20, 1).get(0);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private final Shell shell = new Shell(
            InputStream.nullInputStream(),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));

    @TempDir
    private Path folder = Path.of("");

    private static int call(Callable<Integer> command, String... words) {
        CommandLine line = new CommandLine(command).setExpandAtFiles(false);
        line.parseArgs(words);
        try {
            return command.call();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static void refused(Runnable asked, String... said) {
        assertThatThrownBy(asked::run).isInstanceOf(BadInputException.class).hasMessageContainingAll(said);
    }

    private String said() {
        String said = out.toString(StandardCharsets.UTF_8);
        out.reset();
        return said;
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
                    assertThat(refused.sentences().get(0)).isEqualTo(file + " cannot be used as it is:");
                    assertThat(refused.sentences())
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

    private static String[] with(String[] words, String... more) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private void written(ProposalFiles files, String name) {
        files.write(List.of(PLAN), OutputFolder.of(at(name)));
    }

    private Set<String> in(String name) throws IOException {
        try (var entries = Files.list(folder.resolve(name))) {
            return new TreeSet<>(
                    entries.map(file -> String.valueOf(file.getFileName())).toList());
        }
    }

    private static ProposalFiles files(Optional<GiftWish> gift, boolean slips, boolean png, boolean net) {
        return new ProposalFiles(
                gift, Paper.LETTER, Voice.english(Ruler.EIGHTHS), GuideLength.FULL, new ProposalFiles.Extras(slips, png, net));
    }

    @Test
    void files_beside_the_usual_ones_are_written_where_they_are_wanted() throws IOException {
        String[] usual = {"back.svg", "cut.svg", "front.svg", "guide.pdf", "plan.json"};
        written(files(Optional.empty(), false, false, false), "a");
        assertThat(in("a/1")).containsExactlyInAnyOrder(usual);
        written(files(Optional.empty(), true, false, false), "b");
        assertThat(in("b/1")).containsExactlyInAnyOrder(with(usual, "slips.pdf"));
        written(files(Optional.empty(), false, true, false), "c");
        assertThat(in("c/1")).containsExactlyInAnyOrder(with(usual, "front.png", "back.png", "cut.png"));
        written(files(GiftWish.read("box 5 x 4 x 2 in", null, null), false, false, true), "d");
        assertThat(in("d/1")).containsExactlyInAnyOrder(with(usual, "tied.svg", "net.pdf", "net.svg"));
    }

    @Test
    void a_guideline_made_from_a_cloth_holds_what_was_said_and_the_usual_where_nothing_was() throws IOException {
        written(files(Optional.empty(), false, false, false), "a");
        String plan = at("a/1/plan.json");
        assertThat(call(new GuidelineCommand(shell), plan, "--out", at("idea.json")))
                .isZero();
        assertThat(said())
                .startsWith("Wrote " + at("idea.json") + ": " + PLAN.story().title() + ".");
        Guideline idea = GuidelineWish.guideline(at("idea.json"), shell);
        assertThat(idea.told().name()).isEqualTo(PLAN.story().title());
        assertThat(idea.told().ruler()).isEqualTo(Ruler.EIGHTHS);
        assertThat(idea.size()).isEqualTo(new SizeRule.Open());
        assertThat(idea.shape().hearth()).isInstanceOf(HearthRule.OfWidth.class);
        assertThat(idea.shape().order()).isPresent();

        refused(() -> call(new GuidelineCommand(shell), plan, "--out", at("idea.json")), "--replace");
        call(
                new GuidelineCommand(shell),
                plan,
                "--out",
                at("idea.json"),
                "--replace",
                "--name",
                "Tide",
                "--by",
                "Ada",
                "--words",
                "Go on.",
                "--size",
                "kept",
                "--hearth",
                "14 in cut",
                "--rounds",
                "2 to 4",
                "--order",
                "open",
                "--most-joins",
                "7",
                "--unit",
                "cm");
        Guideline other = GuidelineWish.guideline(at("idea.json"), shell);
        assertThat(other.told().name() + other.told().by() + other.told().words())
                .isEqualTo("TideAdaGo on.");
        assertThat(other.told().ruler()).isEqualTo(Ruler.MILLIMETRES);
        assertThat(other.size()).isEqualTo(new SizeRule.Exactly(PLAN.cloth().finished()));
        assertThat(other.shape().rounds()).isEqualTo(new RoundsRule(2, 4));
        assertThat(other.shape().order()).isEmpty();
        assertThat(other.sewing().joins().mostJoins()).isEqualTo(7);

        refused(
                () -> call(
                        new GuidelineCommand(shell),
                        plan,
                        "--out",
                        at("b.json"),
                        "--most-joins",
                        "41",
                        "--middle",
                        "blue",
                        "--size",
                        "kelp"),
                "--most-joins",
                "--middle",
                "--size");
        assertThat(GuidelineFile.read(Files.readString(folder.resolve("a/1/plan.json"))))
                .isInstanceOf(GuidelineFile.Reading.Faulty.class);
    }

    /** Macros that man knows; anything else at the start of a line would vanish from the page. */
    private static final Set<String> MACROS = Set.of(".TH", ".SH", ".TP", ".B", ".br", ".PP", ".nf", ".fi");

    @Test
    void the_manual_is_roff_in_which_no_word_is_taken_for_a_macro() {
        CommandLine program = new Hearthcloth(shell, (asked, streams) -> 0).line();
        program.execute("completion", "man");
        String page = said();
        assertThat(page).isEqualTo(ManPage.of(program)).startsWith(".TH HEARTHCLOTH 1\n.SH NAME\nhearthcloth \\- ");
        boolean literal = false;
        for (String line : page.lines().toList()) {
            if (line.startsWith(".")) {
                assertThat(MACROS).contains(line.split(" ", -1)[0]);
            }
            assertThat(line).doesNotStartWith("'").doesNotContain("%n").doesNotContainPattern("(?<!\\\\)-");
            assertThat(line.replace("\\e", "").replace("\\-", "").replace("\\&", ""))
                    .doesNotContain("\\");
            literal = line.equals(".nf") || (literal && !line.equals(".fi"));
        }
        assertThat(literal).isFalse();
        assertThat(page).contains("\n.SH PLAN\n", "\n.SH SIZE\n", "workroom.db").doesNotContain("\n.SH COMPLETION\n");
    }

    @Test
    void each_kind_of_completion_is_that_of_its_shell() {
        CommandLine program = new Hearthcloth(shell, (asked, streams) -> 0).line();
        CompletionCommand command = new CompletionCommand(shell);
        program.addSubcommand("made", command);
        for (List<String> kind : List.of(
                List.of("bash", Completion.bash(program)),
                List.of("zsh", Completion.zsh(program)),
                List.of("FISH", Completion.fish(program)))) {
            program.execute("made", kind.get(0));
            assertThat(said()).isEqualTo(kind.get(1));
        }
    }

    private static List<WorkroomDoor.Asked> asked(int code, String... words) {
        List<WorkroomDoor.Asked> all = new ArrayList<>();
        WorkroomDoor door = (asked, shell) -> {
            all.add(asked);
            return code;
        };
        PrintStream none = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        assertThat(new CommandLineTool(door).run(words, InputStream.nullInputStream(), none, none))
                .isEqualTo(code);
        return all;
    }

    @Test
    void without_a_command_the_workroom_is_opened_with_all_that_was_typed() {
        assertThat(asked(0))
                .containsExactly(new WorkroomDoor.Asked(
                        4732,
                        Optional.empty(),
                        true,
                        new WorkroomDoor.Start(Optional.empty(), false),
                        new WorkroomDoor.Network(false, false, Optional.empty())));
        assertThat(asked(
                        2,
                        "--port",
                        "5000",
                        "--data",
                        "a.db",
                        "--restore",
                        "last",
                        "--new",
                        "--lan",
                        "--code",
                        "--address",
                        "https://studio.example",
                        "--no-browser"))
                .containsExactly(new WorkroomDoor.Asked(
                        5000,
                        Optional.of("a.db"),
                        false,
                        new WorkroomDoor.Start(Optional.of("last"), true),
                        new WorkroomDoor.Network(true, true, Optional.of("https://studio.example"))));
        assertThat(asked(0, "--lan").get(0).network().code()).isFalse();
        assertThat(asked(0, "--data", "postgresql://studio/kelp").get(0).data()).hasValue("postgresql://studio/kelp");
        // a port beyond the last is refused and no door opened
        assertThat(asked(2, "--port", "65535")).hasSize(1);
        assertThat(asked(2, "--port", "65536")).isEmpty();
    }
}
