package hearthcloth.web.make;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.sew.Task;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.making.MakingWords;
import java.util.Locale;

/** One step on the page. */
public record SewSheet(SavedCloth cloth, Place place, AtTheMachine step, Pictures pictures, Told told) {

    /**
     * How far she has come.
     *
     * @param at which of the steps, from 0
     * @param of how many there are
     * @param done how many are done; the next to do is the one of that number
     */
    public record Place(int at, int of, int done) {}

    /**
     * What is drawn.
     *
     * @param desk for a desk or tablet
     * @param hand the same drawn for a telephone
     * @param whole the whole cloth: what is sewn, what is sewn now, what is to come
     */
    public record Pictures(String desk, String hand, String whole) {}

    /**
     * What is said beside the lines.
     *
     * @param measure what it should then measure, empty where nothing is checked
     * @param thread what the whole cloth takes, on the first step; on a seam the one that shows least and most
     * @param time how long what is left will take her, where that is known
     * @param bar the bar that is sewn on; else empty
     * @param thick where it is thick, in a few words; else empty
     * @param lang the tag of the language that the step is told in
     */
    public record Told(String measure, String thread, String time, String bar, String thick, String lang) {}

    public int at() {
        return place.at();
    }

    public int of() {
        return place.of();
    }

    public int done() {
        return place.done();
    }

    public Task task() {
        return step.task();
    }

    /** True where the bar of this step can be said to be too short. */
    boolean isBarAsked() {
        return isNext() && !told.bar().isEmpty() && !cloth.document().isFree();
    }

    public String kind() {
        return step.kind().name().toLowerCase(Locale.ROOT);
    }

    /** True where what it measures can be said and the rest planned again. */
    public boolean isMeasured() {
        return step.kind() == AtTheMachine.Kind.SEAM && at() <= done();
    }

    /** The unit it is measured in, as a catalogue asks for it. */
    public String unit() {
        Length mark = cloth.document().design().making().margins().mark();
        return Ruler.ofStep(mark).filter(Ruler::isMetric).isPresent() ? "cm" : "in";
    }

    public boolean isDone() {
        return at() < done();
    }

    /** True where this is the step she has come to. */
    public boolean isNext() {
        return at() == done();
    }

    public boolean isSewn() {
        return done() == of();
    }

    /**
     * One step on the page, with its forms.
     *
     * @param asker whom it answers
     * @param isAnswer true where it takes the place of the one on the page, so that progress is spoken
     * @param asked what is asked back about a measure
     */
    @PageView.Template("part/needle.jte")
    public record Needle(SewSheet sheet, PageFrame.Asker asker, boolean isAnswer, AskedBack asked) implements PageView {

        public String token() {
            return asker.token();
        }

        /** What is said on it. */
        public MakingWords words() {
            return MakingWords.in(asker.language());
        }

        /** To be shown and spoken. */
        public String progress() {
            return words().sewProgress(
                            String.valueOf(sheet.of()), sheet.isDone() ? "yes" : "no", String.valueOf(sheet.at() + 1));
        }
    }

    /** The page. */
    @PageView.Template("sew.jte")
    public record View(PageFrame frame, SewSheet sheet, AskedBack asked) implements PageView {

        public Needle needle() {
            return new Needle(sheet, frame.asker(), false, asked);
        }
    }
}
