package hearthcloth.wrap.tying;

import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.tying.Tying.Step;
import java.util.List;

/** The steps of every tie. Their order is that of docs/sources.md#tie-steps; the words are ours. */
final class TyingLines {

    private final TyingWords words;

    TyingLines(TyingWords words) {
        this.words = words;
    }

    List<Step> of(Tie tie, Gift gift) {
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

    private List<Step> fourCorner() {
        return List.of(
                new Step(words.diamond(), TyingMoment.LAID),
                new Step(words.fourCornerNearAndFar(), TyingMoment.NEAR_AND_FAR),
                new Step(words.fourCornerSides(), TyingMoment.SIDES_UP),
                new Step(words.fourCornerTied(), TyingMoment.TIED));
    }

    private List<Step> edgeAlongEdge() {
        return List.of(
                new Step(words.edgeLaid(), TyingMoment.LAID),
                new Step(words.edgePair(), TyingMoment.FIRST_PAIR),
                new Step(words.edgeFlaps(), TyingMoment.FLAPS_OVER),
                new Step(words.edgeTied(), TyingMoment.TIED));
    }

    private List<Step> errand() {
        return List.of(
                new Step(words.diamond(), TyingMoment.LAID),
                new Step(words.errandNear(), TyingMoment.NEAR_OVER),
                new Step(words.errandFar(), TyingMoment.NEAR_AND_FAR),
                new Step(words.errandSides(), TyingMoment.SIDES_UP),
                new Step(words.errandTied(), TyingMoment.TIED),
                new Step(words.errandHidden(), TyingMoment.HIDDEN));
    }

    private List<Step> flat() {
        return List.of(
                new Step(words.diamond(), TyingMoment.LAID),
                new Step(words.flatNear(), TyingMoment.NEAR_OVER),
                new Step(words.flatSides(), TyingMoment.ALL_BUT_FAR),
                new Step(words.flatFar(), TyingMoment.TIED));
    }

    private List<Step> twoKnot() {
        return List.of(
                new Step(words.diamond(), TyingMoment.LAID),
                new Step(words.twoKnotCrossed(), TyingMoment.NEAR_AND_FAR),
                new Step(words.twoKnotRight(), TyingMoment.ONE_SIDE),
                new Step(words.twoKnotTied(), TyingMoment.TIED));
    }

    private List<Step> twoKnotRoll() {
        return List.of(
                new Step(words.diamondRoll(), TyingMoment.LAID),
                new Step(words.twoKnotRollCrossed(), TyingMoment.NEAR_AND_FAR),
                new Step(words.twoKnotRollEnds(), TyingMoment.ENDS_IN),
                new Step(words.twoKnotRollTied(), TyingMoment.TIED));
    }

    private List<Step> oneBottle() {
        return List.of(
                new Step(words.bottleLaid(), TyingMoment.LAID),
                new Step(words.bottlePair(), TyingMoment.FIRST_PAIR),
                new Step(words.bottleCrossed(), TyingMoment.CROSSED),
                new Step(words.bottleTied(), TyingMoment.TIED),
                new Step(words.bottleHandle(), TyingMoment.HANDLE));
    }

    private List<Step> twoBottles() {
        return List.of(
                new Step(words.bottlesLaid(), TyingMoment.LAID),
                new Step(words.bottlesWound(), TyingMoment.WOUND),
                new Step(words.bottlesStood(), TyingMoment.STOOD),
                new Step(words.bottlesTied(), TyingMoment.TIED));
    }

    private List<Step> round() {
        return List.of(
                new Step(words.roundLaid(), TyingMoment.LAID),
                new Step(words.roundPair(), TyingMoment.FIRST_PAIR),
                new Step(words.roundTied(), TyingMoment.TIED),
                new Step(words.roundHandle(), TyingMoment.HANDLE));
    }

    private List<Step> books() {
        return List.of(
                new Step(words.booksLaid(), TyingMoment.LAID),
                new Step(words.booksWound(), TyingMoment.WOUND),
                new Step(words.booksEnds(), TyingMoment.ENDS_IN),
                new Step(words.booksClosed(), TyingMoment.CLOSED),
                new Step(words.booksTied(), TyingMoment.TIED));
    }

    private List<Step> roll() {
        return List.of(
                new Step(words.diamondRoll(), TyingMoment.LAID),
                new Step(words.rollWound(), TyingMoment.WOUND),
                new Step(words.rollEnds(), TyingMoment.ENDS_IN),
                new Step(words.rollCrossed(), TyingMoment.CROSSED),
                new Step(words.rollTied(), TyingMoment.TIED));
    }

    /**
     * What to do when a corner will not reach. Source of the hooked way: docs/sources.md#hooked; the others are common
     * practice.
     */
    static String ifShort(Tie tie, TyingWords words) {
        return switch (tie) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND -> words.shortCorners();
            case FLAT -> words.shortFlat();
            case TWO_KNOT -> words.shortTwoKnot();
            case ONE_BOTTLE -> words.shortBottle();
            case TWO_BOTTLES, ROLL -> words.shortRolled();
            case ROUND -> words.shortRound();
            case BOOKS -> words.shortBooks();
        };
    }
}
