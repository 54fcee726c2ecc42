package hearthcloth.photo.plane;

/**
 * How flat a plain reference may be taken to lie: it has no marks that tell how it is bent, so what is said of each length
 * holds what its kind commonly does. The numbers were chosen on sheets with one corner up to 8 mm off the floor, seen at up to
 * 25 degrees (docs/reading.md).
 *
 * @param liftMm standard deviation of the height of each corner above the floor, in millimetres
 * @param skewFrom a skew of more than this share is what bending does: how far proportions and angles are off, as a share
 * @param times how many times as far as that skew says a corner may be off: some of its way shows in no proportion
 */
public record SheetStiffness(double liftMm, double skewFrom, double times) {

    /** Office paper: a corner that curls up by 3 mm is common. */
    private static final SheetStiffness PAPER = new SheetStiffness(1.5, 0.002, 1);

    /** A bank card, bowed by the pocket that it was carried in, or with a corner on a fold of cloth. */
    private static final SheetStiffness CARD = new SheetStiffness(1.1, 0.002, 1.6);

    /** A cutting mat or the like, which lies flat by its weight. */
    private static final SheetStiffness MAT = new SheetStiffness(0.2, 0.004, 1);

    /** What is common for this kind of sheet. */
    public static SheetStiffness of(ReferenceSheet sheet) {
        return sheet.white() ? PAPER : sheet.cornerRadius().isPositive() ? CARD : MAT;
    }

    /** How far off a corner may be because the sheet is bent, in pixels, given how wrong its angles and proportions are. */
    public double cornerPixels(double skew, double shortestSide) {
        return times * Math.max(0, skew - skewFrom) * shortestSide;
    }
}
