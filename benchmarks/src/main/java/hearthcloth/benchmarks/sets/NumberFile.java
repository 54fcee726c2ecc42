package hearthcloth.benchmarks.sets;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/**
 * A text of whole numbers, read from its first line to its last; blank lines and lines that begin with # are passed
 * over. Every complaint names the file and the line.
 */
public final class NumberFile {

    private static final long LARGEST = 1_000_000_000_000L;

    private final String name;
    private final List<String> lines;
    private int at;

    private NumberFile(String name, List<String> lines) {
        this.name = name;
        this.lines = List.copyOf(lines);
    }

    /** The lines of a file. */
    public static NumberFile of(Path file) {
        try {
            return new NumberFile(file.toString(), Files.readAllLines(file, StandardCharsets.UTF_8));
        } catch (NoSuchFileException missing) {
            throw new BadFileException("There is no file " + file + ".");
        } catch (CharacterCodingException binary) {
            throw new BadFileException(file + " is not a text file.");
        } catch (IOException unreadable) {
            throw new BadFileException(file + " cannot be read: " + unreadable.getMessage() + ".");
        }
    }

    /** The lines of a text, named in complaints. */
    public static NumberFile of(String name, String text) {
        return new NumberFile(name, text.lines().toList());
    }

    /** The next line that says something, which must hold this many numbers. */
    public long[] row(int count, String what) {
        String line = next(what);
        String[] words = line.split("\\s+", -1);
        if (words.length != count) {
            throw wrong("has " + words.length + " numbers where " + count + " were expected (" + what + ")");
        }
        return LongStream.range(0, count).map(i -> number(words[(int) i])).toArray();
    }

    /** The numbers after a word that the next line must begin with. */
    public long[] named(String word, int count) {
        String[] words = next(word).split("\\s+", -1);
        if (!words[0].equals(word) || words.length != count + 1) {
            throw wrong("says \"" + String.join(" ", words) + "\" where " + word + " and " + count
                    + (count == 1 ? " number" : " numbers") + " were expected");
        }
        return LongStream.range(1, words.length)
                .map(i -> number(words[(int) i]))
                .toArray();
    }

    /** A line that must begin with a word and says nothing to be reckoned with. */
    public void skip(String word) {
        if (!next(word).startsWith(word)) {
            throw wrong("does not begin with " + word);
        }
    }

    /** As {@link #row}, each number at least 1. */
    public long[] positiveRow(int count, String what) {
        long[] row = row(count, what);
        for (long number : row) {
            if (number < 1) {
                throw wrong("has " + number + " where only numbers from 1 make sense (" + what + ")");
            }
        }
        return row;
    }

    /** A line with nothing but a count, from 1. */
    public int count(String what) {
        return count(positiveRow(1, what)[0]);
    }

    /** A number of the line read last that says how many rows or words follow. */
    public int count(long number) {
        if (number < 1 || number > 1_000_000) {
            throw wrong("says that " + number + " follow, which is not between 1 and 1000000");
        }
        return (int) number;
    }

    /** This many rows of so many numbers each. */
    public List<long[]> rows(int count, int each, String what) {
        List<long[]> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(row(each, what));
        }
        return rows;
    }

    /** Nothing may follow. */
    public void end() {
        while (at < lines.size()) {
            if (says(lines.get(at++))) {
                throw wrong("stands after the end: the counts above it say that nothing follows");
            }
        }
    }

    /** A complaint about the line read last. */
    public BadFileException wrong(String what) {
        return new BadFileException(name + ", line " + at + ", " + what + ".");
    }

    private String next(String what) {
        while (at < lines.size()) {
            String line = lines.get(at++).strip();
            if (says(line)) {
                return line;
            }
        }
        throw new BadFileException(name + " ends too early: " + what + " is missing.");
    }

    private static boolean says(String line) {
        return !line.isBlank() && !line.strip().startsWith("#");
    }

    private long number(String word) {
        try {
            long number = new BigDecimal(word).longValueExact();
            if (Math.abs(number) <= LARGEST) {
                return number;
            }
        } catch (NumberFormatException | ArithmeticException notWhole) {
            throw wrong("has \"" + word + "\", which is not a whole number");
        }
        throw wrong("has " + word + ", which is too large");
    }
}
