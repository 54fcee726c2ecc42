package hearthcloth.plan.together;

import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Wish;
import java.util.Optional;

/**
 * One cloth that is asked for.
 *
 * @param name whose it is, or what it is for
 * @param wish with a size, or with hearth, bars and rounds that decide it
 * @param patchwork scraps or blocks, where those are wished
 */
public record Asked(String name, Wish wish, Optional<Patchwork> patchwork) {

    /** Whether it is scraps alone, so that several can be pieced in one search. */
    boolean isFree() {
        return patchwork.filter(asked -> asked.blocks().isEmpty()).isPresent();
    }

    /** Whether the other is pieced by the same rules, if both are scraps alone. */
    boolean isLike(Asked other) {
        return isFree()
                && other.isFree()
                && patchwork.equals(other.patchwork)
                && wish.making().equals(other.wish.making())
                && wish.rules().equals(other.wish.rules())
                && wish.preferences().fabrics().equals(other.wish.preferences().fabrics());
    }
}
