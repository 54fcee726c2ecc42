package hearthcloth.wish;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads options one by one and collects what is wrong with any of them, so that the maker hears of everything at once.
 */
public final class OptionText {

    private final List<Sentence> faults = new ArrayList<>();
    private final Door door;

    /** On which lengths are told in English. */
    private final Ruler ruler;

    /** Options typed in the shell. */
    public OptionText() {
        this(Door.SHELL, Ruler.EIGHTHS);
    }

    OptionText(Door door, Ruler ruler) {
        this.door = door;
        this.ruler = ruler;
    }

    /**
     * What {@code reader} makes of the option's text; {@code fallback} when the option was not given or cannot be read.
     */
    public <T> T read(String option, @Nullable String text, T fallback, Function<String, T> reader) {
        if (text == null) {
            return fallback;
        }
        try {
            return reader.apply(text);
        } catch (MeasureException e) {
            fault(option, RefusedException.sentence(e));
            return fallback;
        }
    }

    /** A whole number from {@code least} to {@code most}. */
    public int whole(String option, @Nullable String text, int fallback, int least, int most) {
        return read(option, text, fallback, written -> {
            String plain = written.strip();
            if (!plain.matches("\\d{1,9}") || Integer.parseInt(plain) < least || Integer.parseInt(plain) > most) {
                throw new RefusedException(RefusingSentences.wishWhole(
                        Argument.number(least), Argument.number(most), Argument.text(ListWords.plain(written))));
            }
            return Integer.parseInt(plain);
        });
    }

    /** One of the words of an enum. */
    public <T extends Enum<T>> T word(String option, @Nullable String text, T fallback) {
        return read(option, text, fallback, written -> {
            List<String> words = new ArrayList<>();
            for (T value : fallback.getDeclaringClass().getEnumConstants()) {
                String word = value.name().toLowerCase(Locale.ROOT);
                if (word.equals(written.strip().toLowerCase(Locale.ROOT))) {
                    return value;
                }
                words.add(word);
            }
            throw new RefusedException(RefusingSentences.wishWord(
                    Argument.names(Argument.Joined.OR, words), Argument.text(ListWords.plain(written))));
        });
    }

    void fault(String option, Sentence sentence) {
        faults.add(RefusingSentences.wishAt(Argument.text(door.called(option)), sentence));
    }

    /**
     * Ends the reading.
     *
     * @throws BadInputException with everything that is wrong
     */
    public void check() {
        if (!faults.isEmpty()) {
            throw new BadInputException(ruler, faults);
        }
    }
}
