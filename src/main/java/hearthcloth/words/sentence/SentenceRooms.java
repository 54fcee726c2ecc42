package hearthcloth.words.sentence;

import java.util.List;

/** The rooms whose messages are kept as sentences. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
final class SentenceRooms {

    static final List<Room> ALL = List.of(OwnWords.ROOM, MendingSentences.ROOM, PhotographingSentences.ROOM, PlanningSentences.ROOM, ReadingSentences.ROOM, RefusingSentences.ROOM, RulingSentences.ROOM, StoringSentences.ROOM, TypingSentences.ROOM);

    private SentenceRooms() {}
}
