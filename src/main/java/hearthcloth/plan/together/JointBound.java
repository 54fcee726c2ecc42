package hearthcloth.plan.together;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.Set;

/**
 * How many joins the worst cloth has at least, however the heap is divided. In every order the bar that is sewn last reaches
 * from side to side, so each cloth needs a strip that is at least as long as its shorter side with the hem; where no piece is
 * as long the bar is joined, and where fewer such strips can be cut than there are cloths, some cloth has a join.
 */
final class JointBound {

    private JointBound() {}

    static int worstJoins(Stash heap, List<Asked> asked) {
        List<Asked> barred =
                asked.stream().filter(one -> one.patchwork().isEmpty()).toList();
        int alone = barred.stream().mapToInt(one -> alone(heap, one)).max().orElse(0);
        return Math.max(alone, enough(heap, barred) ? 0 : 1);
    }

    /** The joins of its last bar if it had the whole heap to itself. */
    private static int alone(Stash heap, Asked asked) {
        Length needed = needed(asked.wish());
        Length loss = asked.wish().making().seam().loss();
        long longest = heap.pieces().stream()
                .filter(piece -> isAllowed(piece, asked.wish()))
                .mapToLong(piece -> longer(piece).nm())
                .max()
                .orElse(0);
        if (longest >= needed.nm() || longest <= loss.nm()) {
            return 0;
        }
        long gain = longest - loss.nm();
        return (int) ((needed.nm() - loss.nm() + gain - 1) / gain) - 1;
    }

    /** Whether as many strips can be cut as there are cloths, each taken as the least demanding. */
    private static boolean enough(Stash heap, List<Asked> barred) {
        if (barred.isEmpty()) {
            return true;
        }
        long shortest =
                barred.stream().mapToLong(one -> needed(one.wish()).nm()).min().orElse(0);
        long narrowest = barred.stream()
                .mapToLong(one -> narrowest(one.wish().making()).nm())
                .min()
                .orElse(0);
        if (shortest == 0 || narrowest <= 0) {
            return true;
        }
        long strips = 0;
        for (Piece piece : heap.pieces()) {
            long along = longer(piece).nm() / shortest;
            long other = shorter(piece).nm() / shortest;
            long across = shorter(piece).nm() / narrowest;
            long down = longer(piece).nm() / narrowest;
            strips += along * across + other * down;
        }
        return strips >= barred.size();
    }

    /** The shorter side with its hems; nothing where the size is left open. */
    private static Length needed(Wish wish) {
        return wish.target()
                .size()
                .map(size -> shorter(size).plus(wish.making().hem().allowance().times(2)))
                .orElse(Length.ZERO);
    }

    /** No bar is cut narrower than what its seam and its outer edge take. */
    private static Length narrowest(Making making) {
        return making.seam().wide().plus(making.seam().narrow().min(making.hem().allowance()));
    }

    private static boolean isAllowed(Piece piece, Wish wish) {
        Set<String> names = Set.copyOf(wish.preferences().fabrics());
        return names.isEmpty() || names.contains(piece.fabric().name());
    }

    private static Length shorter(Size size) {
        return size.width().min(size.height());
    }

    private static Length shorter(Piece piece) {
        return shorter(piece.size());
    }

    private static Length longer(Piece piece) {
        return piece.size().width().max(piece.size().height());
    }
}
