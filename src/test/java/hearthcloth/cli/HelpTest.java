package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import hearthcloth.cli.help.Completion;
import hearthcloth.cli.help.HelpPage;
import hearthcloth.words.Language;
import hearthcloth.words.helping.HelpingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What a command takes, its help tells, in each language, on a terminal of eighty columns. */
class HelpTest {

    private static final Path WORDS = Path.of("src/main/words/helping");
    private static final Path CODE = Path.of("src/main/java/hearthcloth/cli/help/OptionWords.java");

    private final CommandLine program = new Hearthcloth(new Called().shell, (asked, shell) -> 0).line();

    private List<CommandSpec> commands() {
        return Stream.concat(Stream.of(program), program.getSubcommands().values().stream())
                .map(CommandLine::getCommandSpec)
                .toList();
    }

    private static List<ArgSpec> all(CommandSpec command) {
        return Stream.concat(command.options().stream(), command.positionalParameters().stream())
                .map(ArgSpec.class::cast)
                .toList();
    }

    private static Properties catalogue(Language language) throws IOException {
        Properties all = new Properties();
        try (var reader = Files.newBufferedReader(WORDS.resolve(language.tag() + ".properties"))) {
            all.load(reader);
        }
        return all;
    }

    private static Set<String> found(String pattern, String in) {
        return Pattern.compile(pattern)
                .matcher(in)
                .results()
                .map((MatchResult each) -> each.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** By Unicode's own table of East Asian widths. */
    private static int columns(String line) {
        return line.codePoints()
                .map(letter -> switch (UCharacter.getIntPropertyValue(letter, UProperty.EAST_ASIAN_WIDTH)) {
                    case UCharacter.EastAsianWidth.WIDE, UCharacter.EastAsianWidth.FULLWIDTH -> 2;
                    default -> 1;
                })
                .sum();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void every_command_option_and_place_is_told_with_what_it_takes_in_eighty_columns(Language language) {
        for (CommandSpec command : commands()) {
            String page = HelpPage.of(command, language);
            assertThat(all(command)).isNotEmpty().allSatisfy(arg -> {
                String label = HelpPage.label(arg, language);
                assertThat(label).as(command.name() + " " + arg.paramLabel()).isNotBlank();
                if (arg instanceof OptionSpec option) {
                    assertThat(page)
                            .contains(option.longestName() + (option.arity().max() > 0 ? "=" + label : ""));
                } else {
                    assertThat(page).contains(label);
                }
            });
            assertThat(page.lines())
                    .allSatisfy(line -> assertThat(columns(line)).as(line).isLessThanOrEqualTo(80));
            assertThat(page).doesNotContainPattern("(?m)^ *[:;?!…»]").doesNotContain("{", "}", "%n", "null", "\u00a0");
        }
        for (CommandSpec command : Completion.commands(program)) {
            assertThat(HelpPage.of(program.getCommandSpec(), language)).contains("\n  " + command.name() + " ");
        }
    }

    /** What is said of an option that no command has serves nothing; each is looked for in its own command, or in any. */
    @Test
    void nothing_is_said_of_an_option_that_is_not_there() throws IOException {
        String code = Files.readString(CODE);
        Set<String> everywhere = commands().stream()
                .flatMap(command -> command.options().stream().map(OptionSpec::longestName))
                .collect(Collectors.toSet());
        int own = 0;
        for (String method : code.split("private @Nullable String ", -1)) {
            String name = method.substring(0, method.indexOf('('));
            Optional<CommandSpec> command = commands().stream()
                    .filter(each -> each.name().equals(name.equals("program") ? "hearthcloth" : name))
                    .findFirst();
            Set<String> there = command.map(each ->
                            each.options().stream().map(OptionSpec::longestName).collect(Collectors.toSet()))
                    .orElse(everywhere);
            assertThat(there).as(name).containsAll(found("case \"(--[a-z-]+)\"", method));
            own += command.isPresent() ? 1 : 0;
        }
        assertThat(own).isEqualTo(8);
    }

    @Test
    void every_label_in_the_catalogue_is_that_of_an_option() throws IOException {
        Set<String> used = commands().stream()
                .flatMap(command -> all(command).stream())
                .flatMap(arg -> found("([A-Z]{2,})", arg.paramLabel()).stream())
                .collect(Collectors.toSet());
        Set<String> known = found("([A-Z]{2,}) \\{", catalogue(Language.ENGLISH).getProperty("label", ""));
        assertThat(used).isEqualTo(known);
        assertThat(HelpingWords.in(Language.GERMAN).label("LENGTH")).isEqualTo("LÄNGE");
    }

    /** What stands in straight quotes is typed so in every language, and is not translated. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void what_is_typed_stands_in_every_language_as_it_is(Language language) throws IOException {
        Properties english = catalogue(Language.ENGLISH);
        Properties own = catalogue(language);
        for (String key : english.stringPropertyNames()) {
            assertThat(found("\"([^\"]+)\"", own.getProperty(key, "")))
                    .as(language + ", " + key)
                    .isEqualTo(found("\"([^\"]+)\"", english.getProperty(key, "")));
            assertThat(found("(--[a-z-]+)", own.getProperty(key, "")))
                    .as(language + ", " + key)
                    .isEqualTo(found("(--[a-z-]+)", english.getProperty(key, "")));
        }
    }

    @Test
    void the_examples_can_be_typed() {
        List<String> typed = commands().stream()
                .flatMap(command -> HelpPage.of(command, Language.ENGLISH)
                        .replaceAll(" \\\\\\R +", " ")
                        .lines())
                .filter(line -> line.startsWith("  hearthcloth ") && !line.contains(">"))
                .map(String::strip)
                .toList();
        assertThat(typed).hasSizeGreaterThan(20).allSatisfy(line -> {
            String[] words = found(line);
            assertThatCode(() -> program.parseArgs(Arrays.copyOfRange(words, 1, words.length)))
                    .as(line)
                    .doesNotThrowAnyException();
        });
    }

    /** Words as a shell parts them: by blanks, but not in quotes. */
    private static String[] found(String line) {
        List<String> words = new ArrayList<>();
        Pattern.compile("\"([^\"]*)\"|(\\S+)")
                .matcher(line)
                .results()
                .forEach(word -> words.add(word.group(1) == null ? word.group(2) : word.group(1)));
        return words.toArray(String[]::new);
    }

    @Test
    void help_says_what_is_usual_where_that_differs_from_command_to_command() {
        assertThat(Typed.words("plan", "--help").out().replaceAll("\\s+", " "))
                .contains("to teach by; usually \"full\".", "\"1min\"; usually \"2s\".");
        assertThat(Typed.words("kits", "--help").out().replaceAll("\\s+", " "))
                .contains("to teach by; usually \"class\".", "\"1min\"; usually \"10s\".");
        assertThat(Typed.words("--help").out().replaceAll("\\s+", " ")).contains("usually 4732.");
    }

    @Test
    void help_speaks_the_language_that_is_asked_for_wherever_it_stands() {
        for (String[] words : new String[][] {
            {"plan", "--help", "--language", "ko"},
            {"plan", "--language=ko", "--help"},
            {"help", "plan", "--language", "Korean"},
            {"help", "--language=ko-KR", "plan"}
        }) {
            Typed typed = Typed.words(words).plain();
            assertThat(typed.code()).isZero();
            assertThat(typed.out()).startsWith("천 목록으로 보자기를 계획합니다.");
        }
        assertThat(Typed.words("help", "--language", "fr").out())
                .isEqualTo(Typed.words("--language", "fr", "--help").out());
        assertThat(Typed.words("help").out()).isEqualTo(Typed.words("--help").out());
        assertThat(Typed.words("help", "help").out()).contains("Usage: hearthcloth help [COMMAND]");
        Typed.words("help", "tide").refused("There is no command tide; there are help, plan");
    }

    /** Each way of mistyping, as the library that reads the words tells it apart. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void what_is_mistyped_is_refused_in_the_language_too(Language language) {
        String in = "--language=" + language.tag();
        for (String[] words : new String[][] {
            {in, "tide"},
            {in, "--tide"},
            {in, "--lan=4"},
            {in, "--port", "1", "--port", "2"},
            {"plan", in},
            {"plan", in, "--size"},
            {"plan", in, "a.csv", "b.csv", "--out", "out"},
            {"size", in},
            {"help", in, "tide"},
            {in, "--port", "tide"},
            {in, "--data", "a\u0000b"}
        }) {
            Typed typed = Typed.words(words).plain();
            assertThat(typed.code()).isEqualTo(2);
            assertThat(typed.out()).isEmpty();
            if (language != Language.ENGLISH) {
                assertThat(typed.err())
                        .as(String.join(" ", words))
                        .doesNotContainPattern("\\b(?:there|missing|shows|should|value|choose|write)\\b");
            }
        }
    }
}
