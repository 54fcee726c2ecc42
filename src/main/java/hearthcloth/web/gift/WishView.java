package hearthcloth.web.gift;

import hearthcloth.measure.Rounding;
import hearthcloth.store.Store;
import hearthcloth.wish.Usual;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;

/**
 * What she wishes, as the gallery shows it.
 *
 * @param wished what the cloth is for, in a sentence; empty where she said nothing
 * @param patchwork how the cloth is put together
 * @param trouble what of it cannot be used; empty where all can
 */
public record WishView(String wished, WishForm form, PatchworkForm patchwork, Tied tied, String trouble) {

    /**
     * What is wished of a cloth for a gift.
     *
     * @param is true where there is one, so that a fabric can be put where it shows
     * @param slack how much larger than the least it is planned where she says nothing
     * @param larger the same as it is planned now, in a sentence; empty where there is no gift or no slack
     */
    public record Tied(boolean is, String slack, String larger) {}

    public static WishView of(Store store, Purpose wished, Usual usual, Voice voice, String trouble) {
        WishForm form = WishForm.of(store);
        boolean is = wished.thing().isPresent();
        Tied tied = new Tied(
                is,
                voice.number(usual.slack().length(), Rounding.UP),
                is && trouble.isEmpty() ? form.slack(usual).sentence(voice) : "");
        return new WishView(wished.words(voice), form, PatchworkForm.of(store), tied, trouble);
    }
}
