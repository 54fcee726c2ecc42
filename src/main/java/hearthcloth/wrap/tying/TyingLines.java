package hearthcloth.wrap.tying;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;

/** The words of every tie. The order of the steps is that of docs/sources.md#tie-steps; the words are ours. */
final class TyingLines {

    private static final TyingLine DIAMOND = new TyingLine(
            "Lay the cloth as a diamond, a corner towards you, the face that is to show underneath. Stand the gift in the"
                    + " middle, its long side from left to right.",
            TyingMoment.LAID);

    private TyingLines() {}

    static List<TyingLine> of(Tie tie, Gift gift) {
        return switch (tie) {
            case FOUR_CORNER -> fourCorner();
            case EDGE_ALONG_EDGE -> edgeAlongEdge();
            case ERRAND -> errand();
            case FLAT -> flat();
            case TWO_KNOT -> gift instanceof Gift.Box ? twoKnot() : twoKnotRoll();
            case ONE_BOTTLE -> oneBottle();
            case TWO_BOTTLES -> twoBottles();
            case ROUND -> round();
            case BOOKS -> books();
            case ROLL -> roll();
        };
    }

    private static List<TyingLine> fourCorner() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near and far corners up over the middle and tie them with a reef knot, snug on the"
                                + " gift.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine(
                        "Lift the left and right corners straight up; what stands out beside the gift folds flat inside"
                                + " them, against the sides.",
                        TyingMoment.SIDES_UP),
                new TyingLine(
                        "Tie the left and right corners over the first knot, and spread the four ends.",
                        TyingMoment.TIED));
    }

    private static List<TyingLine> edgeAlongEdge() {
        return List.of(
                new TyingLine(
                        "Lay the cloth square before you, the face that is to show underneath, and the gift in the"
                                + " middle, edges along edges.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Lift two opposite corners up the gift's own corners, and tie them over the middle.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine(
                        "Straighten the edges of the cloth round the rim, so that the flaps lie over the top.",
                        TyingMoment.FLAPS_OVER),
                new TyingLine("Tie the other two corners over the first knot.", TyingMoment.TIED));
    }

    private static List<TyingLine> errand() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near corner over the gift and tuck its tip under at the far edge.",
                        TyingMoment.NEAR_OVER),
                new TyingLine("Bring the far corner over it, and turn its tip under.", TyingMoment.NEAR_AND_FAR),
                new TyingLine("Lift the left and right corners, and smooth the sides in.", TyingMoment.SIDES_UP),
                new TyingLine("Tie them on top with one reef knot.", TyingMoment.TIED),
                new TyingLine(
                        "To hide the knot, draw the far corner's tip out from under it and lay it back over.",
                        TyingMoment.HIDDEN));
    }

    private static List<TyingLine> flat() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near corner over, and fold its tip back under where it hangs over.",
                        TyingMoment.NEAR_OVER),
                new TyingLine(
                        "Bring the left side over, then the right one; smooth each along the gift's edge.",
                        TyingMoment.ALL_BUT_FAR),
                new TyingLine(
                        "Bring the far corner over everything and tuck its tip in at the near edge.",
                        TyingMoment.TIED));
    }

    private static List<TyingLine> twoKnot() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near and far corners over; they will not reach far enough to tie. Cross them in the"
                                + " middle, so that one turns left and the other right.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine("Lift the right corner and tie it to the end that turned right.", TyingMoment.ONE_SIDE),
                new TyingLine(
                        "Tie the left one likewise: two equal knots, as far from the middle one as the other.",
                        TyingMoment.TIED));
    }

    private static List<TyingLine> twoKnotRoll() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond and the roll across it from left to right.", TyingMoment.LAID),
                new TyingLine(
                        "Bring the near and far corners over, cross them on top and turn them along the roll.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine("Fold the left and right sides in over the ends.", TyingMoment.ENDS_IN),
                new TyingLine("Tie each of them to the crossed end that comes towards it.", TyingMoment.TIED));
    }

    private static List<TyingLine> oneBottle() {
        return List.of(
                new TyingLine("Lay the cloth as a diamond and stand the bottle in the middle.", TyingMoment.LAID),
                new TyingLine(
                        "Lift the near and far corners and tie them over the top with a reef knot, close to the mouth.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine(
                        "Gather the left and right corners, take them round the bottle and cross them behind it.",
                        TyingMoment.CROSSED),
                new TyingLine("Bring them to the front and tie them there, snug on the body.", TyingMoment.TIED),
                new TyingLine(
                        "For a handle undo one half of the top knot, twist both ends and tie their tips.",
                        TyingMoment.HANDLE));
    }

    private static List<TyingLine> twoBottles() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond and both bottles across it, bases facing, a fist between them.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Bring the near corner over the bottles and roll them away from you to the far tip.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Tuck the tip into the gap and stand both bottles up, bending the cloth between the bases.",
                        TyingMoment.STOOD),
                new TyingLine("Tie the two ends over the tops with a reef knot.", TyingMoment.TIED));
    }

    private static List<TyingLine> round() {
        return List.of(
                new TyingLine("Lay the cloth flat and set the ball in the middle.", TyingMoment.LAID),
                new TyingLine(
                        "Tie the near corner to the right one, above the ball, with ends enough for a loop.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine("Tie the far corner to the left one.", TyingMoment.TIED),
                new TyingLine(
                        "For a handle pass the second knot through under the first, and pull it snug.",
                        TyingMoment.HANDLE));
    }

    private static List<TyingLine> books() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond. Lay the books on it, one near you, one far, with a gap between as"
                                + " wide as both are thick.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Fold the near corner in over the near book and the far one over the far book.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Bring the left and right corners in over the ends and cross them tight in the gap.",
                        TyingMoment.ENDS_IN),
                new TyingLine("Close one book on the other, the gap becoming the spine.", TyingMoment.CLOSED),
                new TyingLine("Twist the ends, bring them back along the spine and tie them.", TyingMoment.TIED));
    }

    private static List<TyingLine> roll() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond and the roll across it, from left to right.", TyingMoment.LAID),
                new TyingLine(
                        "Bring the near corner over the roll and wind it away from you to the far tip.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Fold the ends in over the discs and bring them back along the roll to its middle.",
                        TyingMoment.ENDS_IN),
                new TyingLine("Cross them there, so that each goes down its own side.", TyingMoment.CROSSED),
                new TyingLine(
                        "Turn the roll over, and tie them on the other side with a reef knot.", TyingMoment.TIED));
    }

    /**
     * What to do when a corner will not reach. Source of the hooked way: docs/sources.md#hooked; the others are common
     * practice.
     */
    static String ifShort(Tie tie) {
        return switch (tie) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND ->
                "If two corners do not reach each other: cross the short pair over the gift and tie each to a side corner,"
                        + " as in the two-knot wrap; or tie two corners of one edge together, and the other two.";
            case FLAT ->
                "If the far tip does not reach the near edge: turn it under and pin it, or take the errand wrap.";
            case TWO_KNOT -> "If an end is short: shift the crossing towards it, or tie with a ribbon between.";
            case ONE_BOTTLE -> "If the corners do not meet over the mouth: tie them round the neck, and let it show.";
            case TWO_BOTTLES, ROLL ->
                "If the ends are short: wind less cloth round, or tie them with a ribbon between.";
            case ROUND -> "If a pair is short: tie all four ends in opposite pairs over the top, without a handle.";
            case BOOKS -> "If the cord is short: tie in the gap before closing, and carry the books under the arm.";
        };
    }
}
