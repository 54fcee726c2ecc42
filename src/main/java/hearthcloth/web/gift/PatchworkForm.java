package hearthcloth.web.gift;

import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.store.Store;
import hearthcloth.wish.Door;
import hearthcloth.wish.PatchworkReader;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishWords;
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

    /** One choice: its word in the form, and by which the catalogue knows it. */
    public record Way(String word, String key) {}

    private static final Way HEARTH = new Way("", "hearth");
    private static final Way FREE = new Way("free", "free");
    private static final Way AMONG = new Way("among", "among");
    private static final List<Way> WAYS =
            List.of(HEARTH, FREE, new Way("2", "two"), new Way("3", "three"), new Way("4", "four"), AMONG);

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

    /**
     * The cloth wished, with the rounds and the order of the form where blocks have any; empty for hearth and bars.
     *
     * @throws MeasureException naming the field and the mend
     */
    public Optional<Patchwork> patchwork(WishForm form) {
        WishWords words = WishWords.NOTHING;
        if (way.equals(HEARTH.word)) {
            return Optional.empty();
        }
        if (way.equals(FREE.word)) {
            return Optional.of(Patchwork.free());
        }
        words = words.with(WishField.BLOCKS, way.equals(AMONG.word) ? "1 x 1" : way + " x " + way)
                .with(WishField.FREE, way.equals(AMONG.word) ? "yes" : null)
                .with(WishField.ROUNDS, form.rounds().isBlank() ? null : form.rounds())
                .with(WishField.ORDER, form.order().isBlank() ? null : form.order());
        return WishForm.said(words, told -> PatchworkReader.read(told, Door.PAGE));
    }
}
