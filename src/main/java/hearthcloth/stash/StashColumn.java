package hearthcloth.stash;

import java.util.Locale;
import java.util.Optional;

/** The columns of a stash file that this program understands; others are kept as they are. */
enum StashColumn {
    FABRIC,
    WIDTH,
    LENGTH,
    UNIT,
    COUNT,
    COLOUR,
    FACES,
    NAP,
    WASHED,
    /** The colour of the wrong side. */
    WRONG;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<StashColumn> named(String header) {
        String plain = Names.key(header);
        for (StashColumn column : values()) {
            if (column.word().equals(plain)
                    || (column == COLOUR && plain.equals("color"))
                    || (column == WRONG && plain.equals("wrong side"))) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
