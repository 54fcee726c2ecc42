package hearthcloth.wrap.tying;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;

/** The words of every tie. The order of the steps is that of docs/sources.md#tie-steps; the words are ours. */
final class TyingLines {

    private static final TyingLine DIAMOND = new TyingLine(
            "Lay the cloth as a diamond, a corner towards you, with the face that you want to show underneath. Stand the"
                    + " gift in the middle, its long side from left to right.",
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
                        "Bring the near and far corners up over the middle. Tie them with a reef knot, snug on the gift.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine(
                        "Lift the left and right corners straight up. Fold the cloth that stands out beside the gift flat"
                                + " against the sides, inside the corners.",
                        TyingMoment.SIDES_UP),
                new TyingLine(
                        "Tie the left and right corners over the first knot. Spread the four ends.", TyingMoment.TIED));
    }

    private static List<TyingLine> edgeAlongEdge() {
        return List.of(
                new TyingLine(
                        "Lay the cloth square in front of you, with the face that you want to show underneath. Set the gift"
                                + " in the middle, its edges along the edges of the cloth.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Lift two opposite corners along the corners of the gift. Tie them over the middle.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine(
                        "Straighten the edges of the cloth round the top of the gift, so that the flaps lie over it.",
                        TyingMoment.FLAPS_OVER),
                new TyingLine("Tie the other two corners over the first knot.", TyingMoment.TIED));
    }

    private static List<TyingLine> errand() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near corner over the gift. Tuck its point under at the far edge.",
                        TyingMoment.NEAR_OVER),
                new TyingLine("Bring the far corner over it and turn its point under.", TyingMoment.NEAR_AND_FAR),
                new TyingLine("Lift the left and right corners and smooth the sides in.", TyingMoment.SIDES_UP),
                new TyingLine("Tie them on top with one reef knot.", TyingMoment.TIED),
                new TyingLine(
                        "To hide the knot, pull the point of the far corner out from under it and lay it over the knot.",
                        TyingMoment.HIDDEN));
    }

    private static List<TyingLine> flat() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near corner over the gift. Where its point hangs over, fold it back under.",
                        TyingMoment.NEAR_OVER),
                new TyingLine(
                        "Bring the left side over, then the right side. Smooth each along the edge of the gift.",
                        TyingMoment.ALL_BUT_FAR),
                new TyingLine(
                        "Bring the far corner over everything. Tuck its point in at the near edge.", TyingMoment.TIED));
    }

    private static List<TyingLine> twoKnot() {
        return List.of(
                DIAMOND,
                new TyingLine(
                        "Bring the near and far corners over the gift. They will not reach far enough to tie. Cross them in"
                                + " the middle, so that one turns left and the other right.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine(
                        "Lift the right corner and tie it to the corner that turned right.", TyingMoment.ONE_SIDE),
                new TyingLine(
                        "Tie the left corner in the same way. The two knots are equally far from the middle.",
                        TyingMoment.TIED));
    }

    private static List<TyingLine> twoKnotRoll() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond. Lay the roll across it from left to right.", TyingMoment.LAID),
                new TyingLine(
                        "Bring the near and far corners over. Cross them on top and turn them along the roll.",
                        TyingMoment.NEAR_AND_FAR),
                new TyingLine("Fold the left and right sides in over the ends of the roll.", TyingMoment.ENDS_IN),
                new TyingLine("Tie each of them to the crossed corner that comes towards it.", TyingMoment.TIED));
    }

    private static List<TyingLine> oneBottle() {
        return List.of(
                new TyingLine("Lay the cloth as a diamond. Stand the bottle in the middle.", TyingMoment.LAID),
                new TyingLine(
                        "Lift the near and far corners. Tie them over the top with a reef knot, close to the mouth.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine(
                        "Gather the left and right corners. Take them round the bottle and cross them behind it.",
                        TyingMoment.CROSSED),
                new TyingLine("Bring them to the front and tie them there, snug on the bottle.", TyingMoment.TIED),
                new TyingLine(
                        "To make a handle, undo one half of the top knot. Twist both ends and tie them together.",
                        TyingMoment.HANDLE));
    }

    private static List<TyingLine> twoBottles() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond. Lay both bottles across it, base to base, a fist apart.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Bring the near corner over the bottles. Roll them away from you to the far corner.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Tuck the far corner into the gap. Stand both bottles up, so that the cloth bends between the bases.",
                        TyingMoment.STOOD),
                new TyingLine("Tie the two ends over the tops with a reef knot.", TyingMoment.TIED));
    }

    private static List<TyingLine> round() {
        return List.of(
                new TyingLine("Lay the cloth flat. Set the ball in the middle.", TyingMoment.LAID),
                new TyingLine(
                        "Tie the near corner to the right corner above the ball. Leave ends long enough for a loop.",
                        TyingMoment.FIRST_PAIR),
                new TyingLine("Tie the far corner to the left corner.", TyingMoment.TIED),
                new TyingLine(
                        "To make a handle, pass the second knot through under the first. Pull it snug.",
                        TyingMoment.HANDLE));
    }

    private static List<TyingLine> books() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond. Lay one book near you and one far from you. Leave a gap between them as"
                                + " wide as both are thick.",
                        TyingMoment.LAID),
                new TyingLine(
                        "Fold the near corner in over the near book, and the far corner over the far book.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Bring the left and right corners in over the books. Cross them tightly in the gap.",
                        TyingMoment.ENDS_IN),
                new TyingLine("Close one book onto the other, so that the gap becomes the spine.", TyingMoment.CLOSED),
                new TyingLine("Twist the two ends. Bring them back along the spine and tie them.", TyingMoment.TIED));
    }

    private static List<TyingLine> roll() {
        return List.of(
                new TyingLine(
                        "Lay the cloth as a diamond. Lay the roll across it from left to right.", TyingMoment.LAID),
                new TyingLine(
                        "Bring the near corner over the roll. Roll it away from you to the far corner.",
                        TyingMoment.WOUND),
                new TyingLine(
                        "Fold the sides in over both ends of the roll. Bring them back along the roll to its middle.",
                        TyingMoment.ENDS_IN),
                new TyingLine("Cross them there, so that one goes down each side.", TyingMoment.CROSSED),
                new TyingLine("Turn the roll over. Tie them on the other side with a reef knot.", TyingMoment.TIED));
    }

    /**
     * What to do when a corner will not reach. Source of the hooked way: docs/sources.md#hooked; the others are common
     * practice.
     */
    static String ifShort(Tie tie) {
        return switch (tie) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND ->
                "If two corners do not reach each other, cross them over the gift. Tie each to a side corner, as in the"
                        + " two-knot wrap. Or tie the two corners of one edge together, then the other two.";
            case FLAT ->
                "If the far corner does not reach the near edge, turn it under and pin it. Or use the errand wrap.";
            case TWO_KNOT -> "If one corner is short, move the crossing towards it. Or tie with a ribbon between.";
            case ONE_BOTTLE -> "If the corners do not meet over the mouth, tie them round the neck and let it show.";
            case TWO_BOTTLES, ROLL -> "If the ends are short, roll with less cloth. Or tie them with a ribbon between.";
            case ROUND -> "If two corners are short, tie opposite corners over the top, without a handle.";
            case BOOKS ->
                "If the twisted ends are short, tie them in the gap before closing. Carry the books under your arm.";
        };
    }
}
