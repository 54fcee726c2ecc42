package hearthcloth.store;

import hearthcloth.store.journal.ChangeJournal;
import hearthcloth.store.journal.ClothFact;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.journal.Replay;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Thing;
import org.jdbi.v3.core.Handle;

/** Leads each part of a change to the book it was made in, so that one undo reaches all of them. */
record Books(StashBook stash, ClothBook cloths, PhotoBook photographs) implements Replay {

    @Override
    public void replay(Handle handle, ChangeJournal.Fact fact, boolean again) {
        Thing thing = Thing.read(fact.book());
        switch (thing.kind()) {
            case STASH -> stash.replay(handle, fact, again);
            case CLOTH -> cloths.replay(handle, thing.id(), cloth(fact, again));
            case PHOTOGRAPH -> photographs.replay(handle, thing.id(), edit(fact, again));
            case PIECE, SHELF -> throw new StoreException(StoringSentences.record(fact.label(), "none"));
        }
    }

    private static ClothFact cloth(ChangeJournal.Fact fact, boolean again) {
        ClothFact done = ClothFact.read(fact.what());
        return again ? done : done.reversed();
    }

    private static DocumentEdit edit(ChangeJournal.Fact fact, boolean again) {
        DocumentEdit edit = DocumentEdit.read(fact.what());
        return again ? edit : edit.reversed();
    }
}
