package hearthcloth.wrap.tying;

import hearthcloth.wrap.fold.Moment;
import org.jspecify.annotations.Nullable;

/** One step's words and the moment it leads to, if any. */
record Line(String words, @Nullable Moment moment) {

    static Line of(String words) {
        return new Line(words, null);
    }
}
