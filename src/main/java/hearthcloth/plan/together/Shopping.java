package hearthcloth.plan.together;

import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to buy for the cloths that lack something, so that what is left and what is bought make them. */
final class Shopping {

    /** The most fat quarters, and the most steps off the bolt, that are tried; ours. */
    private static final int MOST = 16;
    /** Steps of a search for scraps. */
    private static final long PIECING = 4_000;

    private final List<Asked> asked;
    private final OneCloth one;
    private final long seed;

    Shopping(List<Asked> asked, long seed) {
        this.asked = asked;
        this.one = new OneCloth(asked);
        this.seed = seed;
    }

    /** For each way of buying, what each of these cloths needs on top of what the others leave. */
    List<Purchase> of(Allotment made, List<Integer> lacking) {
        List<Purchase> list = new ArrayList<>();
        for (Purchase.Goods goods : Purchase.Goods.values()) {
            Allotment now = made;
            for (int cloth : lacking) {
                Optional<Bought> bought = least(now, cloth, goods);
                if (bought.isPresent()) {
                    list.add(bought.get().purchase());
                    now = bought.get().then();
                }
            }
        }
        return List.copyOf(list);
    }

    private record Bought(Purchase purchase, Allotment then) {}

    private Optional<Bought> least(Allotment now, int cloth, Purchase.Goods goods) {
        for (int count = 1; count <= MOST; count++) {
            List<Piece> pieces = pieces(cloth, goods, count);
            Allotment more = now.restocked(pieces);
            Optional<Made> made = one.plan(
                    cloth,
                    more.free(),
                    ShortSearch.Depth.PLAIN,
                    Map.of(),
                    new OneCloth.Work(seed, PIECING, Budget.steps(PIECING)));
            if (made.isPresent()) {
                Purchase purchase =
                        new Purchase(cloth, goods, pieces.size(), pieces.get(0).size());
                return Optional.of(new Bought(purchase, more.with(cloth, made.get())));
            }
        }
        return Optional.empty();
    }

    private List<Piece> pieces(int cloth, Purchase.Goods goods, int count) {
        Wish wish = asked.get(cloth).wish();
        Size least = goods.least(wish.preferences().ruler().isMetric());
        Fabric fabric = new Fabric(name(wish), Colour.UNDYED, Fabric.Faces.SAME, Fabric.Nap.ANY);
        boolean quarters = goods == Purchase.Goods.FAT_QUARTERS;
        Size size = quarters ? least : new Size(least.width(), least.height().times(count));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i <= (quarters ? count : 1); i++) {
            pieces.add(new Piece("bought " + (cloth + 1) + "." + i, fabric, size, Piece.Washed.UNKNOWN, 0));
        }
        return pieces;
    }

    /** The fabric that was wished first, or any. */
    private static String name(Wish wish) {
        return wish.preferences().fabrics().stream().findFirst().orElse("bought");
    }
}
