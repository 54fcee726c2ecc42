package hearthcloth.web.gift;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
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
 * @param scraps what is wished where scraps are put together; it is kept while another choice is looked at
 */
public record PatchworkForm(String way, ScrapForm scraps) {

    /** The setting under which the choice is kept. */
    private static final String KEPT = "wish.patchwork";

    private static final String KEPT_SCRAPS = "wish.scraps";

    /** One choice: its word in the form, and by which the catalogue knows it. */
    public record Way(String word, String key) {}

    private static final Way HEARTH = new Way("", "hearth");
    private static final Way FREE = new Way("free", "free");
    private static final Way AMONG = new Way("among", "among");
    private static final List<Way> WAYS =
            List.of(HEARTH, FREE, new Way("2", "two"), new Way("3", "three"), new Way("4", "four"), AMONG);

    public static PatchworkForm of(Store store) {
        return read(
                store.setting(KEPT).orElse(""),
                ScrapForm.parse(store.setting(KEPT_SCRAPS).orElse("")));
    }

    /** The choice of this word, a hearth and bars where there is none, with what is wished of scraps. */
    public static PatchworkForm read(String word, ScrapForm scraps) {
        return new PatchworkForm(
                WAYS.stream().map(Way::word).filter(word::equals).findFirst().orElse(""), scraps);
    }

    public void keep(Store store) {
        store.set(KEPT, way);
        store.set(KEPT_SCRAPS, scraps.kept());
    }

    /** The same without pieces that are not in the stash any more. */
    public PatchworkForm from(Stash stash) {
        return new PatchworkForm(
                way, scraps.among(stash.pieces().stream().map(Piece::id).toList()));
    }

    /** All choices. */
    public List<Way> ways() {
        return WAYS;
    }

    /**
     * The cloth wished, with the rounds and the order of the form where blocks have any; empty for hearth and bars.
     *
     * @param ruler in whose unit a length is that names none
     * @throws MeasureException naming the field and the mend
     */
    public Optional<Patchwork> patchwork(WishForm form, Ruler ruler) {
        if (way.equals(HEARTH.word)) {
            return Optional.empty();
        }
        WishWords words = way.equals(FREE.word)
                ? scraps.in(WishWords.NOTHING.with(WishField.FREE, "yes"))
                : WishWords.NOTHING
                        .with(WishField.BLOCKS, way.equals(AMONG.word) ? "1 x 1" : way + " x " + way)
                        .with(WishField.FREE, way.equals(AMONG.word) ? "yes" : null)
                        .with(WishField.ROUNDS, form.rounds().isBlank() ? null : form.rounds())
                        .with(WishField.ORDER, form.order().isBlank() ? null : form.order());
        return WishForm.said(words, told -> PatchworkReader.read(told, Door.PAGE, ruler));
    }
}
