package hearthcloth.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The manual page, section 1, made from the commands' own help (roff, macros of man). */
final class ManPage {

    private final StringBuilder page = new StringBuilder();

    private ManPage() {}

    static String of(CommandLine program) {
        ManPage made = new ManPage();
        made.write(program);
        return made.page.toString();
    }

    private void write(CommandLine program) {
        CommandSpec root = program.getCommandSpec();
        UsageMessageSpec usage = root.usageMessage();
        String name = root.name();
        page.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1\n");
        section("NAME");
        line(name + " \\- " + text(Completion.header(root)));
        section("SYNOPSIS");
        line(".B " + name);
        line("[options]");
        Completion.commands(program).forEach(command -> {
            line(".br\n.B " + name + " " + command.name());
            line(parameters(command) + "[options]");
        });
        section("DESCRIPTION");
        Stream.of(usage.description()).forEach(this::sentence);
        section("OPTIONS");
        Completion.options(program).forEach(this::option);
        Completion.commands(program).forEach(this::command);
        section("EXIT STATUS");
        usage.exitCodeList().forEach(this::item);
        surroundings();
        section("EXAMPLES");
        literal(usage.footer());
    }

    private void surroundings() {
        section("ENVIRONMENT");
        item(
                "HEARTHCLOTH_DATA, HEARTHCLOTH_PORT, HEARTHCLOTH_LAN, HEARTHCLOTH_NO_BROWSER",
                "What to use where the option of that name is not typed.");
        item("HEARTHCLOTH_SETTINGS", "A file of lines such as HEARTHCLOTH_PORT=4732, used where neither is given.");
        section("FILES");
        item(
                "$XDG_DATA_HOME/hearthcloth/workroom.db, ~/.local/share/hearthcloth/workroom.db",
                "Your work; beside it, in workroom.db.copies, its safety copies.");
    }

    private void command(CommandSpec command) {
        section(command.name().toUpperCase(Locale.ROOT));
        UsageMessageSpec usage = command.usageMessage();
        sentence(Completion.header(command));
        Stream.of(usage.description()).forEach(this::sentence);
        command.positionalParameters().stream()
                .filter(parameter -> !parameter.hidden())
                .forEach(parameter -> item(parameter.paramLabel(), String.join(" ", parameter.description())));
        Completion.options(command.commandLine()).forEach(this::option);
        literal(usage.footer());
    }

    private static String parameters(CommandSpec command) {
        return command.positionalParameters().stream()
                .filter(parameter -> !parameter.hidden())
                .map(PositionalParamSpec::paramLabel)
                .map(label -> text(label) + " ")
                .collect(Collectors.joining());
    }

    private void option(OptionSpec option) {
        String names = String.join(", ", option.names());
        item(names + (Completion.takesValue(option) ? " " + option.paramLabel() : ""), Completion.plain(option));
    }

    private void section(String title) {
        line(".SH " + title);
    }

    private void item(String what, String words) {
        line(".TP\n.B " + text(what));
        line(text(words));
    }

    private void sentence(String words) {
        if (!words.isBlank()) {
            line(text(words));
        }
    }

    /** Lines as they stand, in letters of one width. */
    private void literal(String[] lines) {
        if (lines.length > 0) {
            line(".PP\n.nf");
            Stream.of(lines)
                    .map(line -> text(line.replace("./hearthcloth", "hearthcloth")))
                    .forEach(this::line);
            line(".fi");
        }
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    /** Nothing in it is taken for a word of roff. */
    private static String text(String written) {
        String plain = written.replace("%n", " ")
                .replace("%%", "%")
                .replace("\\", "\\e")
                .replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
