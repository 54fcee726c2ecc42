package hearthcloth.sew.thread;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Thread for the whole cloth, row by row, from the stitch and the plies it goes through, with the tails at both ends of
 * each row and a margin added.
 *
 * @param rows every kind of row, its length finished
 * @param stitched thread in the rows themselves, both threads together
 * @param tails thread left hanging at both ends of all rows
 */
public record ThreadNeed(List<Row> rows, Length stitched, Length tails) {

    /**
     * Added for slips and mending, in per cent: the upper end of the trade's 10 to 15 %
     * (docs/sources.md#thread-margin).
     */
    public static final int MARGIN_PERCENT = 15;

    /**
     * The length of each thread left hanging at each end of a row: 10 cm, said as 4 in (docs/sources.md#thread-tail).
     */
    public static final Length TAIL = Length.cm(10);

    private static final int CORNERS = 4;

    /** What a row does. */
    public enum Kind {
        /** The first row of every seam. */
        JOIN,
        /** The second row: along the fell's fold, or the second pass. */
        FELL,
        /** Along the inner fold of the hem. */
        HEM,
        /** The short seams across four mitred corners. */
        MITRE
    }

    /**
     * All rows of one kind.
     *
     * @param count how many separate rows
     * @param plies each goes through on a plain run
     */
    public record Row(Kind kind, int count, Length length, int plies) {}

    public ThreadNeed {
        rows = List.copyOf(rows);
    }

    public static ThreadNeed of(Cloth cloth, Stitch stitch) {
        List<Row> rows = rows(cloth);
        boolean byHand = cloth.making().seam().build() == SeamKind.Build.WHIPPED;
        double nm = 0;
        long ends = 0;
        for (Row row : rows) {
            boolean whipped = byHand && row.kind() == Kind.JOIN;
            nm += row.length().nm() * (whipped ? stitch.whipped(row.plies()) : stitch.lockstitch(row.plies()));
            ends += row.count() * (whipped ? 2L : 4L);
        }
        return new ThreadNeed(rows, new Length(Rounding.UP.whole(nm)), TAIL.times(ends));
    }

    /** The rows of a cloth, with the plies each goes through. */
    static List<Row> rows(Cloth cloth) {
        SeamKind.Build build = cloth.making().seam().build();
        List<Step> steps = cloth.steps();
        Length seams = steps.stream().map(Step::length).reduce(Length.ZERO, Length::plus);
        List<Row> rows = new ArrayList<>();
        if (!steps.isEmpty()) {
            rows.add(new Row(Kind.JOIN, steps.size(), seams, joining(build)));
            if (cloth.making().seam().rows() > 1) {
                rows.add(new Row(Kind.FELL, steps.size(), seams, felling(build)));
            }
        }
        if (cloth.making().hem().allowance().isPositive()) {
            Length round =
                    cloth.finished().width().plus(cloth.finished().height()).times(2);
            int count = cloth.making().hem().corner() == Hem.Corner.SQUARE ? CORNERS : 1;
            rows.add(new Row(Kind.HEM, count, round, Hem.PLIES));
            if (count == 1) {
                rows.add(mitres(cloth.making().hem()));
            }
        }
        return rows;
    }

    private static Row mitres(Hem hem) {
        double nm = CORNERS * hem.mitreStitchMm() * Unit.MILLIMETRE.nanometres();
        return new Row(Kind.MITRE, CORNERS, new Length(Rounding.UP.whole(nm)), 2);
    }

    /**
     * The plies under a joining row: two single edges; where folds are sewn, as many as lie in the lap or in both
     * folds.
     */
    private static int joining(SeamKind.Build build) {
        return switch (build) {
            case FELLED, FRENCH -> 2;
            case LAPPED -> build.plies(1, 1);
            case WHIPPED -> 2 * build.plies(1, 1);
        };
    }

    /**
     * The plies under a felling row. The second pass of a French seam goes through the flap before it is pressed over:
     * four.
     */
    private static int felling(SeamKind.Build build) {
        return switch (build) {
            case FELLED -> build.plies(1, 1);
            case FRENCH -> 4;
            case LAPPED -> build.plies(1, 1);
            case WHIPPED -> 0;
        };
    }

    /** Rows, tails and margin. */
    public Length total() {
        return withMargin(stitched.plus(tails));
    }

    /**
     * Half of the thread is on the spool and half on the bobbin, since a balanced lockstitch takes as much of each
     * (docs/sources.md#lockstitch).
     */
    public Length each() {
        return total().dividedBy(2, Rounding.UP);
    }

    static Length withMargin(Length thread) {
        return thread.times(100 + MARGIN_PERCENT).dividedBy(100, Rounding.UP);
    }
}
