package hearthcloth.photo.heldaside;

import java.util.List;

/**
 * What came of one true piece.
 *
 * @param truth the piece
 * @param found whether the reader found it
 * @param sides each side's error, none when the corners do not correspond
 * @param usable what was said to be usable; nothing larger and nothing found when not found
 * @param doubts kinds of doubt it was given, in words
 */
record Judged(TruePiece truth, boolean found, List<SideError> sides, Usable usable, String doubts) {

    /** A side as it is and as it was read, mm. */
    record SideError(double truth, double read, double giveOrTake) {
        double mm() {
            return Math.abs(read - truth);
        }

        /** In shares of what is allowed: 1.5 mm or 1 % of the side, the larger. */
        double ofAllowed() {
            return mm() / Math.max(1.5, 0.01 * truth);
        }

        /** In shares of 1.5 mm and of 1 % of the side, the worse. */
        double ofBoth() {
            return mm() / Math.min(1.5, 0.01 * truth);
        }

        boolean holds() {
            return mm() <= giveOrTake;
        }
    }

    /**
     * The usable rectangle.
     *
     * @param overhang how far it sticks out of the true piece at least, mm
     * @param share its area of the best there is
     */
    record Usable(double overhang, double share) {
        static final Usable NONE = new Usable(0, 0);

        boolean tooLarge() {
            return overhang > 0.05;
        }
    }

    Judged {
        sides = List.copyOf(sides);
    }

    boolean corresponds() {
        return !sides.isEmpty();
    }

    double worstSide() {
        return sides.stream().mapToDouble(SideError::ofAllowed).max().orElse(0);
    }

    /** Clear to see: told from the ground by 10 or more. */
    boolean isClear() {
        return truth.contrast() >= 10;
    }
}
