package hearthcloth.plan.rework;

import hearthcloth.cloth.Edges;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cloth of which the first bars are sewn on, as it really came out.
 *
 * <p>A measure says only how large the work is, not where a difference arose. The difference is attributed to the bar
 * last sewn on in that direction, or to the hearth where there is none (ours: the last seam is the likeliest, and the
 * size of the work is the same whichever it was).
 *
 * @param design with what is sewn at its real size and the rest as planned
 * @param bars how many are sewn on
 */
public record SewnCloth(Design design, int bars) {

    /**
     * The design after {@code bars} bars, given the work's measure, raw and trimmed.
     *
     * @throws MeasureException where nothing could be that small
     */
    public static SewnCloth measured(Design design, int bars, Size raw) {
        Layout layout = design.layout();
        Size planned = work(layout, bars).finished();
        Edges open = open(design, bars);
        Length wider = raw.width().minus(open.left()).minus(open.right()).minus(planned.width());
        Length higher = raw.height().minus(open.top()).minus(open.bottom()).minus(planned.height());
        Layout after = shifted(shifted(layout, bars, true, wider), bars, false, higher);
        return new SewnCloth(with(design, after), bars);
    }

    /** The size of the work now, raw. */
    public Size raw() {
        return open(design, bars).around(work(design.layout(), bars).finished());
    }

    private static Layout work(Layout layout, int bars) {
        return new Layout(layout.hearth(), layout.courses().subList(0, bars));
    }

    /** The allowances that the later seams and the hem will still take on each side. */
    private static Edges open(Design design, int bars) {
        List<Layout.Course> courses = design.layout().courses();
        return Layout.hearthEdges(courses.subList(bars, courses.size()), design.making());
    }

    private static Layout shifted(Layout layout, int bars, boolean across, Length by) {
        List<Layout.Course> courses = new ArrayList<>(layout.courses());
        for (int i = bars - 1; i >= 0; i--) {
            Layout.Course course = courses.get(i);
            Length width = course.width().plus(by);
            if (course.side().isUpright() == across && width.isPositive()) {
                courses.set(i, new Layout.Course(course.side(), width));
                return new Layout(layout.hearth(), courses);
            }
        }
        Size hearth = across
                ? new Size(layout.hearth().width().plus(by), layout.hearth().height())
                : new Size(layout.hearth().width(), layout.hearth().height().plus(by));
        if (!hearth.width().isPositive() || !hearth.height().isPositive()) {
            throw new RefusedException(MendingSentences.noWork());
        }
        return new Layout(hearth, courses);
    }

    private static Design with(Design design, Layout layout) {
        return new Design(design.order(), layout, design.scheme(), design.making(), design.rules());
    }

    /**
     * The size that the cloth is meant to finish at: that of cuts which lie on the ruler's marks, as all were planned. What an
     * earlier measure between two marks has left over, half a mark at most, is not handed on to the next, so that keeping the
     * size at each seam keeps one and the same size.
     */
    public Size meant() {
        Size now = design.layout().finished();
        Size cut = new DesignEdits(design).hearthCut();
        return new Size(now.width().minus(off(cut.width(), true)), now.height().minus(off(cut.height(), false)));
    }

    /** How far all cuts across, or all up, together miss a mark; none where the bars to come are not cut on marks either. */
    private Length off(Length hearth, boolean across) {
        long mark = design.making().margins().mark().nm();
        DesignEdits edits = new DesignEdits(design);
        Length whole = hearth;
        for (int i = 0; i < design.layout().courses().size(); i++) {
            if (design.layout().courses().get(i).side().isUpright() == across) {
                Length cut = edits.barCut(i);
                if (i >= bars && cut.nm() % mark != 0) {
                    return Length.ZERO;
                }
                whole = whole.plus(cut);
            }
        }
        long rest = whole.nm() % mark;
        return new Length(2 * rest > mark ? rest - mark : rest);
    }

    /**
     * The design with the bars still to come cut wider or narrower, so that the cloth comes out at {@code wanted} after
     * all, as nearly as the marks of the ruler allow. Empty where no bar is left to make up for the difference, or one
     * would show too little.
     */
    public Optional<Design> towards(Size wanted) {
        Size now = design.layout().finished();
        return spread(design, true, wanted.width().minus(now.width()))
                .flatMap(wide -> spread(wide, false, wanted.height().minus(now.height())));
    }

    private Optional<Design> spread(Design from, boolean across, Length missing) {
        List<Integer> later = new ArrayList<>();
        for (int i = bars; i < from.layout().courses().size(); i++) {
            if (from.layout().courses().get(i).side().isUpright() == across) {
                later.add(i);
            }
        }
        return new DesignEdits(from).widened(later, missing);
    }

    /** The design with one more round, cut {@code width} across, in the fabrics of the outermost. */
    public Design another(Length width) {
        return new DesignEdits(design).anotherRound(width);
    }

    /** The narrowest round worth sewing, as cut: one that shows an inch or 25 mm, plus its seam and hem (ours). */
    public static Length narrowRound(Making making, boolean metric) {
        Length shown = metric ? Length.mm(25) : Length.inches(1);
        return shown.plus(making.seam().wide()).plus(making.hem().allowance());
    }
}
