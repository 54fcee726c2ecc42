package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cli.option.GiftOptions;
import hearthcloth.cli.option.LanguageOption;
import java.lang.reflect.Field;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Option;

/** What a command takes, its help tells: options of its own and those that several commands share. */
class HelpTest {

    static Stream<Arguments> commands() {
        return Stream.of(
                Arguments.of("kits", KitsCommand.class),
                Arguments.of("idea", IdeaCommand.class),
                Arguments.of("plan", LovedPicture.class),
                Arguments.of("plan", GiftOptions.class),
                Arguments.of("plan", LanguageOption.class),
                Arguments.of("kits", LanguageOption.class));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("commands")
    void every_option_stands_in_the_help_with_what_it_takes_and_a_sentence(String command, Class<?> declares) {
        String help = Typed.words(command, "--help").plain().out();
        List<Option> options = Stream.of(declares.getDeclaredFields())
                .map((Field field) -> field.getAnnotation(Option.class))
                .filter(option -> option != null && !option.hidden())
                .toList();

        assertThat(options).isNotEmpty().allSatisfy(option -> {
            assertThat(help).contains(option.names());
            assertThat(help).contains(option.paramLabel());
            assertThat(String.join(" ", option.description())).isNotBlank();
        });
    }
}
