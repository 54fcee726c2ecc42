package hearthcloth.words.sentence;

import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A sentence of the domain as a value: a message of a catalogue with what is in it. It is said in a language, with its lengths
 * on a ruler, only when somebody reads it. Two are equal where they say the same of the same. Made by the factories of each
 * room ({@link Planning} and its like), so that a message or an argument that is missing does not compile.
 */
public final class Sentence implements Argument {

    private final Room room;
    private final String key;
    private final List<Argument> with;

    Sentence(Room room, String key, Argument... with) {
        this.room = room;
        this.key = key;
        this.with = List.of(with);
    }

    /** Words that say themselves in every language: what a person wrote, or what an older file kept. */
    public static Sentence itself(String words) {
        return new Sentence(OwnWords.ROOM, "itself", Argument.text(words));
    }

    /** Several sentences as one, in this order; those that say nothing are left out. */
    public static Sentence row(List<Sentence> sentences) {
        List<Argument> said = new ArrayList<>();
        for (Sentence sentence : sentences) {
            if (sentence.room == OwnWords.ROOM && sentence.with.get(0) instanceof Row row) {
                said.addAll(row.parts());
            } else if (!sentence.isEmpty()) {
                said.add(sentence);
            }
        }
        return said.size() == 1
                ? (Sentence) said.get(0)
                : new Sentence(OwnWords.ROOM, "itself", new Row(Joined.SENTENCES, said));
    }

    /** The sentences of a row, or this one alone. */
    public List<Sentence> parts() {
        if (room == OwnWords.ROOM && with.get(0) instanceof Row row) {
            return row.parts().stream().map(Sentence.class::cast).toList();
        }
        return List.of(this);
    }

    /** This one and then another. */
    public Sentence then(Sentence next) {
        List<Sentence> both = new ArrayList<>();
        both.add(this);
        both.add(next);
        return row(both);
    }

    /** Nothing said. */
    public static Sentence none() {
        return itself("");
    }

    /** Whether nothing is said. */
    public boolean isEmpty() {
        return room == OwnWords.ROOM
                && (with.get(0).equals(Argument.text("")) || with.get(0).equals(new Row(Joined.SENTENCES, List.of())));
    }

    /**
     * The sentence of this address with this in it; empty where no such message has such arguments, as in a file of a later
     * version.
     *
     * @param address as {@link #address} gives it
     */
    public static Optional<Sentence> at(String address, List<Argument> with) {
        int slash = address.indexOf('/');
        return SentenceRooms.ALL.stream()
                .filter(room -> slash >= 0 && room.name().equals(address.substring(0, slash)))
                .filter(room -> fits(room.kinds(address.substring(slash + 1)), with))
                .map(room -> new Sentence(room, address.substring(slash + 1), with.toArray(new Argument[0])))
                .findFirst();
    }

    private static boolean fits(@org.jspecify.annotations.Nullable String kinds, List<Argument> with) {
        if (kinds == null || kinds.length() != with.size()) {
            return false;
        }
        for (int i = 0; i < with.size(); i++) {
            boolean counted = with.get(i) instanceof Count;
            boolean word = with.get(i) instanceof Text;
            char kind = kinds.charAt(i);
            if ((kind == 'c' && !counted) || (kind == 'w' && !word)) {
                return false;
            }
        }
        return true;
    }

    /** Room and key: {@code planning/rounds}. */
    public String address() {
        return room.name() + "/" + key;
    }

    /** Whether it is the same message, whatever is in it. */
    public boolean isLike(Sentence other) {
        return address().equals(other.address());
    }

    /** What is in it, in the order of the message's arguments. */
    public List<Argument> with() {
        return with;
    }

    /** The sentence to a reader. */
    public String in(Voice voice) {
        return room.said(this, voice);
    }

    /** The sentence in English, lengths in inches: for what is not yet said to anybody in particular. */
    public String english() {
        return in(Voice.english(Ruler.EIGHTHS));
    }

    @Override
    public String said(Voice voice) {
        return in(voice);
    }

    String key() {
        return key;
    }

    String text(int i, Voice voice) {
        return with.get(i).said(voice);
    }

    String word(int i) {
        return ((Text) with.get(i)).words();
    }

    int count(int i) {
        return ((Count) with.get(i)).number();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sentence sentence
                && room.name().equals(sentence.room.name())
                && key.equals(sentence.key)
                && with.equals(sentence.with);
    }

    @Override
    public int hashCode() {
        return 31 * key.hashCode() + with.hashCode();
    }

    @Override
    public String toString() {
        return english();
    }

    /** A sentence with its first letter made large, where it begins with a name. */
    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
