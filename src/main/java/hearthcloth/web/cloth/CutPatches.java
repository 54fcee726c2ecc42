package hearthcloth.web.cloth;

import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.work.Project;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.PlannedAgain;

/** A cloth that is planned anew: what it may be planned from, and what becomes of patches that are cut already. */
record CutPatches(PageContext room, SavedCloth cloth) {

    private PlannedAgain again() {
        StashAtHand heap = room.store().atHand();
        return new PlannedAgain(
                cloth.document(),
                heap.freeFor(cloth.id()),
                heap.stash(),
                room.store().stash().nextPiece());
    }

    /** What the cloth may be planned from. */
    Stash stash() {
        return again().stash();
    }

    /** Keeps a cloth that was planned from {@link #stash}, and what becomes of the patches, as one change. */
    SavedCloth save(String label, Project planned) {
        return room.store()
                .book(cloth, again().taken(label, planned), room.settings().voice());
    }
}
