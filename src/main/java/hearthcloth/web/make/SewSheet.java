package hearthcloth.web.make;

import hearthcloth.sew.Task;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;

/**
 * One step on the page.
 *
 * @param at which of the steps, from 0
 * @param of how many there are
 * @param done how many are done; the next to do is the one of that number
 * @param picture for a desk or tablet
 * @param inHand the same drawn for a telephone
 * @param measure what it should then measure, empty where nothing is checked
 * @param thread what the whole cloth takes, on the first step; else empty
 * @param bar the bar that is sewn on; else empty
 * @param time how long what is left will take her, where that is known
 */
public record SewSheet(
        SavedCloth cloth,
        int at,
        int of,
        int done,
        Task task,
        String kind,
        String picture,
        String inHand,
        String measure,
        String thread,
        String time,
        String bar) {

    /** True where what it measures can be said and the rest planned again. */
    public boolean isMeasured() {
        return kind.equals("seam") && at <= done;
    }

    /** To be shown and spoken. */
    public String progress() {
        return "Step " + (at + 1) + " of " + of + (at < done ? ", done" : "") + ".";
    }

    public boolean isDone() {
        return at < done;
    }

    /** True where this is the step she has come to. */
    public boolean isNext() {
        return at == done;
    }

    public boolean isSewn() {
        return done == of;
    }

    /**
     * One step on the page, with its forms.
     *
     * @param isAnswer true where it takes the place of the one on the page, so that progress is spoken
     */
    @PageView.Template("part/needle.jte")
    public record Needle(SewSheet sheet, String token, boolean isAnswer) implements PageView {}

    /** The page. */
    @PageView.Template("sew.jte")
    public record View(PageFrame frame, SewSheet sheet) implements PageView {

        public Needle needle() {
            return new Needle(sheet, frame.token(), false);
        }
    }
}
