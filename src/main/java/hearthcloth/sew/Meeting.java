package hearthcloth.sew;

import hearthcloth.cloth.Bars;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The two halves of one seam as they lie under the needle: what each is called, which sides touch, which half wraps the
 * other, and by how much a bar is still too long or too wide. Read off the step and the patches; nothing is stored
 * twice.
 *
 * @param work the half that is there already
 * @param added the half that is new
 */
record Meeting(Step step, Making making, Party work, Party added) {

    /**
     * One half.
     *
     * @param name with its article, to stand inside a sentence
     * @param patches those of the half
     */
    record Party(String name, List<Laid> patches) {}

    /** Whether the new half, which lies on top while the joining row is sewn, wraps the other. */
    boolean addedWraps() {
        return step.seam().wraps() == step.added();
    }

    Party wrapping() {
        return addedWraps() ? added : work;
    }

    Party wrapped() {
        return addedWraps() ? work : added;
    }

    boolean isJoin() {
        return step.joinedBar().isPresent();
    }

    /** Whether the new half is a whole bar, in one piece or joined; only such a bar carries leeway. */
    boolean isBar() {
        return !isJoin() && Bars.name(step.seam().half(step.added())).isPresent();
    }

    /** The side of the work, seen from the front, on which the new half lies. */
    Side side() {
        return step.seam().join().facing(step.added().other());
    }

    /** The same side as the work lies with {@code up} upwards. */
    Side sideSeen(Face up) {
        return up == Face.FRONT ? side() : side().turnedOver();
    }

    /** The end at which a bar is laid level, as the work lies with {@code up} upwards. */
    Side start(Face up) {
        Side start = side().isUpright() ? Side.TOP : Side.LEFT;
        return up == Face.FRONT ? start : start.turnedOver();
    }

    /** The face on which nothing is felled; it lies inside when the joining row is sewn. */
    Face plain() {
        return making.fell().other();
    }

    /** The cut length of the new half beyond its exact length. */
    Length tooLong() {
        return added.patches().stream().map(this::extraAlong).reduce(Length.ZERO, Length::plus);
    }

    /** The cut width of the new half beyond its exact width. */
    Length tooWide() {
        return added.patches().stream().map(this::extraAcross).reduce(Length.ZERO, Length::max);
    }

    private Length extraAlong(Laid laid) {
        return side().isUpright() ? laid.margin().height() : laid.margin().width();
    }

    private Length extraAcross(Laid laid) {
        return side().isUpright() ? laid.margin().width() : laid.margin().height();
    }

    /** How far the edge of the wrapping half reaches beyond the other. */
    Length offset() {
        return making.seam().wide().minus(making.seam().narrow());
    }

    /** The allowance that is still open at the start of the seam; distances are measured from the raw end. */
    Length openAtStart() {
        Side start = side().isUpright() ? Side.TOP : Side.LEFT;
        return work.patches().stream()
                .filter(laid -> side().isUpright()
                        ? laid.at().y().equals(step.line().y())
                        : laid.at().x().equals(step.line().x()))
                .map(laid -> laid.allowances().on(start))
                .findFirst()
                .orElse(Length.ZERO);
    }

    /** What can be said of the sides that touch. */
    enum Sides {
        /** Right and wrong sides on one half. */
        MIXED,
        /** Fabrics that look alike both ways on both halves. */
        UNSEEN,
        /** The same side on both. */
        ALIKE,
        /** A side on the new half only. */
        ADDED,
        /** A side on the half that was there only. */
        WORK,
        /** Different sides. */
        BOTH
    }

    /**
     * The sides of the fabrics that touch, as catalogues name them.
     *
     * @param work {@code right} or {@code wrong}; empty where there is none
     * @param added the same of the new half
     */
    record Touching(Sides kind, String work, String added) {}

    /** The sides of the fabrics that touch where {@code inside} lies inside. */
    Touching touching(Face inside) {
        Set<Showing> ofWork = showing(work, step.added().other(), inside);
        Set<Showing> ofAdded = showing(added, step.added(), inside);
        return new Touching(kind(ofWork, ofAdded), word(ofWork), word(ofAdded));
    }

    private static Sides kind(Set<Showing> ofWork, Set<Showing> ofAdded) {
        if (ofWork.size() > 1 || ofAdded.size() > 1) {
            return Sides.MIXED;
        }
        if (ofWork.equals(ofAdded)) {
            return ofWork.isEmpty() ? Sides.UNSEEN : Sides.ALIKE;
        }
        return ofWork.isEmpty() ? Sides.ADDED : ofAdded.isEmpty() ? Sides.WORK : Sides.BOTH;
    }

    private static String word(Set<Showing> sides) {
        return sides.contains(Showing.RIGHT) ? "right" : sides.contains(Showing.WRONG) ? "wrong" : "";
    }

    /** What shows on {@code face} along the seam, without fabrics that look alike both ways. */
    private Set<Showing> showing(Party party, Half half, Face face) {
        Set<Showing> shown = EnumSet.noneOf(Showing.class);
        Side facing = step.seam().join().facing(half);
        for (Laid laid : party.patches()) {
            if (isOnLine(laid, facing)) {
                shown.add(laid.patch().showing().on(face));
            }
        }
        shown.remove(Showing.SAME);
        return shown;
    }

    private boolean isOnLine(Laid laid, Side facing) {
        return switch (facing) {
            case LEFT -> laid.at().x().equals(step.line().x());
            case RIGHT -> laid.at().right().equals(step.line().x());
            case TOP -> laid.at().y().equals(step.line().y());
            case BOTTOM -> laid.at().bottom().equals(step.line().y());
        };
    }
}
