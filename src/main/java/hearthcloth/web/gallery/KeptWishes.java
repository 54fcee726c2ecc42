package hearthcloth.web.gallery;

import hearthcloth.measure.MeasureException;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.web.gift.FirstUse;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.gift.MeasuredSeams;
import hearthcloth.web.gift.PatchworkForm;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.wish.Usual;
import hearthcloth.work.Purpose;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What she wishes of a new cloth and what it may be made of, as her workroom keeps it from one look to the next. */
record KeptWishes(PageContext room) {

    private static final int PROPOSALS = 8;

    /** Where an order is wished, more is looked at, so that there is something to put in it. */
    static final int MOST = 12;

    /** The setting that names cloths whose pieces may be taken all the same, one a line. */
    private static final String ALSO = "wish.also";

    private Store store() {
        return room.store();
    }

    /** What a new cloth may be made of. */
    Stash free() {
        return store().atHand().free(also());
    }

    Usual usual() {
        return MeasuredSeams.of(store()).usual(room.settings());
    }

    /** What was wished for an earlier gift waits until she says whether it still holds. */
    Optional<String> waiting() {
        return Leanings.waiting(store()).filter(before -> !Leanings.of(store()).isOpen());
    }

    Leanings leanings() {
        return waiting().isPresent() ? Leanings.NONE : Leanings.of(store());
    }

    Stash first(Stash stash) {
        return FirstUse.of(store(), stash);
    }

    /** The cloths whose pieces she allows a new one to take all the same. */
    Set<String> also() {
        return store().setting(ALSO)
                .map(text -> Set.copyOf(Arrays.asList(text.split("\n"))))
                .orElse(Set.of());
    }

    /** What is asked of a search for cloths. */
    ProposalSearch.Question question(Stash stash, Purpose wished, Leanings lean) {
        WishForm form =
                lean.in(WishForm.of(store()), stash, room.settings().ruler().isMetric());
        Stash first = first(stash);
        ProposalOrder order = new ProposalOrder(
                lean.kind(),
                lean.mixed(),
                first.pieces().stream().map(Piece::id).collect(Collectors.toSet()),
                lean.isQuick());
        return new ProposalSearch.Question(
                stash,
                form.wish(wished, usual(), stash, order.isOpen() ? PROPOSALS : MOST)
                        .coloured(Optional.empty(), lean.contrast()),
                PatchworkForm.of(store())
                        .from(stash)
                        .patchwork(form, room.settings().ruler()),
                first,
                order);
    }

    /**
     * Keeps what she filled in, where it can be used.
     *
     * @param also the cloths whose pieces a new one may take all the same
     * @throws MeasureException naming the field and the mend
     */
    void settle(WishForm form, PatchworkForm patchwork, List<String> also) {
        form.wish(Wished.of(store()), usual(), free(), PROPOSALS);
        patchwork.patchwork(form, room.settings().ruler());
        form.keep(store());
        patchwork.keep(store());
        allow(also);
    }

    /** Keeps the cloths whose pieces a new one may take all the same. */
    void allow(List<String> cloths) {
        store().set(ALSO, String.join("\n", cloths));
    }
}
