package hearthcloth.web.gift;

import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The pieces she wants used first, as they are wished for the next cloth. */
public final class FirstUse {

    private static final String KEPT = "wish.first";

    private FirstUse() {}

    public static void keep(Store store, List<Piece> pieces) {
        store.set(KEPT, pieces.stream().map(Piece::id).collect(Collectors.joining("\n")));
    }

    public static void clear(Store store) {
        store.unset(KEPT);
    }

    /** Those of them that are in this stash. */
    public static Stash of(Store store, Stash stash) {
        Set<String> ids = store.setting(KEPT)
                .map(text -> Set.copyOf(Arrays.asList(text.split("\n"))))
                .orElse(Set.of());
        return new Stash(stash.pieces().stream()
                .filter(piece -> ids.contains(piece.id()))
                .toList());
    }

    /** In a few words: {@code madder check 2, kelp linen}. */
    public static String words(Stash first) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        first.pieces().forEach(piece -> counts.merge(piece.fabric().name(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(one -> one.getKey() + (one.getValue() == 1 ? "" : " " + one.getValue()))
                .collect(Collectors.joining(", "));
    }
}
