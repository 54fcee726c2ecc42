package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cli.help.Completion;
import hearthcloth.cli.help.ManPage;
import hearthcloth.cli.io.Shell;
import hearthcloth.words.Language;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The program as a whole: its manual, its completion, and the workroom it opens without a command. */
class ProgramTest {

    private final Called called = new Called();

    private final Shell shell = called.shell;

    private String said() {
        return called.said();
    }

    /** Macros that man knows; anything else at the start of a line would vanish from the page. */
    private static final Set<String> MACROS = Set.of(".TH", ".SH", ".TP", ".B", ".br", ".PP", ".nf", ".fi");

    @Test
    void the_manual_is_roff_in_which_no_word_is_taken_for_a_macro() {
        CommandLine program = new Hearthcloth(shell, (asked, streams) -> 0).line();
        program.execute("completion", "man");
        String page = said();
        assertThat(page)
                .isEqualTo(ManPage.of(program, Language.ENGLISH))
                .startsWith(".TH HEARTHCLOTH 1\n.SH NAME\nhearthcloth \\- ");
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
                List.of("zsh", Completion.zsh(program, Language.ENGLISH)),
                List.of("FISH", Completion.fish(program, Language.ENGLISH)))) {
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
                        new WorkroomDoor.Network(false, false, Optional.empty()),
                        Language.ENGLISH));
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
                        new WorkroomDoor.Network(true, true, Optional.of("https://studio.example")),
                        Language.ENGLISH));
        assertThat(asked(0, "--lan").get(0).network().code()).isFalse();
        assertThat(asked(0, "--data", "postgresql://studio/kelp").get(0).data()).hasValue("postgresql://studio/kelp");
        assertThat(asked(0, "--language", "ko").get(0).language()).isEqualTo(Language.KOREAN);
        assertThat(asked(2, "--language", "tide")).isEmpty();
        // a port beyond the last is refused and no door opened
        assertThat(asked(2, "--port", "65535")).hasSize(1);
        assertThat(asked(2, "--port", "65536")).isEmpty();
    }
}
