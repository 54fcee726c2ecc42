package hearthcloth.web.made;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.PageContext;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Keepsake;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What she writes on the slip of a finished cloth, read in her unit; and what it says of the size it came out at. */
final class SlipForm {

    /** As a catalogue calls a side that is as planned. */
    private static final String SAME = "same";

    private SlipForm() {}

    /**
     * What it measures.
     *
     * @return empty where she left it blank
     * @throws MeasureException naming the field that cannot be read
     */
    static Optional<Keepsake.Measured> measured(Context context, Unit bare, Voice voice) {
        FinishingWords words = FinishingWords.in(voice.language());
        Optional<Length> width = length(context, "width", bare, voice);
        Optional<Length> height = length(context, "height", bare, voice);
        List<Length> corners = new ArrayList<>();
        length(context, "corner", bare, voice).ifPresent(corners::add);
        length(context, "corner2", bare, voice).ifPresent(corners::add);
        if (width.isEmpty() && height.isEmpty() && corners.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Keepsake.Measured(
                width.orElseThrow(() -> new MeasureException(words.slipMissing("width"))),
                height.orElseThrow(() -> new MeasureException(words.slipMissing("height"))),
                corners));
    }

    private static Optional<Length> length(Context context, String field, Unit bare, Voice voice) {
        String written = PageContext.field(context, field);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Measures.length(written, bare));
        } catch (MeasureException e) {
            throw new MeasureException(FinishingWords.in(voice.language())
                    .slipUnread(field, Refusal.of(e).in(voice)));
        }
    }

    static String note(Context context, String name, FinishingWords words) {
        String text = PageContext.field(context, name);
        if (text.length() > Keepsake.LONGEST_NOTE) {
            throw new MeasureException(words.slipLongNote(String.valueOf(Keepsake.LONGEST_NOTE)));
        }
        return text;
    }

    /** How it came out against its plan, in a sentence or two. */
    static String against(Keepsake.Measured real, Size planned, Voice voice) {
        FinishingWords words = FinishingWords.in(voice.language());
        String across = off(real.width(), planned.width(), voice.ruler());
        String up = off(real.height(), planned.height(), voice.ruler());
        boolean both = !across.equals(SAME) && !up.equals(SAME);
        String size = across.equals(SAME) && up.equals(SAME)
                ? words.slipAsPlanned()
                : words.slipAgainst(
                        across,
                        both ? "yes" : "no",
                        voice.write(apart(real.height(), planned.height()), Rounding.NEAREST),
                        up,
                        voice.write(apart(real.width(), planned.width()), Rounding.NEAREST));
        if (real.corners().size() < 2) {
            return size;
        }
        Length apart = apart(real.corners().get(0), real.corners().get(1));
        String corners = apart.isLessThan(voice.ruler().step())
                ? words.slipStraight()
                : words.slipLeans(voice.write(apart, Rounding.NEAREST));
        return voice.sentences(List.of(size, corners));
    }

    private static String off(Length real, Length planned, Ruler ruler) {
        return apart(real, planned).isLessThan(ruler.step()) ? SAME : real.isMoreThan(planned) ? "more" : "less";
    }

    private static Length apart(Length one, Length other) {
        return one.max(other).minus(one.min(other));
    }
}
