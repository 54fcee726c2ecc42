package hearthcloth.web.gallery;

import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.work.Promises;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What a new cloth is not planned from.
 *
 * @param sentence what is left out, in words; empty where nothing is
 * @param shared what is not, although a cloth counts on it, in words; empty where nothing is
 * @param cloths those that hold something back, to be shared with
 */
public record HeldBack(String sentence, String shared, List<Cloth> cloths) {

    /** A cloth that counts on pieces, and whether a new one may take them all the same. */
    public record Cloth(String id, String name, int pieces, boolean shared) {}

    static HeldBack of(StashAtHand heap, Set<String> also, ChoosingWords words) {
        List<Cloth> cloths = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        for (Promises.Counting one : heap.rivals()) {
            int pieces = one.pieces().size();
            boolean shared = also.contains(one.cloth());
            cloths.add(new Cloth(one.cloth(), one.name(), pieces, shared));
            (shared ? taken : left).add(words.leftCloth(one.name(), pieces));
        }
        int aside = (int) heap.stash().pieces().stream().filter(heap::isAside).count();
        if (aside > 0) {
            left.add(words.leftAside(aside));
        }
        return new HeldBack(
                left.stream().reduce(words::leftMore).map(words::leftOut).orElse(""),
                taken.stream().reduce(words::leftMore).map(words::leftShared).orElse(""),
                cloths);
    }

    /** Whether there are cloths that a new one could share with and does not. */
    public boolean canShare() {
        return cloths.stream().anyMatch(cloth -> !cloth.shared());
    }
}
