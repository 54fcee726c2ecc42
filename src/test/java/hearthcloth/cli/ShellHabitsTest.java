package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cli.help.Completion;
import hearthcloth.cli.io.Shell;
import hearthcloth.wish.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What shells expect of a program: its version, completions, a manual page, settings from its surroundings. */
class ShellHabitsTest {

    @Test
    void the_version_is_that_of_the_build_with_its_commit() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        var version = Pattern.compile("<artifactId>hearthcloth</artifactId>\\s*<version>([^<]+)<")
                .matcher(pom);
        assertThat(version.find()).isTrue();
        assertThat(Typed.words("--version").out().strip())
                .matches("hearthcloth " + Pattern.quote(version.group(1)) + " \\(commit ([0-9a-f]{10}|unknown)\\)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh", "fish", "man"})
    void every_command_and_option_stands_in_each_completion_and_in_the_manual(String kind) {
        String made = Typed.words("completion", kind).out();
        for (String command : new String[] {"plan", "read", "size"}) {
            assertThat(made.toLowerCase(java.util.Locale.ROOT)).contains(command);
            for (OptionSpec option : options(command)) {
                String name = option.longestName();
                String written = kind.equals("fish")
                        ? "-l " + name.substring(2) + " "
                        : kind.equals("man") ? name.replace("-", "\\-") : name;
                assertThat(made).as(command).contains(written);
            }
        }
    }

    @Test
    void the_exit_codes_are_told() {
        assertThat(Typed.words("--help").out()).contains("It ends with:", "0   done", "1   your stash cannot", "2   ");
        assertThat(Typed.words("completion", "man").out()).contains(".SH EXIT STATUS");
        Typed.words("completion", "kelp").refused("kelp", "bash");
    }

    @Test
    void what_was_not_typed_comes_from_the_environment_then_from_the_settings_file(@TempDir Path folder)
            throws IOException {
        Path file = Files.writeString(
                folder.resolve("studio.conf"), "# Ours\nHEARTHCLOTH_PORT=5000\nHEARTHCLOTH_NO_BROWSER=true\n");
        Surroundings both =
                Surroundings.of(Map.of("HEARTHCLOTH_SETTINGS", file.toString(), "HEARTHCLOTH_PORT", "6000"));
        assertThat(both.defaultValue(option("--port"))).isEqualTo("6000");
        assertThat(both.defaultValue(option("--no-browser"))).isEqualTo("true");
        assertThat(both.defaultValue(option("--data"))).isNull();
        assertThatThrownBy(() -> Surroundings.of(
                        Map.of("HEARTHCLOTH_SETTINGS", folder.resolve("none").toString())))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("HEARTHCLOTH_SETTINGS");
    }

    private static OptionSpec option(String name) {
        return program().getCommandSpec().findOption(name);
    }

    private static Iterable<OptionSpec> options(String command) {
        return Completion.options(
                java.util.Objects.requireNonNull(program().getSubcommands().get(command)));
    }

    private static CommandLine program() {
        Shell shell = new Shell(System.in, System.out, System.err);
        return new Hearthcloth(shell, (asked, streams) -> 0).line();
    }
}
