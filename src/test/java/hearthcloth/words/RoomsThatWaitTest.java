package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Bare sentences in classes outside the pages: string literals with two words after each other, the second in small letters, that
 * are no comment. A room that is not in the list has none; a room that waits has no more than it says; when it has fewer, the
 * number is made smaller here, and when it has none the room goes from the list: it only shrinks. What only a programmer reads
 * (the message of a broken invariant: an illegal argument or state, a fault of input and output or of a database that nothing
 * shows) is counted too where its line does not say so. Not sentences, and so not counted: marks of a drawing or a page,
 * statements to a database, the measures and families of letters, the names of published sources, which are said as they are in
 * every language, and the words that classes of {@link #READ} understand when a maker types them.
 */
class RoomsThatWaitTest {

    private static final Path MAIN = Path.of("src", "main", "java", "hearthcloth");

    private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");

    private static final Pattern SENTENCE = Pattern.compile("\\b[a-zA-Z]{2,} [a-z]{2,}\\b");

    private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?<!:)//[^\\n]*");

    private static final Pattern PROGRAMMER = Pattern.compile(
            "(?s)new (?:IllegalArgument|IllegalState|UncheckedIO|IO|SQL|Assertion)\\w*\\(.*?\\);|require\\w*\\(.*?\\);");

    /** Measures of letters: short figures with spaces between. */
    private static final Pattern FIGURES = Pattern.compile("\"(?:[0-9a-z]{1,3} )+[0-9a-z]{0,3}\"");

    /** Families of letters, as a drawing names them. */
    private static final Pattern FAMILIES = Pattern.compile("\\bhearthcloth (?:ko|ja)\\b");

    /** Classes that name published sources. */
    private static final Set<String> SOURCES = Set.of("wrap/PublishedRule");

    private static final Pattern MARKS = Pattern.compile("<[a-z/]|[a-z]=\\\\\"|\\\\\">");

    /** What a database reads; looked for in the room of the store alone. */
    private static final Pattern STATEMENT = Pattern.compile(
            "\\b(?:select|insert into|update [a-z]+ set|delete from|where|order by|on conflict|vacuum into|create role|create schema"
                    + "|alter table|alter role|alter schema|grant usage|set role|inherit false|owner to)\\b"
                    + "|(?:[=,(] ?|>= |<= ):[a-z]|values \\(|^\" ?(?:and|join|from|washed,|length,|waits) ");

    /** Classes whose words are read, never said: what a maker types in a line, a wish or a rule is English or has a tongue. */
    private static final Set<String> READ = Set.of(
            "stash/SpokenNumbers",
            "stash/SpokenSize",
            "stash/SpokenWords",
            "stash/StashColumn",
            "stash/tongue/LatinLines",
            "measure/Unit",
            "colour/ColourName",
            "colour/tongue/LatinWords",
            "wrap/GiftReader",
            "wrap/Tie",
            "plan/model/Scheme",
            "plan/model/Contrast",
            "plan/model/Patchwork",
            "cloth/layout/Order",
            "cloth/making/SeamKind",
            "guideline/HearthRule",
            "guideline/BarsRule",
            "wish/PatchworkReader");

    /** Bare sentences in each room that waits. Pages are held by {@code BareTemplateTest}; catalogues hold words. */
    private static final Map<String, Integer> WAITING = Map.of("idea", 2);

    private static int bare(Path file) {
        String named = MAIN.relativize(file).toString().replace('\\', '/').replace(".java", "");
        return READ.contains(named) || SOURCES.contains(named)
                ? 0
                : (int) sentences(read(file))
                        .filter(found -> !named.startsWith("store/")
                                || !STATEMENT.matcher(found).find())
                        .count();
    }

    static int bare(String source) {
        return (int) sentences(source).count();
    }

    private static Stream<String> sentences(String source) {
        String plain =
                PROGRAMMER.matcher(COMMENT.matcher(source).replaceAll("")).replaceAll("");
        return LITERAL.matcher(plain)
                .results()
                .map(MatchResult::group)
                .filter(found -> SENTENCE.matcher(found).find())
                .filter(found -> !FIGURES.matcher(found).matches())
                .filter(found -> !FAMILIES.matcher(found).find())
                .filter(found -> !MARKS.matcher(found).find());
    }

    private static String room(Path file) {
        Path folder = MAIN.relativize(file.getParent());
        return folder.toString().replace('\\', '/');
    }

    private static Map<String, Integer> counted() throws IOException {
        Map<String, Integer> counted = new TreeMap<>();
        try (Stream<Path> files = Files.walk(MAIN)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !room(file).matches("web(/.*)?|words(/.*)?"))
                    .forEach(file -> counted.merge(room(file), bare(file), Integer::sum));
        }
        counted.values().removeIf(count -> count == 0);
        return counted;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void only_the_rooms_that_wait_have_bare_sentences_and_no_more_than_they_had() throws IOException {
        Map<String, Integer> counted = counted();
        assertThat(counted.keySet())
                .as("a room that has none left waits no more")
                .isEqualTo(WAITING.keySet());
        counted.forEach((room, count) -> assertThat(count).as(room).isLessThanOrEqualTo(WAITING.get(room)));
    }

    @Test
    void a_sentence_is_counted_and_a_word_a_comment_and_a_programmers_error_are_not() {
        assertThat(bare("say(\"Press the seam.\"); // \"press the seam\"")).isEqualTo(1);
        assertThat(bare("say(\"It is \\\"so wide\\\"\" + wide);")).isEqualTo(1);
        assertThat(bare("new IllegalStateException(\"no such thing\" + one);")).isZero();
        assertThat(bare("text.equals(\"bottom\");")).isZero();
        assertThat(bare("svg.append(\"<rect width=\\\"4\\\"\"); letters(\"a1 2b 30 0\");"))
                .isZero();
        assertThat(STATEMENT.matcher("\"select id from cloth\"").find()).isTrue();
        assertThat(STATEMENT.matcher("\"The disk is full.\"").find()).isFalse();
    }
}
