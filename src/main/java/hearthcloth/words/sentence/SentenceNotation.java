package hearthcloth.words.sentence;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A sentence as one line of text, to be kept in files: its address and, in brackets, what is in it. Text is in quotes; {@code #3}
 * is a count, {@code L25400000 UP} a length in nanometres, {@code S…,…} a size, {@code W…,…} several lengths,
 * {@code E…,…} the edges of a solid, {@code A…} an
 * area in square millimetres, {@code D"2.5"} a number, {@code P"63"} per cent, {@code R AND(…)} a row and {@code C(…)} what
 * begins a sentence.
 */
public final class SentenceNotation {

    private final String text;
    private int at;

    private SentenceNotation(String text) {
        this.text = text;
    }

    public static String print(Sentence sentence) {
        return written(sentence);
    }

    /** The sentence; empty where the text is none, or one of a later version whose messages are not known here. */
    public static Optional<Sentence> parse(String text) {
        SentenceNotation notation = new SentenceNotation(text);
        try {
            Argument read = notation.argument();
            return notation.at == text.length() && read instanceof Sentence sentence
                    ? Optional.of(sentence)
                    : Optional.empty();
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static String written(Argument argument) {
        if (argument instanceof Sentence sentence) {
            return sentence.address() + all(sentence.with());
        }
        if (argument instanceof Argument.Text words) {
            return quoted(words.words());
        }
        if (argument instanceof Argument.Count count) {
            return "#" + count.number();
        }
        if (argument instanceof Argument.Decimal decimal) {
            return "D" + quoted(decimal.number());
        }
        if (argument instanceof Argument.Percent percent) {
            return "P" + quoted(percent.number());
        }
        if (argument instanceof Argument.Row row) {
            return "R " + row.joined() + all(row.parts());
        }
        return argument instanceof Argument.Capital capital ? "C" + all(List.of(capital.first())) : measure(argument);
    }

    private static String measure(Argument argument) {
        if (argument instanceof Argument.Measure one) {
            return "L" + one.length().nm() + " " + one.rounding();
        }
        if (argument instanceof Argument.Sides sides) {
            Size size = sides.size();
            return "S" + size.width().nm() + "," + size.height().nm() + " " + sides.rounding();
        }
        if (argument instanceof Argument.Area area) {
            return "A" + area.squareMm() + " " + area.rounding();
        }
        if (argument instanceof Argument.Edges edges) {
            return "E" + numbers(edges.lengths()) + " " + edges.rounding();
        }
        Argument.Widths widths = (Argument.Widths) argument;
        return "W" + numbers(widths.lengths()) + " " + widths.rounding();
    }

    private static String numbers(List<Length> lengths) {
        return lengths.stream().map(length -> Long.toString(length.nm())).collect(Collectors.joining(","));
    }

    private static String all(List<? extends Argument> arguments) {
        return arguments.stream().map(SentenceNotation::written).collect(Collectors.joining(";", "(", ")"));
    }

    private static String quoted(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private Argument argument() {
        char first = text.charAt(at);
        if (first == '"') {
            return new Argument.Text(quote());
        }
        if (first == '#') {
            at++;
            return new Argument.Count(Integer.parseInt(until(";)")));
        }
        if (first == 'D' || first == 'P') {
            at++;
            String number = quote();
            return first == 'D' ? new Argument.Decimal(number) : new Argument.Percent(number);
        }
        if (first == 'R' || first == 'C') {
            at += first == 'R' ? 2 : 1;
            String joined = until("(");
            List<Argument> parts = list();
            return first == 'C'
                    ? new Argument.Capital(parts.get(0))
                    : new Argument.Row(Argument.Joined.valueOf(joined), parts);
        }
        return "LSWAE".indexOf(first) >= 0 ? measure() : sentence();
    }

    private Sentence sentence() {
        String address = until("(");
        return Sentence.at(address, list()).orElseThrow(() -> new IllegalArgumentException(address));
    }

    private Argument measure() {
        char kind = text.charAt(at++);
        String numbers = until(" ");
        at++;
        Rounding rounding = Rounding.valueOf(until(";)"));
        if (kind == 'A') {
            return new Argument.Area(Double.parseDouble(numbers), rounding);
        }
        List<Length> lengths = new ArrayList<>();
        for (String number : numbers.split(",", -1)) {
            lengths.add(new Length(Long.parseLong(number)));
        }
        return switch (kind) {
            case 'L' -> new Argument.Measure(lengths.get(0), rounding);
            case 'S' -> new Argument.Sides(new Size(lengths.get(0), lengths.get(1)), rounding);
            case 'E' -> new Argument.Edges(lengths, rounding);
            default -> new Argument.Widths(lengths, rounding);
        };
    }

    private List<Argument> list() {
        List<Argument> all = new ArrayList<>();
        at++;
        while (text.charAt(at) != ')') {
            if (text.charAt(at) == ';') {
                at++;
            }
            all.add(argument());
        }
        at++;
        return all;
    }

    private String until(String ends) {
        int from = at;
        while (at < text.length() && ends.indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(from, at);
    }

    private String quote() {
        StringBuilder words = new StringBuilder();
        at++;
        while (text.charAt(at) != '"') {
            if (text.charAt(at) == '\\') {
                at++;
            }
            words.append(text.charAt(at++));
        }
        at++;
        return words.toString();
    }
}
