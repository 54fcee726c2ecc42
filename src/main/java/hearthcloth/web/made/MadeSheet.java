package hearthcloth.web.made;

import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import java.util.List;

/**
 * A finished cloth as its page shows it.
 *
 * @param slip what is written on it
 * @param told what the workroom knows of it
 */
@PageView.Template("made.jte")
public record MadeSheet(PageFrame frame, SavedCloth cloth, Pictures pictures, Slip slip, Told told)
        implements PageView {

    /**
     * Its pictures, as SVG or as addresses.
     *
     * @param photograph address of hers; empty where she took none
     * @param drawing address of the drawing that stands in its place
     * @param small it lies flat, on the slip
     */
    public record Pictures(String photograph, String drawing, String small, List<String> swatches, String bunting) {}

    /**
     * What she wrote, or what is offered until she has.
     *
     * @param word a word to herself
     */
    public record Slip(String made, String wrapped, String keeper, Measures measures, String word) {}

    /** As she measured it, in her unit; blank where she has not. */
    public record Measures(String width, String height, String corner, String corner2) {}

    /**
     * What the workroom knows.
     *
     * @param how many bars and fabrics, and on how many days it was sewn
     * @param planned its size; {@code against} how it came out, empty before it is measured
     * @param tie the page that shows how it is tied; empty where it is for no gift
     * @param today for the next use
     */
    public record Told(String how, String planned, String against, String tie, String today, Left left) {}

    /**
     * What cutting left over.
     *
     * @param heading empty where nothing is worth keeping
     * @param usable whether some of it can be used
     */
    public record Left(String heading, String where, String drawing, boolean usable) {}

    /** What is said on it. */
    public FinishingWords words() {
        return FinishingWords.in(frame.language());
    }

    /** Each time it wrapped something again, the latest first. */
    public List<Keepsake.Use> used() {
        List<Keepsake.Use> used =
                new java.util.ArrayList<>(cloth.document().life().kept().used());
        java.util.Collections.reverse(used);
        return List.copyOf(used);
    }

    /** Uses that were counted before each was written down. */
    public int unwritten() {
        return cloth.document().life().uses() - used().size();
    }

    public boolean isSewn() {
        return cloth.document().life().stage() == Project.Stage.SEWN;
    }

    public boolean isCut() {
        return cloth.document().life().stage() == Project.Stage.CUT;
    }
}
