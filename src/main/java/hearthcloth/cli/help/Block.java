package hearthcloth.cli.help;

import java.util.ArrayList;
import java.util.List;

/** A part of what is said of a command below its options. */
sealed interface Block {

    /** What the following is about. */
    record Heading(String words) implements Block {}

    /** Sentences, parted into lines as they come. */
    record Prose(String words) implements Block {}

    /** A line of a file as it stands. */
    record Line(String written) implements Block {}

    /** What a word or number of the program means. */
    record Meaning(String what, String words) implements Block {}

    /**
     * Something to type.
     *
     * @param typed the command line in the parts between which it may go on to another line
     * @param says what comes of it; empty where that needs no words
     */
    record Example(List<String> typed, String says) implements Block {
        public Example {
            typed = List.copyOf(typed);
        }
    }

    /** An example of these words, each in quotes where it has blanks; an option stays with its value. */
    static Example example(String says, String... words) {
        List<String> parts = new ArrayList<>();
        for (String word : words) {
            String quoted = word.contains(" ") ? "\"" + word + "\"" : word;
            boolean begins = parts.isEmpty()
                    || word.startsWith("--")
                    || !parts.get(parts.size() - 1).startsWith("--");
            if (begins) {
                parts.add(quoted);
            } else {
                parts.set(parts.size() - 1, parts.get(parts.size() - 1) + " " + quoted);
            }
        }
        return new Example(parts, says);
    }
}
