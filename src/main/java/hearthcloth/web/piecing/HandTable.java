package hearthcloth.web.piecing;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.MarkedHeap;
import hearthcloth.plan.patchwork.byhand.HandHeap;
import hearthcloth.plan.patchwork.byhand.HandPiecing;
import hearthcloth.plan.patchwork.byhand.LaidOut;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.gift.MeasuredSeams;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.PlannedAgain;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The table as a request finds it: what is kept of it, and the heap beside it.
 *
 * @param hand what can be done
 */
record HandTable(KeptTable kept, Settings settings, Stash stash, HandPiecing hand) {

    /** A cloth of no wished size is this share of what all scraps would make; ours. */
    private static final double USUAL = 0.8;

    static HandTable of(PageContext room) {
        Store store = room.store();
        KeptTable kept = KeptTable.of(store);
        Optional<SavedCloth> cloth = cloth(store, kept);
        Settings settings = cloth.map(one -> ClothAsked.settings(room, one)).orElseGet(room::settings);
        Stash stash = cloth.map(one -> again(store, one).stash())
                .orElseGet(() -> store.atHand().free(Set.of()));
        Wish wish = WishForm.OPEN.wish(Wished.of(store), MeasuredSeams.of(store).usual(settings), stash, 1);
        Wish made = cloth.flatMap(one -> one.document().plan())
                .map(plan -> new Wish(
                        new Wish.Target(Optional.of(plan.cloth().finished()), false),
                        wish.shape(),
                        plan.cloth().making(),
                        plan.rules(),
                        wish.preferences()))
                .orElse(wish);
        MarkedHeap heap = MarkedHeap.of(stash.pieces(), stash.fabrics(), made);
        Size size = size(kept, settings).or(() -> made.target().size()).orElseGet(() -> usual(heap, settings));
        return new HandTable(kept, settings, stash, new HandPiecing(new HandHeap(heap, size)));
    }

    /** The kept cloth that is changed on the table, while it may be changed. */
    static Optional<SavedCloth> cloth(Store store, KeptTable kept) {
        return kept.cloth().isEmpty()
                ? Optional.empty()
                : store.cloths().find(kept.cloth()).filter(HandTable::isOpen);
    }

    static boolean isOpen(SavedCloth cloth) {
        return cloth.document().life().stage() == hearthcloth.work.Project.Stage.DESIGNED
                && cloth.document().isFree()
                && cloth.document().bench().ticked().isEmpty();
    }

    static PlannedAgain again(Store store, SavedCloth cloth) {
        StashAtHand heap = store.atHand();
        return new PlannedAgain(
                cloth.document(),
                heap.freeFor(cloth.id()),
                heap.stash(),
                store.stash().nextPiece());
    }

    private static Optional<Size> size(KeptTable kept, Settings settings) {
        try {
            return kept.size().isEmpty() ? Optional.empty() : Optional.of(Measures.size(kept.size(), settings.bare()));
        } catch (MeasureException another) {
            return Optional.empty();
        }
    }

    private static Size usual(MarkedHeap heap, Settings settings) {
        Length step = settings.ruler().isMetric() ? Length.cm(1) : Length.inches(1);
        Length side = heap.finished((long) Math.sqrt(USUAL * heap.netArea()));
        return Size.square(step.times(Math.max(1, side.nm() / step.nm())));
    }

    HandHeap heap() {
        return hand.heap();
    }

    MarkedHeap pieces() {
        return hand.heap().heap();
    }

    TableText text() {
        return new TableText(pieces());
    }

    LaidOut laid() {
        return text().read(kept.now());
    }

    /** The cloth as it would be cut; empty while it is not whole. */
    Optional<Plan> plan() {
        LaidOut laid = laid();
        return heap().isWhole(laid) ? Optional.of(hand.plan(laid)) : Optional.empty();
    }

    /** A piece's place in the heap by its number; −1 where it is not there. */
    int scrap(String piece) {
        return pieces().indexOf(piece);
    }

    String id(int scrap) {
        return pieces().pieces().get(scrap).id();
    }

    List<hearthcloth.stash.Piece> all() {
        return pieces().pieces();
    }
}
