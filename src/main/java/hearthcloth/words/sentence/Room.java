package hearthcloth.words.sentence;

import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** A room of catalogues whose messages are kept as sentences. Those of the catalogues are made from them. */
interface Room {

    /** Its folder among the catalogues. */
    String name();

    /** A letter for what each argument of a message is: t text, c count, w word; null where the room has no such message. */
    @Nullable
    String kinds(String key);

    /** A sentence of this room as a reader hears it. */
    String said(Sentence sentence, Voice voice);
}
