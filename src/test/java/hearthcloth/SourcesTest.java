package hearthcloth;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Holds docs/sources.md and the code together: every fact that is cited stands on the page, and every fact on the page is
 * cited or marked as background. Also holds that no message names a maker of telephones, needles, machines or the like.
 */
class SourcesTest {

    private static final Path PAGE = Path.of("docs", "sources.md");
    private static final List<Path> SOURCES = List.of(Path.of("src"), Path.of("benchmarks", "src"));
    private static final Set<String> TEXT = Set.of("java", "jte", "js", "css", "csv", "md", "sql", "properties", "txt");

    /** A row of the page: its anchor, and everything else that stands in it. */
    private static final Pattern ROW = Pattern.compile("(?m)^\\|.*?<a id=\"([a-z0-9-]+)\"></a>(.*)$");

    /** The page's name and the anchors after it, as in "sources.md#one, #two". */
    private static final Pattern CITED = Pattern.compile("sources\\.md(#[a-z0-9-]+(?:(?:, | and )#[a-z0-9-]+)*)");

    private static final Pattern ANCHOR = Pattern.compile("#([a-z0-9-]+)");

    /** A class in the last cell of a row. */
    private static final Pattern CLASS = Pattern.compile("`([A-Z]\\w*)`");

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    /** First halves of SHA-256 of names that no message may hold, in small letters; made by {@link #hash}. */
    private static final Set<String> NAMES = Set.of(
            "059e8127089a",
            "0c44be9f7948",
            "0d588f1ac0c0",
            "16e5f60f207a",
            "1bea8535362d",
            "2069868f15ae",
            "2166b51fcc4e",
            "241c1e30ed88",
            "2ab6d53e717a",
            "30abdf0985e2",
            "3f7fb6510b81",
            "4236ab3d41f4",
            "4aaeb4f2c1ba",
            "4bb9d37aff53",
            "50ff4435fa01",
            "587d392b6c76",
            "5ede56738376",
            "6772de9ce6c5",
            "6f7dd5821298",
            "70603d41740a",
            "75348dc2f26c",
            "7915f1245732",
            "7a5356659c5b",
            "9390ef32addf",
            "968e2d5b0868",
            "997f8bf7f7b4",
            "9e7f3f4a23d4",
            "9fbf261b62c1",
            "b55dccb9faeb",
            "b81c8201acfc",
            "bbdefa2950f4",
            "c26cce02ba4e",
            "c608c4787821",
            "c98fa700e113",
            "d320d37dd358",
            "d3aeb05498c2",
            "d7c3b9e27a20",
            "d8e60ebbbb2b",
            "db94814334e8",
            "de0ba1b76669",
            "dfbf85cc71c7",
            "e7781eec0130",
            "ec8202b6f9fb",
            "f60ed56a9c82",
            "faba1e00af8e");

