package hearthcloth.web.made;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.PageContext;
import hearthcloth.work.Keepsake;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What she writes on the slip of a finished cloth, read in her unit; and what it says of the size it came out at. */
final class SlipForm {

    private SlipForm() {}

    /**
     * What it measures.
     *
     * @return empty where she left it blank
     * @throws MeasureException naming the field that cannot be read
     */
    static Optional<Keepsake.Measured> measured(Context context, Unit bare) {
        Optional<Length> width = length(context, "width", "the width", bare);
        Optional<Length> height = length(context, "height", "the height", bare);
        List<Length> corners = new ArrayList<>();
        length(context, "corner", "corner to corner", bare).ifPresent(corners::add);
        length(context, "corner2", "the other corners", bare).ifPresent(corners::add);
        if (width.isEmpty() && height.isEmpty() && corners.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Keepsake.Measured(
                width.orElseThrow(() -> new MeasureException("give the width as well, or leave all of the size blank")),
                height.orElseThrow(
                        () -> new MeasureException("give the height as well, or leave all of the size blank")),
                corners));
    }

    private static Optional<Length> length(Context context, String field, String name, Unit bare) {
        String written = PageContext.field(context, field);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Measures.length(written, bare));
        } catch (MeasureException e) {
            throw new MeasureException(name + ": " + e.getMessage());
        }
    }

    static String note(Context context, String name) {
        String text = PageContext.field(context, name);
        if (text.length() > Keepsake.LONGEST_NOTE) {
            throw new MeasureException("a note is at most " + Keepsake.LONGEST_NOTE + " letters long");
        }
        return text;
    }

    /** How it came out against its plan, in a sentence or two. */
    static String against(Keepsake.Measured real, Size planned, Ruler ruler) {
        List<String> said = new ArrayList<>();
        differs(real.width(), planned.width(), "wider", "narrower", ruler).ifPresent(said::add);
        differs(real.height(), planned.height(), "higher", "lower", ruler).ifPresent(said::add);
        String size = said.isEmpty() ? "As planned." : String.join(", ", said) + " than planned.";
        if (real.corners().size() < 2) {
            return size;
        }
        Length apart = apart(real.corners().get(0), real.corners().get(1));
        return size
                + (apart.isLessThan(ruler.step())
                        ? " Corner to corner it is the same both ways."
                        : " Corner to corner the two ways differ by " + ruler.write(apart, Rounding.NEAREST)
                                + ": it leans a little. Tied, nobody sees it.");
    }

    private static Optional<String> differs(Length real, Length planned, String more, String less, Ruler ruler) {
        Length apart = apart(real, planned);
        if (apart.isLessThan(ruler.step())) {
            return Optional.empty();
        }
        return Optional.of(ruler.write(apart, Rounding.NEAREST) + " " + (real.isMoreThan(planned) ? more : less));
    }

    private static Length apart(Length one, Length other) {
        return one.max(other).minus(one.min(other));
    }
}
