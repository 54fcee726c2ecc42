package hearthcloth.sew.thread;

import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;


/**
 * How long a stitch is and how thick the cloth under it.
 *
 * @param length from hole to hole; 2.5 mm suits middle-weight cloth (common practice)
 * @param ply thickness of one layer; 0.25 mm for quilting cotton (from memory; lawn is nearer 0.15 mm)
 */
public record Stitch(Length length, Length ply) {

    /** 2.5 mm stitches in cloth 0.25 mm thick. */
    public static final Stitch USUAL = new Stitch(new Length(2_500_000), new Length(250_000));

    /** Between the holes of a row whipped by hand, and how far each stitch bites over the fold: our reckoning. */
    private static final double WHIPPED_PITCH_MM = 1;

    public Stitch {
        if (!length.isPositive() || !ply.isPositive()) {
            throw new IllegalArgumentException("a stitch and a ply are more than nothing");
        }
    }

    /**
     * Thread for each unit of a machine's lockstitch row through {@code plies}: both threads together. The rectangular
     * model of the textbooks, C = 2 + 2·T·S: T thickness, S stitches per unit (A. K. Das, "textilecalculation", 2015;
     * derived check values in the handbook).
     */
    public double lockstitch(int plies) {
        return 2 + 2 * plies * ply.in(Unit.MILLIMETRE) / length.in(Unit.MILLIMETRE);
    }

    /**
     * Thread for each unit of a row whipped by hand over two folds of {@code plies} together: one turn of a spiral for each
     * millimetre, round a section as high as the plies and a bite of 1 mm deep. Derived here, not measured.
     */
    public double whipped(int plies) {
        double round = 2 * (plies * ply.in(Unit.MILLIMETRE) + WHIPPED_PITCH_MM);
        return Math.hypot(WHIPPED_PITCH_MM, round) / WHIPPED_PITCH_MM;
    }
}
