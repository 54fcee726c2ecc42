package hearthcloth.cli.help;

import hearthcloth.words.Language;
import hearthcloth.words.helping.HelpingWords;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The help of one command on a terminal of eighty columns. */
public final class HelpPage {

    private static final int WIDTH = 80;

    /** Where the words of an option begin; a longer name has a line of its own. */
    private static final int WORDS_AT = 27;

    private static final Pattern TYPED = Pattern.compile("\"[^\"]{1,40}\"");

    private static final Pattern MARK = Pattern.compile(" (?=[:;?!»…])|(?<=«) ");

    /** A blank at which no line ends. */
    private static final char BOUND = '\u00a0';

    private final CommandSpec command;
    private final HelpingWords w;
    private final OptionWords options;
    private final StringBuilder page = new StringBuilder();

    private HelpPage(CommandSpec command, Language language) {
        this.command = command;
        this.w = HelpingWords.in(language);
        this.options = new OptionWords(w);
    }

    /** The help of a command in a language. */
    public static String of(CommandSpec command, Language language) {
        HelpPage made = new HelpPage(command, language);
        made.write(CommandWords.of(command.name(), made.w));
        return made.page.toString();
    }

    /** What is put after an option, or in a place, in a language. */
    public static String label(ArgSpec arg, Language language) {
        return new OptionWords(HelpingWords.in(language)).label(arg);
    }

    private void write(CommandWords words) {
        prose("", words.header());
        line("");
        usage();
        if (!words.about().isEmpty()) {
            line("");
            prose("", words.about());
        }
        line("");
        line(words.options());
        shown(command.positionalParameters()).forEach(this::parameter);
        shown(command.options()).forEach(this::option);
        commands();
        words.more().forEach(this::block);
    }

    private static <T extends ArgSpec> List<T> shown(List<T> all) {
        return all.stream().filter(arg -> !arg.hidden()).toList();
    }

    /** What has to be typed; what may be left out is told below. */
    private void usage() {
        Stream<String> places = shown(command.positionalParameters()).stream()
                .map(place -> place.required() ? options.label(place) : "[" + options.label(place) + "]");
        Stream<String> needed = shown(command.options()).stream()
                .filter(OptionSpec::required)
                .map(option -> option.longestName() + "=" + options.label(option));
        Stream<String> rest = Stream.of(w.optional());
        Stream<String> own = command.parent() == null ? Stream.of(w.command()) : Stream.empty();
        String typed =
                Stream.of(places, needed, rest, own).flatMap(parts -> parts).collect(Collectors.joining(" "));
        String start = w.usage() + " " + command.qualifiedName() + " ";
        hanging(start, Columns.of(start), typed);
    }

    private void parameter(PositionalParamSpec place) {
        named("      " + options.label(place), options.of(place));
    }

    private void option(OptionSpec option) {
        String value = option.arity().max() == 0 ? "" : "=" + options.label(option);
        String brief = option.shortestName().startsWith("--") ? "      " : "  " + option.shortestName() + ", ";
        named(brief + option.longestName() + value, options.of(option));
    }

    private void commands() {
        List<CommandSpec> all = Completion.commands(command.commandLine());
        if (!all.isEmpty()) {
            line("");
            line(w.heading("commands"));
            all.forEach(
                    each -> hanging(Columns.padded("  " + each.name(), 13), 13, CommandWords.header(each.name(), w)));
        }
    }

    private void named(String name, String words) {
        if (Columns.of(name) + 2 > WORDS_AT) {
            line(name);
            hanging(" ".repeat(WORDS_AT), WORDS_AT, words);
        } else {
            hanging(Columns.padded(name, WORDS_AT), WORDS_AT, words);
        }
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            line("");
            line(heading.words());
        } else if (block instanceof Block.Prose prose) {
            prose("  ", prose.words());
        } else if (block instanceof Block.Line line) {
            line("    " + line.written());
        } else if (block instanceof Block.Meaning meaning) {
            hanging("  " + meaning.what() + "   ", 6, meaning.words());
        } else if (block instanceof Block.Example example) {
            example(example);
        }
    }

    /** A command line that is too long goes on after a stroke, as a shell reads it. */
    private void example(Block.Example example) {
        StringBuilder line = new StringBuilder("  " + example.typed().get(0));
        for (String part : example.typed().subList(1, example.typed().size())) {
            if (Columns.of(line + " " + part + " \\") > WIDTH) {
                line(line + " \\");
                line = new StringBuilder("     ");
            }
            line.append(' ').append(part);
        }
        line(line.toString());
        if (!example.says().isEmpty()) {
            prose("      ", example.says());
        }
    }

    private void prose(String indent, String words) {
        Columns.lines(bound(words), WIDTH - Columns.of(indent)).forEach(each -> line(indent + each));
    }

    /** Words after a beginning, their further lines below their first. */
    private void hanging(String beginning, int column, String words) {
        String before = beginning;
        for (String each : Columns.lines(bound(words), WIDTH - column)) {
            line(before + each);
            before = " ".repeat(column);
        }
    }

    /** What is typed as it stands is not parted, nor a mark from the word it follows at a blank, as in French. */
    private static String bound(String words) {
        String marked = MARK.matcher(words).replaceAll(String.valueOf(BOUND));
        return TYPED.matcher(marked).replaceAll(typed -> typed.group().replace(' ', BOUND));
    }

    private void line(String words) {
        page.append(words.replace(BOUND, ' ').stripTrailing()).append(System.lineSeparator());
    }
}
