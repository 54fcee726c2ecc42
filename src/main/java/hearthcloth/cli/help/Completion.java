package hearthcloth.cli.help;

import hearthcloth.words.Language;
import hearthcloth.words.helping.HelpingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Completions of what is typed in a shell. */
public final class Completion {

    private Completion() {}

    /** For bash; it tells names alone. */
    public static String bash(CommandLine program) {
        return AutoComplete.bash(program.getCommandName(), program);
    }

    /** For fish: a line for each command and each option. */
    public static String fish(CommandLine program, Language language) {
        HelpingWords words = HelpingWords.in(language);
        OptionWords said = new OptionWords(words);
        String name = program.getCommandName();
        List<String> lines = new ArrayList<>();
        lines.add("# " + words.completionHeader());
        options(program).forEach(option -> lines.add(fishOption(name, "__fish_use_subcommand", option, said)));
        commands(program).forEach(command -> {
            lines.add("complete -c " + name + " -f -n __fish_use_subcommand -a " + command.name() + " -d "
                    + quoted(header(command, words)));
            String seen = "__fish_seen_subcommand_from " + command.name();
            options(command.commandLine()).forEach(option -> lines.add(fishOption(name, quoted(seen), option, said)));
        });
        return lines(lines);
    }

    private static String fishOption(String program, String when, OptionSpec option, OptionWords said) {
        String names = Stream.of(option.names())
                .map(name -> name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1))
                .collect(Collectors.joining());
        return "complete -c " + program + " -n " + when + names + fishValue(option) + " -d " + quoted(said.of(option));
    }

    private static String fishValue(OptionSpec option) {
        if (!takesValue(option)) {
            return " -f";
        }
        if (isFile(option)) {
            return " -r -F";
        }
        List<String> choices = choices(option);
        return " -x" + (choices.isEmpty() ? "" : " -a " + quoted(String.join(" ", choices)));
    }

    /** For zsh: a function for the program and one for each command. */
    public static String zsh(CommandLine program, Language language) {
        HelpingWords words = HelpingWords.in(language);
        OptionWords said = new OptionWords(words);
        String name = program.getCommandName();
        List<String> lines = new ArrayList<>();
        lines.add("#compdef " + name);
        lines.add("# " + words.completionHeader());
        commands(program).forEach(command -> {
            lines.add("_" + name + "_" + command.name() + "() {");
            lines.add("    _arguments \\");
            options(command.commandLine()).forEach(option -> lines.add("        " + zshOption(option, said) + " \\"));
            lines.add("        '*:file:_files'");
            lines.add("}");
        });
        lines.add("_" + name + "() {");
        lines.add("    local -a commands=(");
        commands(program)
                .forEach(command -> lines.add("        "
                        + quoted(command.name() + ":" + header(command, words).replace(":", "\\:"))));
        lines.add("    )");
        lines.add("    _arguments -C \\");
        options(program).forEach(option -> lines.add("        " + zshOption(option, said) + " \\"));
        lines.add("        '1:command:->command' '*::word:->word'");
        lines.add("    case \"$state\" in");
        lines.add("        command) _describe 'command' commands ;;");
        lines.add("        word) (( $+functions[_" + name + "_$words[1]] )) && _" + name + "_$words[1] ;;");
        lines.add("    esac");
        lines.add("}");
        lines.add("_" + name + " \"$@\"");
        return lines(lines);
    }

    private static String zshOption(OptionSpec option, OptionWords said) {
        String words = said.of(option).replaceAll("([\\[\\]:\\\\])", "\\\\$1");
        String value = "";
        if (takesValue(option)) {
            List<String> choices = choices(option);
            String what = isFile(option) ? "_files" : choices.isEmpty() ? " " : "(" + String.join(" ", choices) + ")";
            value = ":" + said.label(option).replaceAll("[^\\p{L}0-9 ]", " ").strip() + ":" + what;
        }
        String equals = takesValue(option) ? "=" : "";
        return quoted(option.longestName() + equals + "[" + words + "]" + value);
    }

    /** The commands that are told of. */
    public static List<CommandSpec> commands(CommandLine program) {
        return program.getSubcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .filter(command -> !command.usageMessage().hidden())
                .distinct()
                .toList();
    }

    /** The options that are told of. */
    public static List<OptionSpec> options(CommandLine command) {
        return command.getCommandSpec().options().stream()
                .filter(option -> !option.hidden())
                .toList();
    }

    static boolean takesValue(OptionSpec option) {
        return option.arity().max() > 0;
    }

    private static boolean isFile(OptionSpec option) {
        return option.paramLabel().matches("(?:FILE|FOLDER|PICTURE)\\b.*|[A-Z]+\\.[a-z]+");
    }

    /** The words it may be, where its label names them: {@code a4|letter}. */
    private static List<String> choices(OptionSpec option) {
        return option.paramLabel().contains("|") ? List.of(option.paramLabel().split("\\|")) : List.of();
    }

    private static String header(CommandSpec command, HelpingWords words) {
        return CommandWords.header(command.name(), words);
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }

    private static String lines(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }
}
