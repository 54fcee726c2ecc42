package hearthcloth.sew.thread;

import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;

/**
 * How long a stitch is and how thick the cloth under it.
 *
 * @param length from hole to hole; 2.5 mm suits middle-weight cloth (docs/sources.md#stitch-length)
 * @param ply thickness of one layer; 0.25 mm for quilting cotton (docs/sources.md#ply)
 */
public record Stitch(Length length, Length ply) {

    /** 2.5 mm stitches in cloth 0.25 mm thick. */
    public static final Stitch USUAL = new Stitch(new Length(2_500_000), new Length(250_000));

    /**
     * The distance between the holes of a row whipped by hand, which is also how far each stitch bites over the fold,
     * in mm (docs/sources.md#whip-thread).
     */
    private static final double WHIPPED_PITCH_MM = 1;

    public Stitch {
        if (!length.isPositive() || !ply.isPositive()) {
            throw new IllegalArgumentException("a stitch and a ply are more than nothing");
        }
    }

    /**
     * Thread for each unit of length of a machine's lockstitch row through {@code plies}, both threads together: C = 2
     * + 2·T·S, T the thickness and S the stitches in a unit (docs/sources.md#thread-model).
     */
    double lockstitch(int plies) {
        return 2 + 2 * plies * ply.in(Unit.MILLIMETRE) / length.in(Unit.MILLIMETRE);
    }

    /**
     * Thread for each unit of length of a row whipped by hand over two folds of {@code plies} together: one turn of a
     * spiral for each millimetre, round a section as high as the plies and 1 mm deep. Derived, not measured
     * (docs/sources.md#whip-thread).
     */
    public double whipped(int plies) {
        double round = 2 * (plies * ply.in(Unit.MILLIMETRE) + WHIPPED_PITCH_MM);
        return Math.hypot(WHIPPED_PITCH_MM, round) / WHIPPED_PITCH_MM;
    }
}
