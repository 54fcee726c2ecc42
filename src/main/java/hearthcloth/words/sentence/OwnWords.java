package hearthcloth.words.sentence;

import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** What is in no catalogue: words that say themselves in every language, such as those of older files, and sentences in a row. */
final class OwnWords implements Room {

    static final Room ROOM = new OwnWords();

    private OwnWords() {}

    @Override
    public String name() {
        return "";
    }

    @Override
    public @Nullable String kinds(String key) {
        return key.equals("itself") ? "t" : null;
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        return sentence.with().isEmpty() ? "" : sentence.text(0, voice);
    }
}
