package hearthcloth.web.gallery;

import hearthcloth.stash.Stash;

/** What there is to plan from: no piece at all, none that is free, none that her wishes leave, or some. */
public enum HeapLeft {
    NOTHING,
    SPOKEN_FOR,
    UNWISHED,
    SOME;

    static HeapLeft of(Stash all, Stash free, Stash wished) {
        if (all.pieces().isEmpty()) {
            return NOTHING;
        }
        if (free.pieces().isEmpty()) {
            return SPOKEN_FOR;
        }
        return wished.pieces().isEmpty() ? UNWISHED : SOME;
    }
}
