package hearthcloth.words.sentence;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** What is put into a sentence, kept as it is and written out only when the sentence is said. */
public sealed interface Argument
        permits Sentence,
                Argument.Text,
                Argument.Count,
                Argument.Decimal,
                Argument.Percent,
                Argument.Measure,
                Argument.Sides,
                Argument.Widths,
                Argument.Edges,
                Argument.Area,
                Argument.Row,
                Argument.Capital {

    /** Signs of what somebody wrote that are said back. */
    int LONGEST_WRITTEN = 60;

    /** As a reader hears it. */
    String said(Voice voice);

    /** Words as they are: a name, or what somebody wrote. */
    record Text(String words) implements Argument {
        @Override
        public String said(Voice voice) {
            return words;
        }
    }

    /** A whole number of things. */
    record Count(int number) implements Argument {
        @Override
        public String said(Voice voice) {
            return Integer.toString(number);
        }
    }

    /** A number with a decimal point, written with the language's sign: {@code 2,5}. */
    record Decimal(String number) implements Argument {
        @Override
        public String said(Voice voice) {
            return voice.local(number);
        }
    }

    /** Per cent, with a decimal point where it has one. */
    record Percent(String number) implements Argument {
        @Override
        public String said(Voice voice) {
            return voice.measuring().percent(voice.local(number));
        }
    }

    /** A length on the reader's ruler. */
    record Measure(Length length, Rounding rounding) implements Argument {
        @Override
        public String said(Voice voice) {
            return voice.write(length, rounding);
        }
    }

    /** A size, width by height, on the reader's ruler. */
    record Sides(Size size, Rounding rounding) implements Argument {
        @Override
        public String said(Voice voice) {
            return voice.write(size, rounding);
        }
    }

    /** Several lengths with the unit once: {@code 3¾, 2¾ in}. */
    record Widths(List<Length> lengths, Rounding rounding) implements Argument {
        public Widths {
            lengths = List.copyOf(lengths);
        }

        @Override
        public String said(Voice voice) {
            List<String> numbers = lengths.stream()
                    .map(length -> voice.number(length, rounding))
                    .distinct()
                    .toList();
            return String.join(", ", numbers) + " " + voice.unit();
        }
    }

    /** The edges of a solid with the unit once: {@code 30 × 20 × 8 cm}. */
    record Edges(List<Length> lengths, Rounding rounding) implements Argument {
        public Edges {
            lengths = List.copyOf(lengths);
        }

        @Override
        public String said(Voice voice) {
            List<String> numbers = lengths.stream()
                    .map(length -> voice.number(length, rounding))
                    .toList();
            return String.join(" × ", numbers) + " " + voice.unit();
        }
    }

    /** An area in whole squares of the reader's unit. */
    record Area(double squareMm, Rounding rounding) implements Argument {
        @Override
        public String said(Voice voice) {
            return voice.area(squareMm, rounding);
        }
    }

    /** How things in a row are joined. */
    enum Joined {
        /** {@code a, b and c}. */
        AND,
        /** {@code a, b or c}. */
        OR,
        /** {@code a, b, c}. */
        COMMAS,
        /** {@code a; b; c}. */
        SEMICOLONS,
        /** Sentence after sentence. */
        SENTENCES
    }

    /** Things in a row. */
    record Row(Joined joined, List<Argument> parts) implements Argument {
        public Row {
            parts = List.copyOf(parts);
        }

        @Override
        public String said(Voice voice) {
            List<String> said = parts.stream().map(part -> part.said(voice)).toList();
            return switch (joined) {
                case AND -> voice.list(said);
                case OR -> voice.either(said);
                case COMMAS -> voice.commas(said);
                case SEMICOLONS -> voice.semicolons(said);
                case SENTENCES -> voice.sentences(said);
            };
        }
    }

    /** What begins a sentence, its first letter made large. */
    record Capital(Argument first) implements Argument {
        @Override
        public String said(Voice voice) {
            return Sentence.capital(first.said(voice));
        }
    }

    static Argument text(String words) {
        return new Text(words);
    }

    /** What somebody wrote, on one line and shortened to sixty signs. */
    static Argument written(String words) {
        String line = words.strip().replaceAll("\\p{Cntrl}+", " ");
        return new Text(line.length() > LONGEST_WRITTEN ? line.substring(0, LONGEST_WRITTEN) + "…" : line);
    }

    static Argument number(long number) {
        return new Text(Long.toString(number));
    }

    static Argument of(Length length, Rounding rounding) {
        return new Measure(length, rounding);
    }

    static Argument of(Size size, Rounding rounding) {
        return new Sides(size, rounding);
    }

    static Argument area(double squareMm, Rounding rounding) {
        return new Area(squareMm, rounding);
    }

    /** Whole per cent. */
    static Argument percent(long number) {
        return new Percent(Long.toString(number));
    }

    static Argument capital(Argument first) {
        return new Capital(first);
    }

    static Argument row(Joined joined, List<? extends Argument> parts) {
        return new Row(joined, List.copyOf(parts));
    }

    /** Names in a row. */
    static Argument names(Joined joined, List<String> names) {
        return new Row(joined, names.stream().map(Argument::text).toList());
    }
}
