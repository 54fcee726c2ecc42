package hearthcloth.web.gift;

import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.ScrapRule;
import hearthcloth.store.Store;
import java.util.List;
import java.util.Optional;

/**
 * How she wants a cloth put together, as one of a few choices.
 *
 * @param way the choice's {@link Way#word}; empty for a hearth and bars round it
 */
public record PatchworkForm(String way) {

    /** The setting under which the choice is kept. */
    private static final String KEPT = "wish.patchwork";

    private static final int USUAL_ROUNDS = 2;
    private static final int MOST_ROUNDS = 8;

    /** One choice: its word in the form, and what it says. */
    public record Way(String word, String words) {}

    private static final Way HEARTH = new Way("", "a hearth and bars round it");
    private static final Way FREE = new Way("free", "scraps as they are");
    private static final Way AMONG = new Way("among", "a log cabin among scraps");
    private static final List<Way> WAYS = List.of(
            HEARTH,
            FREE,
            new Way("2", "four small log cabins"),
            new Way("3", "nine small log cabins"),
            new Way("4", "sixteen small log cabins"),
            AMONG);

    public static PatchworkForm of(Store store) {
        return read(store.setting(KEPT).orElse(""));
    }

    /** The choice of this word; a hearth and bars where there is none. */
    public static PatchworkForm read(String word) {
        return new PatchworkForm(
                WAYS.stream().map(Way::word).filter(word::equals).findFirst().orElse(""));
    }

    public void keep(Store store) {
        store.set(KEPT, way);
    }

    /** All choices. */
    public List<Way> ways() {
        return WAYS;
    }

    /** The cloth wished, with the rounds and the order of the form where blocks have any; empty for hearth and bars. */
    public Optional<Patchwork> patchwork(WishForm form) {
        if (way.equals(HEARTH.word)) {
            return Optional.empty();
        }
        if (way.equals(FREE.word)) {
            return Optional.of(Patchwork.free());
        }
        int side = way.equals(AMONG.word) ? 1 : Integer.parseInt(way);
        int rounds = form.rounds().matches("\\d") ? Integer.parseInt(form.rounds()) : USUAL_ROUNDS;
        Order order = Order.named(form.order()).orElse(Order.ROUND);
        Blocks blocks =
                new Blocks(side, side, Math.max(1, Math.min(MOST_ROUNDS, rounds)), order, Optional.empty());
        return Optional.of(new Patchwork(Optional.of(blocks), way.equals(AMONG.word), ScrapRule.EITHER));
    }
}
