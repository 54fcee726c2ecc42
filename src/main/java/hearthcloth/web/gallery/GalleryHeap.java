package hearthcloth.web.gallery;

import hearthcloth.draw.tied.Sample;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.PatchworkForm;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.work.StashAtHand;
import java.util.List;

/**
 * What she has to plan from.
 *
 * @param tiles the fabrics' figures, as SVG
 * @param plain the gift tied in a plain cloth where there is nothing to plan from, as SVG; empty else
 * @param left what there is to plan from
 * @param held what a new cloth is not planned from
 * @param pieces those a cloth of scraps may be asked to have
 */
public record GalleryHeap(String tiles, String plain, HeapLeft left, HeldBack held, List<ScrapPick> pieces) {

    static GalleryHeap of(PageContext room, StashAtHand heap, HeapLeft left, Stash free, Swatches swatches) {
        StringBuilder tiles = new StringBuilder();
        swatches.tiles(tiles);
        return new GalleryHeap(
                tiles.toString(),
                left == HeapLeft.NOTHING ? plain(room) : "",
                left,
                HeldBack.of(heap, new KeptWishes(room).also(), ChoosingWords.in(room.language())),
                ScrapPick.all(
                        free,
                        PatchworkForm.of(room.store()).scraps(),
                        swatches,
                        room.settings().voice()));
    }

    private static String plain(PageContext room) {
        return Wished.of(room.store())
                .wrapped(room.settings().ruler())
                .map(wrapped -> Thumbnail.of(
                        Sample.of(wrapped.tie(), wrapped.gift(), wrapped.tail().usual())))
                .orElse("");
    }
}
