package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker reads is plain English, by docs/words.md: its words, short sentences, easy reading. */
class PlainWordsTest {

    private static final Path PAGE = Path.of("docs", "words.md");
    private static final Path GUIDES = Path.of("src", "test", "resources", "golden", "guide");
    private static final int LONGEST = 25;
    private static final double EASIEST_ALLOWED = 70;

    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([^|]+) \\| ([^|]+) \\| [^|]+ \\|$");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$|<%--.*?--%>");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern TAG = Pattern.compile("(?s)<[^>]*>|\\$\\{[^}]*}|(?m)^\\s*(?:@import|@param|!\\{).*$");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+(?=[A-Z0-9])");
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z'-]*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    /** What is not said, in small letters. */
    private static List<String> avoided() throws IOException {
        List<String> phrases = ROW.matcher(Files.readString(PAGE))
                .results()
                .skip(1)
                .flatMap(row -> Arrays.stream(row.group(2).split(", ")))
                .map(phrase -> phrase.toLowerCase(Locale.ROOT))
                .toList();
        assertThat(phrases).hasSizeGreaterThan(30);
        return phrases;
    }

    private static List<Path> files(String root, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of(root))) {
            return all.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    private static String read(Path file) {
        try {
            return COMMENT.matcher(Files.readString(file)).replaceAll(" ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What stands between quotes in a class. */
    private static Stream<String> literals(Path file) {
        return LITERAL.matcher(read(file)).results().map(literal -> literal.group(1));
    }

    private static void isPlain(Path file, String text, List<String> avoided) {
        String small = text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        for (String phrase : avoided) {
            assertThat(Pattern.compile("\\b" + Pattern.quote(phrase) + "\\b")
                            .matcher(small)
                            .find())
                    .as("%s says \"%s\"; docs/words.md says what to say: %s", file, phrase, text.strip())
                    .isFalse();
        }
    }

    @Test
    void nothing_says_what_the_page_of_words_avoids() throws IOException {
        List<String> avoided = avoided();
        for (Path file : files("src/main/java", ".java")) {
            literals(file).forEach(text -> isPlain(file, text, avoided));
        }
        for (Path file : files("src/main/jte", ".jte")) {
            isPlain(file, TAG.matcher(read(file)).replaceAll(" "), avoided);
        }
    }

    /** Each line of a guide is a sentence or several; a number or a sign before it is not part of it. */
    private static List<String> sentences(String guide) {
        List<String> sentences = new ArrayList<>();
        for (String line : guide.split("\n", -1)) {
            String bare = line.strip().replaceFirst("^(?:[-=!~]|\\d+\\.|Step \\d+\\.)\\s+", "");
            if (!bare.isEmpty() && !bare.startsWith("==")) {
                sentences.addAll(List.of(SENTENCE.split(bare)));
            }
        }
        return sentences;
    }

    @ParameterizedTest
    @ValueSource(strings = {"inches.txt", "metric.txt"})
    void no_sentence_of_a_guide_is_long(String guide) throws IOException {
        assertThat(sentences(Files.readString(GUIDES.resolve(guide))))
                .hasSizeGreaterThan(100)
                .allSatisfy(sentence ->
                        assertThat(sentence.split("\\s+").length).as(sentence).isLessThanOrEqualTo(LONGEST));
    }

    @ParameterizedTest
    @ValueSource(strings = {"inches.txt", "metric.txt"})
    void the_steps_of_a_guide_read_easily(String guide) throws IOException {
        List<String> sentences = sentences(Files.readString(GUIDES.resolve(guide))).stream()
                .filter(sentence -> sentence.split("\\s+").length > 4)
                .toList();

        double ease = ease(sentences);

        System.out.printf(Locale.ROOT, "Reading ease of %s: %.0f.%n", guide, ease);
        assertThat(ease).isGreaterThanOrEqualTo(EASIEST_ALLOWED);
    }

    @Test
    void reading_ease_is_as_the_formula_says() {
        // Six words of one syllable in one sentence: 206.835 - 1.015 * 6 - 84.6.
        assertThat(ease(List.of("The cat sat on the mat."))).isEqualTo(116.145, offset(1e-9));
        assertThat(ease(List.of("Considerable interoperability necessitates documentation.")))
                .isNegative();
    }

    /** Flesch's formula; docs/words.md names it. */
    private static double ease(List<String> sentences) {
        List<String> words = sentences.stream()
                .flatMap(sentence -> WORD.matcher(sentence).results().map(MatchResult::group))
                .toList();
        double syllables = words.stream().mapToLong(PlainWordsTest::syllables).sum();
        return 206.835 - 1.015 * words.size() / sentences.size() - 84.6 * syllables / words.size();
    }

    private static long syllables(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        String heard =
                small.length() > 3 ? small.replaceFirst("(?:[^laeiouy]es|[^aeioutdy]ed|[^laeiouy]e)$", "") : small;
        return Math.max(1, VOWELS.matcher(heard).results().count());
    }
}
