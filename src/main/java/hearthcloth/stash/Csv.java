package hearthcloth.stash;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Text in rows and cells, after RFC 4180 (docs/sources.md#csv): quoted cells may hold the separator, line breaks and
 * doubled quotes. This reads a little more than the RFC allows: cells separated by comma, semicolon or tab, whichever
 * the first line uses most; any line ending; a quote inside a cell that does not begin with one stands for itself,
 * since makers write 6 1/2" for inches. Blank lines are skipped and cells are stripped.
 */
public final class Csv {

    /**
     * One row; a quote that was put before a formula is still there.
     *
     * @param line where it begins in the file, from 1
     */
    public record Row(int line, List<String> cells) {}

    private final String text;
    private final char separator;
    private final List<Problem> problems;
    private int at;
    private int line = 1;

    private Csv(String text, char separator, List<Problem> problems) {
        this.text = text;
        this.separator = separator;
        this.problems = problems;
    }

    /**
     * The rows of {@code text}, at most {@code most}.
     *
     * @param problems receives the faults of the file's form
     */
    public static List<Row> rows(String text, int most, List<Problem> problems) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        Csv csv = new Csv(plain, separator(plain), problems);
        List<Row> rows = new ArrayList<>();
        while (csv.at < plain.length() && rows.size() < most) {
            Row row = csv.row();
            if (row.cells().stream().anyMatch(cell -> !cell.isEmpty())) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static char separator(String text) {
        String first = Stream.of(text.split("\r\n?|\n", -1))
                .filter(line -> !line.isBlank())
                .findFirst()
                .orElse("");
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            if (count(first, candidate) > count(first, best)) {
                best = candidate;
            }
        }
        return best;
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }

    private Row row() {
        int begins = line;
        List<String> cells = new ArrayList<>();
        cells.add(cell());
        while (at < text.length() && text.charAt(at) == separator) {
            at++;
            cells.add(cell());
        }
        endLine();
        return new Row(begins, cells);
    }

    private String cell() {
        int start = at;
        while (start < text.length() && text.charAt(start) == ' ') {
            start++;
        }
        if (start < text.length() && text.charAt(start) == '"') {
            at = start + 1;
            return quoted();
        }
        start = at;
        skipToEnd();
        return text.substring(start, at).strip();
    }

    private String quoted() {
        int opened = line;
        StringBuilder cell = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                cell.append('"');
                at += 2;
            } else if (c == '"') {
                at++;
                afterQuote();
                return cell.toString().strip();
            } else if (isBreak(c)) {
                endLine();
                cell.append('\n');
            } else {
                cell.append(c);
                at++;
            }
        }
        problems.add(new Problem(opened, "", RefusingSentences.fileQuoteOpen()));
        return cell.toString().strip();
    }

    private void afterQuote() {
        int from = at;
        skipToEnd();
        if (!text.substring(from, at).isBlank()) {
            problems.add(
                    new Problem(line, "", RefusingSentences.fileAfterQuote(Argument.text(text.substring(from, at)))));
        }
    }

    private void skipToEnd() {
        while (at < text.length() && text.charAt(at) != separator && !isBreak(text.charAt(at))) {
            at++;
        }
    }

    private void endLine() {
        if (at < text.length()) {
            boolean pair = text.startsWith("\r\n", at);
            at += pair ? 2 : 1;
            line++;
        }
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