    @Test
    void what_is_cited_stands_on_the_page() throws IOException {
        Set<String> known = rows().keySet();
        List<String> unknown = new ArrayList<>();
        for (Path file : files()) {
            cited(read(file))
                    .filter(anchor -> !known.contains(anchor))
                    .forEach(anchor -> unknown.add(anchor + " in " + file));
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void what_stands_on_the_page_is_cited_or_background() throws IOException {
        Set<String> cited = new TreeSet<>();
        for (Path file : files()) {
            cited(read(file)).forEach(cited::add);
        }
        Set<String> left = new TreeSet<>();
        rows().forEach((anchor, row) -> {
            if (row.strip().endsWith("background |") == cited.contains(anchor)) {
                left.add(anchor);
            }
        });
        assertThat(left).as("neither cited nor background, or both").isEmpty();
    }

    @Test
    void the_page_has_no_anchor_twice_and_links_only_to_its_own() throws IOException {
        String page = read(PAGE);
        List<String> anchors = Pattern.compile("<a id=\"([^\"]*)\"")
                .matcher(page)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(anchors).doesNotHaveDuplicates().hasSameSizeAs(rows().keySet());
        assertThat(Pattern.compile("\\]\\(#([^)]*)\\)").matcher(page).results().map(m -> m.group(1)))
                .isSubsetOf(anchors);
    }

    @Test
    void each_row_names_the_classes_that_cite_it_and_no_others() throws IOException {
        Map<String, Set<String>> citing = new TreeMap<>();
        for (Path file : files()) {
            String name = file.getFileName().toString().replaceFirst("\\.\\w+$", "");
            if (!name.equals("package-info")) {
                cited(read(file))
                        .forEach(anchor -> citing.computeIfAbsent(anchor, a -> new TreeSet<>())
                                .add(name));
            }
        }
        Map<String, Set<String>> named = new TreeMap<>();
        rows().forEach((anchor, row) -> {
            String last = row.substring(row.lastIndexOf('|', row.length() - 2));
            Set<String> classes =
                    CLASS.matcher(last).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
            if (!classes.isEmpty()) {
                named.put(anchor, classes);
            }
        });
        assertThat(named).isEqualTo(citing);
    }

    @Test
    void the_glossary_says_each_word_once_of_classes_that_exist() throws IOException {
        String page = read(Path.of("docs", "glossary.md"));
        assertThat(Pattern.compile("<a id=\"([^\"]*)\"").matcher(page).results().map(m -> m.group(1)))
                .doesNotHaveDuplicates()
                .isNotEmpty();
        Set<String> there = files().stream()
                .map(file -> file.getFileName().toString().replaceFirst("\\.java$", ""))
                .collect(Collectors.toSet());
        assertThat(CLASS.matcher(page).results().map(m -> m.group(1))).isSubsetOf(there);
    }

    /** A book that is not here cannot be looked up: the page, or the publication itself, is cited instead. */
    @Test
    void no_file_cites_a_book_that_the_project_lacks() throws IOException {
        Pattern book = Pattern.compile("the[\\s_*]+hand" + "book|hand" + "book['’]s", Pattern.CASE_INSENSITIVE);
        List<Path> found = new ArrayList<>();
        for (Path file : files()) {
            if (book.matcher(read(file)).find()) {
                found.add(file);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void no_message_names_a_maker_of_things() throws IOException {
        List<String> named = new ArrayList<>();
        for (Path file : files()) {
            if (file.startsWith(Path.of("src", "main"))) {
                WORD.matcher(read(file))
                        .results()
                        .map(MatchResult::group)
                        .filter(word -> NAMES.contains(hash(word)))
                        .forEach(word -> named.add(word + " in " + file));
            }
        }
        assertThat(named).isEmpty();
    }

    private static String hash(String word) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(word.toLowerCase(Locale.ROOT).getBytes(UTF_8));
            return HexFormat.of().formatHex(digest, 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, String> rows() throws IOException {
        return ROW.matcher(read(PAGE))
                .results()
                .collect(Collectors.toMap(m -> m.group(1), m -> m.group(2), (one, other) -> one, TreeMap::new));
    }

    private static Stream<String> cited(String text) {
        String flowing = text.replaceAll("\\s*\\n\\s*(?:\\*|//)?\\s*", " ");
        return CITED.matcher(flowing)
                .results()
                .flatMap(m -> ANCHOR.matcher(m.group(1)).results())
                .map(m -> m.group(1));
    }

    private static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path source : SOURCES) {
            try (Stream<Path> walk = Files.walk(source)) {
                walk.filter(Files::isRegularFile)
                        .filter(file -> TEXT.contains(ending(file)))
                        .filter(file -> !file.endsWith(Path.of("SourcesTest.java")))
                        .filter(file -> !file.toString().contains(".min."))
                        .sorted()
                        .forEach(files::add);
            }
        }
        return files;
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, UTF_8);
    }
}
