package hearthcloth.cli.help;

import hearthcloth.words.Language;
import hearthcloth.words.helping.HelpingWords;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page, section 1, made from the commands' own help (roff, macros of man). */
public final class ManPage {

    private final StringBuilder page = new StringBuilder();
    private final HelpingWords w;
    private final OptionWords options;

    private ManPage(Language language) {
        this.w = HelpingWords.in(language);
        this.options = new OptionWords(w);
    }

    /** The page in a language; its sections are called as man calls them everywhere. */
    public static String of(CommandLine program, Language language) {
        ManPage made = new ManPage(language);
        made.write(program);
        return made.page.toString();
    }

    private void write(CommandLine program) {
        CommandSpec root = program.getCommandSpec();
        CommandWords words = CommandWords.of(root.name(), w);
        String name = root.name();
        page.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1\n");
        section("NAME");
        line(name + " \\- " + text(words.header()));
        section("SYNOPSIS");
        line(".B " + name);
        line(text(w.optional()));
        Completion.commands(program).forEach(command -> {
            line(".br\n.B " + name + " " + command.name());
            line(places(command) + text(w.optional()));
        });
        section("DESCRIPTION");
        sentence(words.about());
        section("OPTIONS");
        Completion.options(program).forEach(this::option);
        Completion.commands(program).forEach(this::command);
        section("EXIT STATUS");
        words.more().stream()
                .filter(Block.Meaning.class::isInstance)
                .map(Block.Meaning.class::cast)
                .forEach(code -> item(code.what(), code.words()));
        surroundings();
        section("EXAMPLES");
        more(words.more().stream()
                .filter(block -> block instanceof Block.Example || block instanceof Block.Prose)
                .toList());
    }

    private void surroundings() {
        section("ENVIRONMENT");
        item("HEARTHCLOTH_DATA, HEARTHCLOTH_PORT, HEARTHCLOTH_LAN, HEARTHCLOTH_NO_BROWSER", w.manualSame());
        item("HEARTHCLOTH_SETTINGS", w.manualSettings());
        section("FILES");
        item("$XDG_DATA_HOME/hearthcloth/workroom.db, ~/.local/share/hearthcloth/workroom.db", w.manualFiles());
    }

    private void command(CommandSpec command) {
        section(command.name().toUpperCase(Locale.ROOT));
        CommandWords words = CommandWords.of(command.name(), w);
        sentence(words.header());
        sentence(words.about());
        command.positionalParameters().stream()
                .filter(place -> !place.hidden())
                .forEach(place -> item(options.label(place), options.of(place)));
        Completion.options(command.commandLine()).forEach(this::option);
        more(words.more());
    }

    private String places(CommandSpec command) {
        return command.positionalParameters().stream()
                .filter(place -> !place.hidden())
                .map(place -> text(options.label(place)) + " ")
                .collect(Collectors.joining());
    }

    private void option(OptionSpec option) {
        String names = String.join(", ", option.names());
        item(names + (Completion.takesValue(option) ? " " + options.label(option) : ""), options.of(option));
    }

    private void more(List<Block> blocks) {
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                line(".PP\n" + text(heading.words()));
            } else if (block instanceof Block.Prose prose) {
                line(".PP\n" + text(prose.words()));
            } else if (block instanceof Block.Line written) {
                literal(written.written());
            } else if (block instanceof Block.Meaning meaning) {
                item(meaning.what(), meaning.words());
            } else if (block instanceof Block.Example example) {
                literal(String.join(" ", example.typed()));
                sentence(example.says());
            }
        }
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

    /** A line as it stands. */
    private void literal(String written) {
        line(".PP\n.nf");
        line("  " + text(written));
        line(".fi");
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    /** Nothing in it is taken for a word of roff. */
    private static String text(String written) {
        String plain = written.replace("\\", "\\e").replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
